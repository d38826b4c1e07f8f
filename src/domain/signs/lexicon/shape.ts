import { z } from 'zod'
import { phrasesIn } from '../../phrase-list.ts'
import { SIGN_IDS } from '../catalogue.ts'
import { classifierShape } from '../classifier.ts'
import { weightsShape } from '../weights.ts'

/**
 * Classes the screen's code knows by name; every other class is the language's own affair.
 * `no` stands before a noun, `not` before a verb, `nil` answers ("none"); `unsaid` looks like a negation and is none.
 * `unfelt` ("don't feel") denies where a `symptom` follows and tells of one elsewhere.
 * `deny-all` denies every sign by itself, `all-those` with the answer that follows ("all of those: no").
 * `elsewhere` is what no sign is about ("the exercises"), `verb` a word that makes a sentence of its item ("burns"),
 * `spread` what makes it news ("since yesterday").
 * `rest` ("everything else") is what a `fine` is said of where it is not said of the finding before it.
 * `proxy` tells that somebody else writes for the client, so that "she" is them; `presents` begins to say who writes,
 * and a `plea` asks what to do now.
 * `old`, `gone` and `worried` can take a sign back; `past`, `ended` and `uneasy`, their weak kin, only make it asked.
 */
export const CUES = [
  'no',
  'not',
  'nil',
  'unsaid',
  'unfelt',
  'symptom',
  'double',
  'restart',
  'deny-all',
  'all-those',
  'contrast',
  'ender',
  'and',
  'or',
  'except',
  'filler',
  'fine',
  'rest',
  'manner',
  'odd',
  'cant',
  'me',
  'own',
  'person',
  'third',
  'report',
  'my-turn',
  'like',
  'supposed',
  'worried',
  'uneasy',
  'asking',
  'doubt',
  'old',
  'past',
  'weeks-ago',
  'ongoing',
  'over',
  'gone',
  'gone-finding',
  'ended',
  'always',
  'lost',
  'admitted',
  'proxy',
  'presents',
  'plea',
  'actual',
  'shield',
  'shielded',
  'place',
  'topic',
  'thing',
  'gerund',
  'finding',
  'works',
  'task',
  'holding',
  'living',
  'nothing',
  'well',
  'score',
  'leaving',
  'idiom',
  'elsewhere',
  'verb',
  'spread',
] as const
export type Cue = (typeof CUES)[number]

/** Phrases parted by commas; "(a/b) c" stands for "a c" and "b c", an empty choice is allowed. */
const phrases = z.string().transform((text, context): string[] => {
  const list = phrasesIn(text)
  const open = list.find(
    (phrase) => /[()]/.test(phrase) && phrase.split('(').length !== phrase.split(')').length,
  )
  if (open !== undefined) context.addIssue({ code: 'custom', message: `bracket left open: ${open}` })
  return list
})

const options = z.strictObject({
  /** Units that may stand between two parts (default 3). */
  within: z.number().int().min(0).max(12).optional(),
  /** The farthest break that may lie between two parts (default a comma). */
  across: z.enum(['none', 'comma', 'sentence']).optional(),
  /** Ask back, unless a unit of class `sure` stands in the same sentence. */
  unsure: z.boolean().optional(),
  sure: z.string().optional(),
  /** A unit of this class must stand in the same sentence. */
  needs: z.string().optional(),
  /** No unit of this class may stand in the same phrase, which ends at a comma. */
  unless: z.string().optional(),
  /** `unless` looks at the whole sentence ("lost half a stone, the diet works"). */
  wide: z.boolean().optional(),
  /** A unit of this class must stand somewhere in the message. */
  anywhere: z.string().optional(),
  /** Only where no other pattern uses these units. */
  alone: z.boolean().optional(),
  /** No number may stand in the message: with one the words name a scale ("worst pain 6"). */
  unscored: z.boolean().optional(),
  /** Told by a picture in everyday words: what was learned does not take it back. */
  isPicture: z.boolean().optional(),
  /** The negation is part of the finding ("haven't peed since noon") and takes nothing back. */
  isNegative: z.boolean().optional(),
  /** Evidence of absence where it is negated, nothing where it is not. */
  denialOnly: z.boolean().optional(),
  /** The words deny the sign by themselves ("no erection problems"). */
  isDenial: z.boolean().optional(),
})

/** How the second layer reads; see `net.ts`. */
const frameOptions = z.strictObject({
  /** Words that may stand between the parts (default 7). */
  within: z.number().int().min(0).max(14).optional(),
  /** No word of these classes ("a|b") may stand near. */
  unless: z.string().optional(),
  /** A word of these classes must stand in the same sentence. */
  needs: z.string().optional(),
  /** The parts may stand in sentences next to each other ("I wiped. Nothing at all"). */
  across: z.boolean().optional(),
})

const frame = z.tuple([z.enum(SIGN_IDS), z.string().min(1), frameOptions])

/**
 * The second layer, which only ever asks: topics (where, with what) and troubles (what befalls them). It has words
 * of its own, so that no word of a topic changes how the first layer reads a message.
 */
const net = z.strictObject({
  /** Class -> its words; `deny` takes back a trouble, `unable` takes away what should work, `stop` ends both. */
  words: z.record(z.string(), phrases),
  /** Sign, parts in any order ("topic & trouble|-function": a function counts where it fails), options. */
  frames: z.array(frame),
  /** Whether slips of the words of its topics and troubles are mended too. */
  spells: z.boolean().default(false),
  /** Whether ordinary talk counts only in its own phrase, not across a comma. */
  within: z.enum(['sentence', 'phrase']).default('sentence'),
})

const pattern = z.tuple([z.enum(SIGN_IDS), z.string().min(1), options])

/** The words in which others speak of the client, as the client would say them; see `as-client.ts`. */
const mine = z.strictObject({
  /** Who the client may be to the writer ("husband"), and what stands before it ("my"). */
  people: phrases,
  lead: phrases,
  /** What stands for them ("i") and for what is theirs ("my"). */
  subject: z.string().min(1),
  owner: z.string().min(1),
  /** Words, and words before a certain next one ("se le"), always turned; verbs only behind their subject. */
  words: z.record(z.string(), z.string()),
  verbs: z.record(z.string(), z.string()),
  /** Whether a verb needs no subject beside it. */
  dropsSubject: z.boolean(),
  /** How a verb's ending turns ("-rse" to "-rme"). */
  ending: z.tuple([z.string(), z.string()]).optional(),
})
export type Mine = z.output<typeof mine>

export const lexiconShape = z.strictObject({
  locale: z.string().min(2),
  version: z.string().min(1),
  /** Class -> its words and phrases. */
  words: z.record(z.string(), phrases),
  /**
   * Class -> phrases about when, how and why. They are found over and above the words, so a phrase of time
   * never hides a word that it holds ("numb since I woke up").
   */
  circumstances: z.record(z.string(), phrases),
  /** Class -> classes whose words belong to it too. */
  groups: z.record(z.string(), z.array(z.string())),
  /** Sign, parts ("a b" in this order, "a & b" in any; "a|b" either), options. */
  patterns: z.array(pattern),
  net: net.default({ words: {}, frames: [], spells: false, within: 'sentence' }),
  /** The third layer, which was learned and only asks; see `weights.ts`. */
  weights: weightsShape.nullable().default(null),
  /** The fourth layer, learned too; see `classifier.ts`. */
  classifier: classifierShape.nullable().default(null),
  /** A sign's subject: named as fine, or after "no", it denies the sign. */
  subjects: z.record(z.string(), z.enum(SIGN_IDS)),
  /** Chat and dialect spellings, and the word each stands for. */
  spellings: z.record(z.string(), z.string()),
  mine,
  /** Single words of a check-in: where a message holds no other, it tells no sign; see `plain.ts`. */
  plain: z.strictObject({ words: phrases, zones: phrases, pairs: phrases }),
  /** Thanks and the like, which change nothing in what a message tells. */
  courtesies: phrases,
  /** Words and pairs of words that change nothing of what is said: greetings, thanks, laughter. */
  chatter: phrases,
  /** Words that answer with no, and those before which such a word is a sentence of its own ("no i can't pee"). */
  answers: z.strictObject({ words: phrases, before: phrases, behind: phrases }),
  /** Words that may stand inside any phrase without breaking it. */
  skipped: phrases,
  /** Everyday words that a typing slip must never be made of. */
  ordinary: phrases,
})

export type LexiconSource = z.input<typeof lexiconShape>
export type Lexicon = z.output<typeof lexiconShape>
export type Pattern = Lexicon['patterns'][number]
export type NetSource = z.input<typeof net>
export type Frame = Lexicon['net']['frames'][number]
