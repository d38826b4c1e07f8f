import { describe, expect, it } from 'vitest'
import {
  drillAt,
  drillId,
  KIT_IDS,
  LADDERS,
  ladderOf,
  lastRung,
  NEEDS,
} from '../../../src/domain/ladder/ladders.ts'
import { LADDER_IDS } from '../../../src/domain/ladder/plan.ts'

const drills = LADDERS.flatMap((ladder) => ladder.rungs)

describe('the eight ladders', () => {
  it('are numbered in their order and have their rungs', () => {
    expect(LADDERS.map((ladder) => ladder.id)).toEqual(LADDER_IDS)
    expect(LADDERS.map((ladder) => ladder.number)).toEqual([1, 2, 3, 4, 5, 6, 7, 8])
    expect(LADDERS.map(lastRung)).toEqual([3, 3, 2, 2, 2, 3, 3, 5])
  })

  it('name each drill by ladder and rung, once', () => {
    expect(new Set(drills.map((drill) => drill.id)).size).toBe(drills.length)
    for (const ladder of LADDERS)
      ladder.rungs.forEach((drill, index) => {
        expect(drill.id).toBe(drillId(ladder.id, index + 1))
        expect(drillAt(ladder, index + 1)).toBe(drill)
      })
  })

  it('keep to known kit and needs, and to whole numbers in sane ranges', () => {
    for (const { kit, needs, dose } of drills) {
      for (const id of kit) expect(KIT_IDS).toContain(id)
      for (const need of needs) expect(NEEDS).toContain(need)
      for (const value of Object.values(dose)) expect(Number.isInteger(value)).toBe(true)
      expect(Math.min(dose.reps, dose.sets, dose.timesADay)).toBeGreaterThanOrEqual(1)
      expect(Math.min(dose.holdSeconds, dose.easeSeconds)).toBeGreaterThanOrEqual(0)
      expect(dose.timesADay).toBeLessThanOrEqual(6)
    }
  })
})

describe('what makes a drill careful', () => {
  it('has band and anchor checked wherever there is a band', () => {
    for (const drill of drills)
      expect(drill.needs.includes('anchor-check'), drill.id).toBe(drill.kit.includes('band'))
  })

  it('never holds a nerve glide', () => {
    for (const drill of ladderOf('glide')!.rungs) expect(drill.dose.holdSeconds).toBe(0)
  })

  it('starts the seated press at 5 s with 10 s of ease', () => {
    expect(drillAt(ladderOf('open')!, 2)!.dose).toMatchObject({ holdSeconds: 5, easeSeconds: 10 })
  })

  it('asks the coach for every load, halves the first, and steps up once a week at most', () => {
    const [, ...loaded] = ladderOf('lift')!.rungs
    for (const drill of loaded) expect(drill.needs).toContain('coach-load')
    expect(loaded.map((drill) => drill.loadPercent)).toEqual([null, 50, null, null])
    expect(loaded.map((drill) => drill.leastDays)).toEqual([7, 7, 7, null])
  })
})

describe('look-ups', () => {
  it('give null for what is not there', () => {
    expect(ladderOf('rowing')).toBeNull()
    expect(drillAt(LADDERS[0]!, 0)).toBeNull()
    expect(drillAt(LADDERS[0]!, 4)).toBeNull()
    expect(drillAt(LADDERS[0]!, 1.5)).toBeNull()
  })

  it("find a practice's own ladder among those given", () => {
    const own = { id: 'balance', number: 9, rungs: [] }
    expect(ladderOf('balance', [...LADDERS, own])).toBe(own)
  })
})
