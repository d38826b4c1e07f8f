import { addDays, type Day } from '../../domain/day.ts'
import { isReach } from '../../domain/reach.ts'
import type { Slot } from '../../domain/reply/reading.ts'
import { EXTRA_SESSIONS } from '../../domain/reply/taken.ts'
import type { Draft } from '../draft.ts'
import type { Act } from '../message.ts'
import type { CheckInRow } from '../rows.ts'
import { answeredNow } from './asked.ts'
import type { Question } from './asking.ts'
import { type Noted, noted } from './noted.ts'
import { type Given, record } from './record.ts'

/**
 * "Same as yesterday" is asked back with the values of the day before on one button, beside the ordinary choices;
 * where that day does not hold all of them, the question stays as it is.
 */
export function withSame(draft: Draft, question: Question | null, same: readonly Slot[]): Question | null {
  if (!question || question.pressing || !same.some((slot) => slot === question.ask)) return question
  const before = draft.file.checkIns.find((row) => row.day === addDays(question.day, -1))
  if (!before || !holdsAll(draft, before, question.day, same)) return question
  const values = {
    sessions: same.includes('sessions') ? before.sessions : null,
    reach: same.includes('reach') ? before.reach : null,
    pain: same.includes('pain') ? before.pain : null,
  }
  const told = Object.fromEntries(Object.entries(values).filter(([, value]) => value !== null))
  const button = {
    name: 'same',
    label: draft.texts.client.sameAsBefore(draft.texts.words.values(values)),
    act: { do: 'same', day: question.day, ...told },
  }
  return { ...question, buttons: [button, ...question.buttons] }
}

function holdsAll(draft: Draft, before: CheckInRow, day: Day, same: readonly Slot[]): boolean {
  const planned =
    draft.file.checkIns.find((row) => row.day === day)?.planned ?? draft.file.plan?.sessions ?? 0
  if (same.some((slot) => before[slot] === null)) return false
  return !same.includes('sessions') || (before.sessions ?? 0) <= planned + EXTRA_SESSIONS
}

/** The button was pressed: the values on it are those of this day. */
export function keepSame(draft: Draft, act: Act): Noted {
  const day = act.day as Day
  const given: { -readonly [K in keyof Given]: Given[K] } = {}
  if (typeof act.sessions === 'number') given.sessions = act.sessions
  if (typeof act.pain === 'number') given.pain = act.pain
  if (typeof act.reach === 'string' && isReach(act.reach)) given.reach = act.reach
  record(draft, day, given)
  for (const slot of ['sessions', 'reach', 'pain'] as const) if (slot in given) answeredNow(draft, slot)
  const values = { sessions: given.sessions ?? null, reach: given.reach ?? null, pain: given.pain ?? null }
  return noted(draft.texts.client.understood([draft.texts.words.values(values)]), day)
}
