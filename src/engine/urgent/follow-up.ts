import { addDays, type Day } from '../../domain/day.ts'
import { instantOf } from '../../domain/local-time.ts'
import { signButtons } from '../check-in/asking.ts'
import type { Draft } from '../draft.ts'
import type { Button } from '../message.ts'
import { isLocked, openSigns } from '../status.ts'

// So long after its time a follow-up says nothing new: the one of the next morning has taken its place.
const STALE_MS = 6 * 3_600_000

const talksOfSelfHarm = (draft: Draft): boolean =>
  openSigns(draft.file).some((row) => row.sign === 'self-harm')

/** Each morning while locked, instead of a prompt: were they seen, and is anything new? No drills. */
export function morningFollowUp(draft: Draft, day: Day): void {
  const { client } = draft.texts
  const labels = { 'none-of-these': client.nothingNew, 'one-of-these': client.somethingNew }
  const buttons: Button[] = [
    { name: 'seen-yes', label: client.seenYes, act: { do: 'seen', value: 'yes', day } },
    { name: 'seen-no', label: client.seenNo, act: { do: 'seen', value: 'no', day } },
    ...signButtons(draft.texts, day).map((button) => ({
      ...button,
      label: labels[button.name as keyof typeof labels],
    })),
  ]
  keepAsked(draft, 'signs', day, buttons)
  draft.toClient({
    kind: 'follow-up',
    key: draft.id('morning', day),
    asks: 'signs',
    text: talksOfSelfHarm(draft) ? client.morningSelfHarm : client.morning,
    buttons,
    expires: instantOf(addDays(day, 1), draft.client.prompt, draft.client.zone),
  })
}

/** Half an hour after the urgent message: are they on the way? */
export function urgentFollowUp(draft: Draft, at: Date): void {
  if (!isLocked(draft.file) || draft.now.getTime() > at.getTime() + STALE_MS) return
  askOnTheWay(draft, '')
}

/** A thumb or an "ok" may only say that the question was read: it is asked again, and nobody is told that all is well. */
export const askOnTheWayAgain = (draft: Draft): void => askOnTheWay(draft, `${draft.texts.client.notTold}\n`)

function askOnTheWay(draft: Draft, before: string): void {
  const { client } = draft.texts
  const buttons: Button[] = [
    { name: 'on-the-way', label: client.onTheWayYes, act: { do: 'on-the-way', value: 'yes' } },
    { name: 'not-yet', label: client.onTheWayNo, act: { do: 'on-the-way', value: 'no' } },
  ]
  keepAsked(draft, 'on-the-way', draft.today, buttons)
  draft.toClient({
    kind: 'follow-up',
    asks: 'on-the-way',
    text: before + (talksOfSelfHarm(draft) ? client.withSomebody : client.onTheWay),
    buttons,
  })
}

/** So that the answer is understood in words as well; a question that presses is not pushed aside. */
function keepAsked(draft: Draft, ask: 'signs' | 'on-the-way', day: Day, buttons: readonly Button[]): void {
  if (draft.file.asked.some((row) => row.ask === ask && row.pressing)) return
  draft.put('asked', {
    id: draft.id('asked', ask),
    clientId: draft.client.id,
    ask,
    day,
    at: draft.now,
    message: draft.cause,
    pressing: false,
    options: buttons.map(({ name, label, act }) => ({ name, label, act })),
  })
}
