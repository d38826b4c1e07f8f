import { fold } from './fold.ts'
import { LANGUAGES } from './lexicon/index.ts'

/** Words, and the marks that end them. */
const ENDED = /^([^.!]*)[.!]*$/

/** Whether all that was said may be that something was heard or read ("ok", "vale!"), in any of our languages. */
export function saysGotIt(text: string): boolean {
  const words = ENDED.exec(fold(text.trim()).text)?.[1]
  return words !== undefined && LANGUAGES.some(({ gotIt }) => gotIt.has(words))
}
