import type { Day } from '../../domain/day.ts'
import type { RevisedDay } from '../../domain/digest/revised.ts'
import { harmless } from '../harmless.ts'
import { date } from './dates.ts'
import { words } from './words.ts'

const change = ({ day, before, now }: RevisedDay): string => {
  const [was, is] = [words.values(before), words.values(now)]
  return was === '' ? `${date(day)} came in later: ${is}` : `${date(day)} was ${was}, is ${is || 'empty'}`
}

/** What is said about a digest that was asked for. */
export const digestAgain = {
  posted: (what: string): string => `${what} is on its way to the coach channel.`,
  present: 'The digest',
  week: (week: string): string => `The digest of ${week}`,
  ofClient: (digest: string, ref: string): string => `${digest} for ${harmless(ref)}`,
  again: (week: string): string => `*${week} again, from the record as it is now.*`,
  revised: (posted: Day, days: readonly RevisedDay[]): string =>
    `**Revised** since it was posted on ${date(posted)}: ${days.map(change).join('; ')}`,
  futureWeek: (week: string): string => `${week} is still to come. Name a week that has begun.`,
  nobody: (week: string): string => `Nobody had a plan in ${week}, so there is nothing to post.`,
}
