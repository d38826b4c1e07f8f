import { screenAny } from '../../domain/reply/screen-any.ts'
import type { Screening } from '../../domain/signs/screening.ts'
import type { Draft } from '../draft.ts'

/** Signs in a client's words, in their language or in another of ours. */
export const screenWords = (draft: Draft, text: string): Screening =>
  screenAny(text, draft.client.language, otherLanguages(draft), draft.today)

/** Our languages but the client's own. */
export const otherLanguages = ({ client, texts }: Draft): readonly string[] =>
  [...new Set(Object.values(texts.course.languageWords))].filter((code) => code !== client.language)
