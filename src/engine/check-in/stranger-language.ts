import { CARES } from '../../domain/care.ts'
import { screen } from '../../domain/signs/screen.ts'
import type { Texts } from '../../text/index.ts'

/**
 * Somebody unknown may write in any language: the one in which the words sound gravest, so that no sign is missed;
 * English where they say nothing of a sign.
 */
export function textsForStranger(textsFor: (language: string) => Texts, text: string): Texts {
  const english = textsFor('en')
  const codes = [...new Set(['en', ...Object.values(english.course.languageWords)])]
  const [gravest = 'en'] = codes.toSorted((a, b) => gravity(text, b) - gravity(text, a))
  return textsFor(gravest)
}

const gravity = (text: string, language: string): number => CARES.indexOf(screen(text, language).care)
