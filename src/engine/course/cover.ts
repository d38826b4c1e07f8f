import { standsIn } from '../../domain/cover.ts'
import type { Day } from '../../domain/day.ts'
import type { ClientFile } from '../ports.ts'

/** The coach in charge, as "<@id>"; whoever made the plan where nobody is named. */
export const inCharge = ({ client, plan }: ClientFile): string | null => client.coach ?? plan?.by ?? null

/** Who is called first on a day of the practice's. */
export const onCall = (file: ClientFile, day: Day): string | null =>
  standsIn(inCharge(file), file.covers, day)
