import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { RuleId } from '../../../src/domain/rules/assessment.ts'
import {
  isOverruled,
  type PastDecision,
  type PastEpisode,
  proposalsOf,
  takenUp,
} from '../../../src/domain/rules/taken-up.ts'
import { day } from './build.ts'

const episode = (from: number, to: number | null, more: Partial<PastEpisode> = {}): PastEpisode => ({
  client: 'heron',
  rule: 'gate',
  level: 'note',
  day: day(from),
  closed: to === null ? null : day(to),
  ...more,
})
const made = (n: number, decision: string, more: Partial<PastDecision> = {}): PastDecision => ({
  client: 'heron',
  day: day(n),
  proposal: 'advance',
  decision,
  rules: ['gate'],
  ...more,
})
const gates = (episodes: PastEpisode[], decisions: PastDecision[]) => takenUp(episodes, decisions, null)

describe('what became of proposals', () => {
  it('taken up, turned down, over without a decision; an open one still waits', () => {
    const episodes = [episode(1, 4), episode(5, 8), episode(9, 12), episode(13, null)]
    expect(gates(episodes, [made(3, 'advance'), made(8, 'hold')])).toEqual([
      { rule: 'gate', taken: 1, down: 1, nothing: 1 },
    ])
  })

  it('the last decision on an episode counts, and only one about that rule and client', () => {
    const decisions = [
      made(2, 'hold'),
      made(3, 'advance'),
      made(3, 'hold', { client: 'wren' }),
      made(4, 'refer', { rules: ['plateau'], proposal: 'refer' }),
    ]
    expect(gates([episode(1, 4)], decisions)).toEqual([{ rule: 'gate', taken: 1, down: 0, nothing: 0 }])
  })

  it('notes that propose nothing, and signs, are left out', () => {
    const notes: RuleId[] = ['meaningful', 'quiet', 'adherence', 'trend-pain', 'pain-up', 'sign']
    expect(
      gates(
        notes.map((rule) => episode(1, 4, { rule })),
        [],
      ),
    ).toEqual([])
    expect(gates([episode(1, 4, { rule: 'pain-up', level: 'hold' })], [])).toHaveLength(1)
  })

  it('from a day on only what began then', () => {
    const episodes = [episode(1, 30), episode(20, 40)]
    expect(takenUp(episodes, [], day(20))).toEqual([{ rule: 'gate', taken: 0, down: 0, nothing: 1 }])
  })

  it('a rule is overruled from 5 proposals on, with at most one in five taken up', () => {
    const counts = { rule: 'gate', taken: 1, down: 2, nothing: 2 } as const
    expect(isOverruled(counts)).toBe(true)
    expect(isOverruled({ ...counts, taken: 2 })).toBe(false)
    expect(isOverruled({ ...counts, nothing: 1 })).toBe(false)
    // a hold that was let stand is not overruled by that
    expect(isOverruled({ rule: 'pain-up', taken: 0, down: 0, nothing: 9 })).toBe(false)
    expect(isOverruled({ rule: 'pain-up', taken: 0, down: 1, nothing: 9 })).toBe(true)
  })

  it('counts every closed episode once, whatever was decided', () => {
    const some = fc.array(fc.tuple(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 0, max: 9 })))
    fc.assert(
      fc.property(some, some, (lasting, deciding) => {
        const episodes = lasting.map(([from, days]) => episode(from, from + days))
        const decisions = deciding.map(([n, kind]) => made(n, kind < 5 ? 'advance' : 'hold'))
        const total = gates(episodes, decisions).reduce((sum, counts) => sum + proposalsOf(counts), 0)
        expect(total).toBe(episodes.length)
      }),
    )
  })
})
