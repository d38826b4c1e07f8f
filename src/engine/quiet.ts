import { type Day, daysBetween } from '../domain/day.ts'
import type { Draft } from './draft.ts'
import { lastAnswered, silentDays } from './history.ts'
import { lowerAll, rungsOn } from './rungs.ts'
import { openHold } from './status.ts'

/** Days without reply, days off included: a nudge, the coach told, a pause. */
export const NUDGE_DAYS = 3
export const TELL_COACH_DAYS = 5
export const LAPSE_DAYS = 14
/** A gap of so many days starts each ladder a rung lower. */
export const LONG_GAP_DAYS = 7

/** What a run of silent days asks for, on the morning after `day`. True where the client was paused by it. */
export function afterSilence(draft: Draft, day: Day): boolean {
  const silent = silentDays(draft.file, day)
  const { client, coach } = draft.texts
  const since = lastAnswered(draft.file) ?? draft.client.start ?? day
  if (silent === NUDGE_DAYS)
    draft.toClient({ kind: 'nudge', key: draft.id('nudge', since), text: client.nudge })
  if (silent === TELL_COACH_DAYS)
    draft.toCoach({
      kind: 'notice',
      key: draft.id('quiet', since),
      text: coach.quiet(draft.client.ref, silent),
    })
  if (silent < LAPSE_DAYS) return false
  pause(draft, 'quiet', 'rules')
  draft.toClient({ kind: 'lapse', key: draft.id('lapse', since), text: client.lapse })
  draft.toCoach({
    kind: 'lapse',
    key: draft.id('lapse-coach', since),
    text: coach.lapse(draft.client.ref, silent),
  })
  return true
}

/** Prompts stop; the lock, where there is one, is another matter and stays. */
export function pause(draft: Draft, reason: 'client' | 'coach' | 'quiet', by: string): boolean {
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

/** Ends the pause. */
export function resume(draft: Draft, by: string): boolean {
  const hold = openHold(draft.file, 'pause')
  if (!hold) return false
  draft.put('hold', { ...hold, endedAt: draft.now, endedBy: by })
  return true
}

/** Back after a long gap: every ladder a rung lower, both told, the coach with a button to undo. */
export function returnLower(draft: Draft, lastBefore: Day | null, day: Day): void {
  const since = lastBefore ?? draft.client.start
  if (!since || daysBetween(since, day) - 1 < LONG_GAP_DAYS) return
  const already = draft.file.rungs.some((row) => row.why === 'return' && row.day > since)
  if (already || Object.keys(rungsOn(draft.file, day)).length === 0) return
  const moved = lowerAll(draft, day, 'return', 'rules')
  const gap = daysBetween(since, day) - 1
  draft.toCoach({
    kind: 'notice',
    text: draft.texts.coach.returned(
      draft.client.ref,
      gap,
      moved.map(({ ladder, from, to }) => ({ ladder, from, to })),
    ),
    buttons:
      moved.length > 0
        ? [
            {
              name: 'undo',
              label: draft.texts.coach.undo,
              act: { do: 'undo', rungs: moved.map((row) => row.id).join(' ') },
            },
          ]
        : [],
  })
}
