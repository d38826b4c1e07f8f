import type { Command } from '../event.ts'
import type { PracticeRow } from '../rows.ts'

/** True where the chat knows the roles of the person named in an option, and the coach role is not among them. */
export function isNoCoach({ coachRole }: PracticeRow, { people }: Command, option: string): boolean {
  const person = people?.[option]
  return person !== undefined && (coachRole === null || !person.roles.includes(coachRole))
}
