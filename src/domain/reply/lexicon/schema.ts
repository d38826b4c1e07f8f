import { z } from 'zod'
import { phrasesIn } from '../../phrase-list.ts'
import { REACHES } from '../../reach.ts'
import { INTENTS } from '../reading.ts'

/** Cues that carry no value of their own. What each does stands beside it; which words they are is data. */
const CUES = {
  leg: 'a limb without a zone: asked back',
  legs: 'the same in the plural',
  arm: 'a part of the body that no reach knows; takes the side of its neighbour away',
  all: 'every session planned',
  both: 'two sessions, or both sides before a plural',
  half: 'half of what is planned, or half a point after a number',
  nothing: 'none: of sessions, reach or pain by its place',
  noSession: 'no session done, in so many words',
  dayOff: 'the same, where no session is counted beside it',
  oneSession: 'one session told by its place or hour; counts with `only` or where the others are told too',
  aSession: 'a session, another: one each, where something was done',
  onTen: 'between a number and ten the same as `outOf`',
  countTimes: 'after a number, how often something was done',
  missed: 'sessions left out',
  vagueCount: 'some sessions, no telling how many: asked back',
  notYet: 'sessions may still come: asked back',
  session: 'names sessions; its number stands before or after',
  did: 'tells that something was done; its number follows',
  done: 'the same with its number before',
  sessionLetter: 'names sessions where it touches the number',
  painLetter: 'names pain where it touches the number',
  pain: 'names pain; its number stands before or after',
  painFree: 'pain 0',
  noSymptoms: 'pain 0 and reach none',
  painVague: 'pain in words: asked back',
  hardly: 'weakens a denial of pain: asked back',
  times: 'says when or how often a pain was felt; the number beside it is pain',
  dayPart: 'a part of the day; the number beside it is mostly pain',
  place: 'names reach',
  sideNoun: 'names a side',
  otherSide: 'the other leg',
  compare: 'compares with a day; that day is no date',
  better: 'a change of pain without a value: asked back',
  moved: 'a change of reach without a value: asked back',
  same: 'as before: asked back',
  no: 'denies what follows',
  noBeyond: 'denies what lies beyond the zone that follows: the zone is the end of it',
  clear: 'denies what comes before',
  was: 'past tense',
  now: 'sets the present against the past',
  only: 'ends a denial',
  past: 'another time altogether',
  but: 'contrast: ends a clause',
  except: 'takes something out of a denial',
  or: 'joins; between two numbers a range',
  and: 'joins',
  to: 'between two numbers a range',
  from: 'with a later `to`, a change or a range',
  change: 'turns from-to into a change',
  wasOf: 'the same where a `to` follows, else past tense',
  between: 'opens a range',
  outOf: 'before the top of a scale',
  point: 'between two numbers a decimal',
  of: 'between two numbers the same as `outOf`, elsewhere an article',
  percent: 'a share, no value',
  atMost: 'the number after it is the worst',
  limit: 'bounds a number without giving it: asked back',
  above: 'the zone next nearer to the spine',
  below: 'the zone next further, where said to be just there',
  just: 'makes `below` a near place',
  beyond: 'a zone passed: which one is asked back',
  partOf: 'a part of the zone that follows',
  maybe: 'joins two numbers to a range',
  article: 'a small word that may stand between a name and its number',
  be: 'a verb that may stand there too',
  inside: 'before a zone; a number before it is pain',
  soft: 'any other word that changes nothing',
  correction: 'what follows replaces what came before',
  andPart: 'after a number, a part of one more',
  sorry: 'the same, where a value follows at once',
  wrote: 'what follows was written before; another of its kind after it is meant instead',
  later: 'not done yet: what follows is no value',
  someone: 'somebody else',
  ask: 'opens a question',
  unit: 'a number before it is no value of ours',
  unitBefore: 'a number after it is no value of ours',
  setsOf: 'sets of so many: no value of ours',
  clock: 'a number after it is a time',
  hour: 'a number after it and nothing more is a time',
  exercise: 'after a zone, the name of an exercise',
  yes: 'yes',
  nope: 'no as an answer',
  thanks: 'thanks and other courtesies: dropped',
  ago: 'after a number of days',
  dayUnit: 'days, as in days ago',
  nth: 'the ending of a day of the month',
  none: 'a phrase that looks like a value and is none',
} as const satisfies Record<string, string>
export type PlainCue = keyof typeof CUES

const FOLDED = /^\p{Ll}+( \p{Ll}+)*$/u

/** Words and phrases, comma-separated, as folded and without apostrophes. */
const phrases = z.string().transform((text, context): string[] => {
  const list = phrasesIn(text)
  const odd = list.find((phrase) => !FOLDED.test(phrase))
  if (odd !== undefined)
    context.addIssue({ code: 'custom', message: `folded words with single spaces between, not "${odd}"` })
  return list
})

const numbered = z.record(z.string().regex(/^\d+(\.\d+)?$/), phrases)
const intents = INTENTS.filter((intent) => intent !== 'checkin' && intent !== 'other')

const BARRIERS = ['time', 'pain', 'unsure-how', 'no-kit', 'other'] as const
export type Barrier = (typeof BARRIERS)[number]

export const LexiconSchema = z.strictObject({
  language: z.string().regex(/^[a-z]{2}$/),
  /** "3,5" is three and a half wherever it stands. */
  decimalComma: z.boolean(),
  /** "3/4/2026" is the third of April. */
  dayFirst: z.boolean(),
  /** Verbs that open a question where they stand first and a question mark ends the sentence ("is calf 4 ok?"). */
  inverted: phrases,
  zones: z.record(z.enum(REACHES), phrases),
  /** Forms among the zones that mean both sides after "both". */
  pairs: phrases,
  numbers: numbered,
  /** How often, as a number of sessions. */
  counts: numbered,
  /** Small words that dictation writes for a number; read so only where no other word can stand. */
  homophones: numbered.default({}),
  /** Endings of verb forms that tell what somebody was doing ("7 bending"). */
  gerunds: phrases.default([]),
  /** Names of one session: a number after such a word is its place in the row ("session 2"). */
  singular: phrases.default([]),
  sides: z.strictObject({ left: phrases, right: phrases }),
  /** Day words that mostly belong to a thing ("yesterday's drive"); alone or before our own words they date. */
  daysOfThings: phrases.default([]),
  /** Between two numbers such a word takes the first back; `always` without a comma after it as well ("5 no 6"). */
  takesBack: z.strictObject({ words: phrases, always: z.boolean() }),
  /** Between a thing done and a part of the day, a number after such words is an hour ("one at 7 this morning"). */
  atHours: phrases.default([]),
  /** A number after such words, with one of the endings where the language has them, is a day of the month. */
  dateOpeners: phrases.default([]),
  ordinals: phrases.default([]),
  /** In the name of a session: others may follow it ("the first one"). */
  firstOfRow: phrases.default([]),
  /** Forms of a number that agree with sessions ("una"), and the article that does ("las 2"). */
  ofSessions: z.strictObject({ numbers: phrases, articles: phrases }).default({ numbers: [], articles: [] }),
  /** Calendar days back from today. */
  daysBack: numbered,
  /** 1 is Monday. */
  weekdays: numbered,
  /** Words that name a weekday only before a number, where another day is named ("Sat 1 thigh 5, Sun ..."). */
  weekdaysAmong: numbered.default({}),
  months: numbered,
  cues: z.partialRecord(z.enum(Object.keys(CUES) as [PlainCue, ...PlainCue[]]), phrases),
  /** Heard anywhere in a message, or only as the whole of it. */
  intents: z.record(
    z.enum(intents as [(typeof intents)[number]]),
    z.strictObject({ within: phrases, whole: phrases }),
  ),
  /** Phrases in which the words of a wish mean something else ("leave me a note", "a break between sets"). */
  aside: phrases.default([]),
  /** What takes back the wish that follows at once ("don't" before "cancel my plan"). */
  refusals: phrases.default([]),
  /** Things that may be bad without pain ("work was awful", "bad weather"). */
  things: phrases.default([]),
  /** Said of what somebody has heard or read, and perhaps no more than that ("ok"). */
  gotIt: phrases,
  barriers: z.record(z.enum(BARRIERS), phrases),
  /** Single words worth finding under a slip; a slang or small word would catch too much. */
  bent: phrases,
  /** Common words that a slip of the finger must not turn into one of ours. */
  known: phrases,
  /** Rows of the keyboard: neighbours are likely slips. */
  keyboard: z.array(z.string()),
})
export type LexiconData = z.input<typeof LexiconSchema>
export type Lexicon = z.output<typeof LexiconSchema>
