import { answered, type CheckIn } from '../domain/checkin.ts'
import { addDays, type Day } from '../domain/day.ts'
import { DEFAULT_GATE } from '../domain/ladder/plan.ts'
import { dayAt } from '../domain/local-time.ts'
import type { Reach } from '../domain/reach.ts'
import { saysNone } from '../domain/reply/says-none.ts'
import type { History, HistoryDay, HistoryDecision, OpenSign } from '../domain/rules/assessment.ts'
import { replied } from '../domain/rules/view.ts'
import { isSignId, type SignId } from '../domain/signs/catalogue.ts'
import { rungsOn } from './plan/rungs.ts'
import type { ClientFile } from './ports.ts'
import type { DecisionRow, SignRow } from './rows.ts'

/** A client's file as the shared rules look at it. */
export function historyOf(file: ClientFile): History {
  const { client, plan } = file
  const days = historyDays(file)
  return {
    side: client.side,
    baseline: baselineOf(file),
    start: client.start,
    known: stillKnown(file),
    days,
    openBefore: openBefore(file, days[0]?.day ?? null),
    decisions: file.decisions.flatMap(ruleDecision),
    gate: plan?.gate ?? DEFAULT_GATE,
  }
}

/** A stop is to the rules what a hold of every ladder is; a clearance ends signs, which have their own rows. */
function ruleDecision({ day, ladder, decision }: DecisionRow): HistoryDecision[] {
  if (decision === 'clear') return []
  return [decision === 'stop' ? { day, ladder: null, decision: 'hold' } : { day, ladder, decision }]
}

/** Known trouble that has changed since and was raised counts like any other sign. */
const stillKnown = (file: ClientFile): SignId[] =>
  knownSigns(file).filter((sign) => !file.signs.some((row) => row.sign === sign && isRaised(row)))

const isRaised = ({ state }: SignRow): boolean => state !== 'asked' && state !== 'denied'

/** Signs still open that began before the first day that the file holds. */
const openBefore = (file: ClientFile, first: Day | null): OpenSign[] =>
  file.signs
    .filter((row) => row.state === 'open' && first !== null && row.day < first)
    .map(({ sign, care, day }) => ({ sign, care, day }))

export function baselineOf(file: ClientFile): { reach: Reach | null; pain: number | null } | null {
  const { reach, pain } = file.screening?.answers ?? {}
  if (reach === undefined && pain === undefined) return null
  return { reach: (reach as Reach | undefined) ?? null, pain: pain === undefined ? null : Number(pain) }
}

/** The lift that the client wants back; null where none was named, or the answer was "none". */
export function liftWanted({ client, screening }: ClientFile): string | null {
  const lift = String(screening?.answers.lift ?? '')
  return lift.trim() === '' || saysNone(lift, client.language) ? null : lift
}

/** Old, unchanged trouble recorded at screening as known to a clinician. */
export function knownSigns(file: ClientFile): SignId[] {
  const known = file.screening?.answers.known
  return Array.isArray(known) ? known.filter(isSignId) : []
}

function historyDays(file: ClientFile): HistoryDay[] {
  const checkIns = new Map(file.checkIns.map((row) => [row.day, row]))
  const ended = new Map<Day, SignRow[]>()
  for (const sign of file.signs) {
    if (sign.endedAt === null || sign.state === 'denied') continue
    const day = dayAt(sign.endedAt, file.client.zone)
    ended.set(day, [...(ended.get(day) ?? []), sign])
  }
  const days = [...new Set([...checkIns.keys(), ...ended.keys()])].sort()
  return days.map((day) => ({
    day,
    checkIn: (checkIns.get(day) as CheckIn | undefined) ?? null,
    rungs: rungsOn(file, day),
    resting: restedOn(file, day),
    cleared: (ended.get(day) ?? []).filter((s) => s.state === 'cleared').map((s) => s.sign),
    noted: (ended.get(day) ?? []).filter((s) => s.state === 'noted').map((s) => s.sign),
  }))
}

/** The ladders left out of a day's work: from the day on which the rest began to that on which it ended. */
const restedOn = (file: ClientFile, day: Day): string[] =>
  file.holds.flatMap((hold) => {
    if (hold.kind !== 'rest' || !hold.ladder || hold.day > day) return []
    return hold.endedAt === null || day <= dayAt(hold.endedAt, file.client.zone) ? [hold.ladder] : []
  })

/** The latest day with an answer (before a day, where one is named), or null. */
export const lastAnswered = (file: ClientFile, before: Day | null = null): Day | null =>
  file.checkIns
    .filter((row) => answered(row) && (before === null || row.day < before))
    .map((row) => row.day)
    .sort()
    .at(-1) ?? null

/** The latest day on which anything at all was said. */
const lastReplied = (file: ClientFile): Day | null =>
  file.checkIns
    .filter((row) => replied(row))
    .map((row) => row.day)
    .sort()
    .at(-1) ?? null

/**
 * The day after which silence counts: that of the last reply, or of the end of a lock, parking or pause, when no
 * reply was waited for; before the first reply the eve of the plan. Null before the plan.
 */
export function silentSince(file: ClientFile): Day | null {
  if (!file.client.start) return null
  const ends = file.holds
    .filter((hold) => hold.kind !== 'rest' && hold.endedAt !== null)
    .map((hold) => dayAt(hold.endedAt!, file.client.zone))
  return [addDays(file.client.start, -1), lastReplied(file) ?? '', ...ends].sort().at(-1)!
}
