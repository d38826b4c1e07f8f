import { describe, expect, it } from 'vitest'
import { type GateFacts, gates, nextAdvance } from '../../../src/domain/ladder/gate.ts'
import { LADDERS } from '../../../src/domain/ladder/ladders.ts'
import { DEFAULT_GATE } from '../../../src/domain/ladder/plan.ts'
import { lastAdvance, risesOf } from '../../../src/domain/ladder/rises.ts'
import type { History } from '../../../src/domain/rules/assessment.ts'
import { day, type Entry, historyDay, times } from '../rules/build.ts'

const RUNGS = { extension: 1 }
type Decided = Pick<History, 'decisions'>

/** Days on the rung; the client says "comfortable" on the last of them unless told otherwise. */
function facts(entries: readonly (Entry | null)[], more: Partial<GateFacts & Decided> = {}): GateFacts {
  const days = entries.map((entry, n) =>
    historyDay(n + 1, entry && { rungs: RUNGS, comfort: n === entries.length - 1 ? true : null, ...entry }),
  )
  const on = day(entries.length)
  const { decisions = [], ...given } = more
  const advanced = lastAdvance(risesOf(days), decisions, on)?.day ?? null
  return { on, days, advanced, settings: DEFAULT_GATE, ladders: LADDERS, ...given }
}
const missing = (entries: readonly (Entry | null)[], more: Partial<GateFacts & Decided> = {}) =>
  gates(facts(entries, more))[0]?.missing

describe('the gate to the next rung', () => {
  it('is met on the fifth check-in with all in order', () => {
    expect(missing(times(5))).toEqual([])
    expect(nextAdvance(facts(times(5)))).toMatchObject({ ladder: 'extension', rung: 1, askComfort: false })
  })

  it('needs 5 check-ins, over 5 days', () => {
    expect(missing(times(4))).toEqual(['check-ins', 'days'])
    expect(missing([{}, {}, null, null, {}, {}])).toEqual(['check-ins'])
  })

  it('counts no check-in with a value left out, and none filled in too late', () => {
    expect(missing([{}, { reach: null }, {}, {}, {}])).toContain('check-ins')
    expect(missing([{}, { late: true }, {}, {}, {}])).toEqual(['check-ins'])
    expect(missing([{}, { late: true }, {}, {}, {}, {}])).toEqual([])
  })

  it('needs 80 % of the sessions of the last 7 answered days, days off aside', () => {
    expect(missing([{ sessions: 0 }, ...times(4)])).toEqual([])
    expect(missing([{ sessions: 0 }, { sessions: 1 }, ...times(3)])).toEqual(['sessions'])
    expect(missing([{ sessions: 0, planned: 0 }, ...times(4)])).toEqual([])
    expect(missing([...times(3, { sessions: 0 }), ...times(7)])).toEqual([])
  })

  it('needs pain at most 5 over the same days', () => {
    expect(missing([{ pain: 5 }, ...times(4)])).toEqual([])
    expect(missing([{ pain: 6 }, ...times(4)])).toEqual(['pain'])
    expect(missing([{ pain: 6 }, ...times(7)])).toEqual([])
  })

  it('needs the reach on each of the last 3 answered days no further than when the rung began', () => {
    expect(missing([...times(4), { reach: 'knee' }])).toEqual(['reach'])
    expect(missing([...times(2), { reach: 'knee' }, {}, {}])).toEqual(['reach'])
    expect(missing([{}, { reach: 'knee' }, {}, null, {}, {}])).toEqual([])
    expect(missing([{ reach: 'calf' }, ...times(4, { reach: 'knee' })])).toEqual([])
    expect(missing([...times(5), { reach: null }])).toEqual(['reach'])
  })

  it('asks for comfort only when the rest holds; the latest answer counts', () => {
    expect(nextAdvance(facts([...times(4), { comfort: null }]))).toMatchObject({ askComfort: true })
    expect(missing([...times(3), { comfort: null }])).toContain('check-ins')
    expect(nextAdvance(facts([...times(3), { comfort: null }]))).toBeNull()
    expect(missing([{}, {}, { comfort: true }, {}, { comfort: false }])).toEqual(['comfort'])
    expect(missing([{}, {}, { comfort: true }, {}, { comfort: null }])).toEqual([])
  })

  it('begins anew after a clearance, on the first rung too', () => {
    const cleared = { cleared: ['saddle-numbness'] as const }
    expect(missing([...times(6), cleared, ...times(2)])).toEqual(['check-ins', 'days', 'reach'])
    expect(missing([...times(6), cleared, ...times(5)])).toEqual([])
    expect(missing([...times(6), { noted: ['night-pain'] as const }])).toEqual([])
  })

  it('counts from the day the rung began, also over days on which rungs are not known', () => {
    const moved = [...times(6, { rungs: { extension: 1 } }), ...times(4, { rungs: { extension: 2 } })]
    expect(missing(moved)).toEqual(['check-ins', 'days'])
    expect(missing([...moved, null, { rungs: { extension: 2 } }])).toEqual([])
  })

  it('does not take "comfortable" of the rung before', () => {
    const said = [...times(5), { comfort: true }, ...times(5, { rungs: { extension: 2 }, comfort: null })]
    expect(missing(said)).toEqual(['comfort'])
  })

  it('waits 2 days between advances, whichever the ladder, and takes the lowest number first', () => {
    const both = { extension: 1, glide: 1 }
    const entries = times(7, { rungs: both, comfort: true })
    expect(nextAdvance(facts(entries))?.ladder).toBe('extension')
    const advanced = [...entries, { rungs: { extension: 2, glide: 1 }, comfort: null }]
    const next = (list: readonly (Entry | null)[]) =>
      gates(facts(list)).find((v) => v.ladder === 'glide')?.missing
    expect(next(advanced)).toEqual(['apart', 'comfort'])
    const later = [...advanced, ...times(2, { rungs: { extension: 2, glide: 1 }, comfort: true })]
    expect(next(later)).toEqual([])
    expect(nextAdvance(facts(later))?.ladder).toBe('glide')
  })

  it('heeds an advance that only the decision shows yet', () => {
    const decisions = [{ day: day(5), ladder: 'glide', decision: 'advance' }] as const
    expect(missing(times(5), { decisions })).toEqual(['apart', 'comfort'])
  })

  it('has none at the last rung, while the ladder rests, or where no rungs are known', () => {
    expect(gates(facts(times(6, { rungs: { extension: 3 } })))).toEqual([])
    expect(gates(facts(times(6, { resting: ['extension'] })))).toEqual([])
    expect(gates({ ...facts([]), days: [historyDay(1, {})] })).toEqual([])
    expect(missing([...times(2, { resting: ['extension'] }), ...times(4)])).toEqual(['check-ins'])
  })

  it('keeps a loaded hinge on its rung for a week, and for as long as lift would not open', () => {
    const lifting = { rungs: { extension: 3, 'extend-hip': 3, lift: 3 }, reach: 'back', pain: 3 } as const
    expect(missing(times(8, lifting))).toEqual([])
    expect(missing(times(7, lifting))).toEqual(['rung-days'])
    expect(missing(times(8, { rungs: { lift: 3 } }))).toEqual(['opening'])
  })

  it('takes the thresholds of the plan', () => {
    const settings = { ...DEFAULT_GATE, checkIns: 3, days: 3, share: 0.5, painAtMost: 3 }
    expect(missing(times(3, { sessions: 1 }), { settings })).toEqual([])
    expect(missing(times(3, { pain: 4 }), { settings })).toEqual(['pain'])
  })
})

describe('lift', () => {
  const ready = { rungs: { extension: 3, 'extend-hip': 3, lift: 0 }, reach: 'back', pain: 3 } as const

  it('opens on 7 answered days with the reach back or none and pain at most 3, both ladders at their last', () => {
    expect(nextAdvance(facts(times(7, ready)))).toMatchObject({ ladder: 'lift', rung: 0, askComfort: false })
    expect(nextAdvance(facts(times(6, ready)))).toBeNull()
  })

  it('stays closed where one of them does not hold, or where it is not in the plan', () => {
    const closed = (entry: Entry) =>
      gates(facts([...times(6, ready), { ...ready, ...entry }])).map((v) => v.missing)
    expect(closed({ reach: 'buttock' })).toEqual([['opening']])
    expect(closed({ pain: 4 })).toEqual([['opening']])
    expect(closed({ reach: null })).toEqual([['opening']])
    const lower = { ...ready, rungs: { extension: 3, 'extend-hip': 2, lift: 0 } }
    expect(gates(facts(times(7, lower))).find((v) => v.ladder === 'lift')?.missing).toEqual(['opening'])
    expect(gates(facts(times(7, { ...ready, rungs: { extension: 3, 'extend-hip': 3 } })))).toEqual([])
  })
})
