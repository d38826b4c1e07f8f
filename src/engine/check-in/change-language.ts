import { invite } from '../course/enrol.ts'
import { goOnScreening } from '../course/screening-waits.ts'
import type { Draft } from '../draft.ts'
import { isPressing } from '../status.ts'
import { carry } from './asked.ts'
import { nextQuestion } from './next-question.ts'

/** The code of the language that a line asks for, where it says that and nothing else. */
export function languageWished({ texts }: Draft, text: string): string | null {
  const said = text
    .trim()
    .toLowerCase()
    .replace(/[.!,¡]+/g, '')
  return texts.course.languageWords[said] ?? null
}

/** From now on in that language; a question that waits is put again, since it may not have been understood. */
export function changeLanguage(draft: Draft, language: string): void {
  draft.put('client', { ...draft.client, language })
  if (draft.client.stage === 'invited') return invite(draft)
  draft.toClient({ kind: 'notice', text: draft.texts.course.language })
  if (draft.client.stage === 'screening' && goOnScreening(draft)) return
  const question = isPressing(draft.file) ? nextQuestion(draft, draft.today, []) : null
  if (question) draft.toClient({ kind: 'ask', text: question.text, ...carry(draft, question) })
}
