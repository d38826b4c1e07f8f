import { addDays, type Day } from '../day.ts'
import { noNearer } from '../ladder/ease-back.ts'
import type { Level, RuleId } from '../rules/assessment.ts'
import { QUIET_STEPS } from '../rules/quiet.ts'
import { hasRisen, toldAtOnce } from '../rules/told.ts'
import { answersOf } from '../rules/view.ts'
import { assessedDays, historyOfDiary } from './assessed.ts'
import type { Diary } from './diary.ts'
import type { DayRule } from './measure.ts'
import { FIRST_DAY } from './series.ts'

/** Why a message goes to the coach: the weightiest new flag, or something that no flag tells. */
export type Cause = RuleId | 'all-rest' | 'lapse' | 'return'

/** One message to the coach, on a day of the diary. */
export interface CoachMessage {
  readonly at: number
  readonly cause: Cause
}

const wholeDiary = (diary: Diary) => assessedDays(diary, 0, diary.pain.length - 1)

/** One message a day for all flags that are new or now hold, where one of them is more than a note for the digest. */
function newFlags(diary: Diary): CoachMessage[] {
  let open: ReadonlyMap<RuleId, Level> = new Map()
  const told = new Set<string>()
  return wholeDiary(diary).flatMap(({ at, flags }): CoachMessage[] => {
    const fresh = flags.filter(({ rule, day, level }) => {
      const before = open.get(rule)
      return before === undefined ? !told.has(`${rule} ${day}`) : hasRisen(before, level)
    })
    open = new Map(flags.map(({ rule, level }) => [rule, level]))
    for (const { rule, day } of fresh) told.add(`${rule} ${day}`)
    const news = fresh.find(toldAtOnce)
    return news ? [{ at, cause: news.rule }] : []
  })
}

/** Easing back has not helped: all ladders rest, told once an episode. */
function allRest(diary: Diary): CoachMessage[] {
  const checkIns = answersOf(historyOfDiary(diary).days)
  const told = new Set<Day>()
  return wholeDiary(diary).flatMap(({ at, flags }): CoachMessage[] => {
    const spread = flags.find(({ rule }) => rule === 'reach-spread')
    if (!spread || told.has(spread.day)) return []
    const today = addDays(FIRST_DAY, at)
    const known = checkIns.filter(({ day }) => day <= today)
    if (!noNearer(known, spread.day)) return []
    told.add(spread.day)
    return [{ at, cause: 'all-rest' }]
  })
}

/** A run of days without reply: the coach told, the client paused, and the rungs lowered at the return. */
function silences({ pain }: Diary): CoachMessage[] {
  const messages: CoachMessage[] = []
  let silent = 0
  for (const [at, value] of pain.entries()) {
    if (value !== null && silent >= QUIET_STEPS.lower) messages.push({ at, cause: 'return' })
    silent = value === null ? silent + 1 : 0
    if (silent === QUIET_STEPS.coach) messages.push({ at, cause: 'quiet' })
    if (silent === QUIET_STEPS.pause) messages.push({ at, cause: 'lapse' })
  }
  return messages
}

/** Every message besides the digest that a diary would bring the coach, in no order. */
export const coachMessages = (diary: Diary): CoachMessage[] => [
  ...newFlags(diary),
  ...allRest(diary),
  ...silences(diary),
]

export const CAUSES: readonly Cause[] = [
  'reach-spread',
  'below-knee',
  'pain-up',
  'pain-severe',
  'regain',
  'all-rest',
  'quiet',
  'lapse',
  'return',
]

/** The days on which each cause sends the coach a message. */
export const coachRules: Readonly<Record<string, DayRule>> = Object.fromEntries(
  CAUSES.map((cause): [string, DayRule] => [
    `coach ${cause}`,
    (diary) => coachMessages(diary).flatMap((message) => (message.cause === cause ? [message.at] : [])),
  ]),
)
