import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { CheckIn } from '../../../src/domain/checkin.ts'
import { dayWork } from '../../../src/domain/ladder/day-work.ts'
import { allLower, easeBack, lastAdvanced, noNearer, restAll } from '../../../src/domain/ladder/ease-back.ts'
import { LADDERS } from '../../../src/domain/ladder/ladders.ts'
import { LADDER_IDS } from '../../../src/domain/ladder/plan.ts'
import { day, historyDay } from '../rules/build.ts'

const reachDays = (...reaches: (CheckIn['reach'] | undefined)[]): CheckIn[] =>
  reaches.map((reach, n) => historyDay(n + 1, { reach: reach ?? null }).checkIn!)

describe('easing back', () => {
  it('takes the ladder last advanced, else the one of the highest number, settle aside', () => {
    const rungs = { settle: 3, extension: 2, glide: 2 }
    expect(easeBack(rungs, 'extension')).toEqual({ ladder: 'extension', from: 2, to: 1, rests: false })
    expect(easeBack(rungs, null)).toEqual({ ladder: 'glide', from: 2, to: 1, rests: false })
    expect(easeBack(rungs, 'open')?.ladder).toBe('glide')
    expect(easeBack({ settle: 2 }, null)).toBeNull()
    expect(easeBack({ settle: 2 }, 'settle')?.to).toBe(1)
  })

  it('lets a ladder at its first rung rest where it is, and looks past those at rest', () => {
    expect(easeBack({ extension: 1 }, null)).toEqual({ ladder: 'extension', from: 1, to: 1, rests: true })
    expect(easeBack({ extension: 2, glide: 1 }, 'glide', LADDERS, ['glide'])?.ladder).toBe('extension')
    expect(easeBack({ extension: 2, lift: 0 }, null)?.ladder).toBe('extension')
  })

  it('looks past a ladder that the practice has taken away, and eases a shortened one from its last rung', () => {
    expect(easeBack({ extension: 2, balance: 3 }, 'balance')?.ladder).toBe('extension')
    expect(easeBack({ balance: 3 }, 'balance')).toBeNull()
    expect(easeBack({ extension: 5 }, null)).toEqual({ ladder: 'extension', from: 3, to: 2, rests: false })
  })

  it('knows the ladder last advanced from the changes', () => {
    const change = { from: 1, to: 2, day: day(1) }
    expect(lastAdvanced([])).toBeNull()
    expect(
      lastAdvanced([
        { ...change, ladder: 'glide', why: 'advance' },
        { ...change, ladder: 'extension', why: 'advance' },
        { ...change, ladder: 'glide', from: 2, to: 1, why: 'ease-back' },
      ]),
    ).toBe('extension')
  })

  it('has not helped where the third answered day after the alarm is no nearer', () => {
    expect(noNearer(reachDays('calf', 'knee', 'calf', 'calf'), day(1))).toBe(true)
    expect(noNearer(reachDays('calf', 'calf', 'calf', 'knee'), day(1))).toBe(false)
    expect(noNearer(reachDays('calf', 'calf', 'calf'), day(1))).toBe(false)
    expect(noNearer(reachDays('calf', 'calf', undefined, 'foot'), day(1))).toBe(false)
  })

  it('rests all but settle, and a return starts every ladder a rung lower, the first being the floor', () => {
    expect(restAll({ settle: 1, extension: 2, glide: 1 })).toEqual(['extension', 'glide'])
    expect(restAll({ extension: 2 })).toEqual(['extension'])
    expect(allLower({ extension: 3, glide: 1, lift: 0 })).toEqual({ extension: 2, glide: 1, lift: 0 })
  })

  it('never skips a rung', () => {
    const rungs = fc.dictionary(fc.constantFrom(...LADDER_IDS), fc.integer({ min: 0, max: 5 }))
    fc.assert(
      fc.property(rungs, fc.option(fc.constantFrom(...LADDER_IDS)), (plan, advanced) => {
        const eased = easeBack(plan, advanced)
        if (eased) expect(eased.from - eased.to).toBe(eased.rests ? 0 : 1)
        for (const [id, rung] of Object.entries(allLower(plan))) expect([0, 1]).toContain(plan[id]! - rung)
      }),
    )
  })
})

describe('the work of the day', () => {
  it('names the drills by ladder number and leaves out what rests or has not begun', () => {
    const rungs = { glide: 1, extension: 2, lift: 0, open: 1 }
    expect(dayWork({ rungs, resting: ['open'] }, false)).toEqual(['extension:2', 'glide:1'])
    expect(dayWork({ rungs: { unknown: 1 }, resting: [] }, false)).toEqual([])
  })

  it('holds no drill while locked', () => {
    expect(dayWork({ rungs: { extension: 1 }, resting: [] }, true)).toEqual([])
  })
})
