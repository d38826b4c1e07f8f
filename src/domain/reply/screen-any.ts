import { CARES, type Care, stopsDrills } from '../care.ts'
import type { Day } from '../day.ts'
import { careOf, type SignId } from '../signs/catalogue.ts'
import { screen } from '../signs/screen.ts'
import type { Screening } from '../signs/screening.ts'
import { readReply } from './read.ts'

/**
 * Signs in somebody's words, read in their language. Somebody frightened may write in another one: what is plain to
 * the screen there, and missed here, is asked back rather than missed, and so is what is a hint there in words of
 * which nothing was understood here.
 * @param others the languages beside their own in which the words are looked at
 * @param day the local day on which they were written
 */
export function screenAny(text: string, language: string, others: readonly string[], day: Day): Screening {
  const own = screen(text, language)
  if (own.signs.length > 0) return own
  const heard = others.map((code) => screen(text, code))
  const plain = heard.flatMap(({ signs, unsure }) => signs.filter((sign) => !unsure.includes(sign)))
  const signs = grave(plain)
  const asked = signs.length > 0 ? signs : grave(heard.flatMap((one) => one.signs))
  if (asked.length === 0 || (signs.length === 0 && isRead(text, language, day))) return own
  return { ...own, signs: asked, unsure: asked, care: gravest(asked.map(careOf)) }
}

const grave = (signs: readonly SignId[]): SignId[] =>
  [...new Set(signs)].filter((sign) => stopsDrills(careOf(sign)))

// "No" begins an answer in both languages: in a longer text it may belong to the other one.
const ANSWER_WORDS = 3

/** Whether the reader of that language makes anything of the words, be it the answer to a question. */
function isRead(text: string, locale: string, day: Day): boolean {
  const asked = text.trim().split(/\s+/).length <= ANSWER_WORDS ? 'settled' : null
  const { intent, answer } = readReply(text, { planned: 1, today: day, promptDay: day, asked, locale })
  return intent !== 'other' || answer !== null
}

const gravest = (cares: readonly Care[]): Care =>
  [...cares].sort((a, b) => CARES.indexOf(b) - CARES.indexOf(a))[0] ?? 'none'
