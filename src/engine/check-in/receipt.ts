import { addDays, type Day } from '../../domain/day.ts'
import type { Reading, Slot } from '../../domain/reply/reading.ts'
import type { Draft } from '../draft.ts'
import type { Button } from '../message.ts'
import { isLocked } from '../status.ts'
import { carry } from './asked.ts'
import type { Question } from './asking.ts'
import { checkInForm } from './check-in-form.ts'
import { nextQuestion } from './next-question.ts'
import { withSame } from './same-as-before.ts'

/** Days back that a reply may still fill in. */
export const BACK_DAYS = 3

/** What one reply came to, once it is written down. */
export interface Understood {
  /** Days whose values were written, earliest first. */
  readonly days: readonly Day[]
  /** The day of which the next question asks. */
  readonly day: Day
  /** Lines about what was answered besides the values. */
  readonly notes: readonly string[]
  readonly unsure: readonly string[]
  /** Values told to be as on the day before. */
  readonly same?: readonly Slot[]
}

/**
 * One receipt a reply: what was understood with a way to put it right, and the next question in the same message.
 * Where nothing was understood but something is to be asked, the question alone.
 */
export function receipt(draft: Draft, { days, day, notes, unsure, same = [] }: Understood): void {
  const { client } = draft.texts
  const question = withSame(draft, nextQuestion(draft, day, unsure), same)
  const asks = question ? carry(draft, question) : { buttons: correctButton(draft, days) }
  const understood = days.length > 0 ? client.understood(lines(draft, days)) : ''
  const said = [understood, ...notes].filter(Boolean)
  const locked = isLocked(draft.file) && said.length > 0 ? client.stillLocked : ''
  const text = [...new Set([...said, locked, question?.text ?? ''])].filter(Boolean).join('\n')
  if (text !== '') draft.toClient({ kind: said.length > 0 ? 'receipt' : 'ask', text, ...asks })
}

/** Each day written, as it now stands. */
function lines(draft: Draft, days: readonly Day[]): string[] {
  return days.map((day) => {
    const row = draft.file.checkIns.find((checkIn) => checkIn.day === day)!
    const values = draft.texts.words.values(row)
    return day === draft.today ? values : `${draft.texts.words.day(day, draft.today)}: ${values}`
  })
}

function correctButton(draft: Draft, days: readonly Day[]): Button[] {
  const day = days.at(-1)
  if (!day) return []
  return [
    {
      name: 'put-right',
      label: draft.texts.client.putRight,
      act: { do: 'put-right', day },
      form: checkInForm(draft, day),
    },
  ]
}

/** A day too far back, or not to be made out: asked, with the values kept on the buttons. */
export function dayQuestion(draft: Draft, reading: Reading): Question {
  const { texts, today } = draft
  const values = { sessions: reading.sessions, reach: reading.reach, pain: reading.pain }
  const days = Array.from({ length: BACK_DAYS + 1 }, (_, n) => addDays(today, -n))
  const buttons: Button[] = [
    ...days.map((day) => ({
      name: `day-${day}`,
      label: texts.words.day(day, today),
      act: { do: 'answer', ask: 'day', value: day, day, ...values },
    })),
    {
      name: 'day-none',
      label: texts.client.noneOfThese,
      act: { do: 'answer', ask: 'day', value: 'none', day: today },
    },
  ]
  return { ask: 'day', day: today, text: texts.client.askDay, buttons, pick: null, pressing: false }
}
