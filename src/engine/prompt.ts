import { answered } from '../domain/checkin.ts'
import { addDays, type Day } from '../domain/day.ts'
import { instantOf } from '../domain/local-time.ts'
import { carry, signButtons, yesNoQuestion } from './asking.ts'
import { checkInForm } from './check-in-form.ts'
import type { Draft } from './draft.ts'
import type { Button } from './message.ts'
import { afterSilence } from './quiet.ts'
import { promptHandled } from './schedule-prompt.ts'
import { statusOf } from './status.ts'
import { morningFollowUp } from './urgent.ts'
import { assessOn, watch } from './watch.ts'
import { workOn } from './work.ts'

// Where there is no reminder, a prompt that could not be sent for so long is stale and is dropped.
const STALE_HOURS = 6
const HOUR = 3_600_000

/** The daily prompt has come due: what goes out depends on where the client stands. */
export function onPromptDue(draft: Draft, day: Day): void {
  closeYesterday(draft, day)
  const status = isStale(draft, day) ? 'stale' : statusOf(draft.file)
  if (status === 'locked') morningFollowUp(draft, day)
  if (status === 'active' && draft.file.plan) {
    watch(draft, addDays(day, -1))
    if (!afterSilence(draft, addDays(day, -1))) promptFor(draft, day)
  }
  promptHandled(draft, day)
}

/** The bot was away: past the reminder (or so many hours) a prompt is left out rather than sent late. */
function isStale(draft: Draft, day: Day): boolean {
  const at = instantOf(day, draft.client.prompt, draft.client.zone)
  return draft.now >= (reminderAt(draft, day) ?? new Date(at.getTime() + STALE_HOURS * HOUR))
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
  const settled = flare ? carry(draft, yesNoQuestion(draft.texts, 'settled', day, client.askSettled)) : null
  const reminder = reminderAt(draft, day)
  draft.toClient({
    kind: 'prompt',
    key: draft.id('prompt', day),
    asks: settled?.asks ?? null,
    text: client.prompt({ work: work.text, settled: flare ? client.askSettled : null }),
    drills: work.drills,
    buttons: [...(settled?.buttons ?? []), ...promptButtons(draft, day)],
    expires: reminder ?? new Date(draft.now.getTime() + STALE_HOURS * HOUR),
  })
  if (reminder) draft.due('reminder', reminder, { day })
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
  draft.toClient({
    kind: 'reminder',
    key: draft.id('reminder', day),
    text: draft.texts.client.reminder,
    buttons: promptButtons(draft, day),
    expires: new Date(draft.now.getTime() + STALE_HOURS * HOUR),
  })
}
