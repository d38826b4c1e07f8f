import type { LADDER_IDS, LadderId } from './plan.ts'

/**
 * How much of a drill. A hold of 0 is a slow, steady movement that is not held. Doses are common practice
 * (no trial of doses for a lumbar-disc episode is behind them); a coach's own word goes before them.
 */
export interface Dose {
  /** Repetitions in a set, 1 or more. */
  readonly reps: number
  /** Seconds that each repetition is held (or walked), 0 or more. */
  readonly holdSeconds: number
  /** Seconds of ease between repetitions, 0 or more. */
  readonly easeSeconds: number
  readonly sets: number
  /** At most so often a day; the plan's sessions a day may be fewer. */
  readonly timesADay: number
}

export const KIT_IDS = [
  'mat',
  'low-prop',
  'high-prop',
  'band',
  'wall',
  'chair',
  'light-weight',
  'weight',
] as const
export type KitId = (typeof KIT_IDS)[number]

/** `anchor-check`: band and anchor are looked over before each use. `coach-load`: a load named by the coach. */
export const NEEDS = ['anchor-check', 'coach-load'] as const
export type Need = (typeof NEEDS)[number]

/** Which leg works: none in particular, the one with symptoms, or each in turn. */
export const DRILL_SIDES = ['none', 'sore', 'each'] as const
export type DrillSide = (typeof DRILL_SIDES)[number]

/** One drill as numbers and ids; its words stand in text/, or in a practice's own file. */
export interface Drill {
  /** `ladder:rung`, as in "extension:1". */
  readonly id: string
  readonly dose: Dose
  readonly kit: readonly string[]
  readonly needs: readonly Need[]
  readonly side: DrillSide
  /** Percent of the last comfortable load, 1..100; null where the drill has no such share. */
  readonly loadPercent: number | null
  /** Days on this rung before the next may come, beside what the gate asks; null: the gate alone decides. */
  readonly leastDays: number | null
}

/** The words of one drill. */
export interface DrillProse {
  readonly name: string
  /** Two or three plain sentences. */
  readonly how: string
  readonly cautions: string
  /** Beside the stop rule common to all drills. */
  readonly stopIf: string
}

/** Rungs in order, the first the easiest; each needs the one before. */
export interface Ladder {
  readonly id: LadderId
  /** Order among ladders: the lowest number advances first. */
  readonly number: number
  readonly rungs: readonly Drill[]
}

const dose = (
  reps: number,
  holdSeconds: number,
  easeSeconds: number,
  sets: number,
  timesADay: number,
): Dose => ({
  reps,
  holdSeconds,
  easeSeconds,
  sets,
  timesADay,
})

type Extras = Partial<Pick<Drill, 'needs' | 'side' | 'loadPercent' | 'leastDays'>>
type RungData = readonly [Dose, readonly KitId[], Extras?]

function ladder(number: number, id: (typeof LADDER_IDS)[number], rungs: readonly RungData[]): Ladder {
  const drills = rungs.map(([dose, kit, extras], index): Drill => {
    const plain = { needs: [], side: 'none', loadPercent: null, leastDays: null } as const
    return { id: drillId(id, index + 1), dose, kit, ...plain, ...extras }
  })
  return { id, number, rungs: drills }
}

/** The id of the drill on a rung (from 1) of a ladder. */
export const drillId = (ladder: LadderId, rung: number): string => `${ladder}:${rung}`

// "10 slow repetitions, several times a day" is the usual dose of repeated extension (common practice).
const REPEATED = dose(10, 0, 0, 1, 4)
const LYING_STILL = dose(1, 120, 0, 1, 4)
const STRETCH = dose(3, 20, 10, 1, 2)
const HIP_LIFT = dose(8, 2, 2, 1, 2)
const HINGE = dose(5, 0, 0, 2, 1)

const BAND: Extras = { needs: ['anchor-check'] }
const SORE_BAND: Extras = { needs: ['anchor-check'], side: 'sore' }
// No more than one step of lifting a week (common practice).
const WEEK = 7

/** The eight ladders of the house, by number. */
export const LADDERS: readonly Ladder[] = [
  ladder(1, 'settle', [
    [LYING_STILL, ['mat']],
    [LYING_STILL, ['mat', 'low-prop']],
    [LYING_STILL, ['mat', 'high-prop']],
  ]),
  ladder(2, 'extension', [
    [dose(10, 3, 2, 1, 4), ['mat']],
    [REPEATED, ['mat']],
    [REPEATED, ['mat']],
  ]),
  ladder(3, 'unload', [
    [dose(1, 120, 0, 1, 2), ['mat', 'band'], BAND],
    [dose(1, 120, 0, 1, 2), ['mat', 'band'], BAND],
  ]),
  ladder(4, 'glide', [
    [dose(10, 0, 0, 1, 3), ['mat'], { side: 'sore' }],
    [dose(10, 0, 0, 1, 2), ['mat', 'band'], SORE_BAND],
  ]),
  ladder(5, 'open', [
    [dose(8, 0, 0, 1, 2), ['mat']],
    // Press of 5 to 10 s with 10 s of ease (common practice); it begins at the short end.
    [dose(5, 5, 10, 1, 2), ['chair']],
  ]),
  ladder(6, 'rotator', [
    [STRETCH, ['mat', 'wall'], { side: 'sore' }],
    [STRETCH, ['mat'], { side: 'sore' }],
    [STRETCH, ['mat', 'band'], SORE_BAND],
  ]),
  ladder(7, 'extend-hip', [
    [HIP_LIFT, ['mat'], { side: 'each' }],
    [HIP_LIFT, ['mat'], { side: 'each' }],
    [HIP_LIFT, ['mat'], { side: 'each' }],
  ]),
  ladder(8, 'lift', [
    [dose(8, 0, 0, 2, 1), ['wall'], { leastDays: WEEK }],
    [dose(3, 20, 40, 1, 1), ['light-weight'], { needs: ['coach-load'], leastDays: WEEK }],
    [HINGE, ['weight'], { needs: ['coach-load'], loadPercent: 50, leastDays: WEEK }],
    [HINGE, ['weight'], { needs: ['coach-load'], leastDays: WEEK }],
    [HINGE, ['weight'], { needs: ['coach-load'] }],
  ]),
]

/** The ladder of an id among those given (the eight of the house, plus a practice's own); null where unknown. */
export const ladderOf = (id: LadderId, ladders: readonly Ladder[] = LADDERS): Ladder | null =>
  ladders.find((ladder) => ladder.id === id) ?? null

/** Rungs by ladder in the order of the ladders' numbers; a practice's own come last, by id. */
export function inOrder(rungs: Readonly<Record<LadderId, number>>): Record<LadderId, number> {
  const number = (id: LadderId): number => ladderOf(id)?.number ?? LADDERS.length + 1
  return Object.fromEntries(
    Object.entries(rungs).sort(([a], [b]) => number(a) - number(b) || (a < b ? -1 : 1)),
  )
}

/** The drill on a rung, counted from 1; null outside the ladder. */
export const drillAt = (ladder: Ladder, rung: number): Drill | null => ladder.rungs[rung - 1] ?? null

/** The number of the last rung. */
export const lastRung = (ladder: Ladder): number => ladder.rungs.length
