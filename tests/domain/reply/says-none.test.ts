import { describe, expect, it } from 'vitest'
import { saysNone } from '../../../src/domain/reply/says-none.ts'

describe('"none" to a list', () => {
  it.each(['none', 'None.', 'nope', 'no', 'nothing', 'none of these', 'none of them', 'none at the moment'])(
    'is read in English: %s',
    (text) => expect(saysNone(text, 'en')).toBe(true),
  )
  it.each(['ninguna', 'ninguno de estos', 'Nada', 'no', 'no, ninguno'])('and in Spanish: %s', (text) =>
    expect(saysNone(text, 'es')).toBe(true),
  )
  it.each(['none but cancer', 'no, pregnant', 'nothing except warfarin', 'not sure', 'deadlift', '', '3'])(
    'says nothing else beside it: %s',
    (text) => expect(saysNone(text, 'en')).toBe(false),
  )
  it('a language is not read by the words of another', () => {
    expect(saysNone('nada salvo sintrom', 'es')).toBe(false)
    expect(saysNone('ninguna', 'en')).toBe(false)
  })
})
