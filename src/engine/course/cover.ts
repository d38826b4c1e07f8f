import type { Day } from '../../domain/day.ts'
import type { ClientFile } from '../ports.ts'

/** The coach in charge, as "<@id>"; whoever made the plan where nobody is named. */
export const inCharge = ({ client, plan }: ClientFile): string | null => client.coach ?? plan?.by ?? null

/**
 * Who is called first on a day of the practice's: the cover while the coach is away, else the coach. Where the cover
 * is away too, theirs.
 */
export function onCall(file: ClientFile, day: Day): string | null {
  const away = file.covers.filter((row) => row.from <= day && day <= row.until)
  const asked: string[] = []
  let coach = inCharge(file)
  for (let next = coach; next !== null && !asked.includes(next); ) {
    coach = next
    asked.push(coach)
    next = away.findLast((row) => row.coach === coach)?.cover ?? null
  }
  return coach
}
