import { type Day, laterOf } from '../../domain/day.ts'
import { watch } from '../coach/watch.ts'
import type { Draft } from '../draft.ts'
import { lastAnswered } from '../history.ts'
import { isLocked, openHold } from '../status.ts'
import { askSign } from '../urgent/sign-rows.ts'
import { carry } from './asked.ts'
import { nextQuestion } from './next-question.ts'
import type { Noted } from './noted.ts'
import { resume, returnLower } from './quiet.ts'

/** From here on it is asked whether any position eases the pain. */
const SEVERE_PAIN = 9

/** After any day was written: the pause that came by itself ends, a long gap lowers the rungs, the rules look. */
export function afterRecord(draft: Draft, days: readonly Day[]): void {
  if (days.length === 0) return
  const [first, latest] = [[...days].sort()[0]!, [...days].sort().at(-1)!]
  if (openHold(draft.file, 'pause')?.reason === 'quiet') resume(draft, 'client')
  if (lastAnswered(draft.file) === latest) returnLower(draft, lastAnswered(draft.file, first), first)
  for (const day of days) askAboutSeverePain(draft, day)
  // late days change what every later day says: the rules look again at the latest day known
  watch(draft, laterOf(latest, lastAnswered(draft.file) ?? latest))
}

/** Pain of 9 or 10 is likely severe and unrelenting: unsure until answered, once a day. */
function askAboutSeverePain(draft: Draft, day: Day): void {
  const row = draft.file.checkIns.find((checkIn) => checkIn.day === day)
  if ((row?.pain ?? 0) < SEVERE_PAIN || isLocked(draft.file)) return
  const asked = draft.file.signs.some((sign) => sign.sign === 'severe-unrelenting' && sign.day === day)
  if (!asked) askSign(draft, 'severe-unrelenting', day, draft.forCoach.words.values(row!))
}

/** An answer by a press: the message changes in place, and the next question is a message of its own. */
export function afterPress(draft: Draft, noted: Noted): void {
  const day = noted.days.at(-1)
  afterRecord(draft, noted.days)
  const question = nextQuestion(draft, day ?? draft.today, [])
  if (question && (day !== undefined || question.pressing))
    draft.toClient({ kind: 'ask', text: question.text, ...carry(draft, question) })
}
