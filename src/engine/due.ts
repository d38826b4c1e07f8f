import type { Day } from '../domain/day.ts'
import { onPromptDue, onReminderDue } from './check-in/prompt.ts'
import { onComeBackDue } from './course/come-back.ts'
import { screeningWaits } from './course/screening-waits.ts'
import type { Draft } from './draft.ts'
import type { DueRow } from './rows.ts'
import { alertStep, untaken } from './urgent/alert.ts'
import { urgentFollowUp } from './urgent/follow-up.ts'
import { silence } from './urgent/silence.ts'

/** A stored instant about one client has come. Its row goes, unless what is done sets it anew. */
export function onDue(draft: Draft, due: DueRow): void {
  if (due.kind !== 'prompt') draft.drop('due', due.id)
  const data = due.data as { day: Day; alert: string; step: number }
  switch (due.kind) {
    case 'prompt':
      return onPromptDue(draft, data.day, due.at)
    case 'reminder':
      return onReminderDue(draft, data.day)
    case 'deadline':
      return silence(draft)
    case 'alert-step':
      return alertStep(draft, data.alert, data.step)
    case 'untaken':
      return untaken(draft, data.alert)
    case 'urgent-follow-up':
      return urgentFollowUp(draft, due.at)
    case 'come-back':
      return onComeBackDue(draft)
    case 'screening':
      return screeningWaits(draft)
    // once it has gone the question may be asked again
    case 'activities':
    // these two are about more than one file or end it: the engine deals with them
    case 'retention':
    case 'digest':
      return
  }
}
