import type { Day } from '../domain/day.ts'
import type { Mark } from '../domain/digest/marks.ts'
import type { Reach } from '../domain/reach.ts'
import type { Direction } from '../domain/rules/assessment.ts'

/** Every word in the picture, in the coach's language. Short: a line holds about 55 characters. */
export interface PictureWords {
  /** "23 Mar" */
  readonly date: (day: Day) => string
  readonly range: (first: Day, on: Day) => string
  readonly direction: (direction: Direction) => string
  readonly reachNames: Readonly<Record<Reach, string>>
  readonly reachTitle: string
  /** Said beside a title: what the dashed line stands for. */
  readonly baseline: (value: string) => string
  readonly painTitle: string
  readonly worst: (pain: number) => string
  readonly sessionsTitle: string
  readonly dayOff: string
  readonly repliesTitle: (answered: number, days: number) => string
  readonly noReply: string
  readonly filledLater: string
  readonly mark: (mark: Mark) => string
  readonly marksLeftOut: (count: number) => string
}
