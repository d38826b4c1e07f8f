import { addDays, type Day } from '../domain/day.ts'
import type { Reading } from '../domain/reply/reading.ts'
import { carry } from './asking.ts'
import { afterRecord } from './check-in.ts'
import { checkInForm } from './check-in-form.ts'
import type { Draft } from './draft.ts'
import type { Button } from './message.ts'
import { nextQuestion } from './next-question.ts'
import { expectSide } from './side.ts'
import { openHold } from './status.ts'

/** Days back that a reply may still fill in. */
const BACK_DAYS = 3

/** One line with what was understood and a way to put it right; what is missing is asked in the same message. */
export function receive(draft: Draft, reading: Reading, days: readonly Day[], day: Day): void {
  const { client } = draft.texts
  afterRecord(draft, days)
  if (days.length === 0 && reading.signs.length > 0 && openHold(draft.file, 'lock')) return
  const question = nextQuestion(draft, days.at(-1) ?? day, reading.unsure)
  if (question?.ask === 'side' && question.pressing) expectSide(draft, day, '')
  const asks = question ? carry(draft, question) : { buttons: correctButton(draft, days) }
  const understood = days.length > 0 ? client.understood(lines(draft, days)) : ''
  const signs = reading.denied.length > 0 ? client.signsNone : ''
  const locked = openHold(draft.file, 'lock') ? client.stillLocked : ''
  const text = [understood, signs, locked, question?.text].filter(Boolean).join('\n')
  if (text === '') return
  draft.toClient({ kind: days.length > 0 || signs ? 'receipt' : 'ask', text, ...asks })
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
export function askDay(draft: Draft, reading: Reading): void {
  const values = { sessions: reading.sessions, reach: reading.reach, pain: reading.pain }
  const days = Array.from({ length: BACK_DAYS + 1 }, (_, n) => addDays(draft.today, -n))
  const buttons: Button[] = [
    ...days.map((day) => ({
      name: `day-${day}`,
      label: draft.texts.words.day(day, draft.today),
      act: { do: 'answer', ask: 'day', value: day, day, ...values },
    })),
    {
      name: 'day-none',
      label: draft.texts.client.noneOfThese,
      act: { do: 'answer', ask: 'day', value: 'none', day: draft.today },
    },
  ]
  const question = {
    ask: 'day',
    day: draft.today,
    text: draft.texts.client.askDay,
    buttons,
    pick: null,
    pressing: false,
  } as const
  draft.toClient({ kind: 'ask', text: question.text, ...carry(draft, question) })
}
