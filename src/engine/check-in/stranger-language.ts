import { CARES } from '../../domain/care.ts'
import { screen } from '../../domain/signs/screen.ts'
import type { Texts } from '../../text/index.ts'

/**
 * Somebody unknown, or who has left, may write in any language: the one in which the words sound gravest, so that no
 * sign is missed; their own, or English, where they say nothing of a sign.
 */
export function textsForStranger(textsFor: (language: string) => Texts, text: string, own = 'en'): Texts {
  const codes = [...new Set([own, ...Object.values(textsFor(own).course.languageWords)])]
  const [gravest = own] = codes.toSorted((a, b) => gravity(text, b) - gravity(text, a))
  return textsFor(gravest)
}

const gravity = (text: string, language: string): number => CARES.indexOf(screen(text, language).care)
