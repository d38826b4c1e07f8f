import { dayAt } from '../../domain/local-time.ts'
import { emergencyNumber } from '../../domain/region.ts'
import type { Draft } from '../draft.ts'
import { rungsOn } from '../plan/rungs.ts'
import type { DueKind } from '../rows.ts'
import { drillsWithheld, isLocked, isPressing } from '../status.ts'
import { withCare } from '../urgent/with-care.ts'
import { keepEndAsked, remindButtons } from './come-back.ts'
import { courseFacts, liftLine } from './course-summary.ts'
import { endWay, erasedAt, retentionDays } from './end.ts'

// Words alone that end it; in more of them it may be bands that they are out of, or smoking that they quit.
const LEAVING_WORDS = 2

/** "Leave" ends it at once. What only sounds like it among other words is answered with the word that does. */
export function leaveInWords(draft: Draft, text: string): void {
  if (text.trim().split(/\s+/).length <= LEAVING_WORDS) return leave(draft)
  draft.toClient({ kind: 'notice', text: withCare(draft, draft.texts.client.leaveHow) })
}

/** The client leaves: prompts and questions end at once. What is kept, and how to have it erased, is said. */
export function leave(draft: Draft): void {
  const asked = isPressing(draft.file)
  closeWay(draft, 'left')
  const text = withCare(draft, draft.texts.client.left(retentionDays(draft.file), asked))
  draft.toClient({ kind: 'discharge', text })
  const sign = isLocked(draft.file) ? 'open' : asked ? 'asked' : null
  draft.toCoach({ kind: 'notice', text: draft.forCoach.coach.left(draft.client.ref, sign) })
}

/**
 * The end of the way together: where it began, where it is, what to do if it comes back, and whether one word some
 * weeks later is wanted. The coach gets the same with the lift they wanted.
 */
export function discharge(draft: Draft): void {
  const { course } = draft.texts
  const { courseForCoach } = draft.forCoach
  const summary = course.summary(courseFacts(draft, draft.texts))
  const lines = [...courseForCoach.courseLines(courseFacts(draft, draft.forCoach)), ...liftLine(draft)]
  const withheld = drillsWithheld(draft.file)
  closeWay(draft, 'discharged')
  const still = isLocked(draft.file) ? [courseForCoach.signStillOpen] : []
  const gone = courseForCoach.endsOn(dayAt(erasedAt(draft.file), draft.client.zone))
  draft.toCoach({
    kind: 'discharge',
    text: courseForCoach.discharged(draft.client.ref, [...still, ...lines, gone]),
  })
  const number = emergencyNumber(draft.client)
  if (withheld)
    return void draft.toClient({ kind: 'discharge', text: course.dischargedLocked(summary, number) })
  const breathing = 'settle' in rungsOn(draft.file, draft.today)
  const buttons = remindButtons(draft)
  keepEndAsked(draft, 'remind', buttons)
  const text = `${course.discharged(summary, breathing)}\n${course.askRemind}`
  draft.toClient({ kind: 'discharge', asks: 'remind', text, buttons })
}

const ENDS: readonly DueKind[] = ['reminder', 'activities', 'screening']

/** What is due about an urgent sign goes on, the morning follow-up for those discharged too; all else ends. */
export function closeWay(draft: Draft, stage: 'left' | 'discharged'): void {
  endWay(draft, stage)
  const followsUp = stage === 'discharged' && isLocked(draft.file)
  for (const due of draft.file.dues) {
    const ends = ENDS.includes(due.kind) || (due.kind === 'prompt' && !followsUp)
    if (ends || (stage === 'left' && due.kind === 'urgent-follow-up')) draft.drop('due', due.id)
  }
  for (const asked of draft.file.asked) if (!asked.pressing) draft.drop('asked', asked.id)
}
