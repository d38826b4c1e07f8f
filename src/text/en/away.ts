import type { Day } from '../../domain/day.ts'
import { harmless } from '../harmless.ts'
import { date } from './dates.ts'

const names = (refs: readonly string[]): string => refs.map((ref) => `**${harmless(ref)}**`).join(', ')

/** What the coach reads once after the bot was away. */
export const away = {
  back: (day: Day, time: string, hours: number): string =>
    `I was away since ${date(day)}, ${time} (${hours} ${hours === 1 ? 'hour' : 'hours'}), and am back. What was written meanwhile I read now, the oldest first.`,
  prompted: (refs: readonly string[]): string =>
    `No prompt came in that time, and they may have waited: ${names(refs)}.`,
  alerts: (refs: readonly string[]): string =>
    `**An urgent sign is open and nobody has taken it up: ${names(refs)}.** Please reach them now.`,
  noPrompts: (ref: string): string =>
    `**${harmless(ref)}** has had no prompt for two days: none could be delivered. Please write to them another way, and ask whoever runs me to look at “ebb doctor”.`,
}
