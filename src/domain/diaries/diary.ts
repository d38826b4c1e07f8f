import { beta, logNormal, type Random, randomOf, uniformIn } from './random.ts'

/** A made-up person's answers, one a day from day 0; null: not answered. */
export interface Diary {
  /** Pain 0..10. */
  readonly pain: readonly (number | null)[]
  /** Rank of the reach, 0..6. */
  readonly reach: readonly (number | null)[]
  /** Day from which a worsening lasts (also drawn where nothing worsens). */
  readonly onset: number
}

/** The person behind a diary, before anything happens: what is felt is these levels plus day-to-day noise. */
interface Person {
  readonly painLevel: number
  readonly reachLevel: number
  readonly painNoise: readonly number[]
  readonly reachNoise: readonly number[]
  readonly painFall: number
  readonly reachFall: number
  readonly onset: number
}

/** What happens to everybody of a case: a steady recovery, and a lasting step from the onset on. */
export interface Course {
  readonly improving: boolean
  /** Points of pain added from the onset on. */
  readonly pain: number
  /** Zones of reach added from the onset on. */
  readonly reach: number
}

const still = { improving: false, pain: 0, reach: 0 }

/** The cases by which rules are compared. */
export const COURSES = {
  stable: still,
  improving: { ...still, improving: true },
  'pain+2': { ...still, pain: 2 },
  'reach+1': { ...still, reach: 1 },
  'reach+2': { ...still, reach: 2 },
  both: { ...still, pain: 2, reach: 1 },
} as const satisfies Record<string, Course>
export type CourseName = keyof typeof COURSES

// Every number of the model is a choice, set so that the median day-to-day spread of a person is near the 0.9
// of an open two-week diary (R package bda, data set Pain): rates compare rules, they promise nothing.
const EARLIEST_ONSET = 24
const ONSETS = 26
const SHARED_NOISE = 0.4
const REPEATED = 0.1
const MISSING_RUN = 0.25

const clip = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value))

/** Noise of unit variance in which each day remembers the one before (autoregressive of order 1). */
function remembering(random: Random, days: number, memory: number): number[] {
  const noise: number[] = []
  for (let day = 0; day < days; day += 1) {
    const fresh = random.normal()
    noise.push(day === 0 ? fresh : memory * noise[day - 1]! + Math.sqrt(1 - memory * memory) * fresh)
  }
  return noise
}

function drawPerson(random: Random, days: number): Person {
  const memory = uniformIn(random, 0.2, 0.6)
  const shared = remembering(random, days, memory)
  const own = remembering(random, days, memory)
  const painSpread = clip(logNormal(random, 0.95, 0.35), 0.4, 2.2)
  const reachSpread = clip(logNormal(random, 0.45, 0.35), 0.15, 1)
  const ownShare = Math.sqrt(1 - SHARED_NOISE ** 2)
  return {
    painLevel: uniformIn(random, 1, 6),
    reachLevel: uniformIn(random, 0.6, 4.4),
    painNoise: shared.map((z) => painSpread * z),
    reachNoise: shared.map((z, day) => reachSpread * (SHARED_NOISE * z + ownShare * own[day]!)),
    painFall: uniformIn(random, 1, 4),
    reachFall: uniformIn(random, 0.5, 3),
    onset: EARLIEST_ONSET + Math.floor(ONSETS * random.uniform()),
  }
}

/** What a person answers on a day, if asked: whole numbers inside the scales. */
function answer(person: Person, course: Course, day: number, days: number): [number, number] {
  const done = course.improving ? day / (days - 1) : 0
  const worse = day >= person.onset
  const pain = person.painLevel + person.painNoise[day]! - done * person.painFall + (worse ? course.pain : 0)
  const reach =
    person.reachLevel + person.reachNoise[day]! - done * person.reachFall + (worse ? course.reach : 0)
  return [clip(Math.round(pain), 0, 10), clip(Math.round(reach), 0, 6)]
}

/**
 * The diary of person number n over so many days (2 at least). The same seed and n give the same person in
 * every course, so that courses and rules are compared on the same people.
 */
export function diaryOf(seed: number, n: number, course: Course, days: number): Diary {
  const random = randomOf(seed, n)
  const person = drawPerson(random, days)
  const missingRate = beta(random, 2, 9)
  const pain: (number | null)[] = []
  const reach: (number | null)[] = []
  let last: [number, number] = [0, 0]
  let missed = false
  for (let day = 0; day < days; day += 1) {
    const repeats = random.uniform() < REPEATED
    if (day === 0 || !repeats) last = answer(person, course, day, days)
    missed = random.uniform() < missingRate + (missed ? MISSING_RUN : 0)
    pain.push(missed ? null : last[0])
    reach.push(missed ? null : last[1])
  }
  return { pain, reach, onset: person.onset }
}
