import type { Day } from '../../domain/day.ts'
import { weekday } from '../../domain/day.ts'
import { dayWork } from '../../domain/ladder/day-work.ts'
import type { Draft } from '../draft.ts'
import { drillsWithheld, isLocked, isPressing, isStopped } from '../status.ts'
import { plannedOn, planOn } from './rungs.ts'

/** The work of a day in words and as drill ids; none while drills are withheld, before the plan, or on a day off. */
export function workOn(draft: Draft, day: Day, detail: 'short' | 'full'): { text: string; drills: string[] } {
  const { client, plan } = draft.file
  if (drillsWithheld(draft.file)) return { text: '', drills: [] }
  if (!plan || !client.start || day < client.start) return { text: draft.texts.client.noPlanYet, drills: [] }
  if (isStopped(draft.file)) return { text: draft.texts.decided.stoppedWork, drills: [] }
  const sessions = plannedOn(draft.file, weekday(day))
  if (sessions === 0) return { text: draft.texts.client.dayOff, drills: [] }
  const drills = dayWork(planOn(draft.file, day), false, draft.ladders)
  if (drills.length === 0) return { text: draft.texts.client.allRest, drills: [] }
  return { text: draft.texts.client.work(drills, sessions, plan.loads, detail), drills }
}

/** Today's work as a client asks for it, or why there is none. */
export function workToday(draft: Draft): { text: string; drills: string[] } {
  const { client } = draft.texts
  if (isLocked(draft.file)) return { text: client.drillsLocked, drills: [] }
  if (isPressing(draft.file)) return { text: client.drillsWait, drills: [] }
  if (drillsWithheld(draft.file)) return { text: client.parkedWait, drills: [] }
  return workOn(draft, draft.today, 'full')
}
