import { addDays, type Day, laterOf } from '../../domain/day.ts'
import { instantOf } from '../../domain/local-time.ts'
import type { Draft } from '../draft.ts'
import type { DueRow } from '../rows.ts'
import { hasEnded, isLocked } from '../status.ts'

const MINUTE = 60_000

/**
 * Sets the prompt of a local day: one row a client, so one prompt a local day through clock and zone changes.
 * With a window, prompts are spread over it by a stable hash of the client, so that all do not leave at once.
 */
export function schedulePrompt(draft: Draft, day: Day): void {
  const at = promptAt(draft, day)
  const last = promptDue(draft)?.data.last ?? null
  draft.due('prompt', at, { day, last })
}

/** The prompt's instant, spread over the window, never past the end of its local day. */
function promptAt({ client, file }: Draft, day: Day): Date {
  const at = instantOf(day, client.prompt, client.zone).getTime()
  const leftOfDay = instantOf(addDays(day, 1), '00:00', client.zone).getTime() - at
  const room = Math.min(file.practice.window * MINUTE, leftOfDay)
  return new Date(at + (room > 0 ? hash(client.id) % room : 0))
}

export const promptDue = (draft: Draft): DueRow | undefined =>
  draft.file.dues.find((due) => due.kind === 'prompt')

/** The day of the latest prompt, to which a reply before the next one belongs; null before the first. */
export const latestPromptDay = (draft: Draft): Day | null =>
  (promptDue(draft)?.data.last as Day | null | undefined) ?? null

/** Who has left is asked nothing more; who was discharged is, while a sign is open. */
export const asksNoMore = ({ client, file }: Draft): boolean =>
  client.stage === 'left' || (hasEnded(client) && !isLocked(file))

/** Marks a day's prompt as handled and sets the next one, never of the same local day. */
export function promptHandled(draft: Draft, day: Day): void {
  const row = promptDue(draft)
  if (row) draft.put('due', { ...row, data: { ...row.data, last: day } })
  schedulePrompt(draft, laterOf(addDays(day, 1), draft.today))
}

/**
 * The client's time or zone has changed, or a lock has ended: the next prompt moves. A day already prompted is not
 * prompted again, and one whose new time has just passed is prompted at once.
 */
export function reschedulePrompt(draft: Draft): void {
  if (!promptDue(draft)) return
  if (asksNoMore(draft)) return draft.drop('due', draft.id('due', 'prompt'))
  const last = latestPromptDay(draft)
  const first = laterOf(draft.client.start ?? draft.today, draft.today)
  schedulePromptAhead(draft, last !== null && first <= last ? addDays(last, 1) : first)
}

/** Sets the prompt of a day that somebody has just chosen: where its time has passed, at once. */
export function schedulePromptAhead(draft: Draft, day: Day): void {
  schedulePrompt(draft, day)
  // a time long gone counts from now: else the day would be left without a prompt as stale
  const due = promptDue(draft)!
  if (due.at < draft.now) draft.put('due', { ...due, at: draft.now })
}

// FNV-1a, 32 bits: small, stable, spread well enough for minutes.
function hash(text: string): number {
  let h = 0x811c9dc5
  for (const char of text) h = Math.imul(h ^ char.codePointAt(0)!, 0x01000193) >>> 0
  return h
}
