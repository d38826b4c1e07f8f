import { describe, expect, it } from 'vitest'
import { compile } from '../../../src/domain/reply/lexicon/compile.ts'
import { en } from '../../../src/domain/reply/lexicon/en/index.ts'
import { distance, meant } from '../../../src/domain/reply/slips.ts'

const { slips } = compile(en)

describe('the data of a language', () => {
  it('is refused with the place of the fault', () => {
    expect(() => compile({ ...en, zones: { ...en.zones, calf: 'calf, Shin!' } })).toThrow(/calf/)
    expect(() => compile({ ...en, zones: { ...en.zones, calf: 'calf, foot' } })).toThrow(/"foot" is both/)
  })

  it('may be another language, without a change of code', () => {
    const zones = { ...en.zones, calf: 'pantorrilla, gemelo' }
    expect(compile({ ...en, language: 'es', zones }).cues.get('pantorrilla')?.alone[0]).toEqual({
      cue: 'zone',
      value: 5,
    })
  })
})

describe('slips of the finger', () => {
  it.each([
    ['calg', 'calf', 0.5],
    ['caalf', 'calf', 0.5],
    ['claf', 'calf', 1],
    ['calxf', 'calf', 1],
  ])('%s is %s at %d', (written, word, cost) => {
    expect(distance(written, word, 2, slips.neighbours)).toBe(cost)
  })

  it('bends by one up to seven letters, by two beyond, and not where two words are as near', () => {
    expect(meant('tihgh', slips)).toBe('thigh')
    expect(meant('tihhg', slips)).toBe(null)
    expect(meant('hamsrtng', slips)).toBe('hamstring')
    expect(meant('xyz', slips)).toBe(null)
  })
})
