import { emergencyNumber } from '../../domain/region.ts'
import type { Reading } from '../../domain/reply/reading.ts'
import { leaveInWords } from '../course/leave.ts'
import { asksForRecord, ownRecord } from '../course/own-record.ts'
import { askCoach } from '../course/questions.ts'
import type { Draft } from '../draft.ts'
import { workToday } from '../plan/work.ts'
import { isLocked } from '../status.ts'
import { withCare } from '../urgent/with-care.ts'
import { pauseInWords, resumeInWords } from './quiet.ts'

/** A message that is no check-in: what else was meant. */
export function onIntent(draft: Draft, reading: Reading, text: string): void {
  const { client } = draft.texts
  switch (reading.intent) {
    case 'pause':
      return notice(draft, pauseInWords(draft))
    case 'resume':
      return notice(draft, resumeInWords(draft))
    case 'leave':
      return leaveInWords(draft, text)
    case 'help':
      return notice(draft, withCare(draft, client.help))
    case 'today':
      return void draft.toClient({ kind: 'plan', ...workToday(draft) })
    case 'question':
      if (!/\p{L}/u.test(text)) return notice(draft, client.notUnderstood)
      askCoach(draft, text)
      return notice(draft, withCare(draft, client.questionPassedOn))
    case 'thanks':
      return notice(draft, withCare(draft, client.welcomeBack))
    case 'correct':
      return isLocked(draft.file) ? heardWhileLocked(draft, text) : notice(draft, client.howToCorrect)
    default:
      if (asksForRecord(draft, text)) return void draft.toClient({ kind: 'report', ...ownRecord(draft) })
      return isLocked(draft.file) ? heardWhileLocked(draft, text) : notice(draft, client.notUnderstood)
  }
}

/** Words that are no check-in while care is sought ("home from the ward") are for the coach, not for a parser. */
function heardWhileLocked(draft: Draft, text: string): void {
  const { ref } = draft.client
  const quoted = draft.file.practice.quote ? text : null
  draft.toCoach({ kind: 'notice', text: draft.forCoach.courseForCoach.saysLocked(ref, quoted) })
  notice(draft, draft.texts.client.heardLocked(emergencyNumber(draft.client)))
}

const notice = (draft: Draft, text: string): void => void draft.toClient({ kind: 'notice', text })
