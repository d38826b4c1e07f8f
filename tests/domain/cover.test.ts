import { describe, expect, it } from 'vitest'
import { standsIn } from '../../src/domain/cover.ts'

const row = (coach: string, cover: string, from = '2026-03-02', until = '2026-03-09') =>
  ({ coach, cover, from, until }) as const

describe('who is called first', () => {
  it.each([
    ['the coach where nobody stands in', [], 'heron'],
    ['the cover, on the first and on the last day', [row('heron', 'wren')], 'wren'],
    ['the cover of a cover who is away too', [row('heron', 'wren'), row('wren', 'teal')], 'teal'],

    ['one of them in a ring', [row('heron', 'wren'), row('wren', 'heron')], 'wren'],
  ])('%s', (_, covers, called) => {
    expect(standsIn('heron', covers, '2026-03-02')).toBe(called)
    expect(standsIn('heron', covers, covers[0]?.until ?? '2026-03-09')).toBe(called)
  })

  it('the coach again after the last day', () =>
    expect(standsIn('heron', [row('heron', 'wren')], '2026-03-10')).toBe('heron'))

  it('nobody where no coach is known', () =>
    expect(standsIn(null, [row('heron', 'wren')], '2026-03-02')).toBeNull())
})
