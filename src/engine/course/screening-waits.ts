import { screen } from '../../domain/signs/screen.ts'
import type { Draft } from '../draft.ts'
import { isLocked, isPressing } from '../status.ts'
import { carryScreening, nextScreeningStep } from './screening.ts'

/** Hours after the first yes at which somebody whose questions are half done is asked once to go on. */
const WAITS_HOURS = 24
const HOUR_MS = 3_600_000

export const remindOfScreening = (draft: Draft): void =>
  draft.due('screening', new Date(draft.now.getTime() + WAITS_HOURS * HOUR_MS))

/** Half-filled is kept: the part that comes next, once more. */
export function screeningWaits(draft: Draft): void {
  if (!mayGoOn(draft)) return
  carryScreening(draft, nextScreeningStep(draft)!, draft.texts.course.screeningWaits)
}

const mayGoOn = (draft: Draft): boolean =>
  draft.client.stage === 'screening' &&
  !isLocked(draft.file) &&
  !isPressing(draft.file) &&
  nextScreeningStep(draft) !== null

/** "Go on", a greeting, or a command that needs a plan: the part that comes next. True where there is one. */
export function goOnScreening(draft: Draft): boolean {
  if (!mayGoOn(draft)) return false
  carryScreening(draft, nextScreeningStep(draft)!, draft.texts.course.screeningGoesOn)
  return true
}

export function saysGoOn({ texts, client }: Draft, text: string): boolean {
  const said = text
    .trim()
    .toLowerCase()
    .replace(/[.!]+$/, '')
  return texts.course.goOn.includes(said) && screen(text, client.language).signs.length === 0
}
