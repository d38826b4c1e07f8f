import { regionOf } from '../domain/region.ts'
import type { Draft } from './draft.ts'
import { endWay } from './end.ts'
import { pause } from './quiet.ts'
import type { PracticeRow } from './rows.ts'

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
    pause(draft, 'coach', 'rules')
    draft.toCoach({ kind: 'notice', text: forCoach.courseForCoach.regionAway(ref, region) })
    return texts.course.regionAway
  }
  for (const asked of draft.file.asked) if (!asked.pressing) draft.drop('asked', asked.id)
  endWay(draft, 'left')
  draft.toCoach({ kind: 'notice', text: forCoach.courseForCoach.regionRefused(ref, region) })
  return texts.course.regionRefused
}
