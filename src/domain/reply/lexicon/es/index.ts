import type { LexiconData } from '../schema.ts'
import { barriers } from './barriers.ts'
import { cuesOfSlots } from './cues.ts'
import { cuesOfGrammar } from './grammar.ts'
import { bent, keyboard, known } from './known.ts'
import { counts, daysBack, months, numbers, pairs, sides, weekdays, zones } from './slots.ts'
import { aside, gotIt, intents, refusals, things } from './talk.ts'

/** Spanish of Spain and of the Americas, with the shorthand of people on a phone. */
export const es: LexiconData = {
  language: 'es',
  decimalComma: true,
  dayFirst: true,
  dateOpeners: 'el dia, del dia, el dia de, para el dia',
  firstOfRow: 'primera',
  takesBack: { words: 'no, nop', always: false },
  ofSessions: { numbers: 'una, una sola', articles: 'las' },
  inverted: '',
  zones,
  pairs,
  numbers,
  counts,
  sides,
  daysBack,
  weekdays,
  months,
  cues: { ...cuesOfSlots, ...cuesOfGrammar },
  intents,
  aside,
  refusals,
  things,
  gotIt,
  barriers,
  bent,
  known,
  keyboard,
}
