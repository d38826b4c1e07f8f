import type { Actor } from './event.ts'
import type { PracticeRow } from './rows.ts'

/** True for whoever acts in the practice's server with the coach role that was named at set-up. */
export const isCoach = ({ coachRole, guild }: PracticeRow, actor: Actor): boolean =>
  coachRole !== null && actor.guild === guild && actor.roles.includes(coachRole)
