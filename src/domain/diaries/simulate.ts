import { COURSES, type CourseName, type Diary, diaryOf } from './diary.ts'
import { type DayRule, type Detection, detection, perMonth } from './measure.ts'
import { type WordFigures, wrongWords } from './wrong-words.ts'

export interface Simulation {
  /** People in each course; 1 at least. */
  readonly clients: number
  /** Weeks of each diary; 8 at least, since worsenings begin up to the start of the 8th. */
  readonly weeks: number
  readonly seed: number
}

/** How a rule does on made-up diaries. */
export interface RuleFigures {
  readonly rule: string
  /** Episodes per client-month where nothing worsens. */
  readonly falseAlarms: { readonly stable: number; readonly improving: number }
  /** For each lasting worsening, from the onset on. */
  readonly detect: Readonly<Record<'pain+2' | 'reach+1' | 'reach+2' | 'both', Detection>>
}

export const FEWEST_WEEKS = 8

const rounded = (value: number): number => Math.round(value * 1000) / 1000

/** Throws RangeError naming what is allowed. */
function check({ clients, weeks, seed }: Simulation): void {
  const whole = (name: string, value: number, least: number): void => {
    if (Number.isSafeInteger(value) && value >= least) return
    throw new RangeError(`${name} must be a whole number, ${least} or more, got ${value}`)
  }
  whole('clients', clients, 1)
  whole('weeks', weeks, FEWEST_WEEKS)
  whole('seed', seed, 0)
}

/** The diaries of one course: the same people, by number, in every course. */
export function diariesOf(settings: Simulation, course: CourseName): Diary[] {
  check(settings)
  const { clients, weeks, seed } = settings
  return Array.from({ length: clients }, (_, n) => diaryOf(seed, n, COURSES[course], weeks * 7))
}

/**
 * Measures rules, by name, on the same diaries; rates to 3 digits after the point. The same settings give the
 * same figures on every machine.
 * @param progress told as each course begins: how many are done, of how many
 * @throws RangeError where a setting is out of range
 */
export function simulate(
  settings: Simulation,
  rules: Readonly<Record<string, DayRule>>,
  progress: (done: number, of: number) => void = () => {},
): RuleFigures[] {
  const list = Object.values(rules)
  let done = 0
  // one course at a time, so that only its diaries are held
  const each = <T>(course: CourseName, measure: (diaries: readonly Diary[], rule: DayRule) => T): T[] => {
    progress(done, Object.keys(COURSES).length)
    done += 1
    const diaries = diariesOf(settings, course)
    return list.map((rule) => measure(diaries, rule))
  }
  const alarms = (course: CourseName): number[] => each(course, (d, rule) => rounded(perMonth(d, rule)))
  const seen = (course: CourseName): Detection[] =>
    each(course, (d, rule) => {
      const { days, within7 } = detection(d, rule)
      return { days, within7: rounded(within7) }
    })

  const [stable, improving] = [alarms('stable'), alarms('improving')]
  const [pain2, reach1, reach2, both] = [seen('pain+2'), seen('reach+1'), seen('reach+2'), seen('both')]
  progress(done, done)
  return Object.keys(rules).map((rule, n) => ({
    rule,
    falseAlarms: { stable: stable[n]!, improving: improving[n]! },
    detect: { 'pain+2': pain2[n]!, 'reach+1': reach1[n]!, 'reach+2': reach2[n]!, both: both[n]! },
  }))
}

/** Share of stable weeks with a wrong weekly word, the more frequent of the two ways; to 3 digits. */
export function simulateWords(settings: Simulation): WordFigures {
  const { pain, reach } = wrongWords(diariesOf(settings, 'stable'))
  return { pain: rounded(pain), reach: rounded(reach) }
}
