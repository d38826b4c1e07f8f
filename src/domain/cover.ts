import type { Day } from './day.ts'

/** One coach stands in for another from a day to another, both included. */
export interface Cover {
  readonly coach: string
  readonly cover: string
  readonly from: Day
  readonly until: Day
}

/**
 * Who is called first on a day: whoever stands in for the coach then; where they are away too, theirs. In a ring of
 * covers the last one not yet asked is called, so that somebody always is.
 */
export function standsIn(coach: string | null, covers: readonly Cover[], day: Day): string | null {
  const away = covers.filter((row) => row.from <= day && day <= row.until)
  const asked: string[] = []
  let called = coach
  for (let next = coach; next !== null && !asked.includes(next); ) {
    called = next
    asked.push(next)
    next = away.findLast((row) => row.coach === called)?.cover ?? null
  }
  return called
}
