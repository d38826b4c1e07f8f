import { COURSES, type CourseName, type Diary, diaryOf } from './diary.ts'
import { type DayRule, type Detection, detection, perMonth, type Spoken, WATCHED_DAYS } from './measure.ts'
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

/** What each rule, by name, said in the diaries of one course. */
export type Heard = Readonly<Record<string, readonly Spoken[]>>

export const FEWEST_WEEKS = 8
const COURSE_NAMES = Object.keys(COURSES) as CourseName[]

/** Three digits after the point: more would promise what so many people cannot tell. */
export const rounded = (value: number): number => Math.round(value * 1000) / 1000

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
export function* diariesOf(settings: Simulation, course: CourseName): Generator<Diary> {
  check(settings)
  const { clients, weeks, seed } = settings
  for (let n = 0; n < clients; n += 1) yield diaryOf(seed, n, COURSES[course], weeks * 7)
}

const worsens = (course: CourseName): boolean => COURSES[course].pain > 0 || COURSES[course].reach > 0

/**
 * Lets every rule read the diaries of a course, one person after another.
 * @param each told before each person
 */
export function listen(
  settings: Simulation,
  course: CourseName,
  rules: Readonly<Record<string, DayRule>>,
  each: () => void = () => {},
): Heard {
  const heard = Object.fromEntries(Object.keys(rules).map((name): [string, Spoken[]] => [name, []]))
  for (const diary of diariesOf(settings, course)) {
    each()
    const { onset } = diary
    // a rule judges each day by the days before it, so of a worsening only the days after it need be judged
    const last = diary.pain.length - 1
    const days = worsens(course)
      ? { from: onset, to: Math.min(last, onset + WATCHED_DAYS - 1) }
      : { from: 0, to: last }
    const asked = { ...days, worse: course !== 'stable' }
    for (const [name, rule] of Object.entries(rules))
      heard[name]!.push({ days: rule(diary, asked), length: diary.pain.length, onset })
  }
  return heard
}

/** The figures of one rule from what was heard in every course; rates to 3 digits after the point. */
export function figuresOf(rule: string, heard: Readonly<Record<CourseName, Heard>>): RuleFigures {
  const said = (course: CourseName): readonly Spoken[] => heard[course][rule] ?? []
  const alarms = (course: CourseName): number => rounded(perMonth(said(course)))
  const seen = (course: CourseName): Detection => {
    const { days, within7 } = detection(said(course))
    return { days, within7: rounded(within7) }
  }
  return {
    rule,
    falseAlarms: { stable: alarms('stable'), improving: alarms('improving') },
    detect: {
      'pain+2': seen('pain+2'),
      'reach+1': seen('reach+1'),
      'reach+2': seen('reach+2'),
      both: seen('both'),
    },
  }
}

/**
 * Measures rules, by name, on the same diaries. The same settings give the same figures on every machine.
 * @param stableOnly rules that are heard on the stable diaries alone
 * @param progress told before each person: how many are done, of how many
 * @throws RangeError where a setting is out of range
 */
export function listenAll(
  settings: Simulation,
  rules: Readonly<Record<string, DayRule>>,
  stableOnly: Readonly<Record<string, DayRule>> = {},
  progress: (done: number, of: number) => void = () => {},
): Record<CourseName, Heard> {
  const of = settings.clients * COURSE_NAMES.length
  let done = 0
  const each = (): void => {
    progress(done, of)
    done += 1
  }
  const heard = COURSE_NAMES.map((course): [CourseName, Heard] => [
    course,
    listen(settings, course, course === 'stable' ? { ...rules, ...stableOnly } : rules, each),
  ])
  progress(of, of)
  return Object.fromEntries(heard) as Record<CourseName, Heard>
}

/** The figures of rules, by name, measured on the same diaries; throws as `listenAll`. */
export function simulate(settings: Simulation, rules: Readonly<Record<string, DayRule>>): RuleFigures[] {
  const heard = listenAll(settings, rules)
  return Object.keys(rules).map((rule) => figuresOf(rule, heard))
}

/** Share of stable weeks with a wrong weekly word, the more frequent of the two ways; to 3 digits. */
export function simulateWords(settings: Simulation): WordFigures {
  const { pain, reach } = wrongWords([...diariesOf(settings, 'stable')])
  return { pain: rounded(pain), reach: rounded(reach) }
}
