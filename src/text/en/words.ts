import type { Side } from '../../domain/checkin.ts'
import { type Day, daysBetween, weekday } from '../../domain/day.ts'
import type { Reach } from '../../domain/reach.ts'
import { date } from './dates.ts'
import { REACH } from './reach.ts'

const STATUS: Readonly<Record<string, string>> = {
  invited: 'invited',
  screening: 'first questions',
  parked: 'waiting for a clinician’s word',
  active: 'active',
  locked: 'stopped: an urgent sign is open',
  paused: 'on a break',
  discharged: 'finished',
  left: 'left',
}
const WEEKDAY: Readonly<Record<string, string>> = {
  Mon: 'Monday',
  Tue: 'Tuesday',
  Wed: 'Wednesday',
  Thu: 'Thursday',
  Fri: 'Friday',
  Sat: 'Saturday',
  Sun: 'Sunday',
}

interface Values {
  readonly sessions: number | null
  readonly reach: Reach | null
  readonly pain: number | null
}

/** Single words and short forms that the sentences are made of. */
export const words = {
  yes: 'Yes',
  no: 'No',
  filledLater: 'filled in later',
  reach: (reach: Reach): string => REACH[reach],
  side: (side: Side): string => ({ left: 'left', right: 'right', both: 'both legs' })[side],
  status: (status: string): string => STATUS[status] ?? status,
  date: (day: Day): string => date(day),
  /** "today", "yesterday", a weekday of the last days, else the date. */
  day: (day: Day, today: Day): string => {
    const ago = daysBetween(day, today)
    if (ago === 0) return 'today'
    if (ago === 1) return 'yesterday'
    return ago > 1 && ago < 7 ? (WEEKDAY[weekday(day)] ?? date(day)) : date(day)
  },
  /** "2 sessions, calf, pain 4": what is there, in the order of the question. */
  values: ({ sessions, reach, pain }: Values): string =>
    [
      sessions === null ? '' : `${sessions} ${sessions === 1 ? 'session' : 'sessions'}`,
      reach === null ? '' : reach === 'none' ? 'no symptoms felt' : REACH[reach],
      pain === null ? '' : `pain ${pain}`,
    ]
      .filter((part) => part !== '')
      .join(', '),
}
