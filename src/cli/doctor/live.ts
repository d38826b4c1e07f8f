import { beatIn, HEARTBEAT, STILL_MS } from '../../heartbeat.ts'
import { inspectDatabase } from '../../store/inspect.ts'
import { openStore } from '../../store/open.ts'
import { StoreProblem } from '../../store/problem.ts'
import { doctor } from '../../text/en/doctor.ts'
import { type Line, notOk, ok } from './line.ts'
import { severalLines } from './several.ts'

// Longer than any message waits between two tries.
const WAITS_MS = 10 * 60_000

/** Whether the bot works at this moment: its latest beat, and whether messages wait longer than they should. */
export async function liveLines(url: string, now: Date): Promise<Line[]> {
  try {
    // looking changes nothing: tables that are not up to date are left so
    if ((await inspectDatabase(url)).pending > 0) return [notOk('beat', doctor.neverBeat)]
    const store = await openStore(url, null, undefined, 'unread')
    try {
      const beat = beatIn(await store.settings.get(HEARTBEAT))
      const oldest = await store.outbox.nextDue()
      return [beatLine(beat, now), waitingLine(oldest, now), ...(await severalLines(url, true))]
    } finally {
      await store.close()
    }
  } catch (error) {
    if (!(error instanceof StoreProblem)) throw error
    return [notOk('beat', error.message)]
  }
}

function beatLine(beat: Date | null, now: Date): Line {
  if (!beat) return notOk('beat', doctor.neverBeat)
  const seconds = Math.round((now.getTime() - beat.getTime()) / 1000)
  return seconds * 1000 < STILL_MS
    ? ok('beat', doctor.beats(seconds))
    : notOk('beat', doctor.still(beat.toISOString()))
}

function waitingLine(oldest: Date | null, now: Date): Line {
  const isLate = oldest !== null && now.getTime() - oldest.getTime() > WAITS_MS
  return isLate
    ? notOk('messages', doctor.waitsSince(oldest.toISOString()))
    : ok('messages', doctor.noneWaits)
}
