import { CARES, type Care, stopsDrills } from '../../domain/care.ts'
import { careOf } from '../../domain/signs/catalogue.ts'
import { screen } from '../../domain/signs/screen.ts'
import type { Screening } from '../../domain/signs/screening.ts'
import type { Draft } from '../draft.ts'

/**
 * Signs in a client's words, read in their language. Somebody frightened may write in another one: what is plain to
 * the screen there, and missed here, is asked back rather than missed.
 */
export function screenWords(draft: Draft, text: string): Screening {
  const { client } = draft
  const own = screen(text, client.language)
  if (own.signs.length > 0) return own
  const signs = otherLanguages(draft).flatMap((code) => {
    const heard = screen(text, code)
    return heard.signs.filter((sign) => !heard.unsure.includes(sign) && stopsDrills(careOf(sign)))
  })
  if (signs.length === 0) return own
  return { ...own, signs, unsure: signs, care: gravest(signs.map(careOf)) }
}

/** Our languages but the client's own. */
export const otherLanguages = ({ client, texts }: Draft): readonly string[] =>
  [...new Set(Object.values(texts.course.languageWords))].filter((code) => code !== client.language)

const gravest = (cares: readonly Care[]): Care =>
  [...cares].sort((a, b) => CARES.indexOf(b) - CARES.indexOf(a))[0] ?? 'none'
