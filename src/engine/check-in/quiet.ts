import { addDays, type Day, daysBetween } from '../../domain/day.ts'
import { dayAt } from '../../domain/local-time.ts'
import { QUIET_STEPS } from '../../domain/rules/quiet.ts'
import type { Draft } from '../draft.ts'
import { lastAnswered, silentSince } from '../history.ts'
import { lowerAll, rungsOn } from '../plan/rungs.ts'
import { tellChange, undoButton } from '../plan/step-change.ts'
import { isLocked, openHold } from '../status.ts'
import { withCare } from '../urgent/with-care.ts'

/** What a run of silent days asks for, on the morning after `day`. True where the client was paused by it. */
export function afterSilence(draft: Draft, day: Day): boolean {
  const since = silentSince(draft.file)
  const silent = since === null ? 0 : daysBetween(since, day)
  const { client } = draft.texts
  const { coach } = draft.forCoach
  const { ref } = draft.client
  if (silent >= QUIET_STEPS.pause) {
    pause(draft, 'quiet', 'rules')
    draft.toClient({ kind: 'lapse', key: draft.id('lapse', since!), text: client.lapse })
    draft.toCoach({ kind: 'lapse', key: draft.id('lapse-coach', since!), text: coach.lapse(ref, silent) })
    return true
  }
  // each once a silence: the key says which, so a morning that was missed is made up for on the next
  if (silent >= QUIET_STEPS.nudge)
    draft.toClient({ kind: 'nudge', key: draft.id('nudge', since!), text: client.nudge })
  if (silent >= QUIET_STEPS.coach)
    draft.toCoach({ kind: 'notice', key: draft.id('quiet', since!), text: coach.quiet(ref, silent) })
  return false
}

/** Prompts stop; the lock, where there is one, is another matter and stays. */
export function pause(draft: Draft, reason: 'client' | 'coach' | 'quiet' | 'region', by: string): boolean {
  if (openHold(draft.file, 'pause')) return false
  draft.put('hold', {
    id: draft.id('hold', 'pause', draft.cause),
    clientId: draft.client.id,
    kind: 'pause',
    ladder: null,
    reason,
    by,
    at: draft.now,
    day: draft.today,
    endedAt: null,
    endedBy: null,
  })
  return true
}

/** A pause that the client asks for, and what they hear: a lock goes on through it. */
export function pauseInWords(draft: Draft): string {
  const { client, course } = draft.texts
  if (isRegionBreak(draft)) return withCare(draft, course.regionStays)
  if (!pause(draft, 'client', 'client')) return withCare(draft, client.alreadyPaused)
  return isLocked(draft.file) ? client.pausedLocked : client.paused
}

/** A break because of the country ends with the country, or by the coach. */
export const isRegionBreak = ({ file }: Draft): boolean => openHold(file, 'pause')?.reason === 'region'

/** The client says that they are back: what they hear. */
export function resumeInWords(draft: Draft): string {
  if (isRegionBreak(draft)) return withCare(draft, draft.texts.course.regionStays)
  return resume(draft, 'client') ? backInWords(draft) : withCare(draft, draft.texts.client.notPaused)
}

/** Ends the pause; after a long gap each ladder starts a rung lower. */
export function resume(draft: Draft, by: string): boolean {
  const hold = openHold(draft.file, 'pause')
  if (!hold) return false
  draft.put('hold', { ...hold, endedAt: draft.now, endedBy: by })
  returnLower(draft, lastAnswered(draft.file), draft.today)
  return true
}

/** What a client hears whose break ends: no prompt is promised where none comes. */
export function backInWords(draft: Draft): string {
  const { client, backAgain } = draft.texts
  if (isLocked(draft.file)) return backAgain.locked
  return openHold(draft.file, 'park') ? backAgain.parked : client.resumed(draft.client.prompt)
}

const dayOf = ({ client }: Draft, at: Date): Day => dayAt(at, client.zone)

/** Back after a long gap: every ladder a rung lower, both told, the coach with a button to undo. */
export function returnLower(draft: Draft, lastBefore: Day | null, day: Day): void {
  const { start } = draft.client
  const since = lastBefore ?? (start && addDays(start, -1))
  const gap = since ? daysBetween(since, day) - 1 : 0
  if (!since || gap < QUIET_STEPS.lower) return
  // a clearance in that time has lowered them, and what was no check-in then was no silence
  const cleared = draft.file.holds.some(
    ({ kind, endedAt }) => kind === 'lock' && endedAt && dayOf(draft, endedAt) > since,
  )
  const already = cleared || draft.file.rungs.some((row) => row.why === 'return' && row.day > since)
  if (already || Object.keys(rungsOn(draft.file, day)).length === 0) return
  const moved = lowerAll(draft, day, 'return', 'rules')
  if (moved.length > 0) tellChange(draft, { text: draft.texts.client.lowerAgain, drills: [] })
  // where no ladder could go lower, nothing else tells that it was said: every later word of that day would say it again
  draft.toCoach({
    kind: 'notice',
    key: draft.id('returned', since),
    text: draft.forCoach.coach.returned(draft.client.ref, gap, moved),
    buttons: undoButton(draft, moved, []),
  })
}
