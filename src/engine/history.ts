import { answered, type CheckIn } from '../domain/checkin.ts'
import { type Day, daysBetween } from '../domain/day.ts'
import { DEFAULT_GATE } from '../domain/ladder/plan.ts'
import { dayAt } from '../domain/local-time.ts'
import type { Reach } from '../domain/reach.ts'
import type { History, HistoryDay } from '../domain/rules/assessment.ts'
import { isSignId, type SignId } from '../domain/signs/catalogue.ts'
import type { ClientFile } from './ports.ts'
import type { SignRow } from './rows.ts'
import { rungsOn } from './rungs.ts'

/** A client's file as the shared rules look at it. */
export function historyOf(file: ClientFile): History {
  const { client, plan } = file
  return {
    side: client.side,
    baseline: baselineOf(file),
    start: client.start,
    known: knownSigns(file),
    days: historyDays(file),
    decisions: file.decisions.map(({ day, ladder, decision }) => ({ day, ladder, decision })),
    gate: plan?.gate ?? DEFAULT_GATE,
  }
}

export function baselineOf(file: ClientFile): { reach: Reach | null; pain: number | null } | null {
  const { reach, pain } = file.screening?.answers ?? {}
  if (reach === undefined && pain === undefined) return null
  return { reach: (reach as Reach | undefined) ?? null, pain: pain === undefined ? null : Number(pain) }
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
    cleared: (ended.get(day) ?? []).filter((s) => s.state === 'cleared').map((s) => s.sign),
    noted: (ended.get(day) ?? []).filter((s) => s.state === 'noted').map((s) => s.sign),
  }))
}

/** The latest day with an answer (before a day, where one is named), or null. */
export const lastAnswered = (file: ClientFile, before: Day | null = null): Day | null =>
  file.checkIns
    .filter((row) => answered(row) && (before === null || row.day < before))
    .map((row) => row.day)
    .sort()
    .at(-1) ?? null

/** Days without an answer up to and with `day`, counted from the last answer or the plan's start. */
export function silentDays(file: ClientFile, day: Day): number {
  const last = lastAnswered(file)
  if (last) return Math.max(0, daysBetween(last, day))
  return file.client.start ? Math.max(0, daysBetween(file.client.start, day) + 1) : 0
}
