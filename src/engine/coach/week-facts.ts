import { stopsDrills } from '../../domain/care.ts'
import { addDays, type Day } from '../../domain/day.ts'
import type { ClearedSign, Standing, TakenFact, WeekFacts } from '../../domain/digest/facts.ts'
import { weekFacts } from '../../domain/digest/week.ts'
import type { WeeksLog } from '../../domain/digest/weeks.ts'
import { lastRung } from '../../domain/ladder/ladders.ts'
import { dayAt, timeAt } from '../../domain/local-time.ts'
import type { Assessment } from '../../domain/rules/assessment.ts'
import type { Draft } from '../draft.ts'
import { baselineOf, historyOf } from '../history.ts'
import { goneLadders, restingOn, rungsOn } from '../plan/rungs.ts'
import type { ClientFile } from '../ports.ts'
import type { HoldRow } from '../rows.ts'
import { isLocked, statusOf } from '../status.ts'
import { openAlerts } from '../urgent/alert.ts'

/** The facts of the week that ends on a day: today's as things stand, an earlier one's as they stood then. */
export function factsOn(draft: Draft, on: Day, assessment: Assessment): WeekFacts {
  const { file, ladders } = draft
  const past = on < draft.today
  const rungs = rungsOn(file, on)
  const resting = past ? heldOn(file, 'rest', on).flatMap((hold) => hold.ladder ?? []) : restingOn(file)
  return weekFacts(historyOf(file), assessment, on, {
    ref: file.client.ref,
    standing: past ? standingOn(file, on) : statusOf(file),
    rungs,
    resting: [...resting, ...goneLadders(rungs, ladders)],
    lastRungs: Object.fromEntries(ladders.map((ladder) => [ladder.id, lastRung(ladder)])),
    barrier: past ? null : barrierOf(draft),
    urgentOpen: past ? heldOn(file, 'lock', on).length > 0 : isLocked(file),
    cleared: clearedWithin(file, addDays(on, -6), on),
    alertOpen: !past && openAlerts(draft).some((alert) => alert.takenBy === null),
    taken: past ? null : takenOf(draft),
  })
}

/** Holds of a kind that a day ended with. */
const heldOn = (file: ClientFile, kind: HoldRow['kind'], day: Day): HoldRow[] =>
  file.holds.filter(
    (hold) =>
      hold.kind === kind &&
      dayAt(hold.at, file.client.zone) <= day &&
      (hold.endedAt === null || dayAt(hold.endedAt, file.client.zone) > day),
  )

function clearedWithin({ signs, client }: ClientFile, first: Day, on: Day): ClearedSign[] {
  return signs.flatMap(({ sign, care, day, state, endedAt }) => {
    if (state !== 'cleared' || endedAt === null || !stopsDrills(care)) return []
    const cleared = dayAt(endedAt, client.zone)
    return cleared >= first && cleared <= on ? [{ sign, care, day, cleared }] : []
  })
}

function standingOn(file: ClientFile, day: Day): Standing {
  if (heldOn(file, 'lock', day).length > 0) return 'locked'
  if (heldOn(file, 'park', day).length > 0) return 'parked'
  return heldOn(file, 'pause', day).length > 0 ? 'paused' : 'active'
}

/** The first of the open alerts that somebody has. */
function takenOf(draft: Draft): TakenFact | null {
  const alert = openAlerts(draft).find((row) => row.takenBy !== null)
  if (!alert?.takenBy || !alert.takenAt) return null
  const { zone } = draft.file.practice
  return { by: alert.takenBy, day: dayAt(alert.takenAt, zone), time: timeAt(alert.takenAt, zone) }
}

function barrierOf({ file, forCoach }: Draft): string | null {
  const flag = file.flags.find((row) => row.rule === 'adherence' && row.closedAt === null)
  const barrier = flag?.figures.barrier
  return typeof barrier === 'string'
    ? ((forCoach.client.barrier as Record<string, string>)[barrier] ?? barrier)
    : null
}

/** What the picture of a client's weeks marks beside the values. */
export function logOf(file: ClientFile, assessment: Assessment): WeeksLog {
  const { ref } = file.client
  const flags = file.flags.map(({ rule, level, day, figures }) => ({ rule, level, day, figures }))
  const rungChanges = file.rungs.map(({ day, ladder, from, to, why }) => ({ day, ladder, from, to, why }))
  return {
    ref,
    direction: assessment.direction,
    baseline: baselineOf(file) ?? { reach: null, pain: null },
    flags,
    rungChanges,
  }
}
