import type { LexiconData } from '../schema.ts'
import { answers } from './answers.ts'
import { looksLike } from './looks-like.ts'
import { numbersAndJoints } from './numbers-and-joints.ts'
import { otherNumbers } from './other-numbers.ts'
import { scope } from './scope.ts'
import { smallWords } from './small-words.ts'
import { turnsOfTalk } from './turns-of-talk.ts'

/** Days told by a number. */
const daysTold = {
  ago: 'ago, back from today',
  dayUnit: 'days, day',
  nth: 'st of, nd of, rd of, th of',
} satisfies Partial<LexiconData['cues']>

export const cuesOfGrammar = {
  ...scope,
  ...numbersAndJoints,
  ...smallWords,
  ...turnsOfTalk,
  ...otherNumbers,
  ...answers,
  ...daysTold,
  ...looksLike,
}
