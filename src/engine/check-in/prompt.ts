import { answered } from '../../domain/checkin.ts'
import { addDays, type Day } from '../../domain/day.ts'
import { instantOf } from '../../domain/local-time.ts'
import { assessOn, watch } from '../coach/watch.ts'
import type { Draft } from '../draft.ts'
import type { Button } from '../message.ts'
import { workOn } from '../plan/work.ts'
import { isLocked, statusOf } from '../status.ts'
import { morningFollowUp } from '../urgent/follow-up.ts'
import { carry, expect } from './asked.ts'
import { routineSigns, signButtons, yesNoQuestion } from './asking.ts'
import { checkInForm } from './check-in-form.ts'
import { afterSilence } from './quiet.ts'
import { asksNoMore, promptHandled } from './schedule-prompt.ts'

// Where there is no reminder, a prompt that could not be sent for so long is stale and is dropped.
const STALE_HOURS = 6
const HOUR = 3_600_000

/** The daily prompt has come due: what goes out depends on where the client stands. */
export function onPromptDue(draft: Draft, day: Day, at: Date): void {
  closeYesterday(draft, day)
  if (asksNoMore(draft)) return draft.drop('due', draft.id('due', 'prompt'))
  if (!isStale(draft, day, at)) morning(draft, day)
  promptHandled(draft, day)
}

function morning(draft: Draft, day: Day): void {
  if (isLocked(draft.file)) return morningFollowUp(draft, day)
  const begun = draft.client.start !== null && draft.client.start <= day
  if (statusOf(draft.file) !== 'active' || !begun) return
  watch(draft, addDays(day, -1))
  if (!afterSilence(draft, addDays(day, -1))) promptFor(draft, day)
}

/** The bot was away: past the reminder (or so many hours) a prompt is left out rather than sent late. */
function isStale(draft: Draft, day: Day, at: Date): boolean {
  return draft.now >= lastMoment(draft, day, at)
}

/** Until when a prompt due at an instant may go out: a reminder that has passed already is none. */
function lastMoment(draft: Draft, day: Day, at: Date): Date {
  const reminder = reminderAt(draft, day)
  return reminder && reminder > at ? reminder : new Date(at.getTime() + STALE_HOURS * HOUR)
}

/** Questions are kept until answered or the day ends; a hinted sign is not a question of a day. */
function closeYesterday(draft: Draft, day: Day): void {
  for (const asked of draft.file.asked)
    if (asked.day < day && !asked.pressing && asked.ask !== 'consent' && !asked.ask.startsWith('screening'))
      draft.drop('asked', asked.id)
}

function promptFor(draft: Draft, day: Day): void {
  const { client } = draft.texts
  const work = workOn(draft, day, 'short')
  const flare = assessOn(draft, addDays(day, -1)).askSettled
  keepRoutine(draft, day)
  const settled = flare ? carry(draft, yesNoQuestion(draft.texts, 'settled', day, client.askSettled)) : null
  const reminder = reminderAt(draft, day)
  draft.toClient({
    kind: 'prompt',
    key: draft.id('prompt', day),
    asks: settled?.asks ?? null,
    text: client.prompt({ work: work.text, settled: flare ? client.askSettled : null }),
    drills: work.drills,
    buttons: [...(settled?.buttons ?? []), ...promptButtons(draft, day)],
    expires: lastMoment(draft, day, draft.now),
  })
  if (reminder && reminder > draft.now) draft.due('reminder', reminder, { day })
}

/** The question on signs that the prompt carries can be answered in words, "no signs" or "yes". */
function keepRoutine(draft: Draft, day: Day): void {
  if (draft.file.asked.some((row) => row.ask === 'signs' && row.pressing)) return
  expect(draft, routineSigns(draft.texts, day))
  const row = draft.file.asked.find((asked) => asked.ask === 'signs')!
  draft.put('asked', { ...row, message: draft.id('prompt', day) })
}

function promptButtons(draft: Draft, day: Day): Button[] {
  const { client } = draft.texts
  return [
    {
      name: 'check-in',
      label: client.fillIn,
      style: 'main',
      act: { do: 'check-in', day },
      form: checkInForm(draft, day),
    },
    ...signButtons(draft.texts, day),
    { name: 'take-a-break', label: client.takeABreak, act: { do: 'pause' } },
  ]
}

function reminderAt(draft: Draft, day: Day): Date | null {
  const { reminder, prompt, zone } = draft.client
  if (!reminder) return null
  return instantOf(reminder > prompt ? day : addDays(day, 1), reminder, zone)
}

/** One reminder, where the day has no answer yet. */
export function onReminderDue(draft: Draft, day: Day): void {
  const row = draft.file.checkIns.find((checkIn) => checkIn.day === day)
  if (statusOf(draft.file) !== 'active' || (row && answered(row))) return
  const at = reminderAt(draft, day)
  if (at && draft.now.getTime() > at.getTime() + STALE_HOURS * HOUR) return
  draft.toClient({
    kind: 'reminder',
    key: draft.id('reminder', day),
    text: draft.texts.client.reminder,
    buttons: promptButtons(draft, day),
    expires: new Date(draft.now.getTime() + STALE_HOURS * HOUR),
  })
}
