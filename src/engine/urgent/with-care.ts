import type { Draft } from '../draft.ts'
import { isLocked } from '../status.ts'

/** The same words; while a sign is open they end with what matters more than what was asked. */
export const withCare = (draft: Draft, text: string): string =>
  isLocked(draft.file) ? `${text}\n${draft.texts.client.careFirst}` : text
