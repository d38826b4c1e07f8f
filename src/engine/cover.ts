import type { Day } from '../domain/day.ts'
import type { ClientFile } from './ports.ts'

/** The coach in charge, as "<@id>"; whoever made the plan where nobody is named. */
export const inCharge = ({ client, plan }: ClientFile): string | null => client.coach ?? plan?.by ?? null

/** Who is called first on a day of the practice's: the cover while the coach is away, else the coach. */
export function onCall(file: ClientFile, day: Day): string | null {
  const coach = inCharge(file)
  const cover = file.covers.findLast((row) => row.coach === coach && row.from <= day && day <= row.until)
  return cover?.cover ?? coach
}
