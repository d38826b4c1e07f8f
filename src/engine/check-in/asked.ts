import { calmAfterSign } from '../course/activities.ts'
import type { Draft } from '../draft.ts'
import type { Asks, Button, Pick } from '../message.ts'
import type { AskedRow } from '../rows.ts'
import { askedSigns, isPressing } from '../status.ts'
import type { Question } from './asking.ts'

/** Minutes without an answer after which a sign that somebody hinted at counts as yes. */
const ASKED_MINUTES = 10
const MINUTE = 60_000

/** Keeps a question until it is answered or the day ends; silence on a pressing one counts as yes. */
export function expect(draft: Draft, question: Question): void {
  const options = [
    ...question.buttons.map(({ name, label, act }) => ({ name, label, act })),
    ...(question.pick?.options.map((option) => ({
      name: option.value,
      label: option.label,
      act: { ...question.pick!.act, chosen: option.value },
    })) ?? []),
  ]
  const before = draft.file.asked.find((row) => row.ask === question.ask)
  const { ask, day, pressing } = question
  const row = { id: draft.id('asked', ask), clientId: draft.client.id, ask, day, pressing, options }
  draft.put('asked', { ...row, at: draft.now, message: draft.cause })
  if (!pressing) return
  draft.stopDrills()
  // asked again beside another answer, the first asking still counts
  if (!before?.pressing || actsOf(before.options) !== actsOf(options)) startClock(draft)
}

/** What may be answered, in whichever language. */
const actsOf = (options: AskedRow['options']): string => JSON.stringify(options.map(({ act }) => act))

/** Keeps the question and gives what a message needs to carry it. */
export function carry(
  draft: Draft,
  question: Question,
): { asks: Question['ask']; buttons: readonly Button[]; pick: Pick | null } {
  expect(draft, question)
  if (question.ask === 'signs' || question.pressing) calmAfterSign(draft)
  return { asks: question.ask, buttons: question.buttons, pick: question.pick }
}

const clockId = (draft: Draft): string => draft.id('due', 'deadline')

/** From now the client has ten minutes; what is asked stands for all that still waits to be asked. */
function startClock(draft: Draft): void {
  const until = new Date(draft.now.getTime() + ASKED_MINUTES * MINUTE)
  for (const row of askedSigns(draft.file)) draft.put('sign', { ...row, until })
  draft.due('deadline', until, {}, clockId(draft))
}

/** A sign was hinted at: a clock that runs already goes on. */
export function ensureClock(draft: Draft): void {
  if (!draft.file.dues.some((due) => due.id === clockId(draft))) startClock(draft)
}

/** Nothing is left that silence would answer. */
export function endClock(draft: Draft): void {
  const waits = isPressing(draft.file)
  if (!waits && draft.file.dues.some((due) => due.id === clockId(draft))) draft.drop('due', clockId(draft))
}

// A pressing question comes before any other, the one that a prompt carries beside the check-in after them, and that
// on activities last: its answer names them.
const weight = (row: AskedRow): number =>
  row.pressing ? 2 : row.ask === 'signs' ? 0 : row.ask === 'activities' ? -1 : 1

/** The question answers have to be read against. */
export const latestAsked = (draft: Draft): AskedRow | null =>
  [...draft.file.asked].sort((a, b) => weight(a) - weight(b) || a.at.getTime() - b.at.getTime()).at(-1) ??
  null

export function answeredNow(draft: Draft, ask: Asks): void {
  const row = draft.file.asked.find((asked) => asked.ask === ask)
  if (row) draft.drop('asked', row.id)
  endClock(draft)
}
