import { regionOf } from '../../domain/region.ts'
import { isRegionBreak, pause, resume } from '../check-in/quiet.ts'
import type { Draft } from '../draft.ts'
import type { PracticeRow } from '../rows.ts'
import { openHold } from '../status.ts'
import { endWay } from './end.ts'

const country = (code: string): string => (regionOf(code)?.code ?? code.toUpperCase()).split('-')[0]!

/** True where the practice works with people in a country; a part of a country belongs to it. */
export function isServed({ regions }: PracticeRow, region: string | null): boolean {
  if (regions.length === 0 || region === null) return true
  return regions.map(country).includes(country(region))
}

/**
 * The country has been told and the practice does not work there: who has not begun is refused politely, who has
 * gets a break and the coach decides. The country is kept for the emergency number. Gives what the client hears.
 */
export function refuseRegion(draft: Draft, region: string): string {
  const { texts, forCoach } = draft
  const { ref, stage } = draft.client
  if (stage === 'enrolled') {
    const own = openHold(draft.file, 'pause')
    // a break of their own would end with "I am back": this one does not
    if (own) draft.put('hold', { ...own, reason: 'region' })
    else pause(draft, 'region', 'rules')
    draft.toCoach({ kind: 'notice', text: forCoach.courseForCoach.regionAway(ref, region) })
    return texts.course.regionAway
  }
  for (const asked of draft.file.asked) if (!asked.pressing) draft.drop('asked', asked.id)
  endWay(draft, 'left')
  draft.toCoach({ kind: 'notice', text: forCoach.courseForCoach.regionRefused(ref, region) })
  return texts.course.regionRefused
}

/** Back in a country where the practice works: a break because of the country ends, and the coach hears so. */
export function backInRegion(draft: Draft): boolean {
  if (!isRegionBreak(draft)) return false
  resume(draft, 'client')
  const { ref, region } = draft.client
  draft.toCoach({ kind: 'notice', text: draft.forCoach.courseForCoach.regionBack(ref, region ?? '') })
  return true
}
