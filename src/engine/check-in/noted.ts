import type { Day } from '../../domain/day.ts'

/** What an answer came to: a line that says so, and the days whose record changed. */
export interface Noted {
  readonly text: string
  readonly days: readonly Day[]
}

export const noted = (text: string, ...days: Day[]): Noted => ({ text, days })
