import { describe, expect, it } from 'vitest'
import { assess } from '../../../src/domain/rules/assess.ts'
import { restOver } from '../../../src/domain/rules/rest.ts'
import { day, type Entry, flagOn, history, openDays, reaches, span, times } from './build.ts'

const rungs = { extension: 1, glide: 1 }
const on = (n: number, entry: Entry = {}) => times(n, { rungs, ...entry })

describe('gate', () => {
  it('proposes to advance the lowest ladder on the day the gate is met', () => {
    const h = history([...on(4), ...on(2, { comfort: true })])
    expect(assess(h, day(5))).toMatchObject({ proposal: 'advance', ladder: 'extension', reasons: ['gate'] })
    expect(openDays(h, 'gate')).toEqual([5, 6])
    expect(flagOn(h, 6, 'gate')).toMatchObject({
      level: 'note',
      day: day(5),
      figures: { ladder: 'extension', rung: 1, next: 2, checkIns: 6, done: 12, planned: 12, worstPain: 3 },
    })
  })

  it('asks for comfort, and proposes nothing, where only that is missing', () => {
    expect(assess(history(on(5)), day(5))).toMatchObject({ proposal: 'none', askComfort: true, flags: [] })
    expect(assess(history(on(4)), day(4)).askComfort).toBe(false)
  })

  it('is not judged without rungs', () => {
    expect(assess(history(times(9, { comfort: true })), day(9))).toMatchObject({
      proposal: 'none',
      askComfort: false,
    })
  })

  it('is not met while an alarm or a sign is open, or nobody has replied for 3 days', () => {
    const spread = reaches(...Array(14).fill(2), 5, ...Array(6).fill(2)).map((entry) => ({
      ...entry,
      rungs,
      comfort: true,
    }))
    expect(assess(history(spread), day(21))).toMatchObject({ proposal: 'ease-back', askComfort: false })
    expect(openDays(history(spread), 'gate')).toEqual(span(5, 14))
    const soon = history([...on(5), ...on(1, { comfort: true, signs: ['night-pain'] })])
    expect(assess(soon, day(6))).toMatchObject({ proposal: 'hold' })
    const silent = history([...on(6, { comfort: true }), ...times(3, null)])
    expect(openDays(silent, 'gate')).toEqual([5, 6, 7, 8])
  })

  it('is silent for 4 days after a decision against it', () => {
    const decisions = [{ day: day(6), ladder: 'extension', decision: 'hold' }] as const
    const h = history(on(12, { comfort: true }), { decisions })
    expect(openDays(h, 'gate')).toEqual([5, 11, 12])
    expect(flagOn(h, 12, 'gate')?.day).toBe(day(11))
    expect(assess(h, day(8))).toMatchObject({ proposal: 'none', reasons: [] })
  })

  it('takes no decision for one against it that came before it was met, or is about another ladder', () => {
    const early = [{ day: day(3), ladder: 'extension', decision: 'hold' }] as const
    expect(openDays(history(on(6, { comfort: true }), { decisions: early }), 'gate')).toEqual([5, 6])
    const other = [{ day: day(6), ladder: 'glide', decision: 'ease-back' }] as const
    expect(openDays(history(on(7, { comfort: true }), { decisions: other }), 'gate')).toEqual([5, 6, 7])
  })
})

describe('a resting ladder', () => {
  const spread = reaches(...Array(14).fill(2), 5, ...Array(10).fill(2))

  it('comes back after 3 answered days without an open alarm', () => {
    const h = history(spread)
    expect(restOver(h, day(15), day(23))).toBe(false)
    expect(restOver(h, day(15), day(24))).toBe(true)
  })
})
