import { answered } from '../../domain/checkin.ts'
import { daysBetween } from '../../domain/day.ts'
import type { CourseFacts } from '../../text/en/course.ts'
import type { Texts } from '../../text/index.ts'
import type { Draft } from '../draft.ts'
import { baselineOf, liftWanted } from '../history.ts'
import { rungsOn } from '../plan/rungs.ts'
import type { ClientFile } from '../ports.ts'
import { activityPaths } from './activities.ts'

/** Where somebody began and where they are, as facts for the last word to client and coach. */
export function courseFacts(draft: Draft, texts: Texts): CourseFacts {
  const { file, today } = draft
  const { start } = draft.client
  const began = baselineOf(file)
  const last = file.checkIns
    .filter((row) => row.pain !== null || row.reach !== null)
    .sort((a, b) => (a.day < b.day ? -1 : 1))
    .at(-1)
  const inWords = (values: Pick<NonNullable<typeof last>, 'reach' | 'pain'> | null | undefined): string =>
    values ? texts.words.values({ sessions: null, reach: values.reach, pain: values.pain }) : ''
  return {
    weeks: start === null || start > today ? 0 : Math.max(1, Math.round((daysBetween(start, today) + 1) / 7)),
    began: inWords(began),
    now: inWords(last),
    activities: activityPaths(file),
    percent: sessionsPercent(file),
  }
}

/** Sessions done of those planned over the answered days on which some were planned, 0..; null where none were. */
function sessionsPercent({ checkIns }: ClientFile): number | null {
  const rows = checkIns.filter((row) => answered(row) && row.sessions !== null && row.planned > 0)
  const planned = rows.reduce((sum, row) => sum + row.planned, 0)
  const done = rows.reduce((sum, row) => sum + row.sessions!, 0)
  return planned === 0 ? null : Math.round((100 * done) / planned)
}

/** Lines below a client's card: the activities that matter, and the lift wanted once lifting is under way. */
export function courseLines(draft: Draft): string[] {
  const { courseForCoach } = draft.forCoach
  const paths = activityPaths(draft.file)
  const isLifting = rungsOn(draft.file, draft.today).lift !== undefined
  return [
    ...(paths.length > 0 ? [courseForCoach.activities(paths)] : []),
    ...(isLifting ? liftLine(draft) : []),
  ]
}

/** The lift they want back, with the load of the plan. */
export function liftLine({ file, forCoach }: Draft): string[] {
  const wanted = liftWanted(file)
  return wanted === null ? [] : [forCoach.courseForCoach.lift(wanted, file.plan?.loads.lift ?? null)]
}
