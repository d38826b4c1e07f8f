import { CARES, type Care, stopsDrills } from '../../domain/care.ts'
import { readReply } from '../../domain/reply/read.ts'
import { careOf, type SignId } from '../../domain/signs/catalogue.ts'
import { screen } from '../../domain/signs/screen.ts'
import type { Screening } from '../../domain/signs/screening.ts'
import type { Draft } from '../draft.ts'

/**
 * Signs in a client's words, read in their language. Somebody frightened may write in another one: what is plain to
 * the screen there, and missed here, is asked back rather than missed, and so is what is a hint there in words of
 * which nothing was understood here.
 */
export function screenWords(draft: Draft, text: string): Screening {
  const { client } = draft
  const own = screen(text, client.language)
  if (own.signs.length > 0) return own
  const heard = otherLanguages(draft).map((code) => screen(text, code))
  const plain = heard.flatMap(({ signs, unsure }) => signs.filter((sign) => !unsure.includes(sign)))
  const signs = grave(plain)
  const asked = signs.length > 0 ? signs : grave(heard.flatMap((one) => one.signs))
  if (asked.length === 0 || (signs.length === 0 && isRead(draft, text))) return own
  return { ...own, signs: asked, unsure: asked, care: gravest(asked.map(careOf)) }
}

const grave = (signs: readonly SignId[]): SignId[] =>
  [...new Set(signs)].filter((sign) => stopsDrills(careOf(sign)))

/** Whether the reader of the client's own language makes anything of the words, be it the answer to a question. */
function isRead({ client, today }: Draft, text: string): boolean {
  const context = { planned: 1, today, promptDay: today, asked: 'settled', locale: client.language } as const
  const { intent, answer } = readReply(text, context)
  return intent !== 'other' || answer !== null
}

/** Our languages but the client's own. */
export const otherLanguages = ({ client, texts }: Draft): readonly string[] =>
  [...new Set(Object.values(texts.course.languageWords))].filter((code) => code !== client.language)

const gravest = (cares: readonly Care[]): Care =>
  [...cares].sort((a, b) => CARES.indexOf(b) - CARES.indexOf(a))[0] ?? 'none'
