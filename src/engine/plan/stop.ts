import type { Draft } from '../draft.ts'
import { STOP } from '../status.ts'
import { rungsAhead } from './rungs.ts'

/** The coach stops all drills until they decide again: every ladder rests. It is no lock, and asks for no clinician. */
export function stopAll(draft: Draft, by: string): void {
  draft.stopDrills()
  for (const ladder of Object.keys(rungsAhead(draft.file)))
    draft.put('hold', {
      id: draft.id('hold', STOP, ladder, draft.cause),
      clientId: draft.client.id,
      kind: 'rest',
      ladder,
      reason: STOP,
      by,
      at: draft.now,
      day: draft.today,
      endedAt: null,
      endedBy: null,
    })
}

/** The coach has decided again: the ladders come back at their rungs. True where they were stopped. */
export function startAgain(draft: Draft, by: string): boolean {
  const stopped = draft.file.holds.filter((hold) => hold.reason === STOP && hold.endedAt === null)
  for (const hold of stopped) draft.put('hold', { ...hold, endedAt: draft.now, endedBy: by })
  return stopped.length > 0
}
