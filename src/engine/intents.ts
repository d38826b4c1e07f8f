import type { Reading } from '../domain/reply/reading.ts'
import type { Draft } from './draft.ts'
import { leave } from './leave.ts'
import { pause, resume } from './quiet.ts'
import { openHold } from './status.ts'
import { workOn } from './work.ts'

/** A message that is no check-in: what else was meant. */
export function onIntent(draft: Draft, reading: Reading, text: string): void {
  const { client } = draft.texts
  switch (reading.intent) {
    case 'pause':
      return notice(draft, pause(draft, 'client', 'client') ? client.paused : client.alreadyPaused)
    case 'resume':
      return notice(draft, resume(draft, 'client') ? client.resumed(draft.client.prompt) : client.notPaused)
    case 'leave':
      return leave(draft)
    case 'help':
      return notice(draft, client.help)
    case 'today': {
      const work = workOn(draft, draft.today, 'full')
      const text = openHold(draft.file, 'lock') ? client.stillLocked : work.text
      draft.toClient({ kind: 'plan', text, drills: work.drills })
      return
    }
    case 'question':
      return ask(draft, text)
    case 'thanks':
      return notice(draft, client.welcomeBack)
    case 'correct':
      return notice(draft, client.howToCorrect)
    default:
      return notice(draft, client.notUnderstood)
  }
}

const notice = (draft: Draft, text: string): void => void draft.toClient({ kind: 'notice', text })

/** A question in words is carried to the coach's channel; the answer comes back the same way. */
function ask(draft: Draft, text: string): void {
  const { client, coach } = draft.texts
  draft.toCoach({
    kind: 'notice',
    text: coach.question(draft.client.ref, draft.file.practice.quote ? text : null),
  })
  notice(draft, client.questionPassedOn)
}
