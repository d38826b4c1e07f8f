import type { Day } from '../day.ts'
import { EASE_BACK_ANSWERS } from '../ladder/ease-back.ts'
import type { History } from './assessment.ts'
import { episodesOf, openOn } from './episode.ts'
import { ALARM_RULES } from './table.ts'
import { answersOf, daysOf, viewOf } from './view.ts'

/** A resting ladder comes back at its rung after 3 answered days, since it rests, without an open alarm. */
export function restOver(history: History, since: Day, on: Day): boolean {
  const view = viewOf(history, on)
  const episodes = ALARM_RULES.map((rule) => episodesOf(rule, view))
  const last = answersOf(daysOf(view))
    .filter((checkIn) => checkIn.day > since)
    .slice(-EASE_BACK_ANSWERS)
  if (last.length < EASE_BACK_ANSWERS) return false
  return last.every(({ day }) => episodes.every((found) => openOn(found, day) === null))
}
