import type { LexiconData } from '../schema.ts'
import { barriers } from './barriers.ts'
import { cuesOfSlots } from './cues.ts'
import { cuesOfGrammar } from './grammar.ts'
import { bent, keyboard, known } from './known.ts'
import {
  counts,
  daysBack,
  daysOfThings,
  gerunds,
  homophones,
  months,
  numbers,
  pairs,
  sides,
  singular,
  weekdays,
  zones,
} from './slots.ts'
import { aside, gotIt, intents, refusals, things } from './talk.ts'

/** English, British and American, with the shorthand of people on a phone. */
export const en: LexiconData = {
  language: 'en',
  decimalComma: false,
  atHours: 'at, at about, at around, around',
  dateOpeners: 'for the, on the, report for the',
  ordinals: 'st, nd, rd, th',
  firstOfRow: 'first',
  takesBack: { words: 'no, nope, nah, noo', always: true },
  dayFirst: false,
  inverted: 'is, are, was, were, has, have, had',
  zones,
  pairs,
  numbers,
  counts,
  gerunds,
  homophones,
  sides,
  singular,
  daysBack,
  daysOfThings,
  weekdays,
  weekdaysAmong: { 6: 'sat' },
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
