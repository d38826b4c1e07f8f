import { type Care, higherCare } from '../care.ts'
import { type Folded, fold } from '../reply/fold.ts'
import { type Token, tokenise } from '../reply/tokens.ts'
import { careOf, SIGN_IDS, type SignId } from './catalogue.ts'
import type { Compiled } from './compile.ts'
import { contextOf } from './context.ts'
import type { Features } from './features.ts'
import { besideFineElsewhere } from './fine-elsewhere.ts'
import { judge, type Verdict } from './judge.ts'
import { type Learned, learnedOf } from './learned.ts'
import { lexiconFor } from './lexicon/languages.ts'
import { carriesOf, type Match, matchesOf, type Reading } from './match.ts'
import { polarityOf } from './negation.ts'
import { netMatches } from './net.ts'
import { isPlain } from './plain.ts'
import type { Screening } from './screening.ts'
import { asidesOf, BREAK, type Said, unitsOf } from './units.ts'
import { wordsOf } from './words.ts'

const NOTHING: Screening = { signs: [], denied: [], care: 'none', unsure: [], evidence: [] }

interface Judged {
  readonly match: Match
  readonly verdict: Verdict
}

/** A surer or graver sign that already tells what the other would. */
const TOLD_BY: Partial<Record<SignId, SignId>> = {
  'new-numbness': 'leg-weakness',
  'new-symptoms-elsewhere': 'stroke-signs',
  'minor-injury-risk': 'major-injury',
}

/**
 * Looks for urgent signs in a message; knows no history. Total on any string, cost linear in its length.
 * An unknown locale is read as English.
 */
export function screen(text: string, locale: string): Screening {
  const folded = fold(text)
  return screenTokens(folded, tokenise(folded), locale)
}

/** The same for a message that was cut into tokens already. */
export function screenTokens(folded: Folded, words: readonly Token[], locale: string): Screening {
  const lexicon = lexiconFor(locale)
  if (isPlain(words, lexicon.plain)) return NOTHING
  const features = featuresOf(words, lexicon)
  const { reading } = features
  if (reading.units.length === 0) return NOTHING
  const whole = screenFeatures(folded, features)
  if (whole.care === 'emergency') return whole
  return besideFineElsewhere(words, reading)
    .map((side) => screenFeatures(folded, featuresOf(side, lexicon)))
    .reduce(withDoubts, whole)
}

/** What a part of the message tells by itself is in doubt, since all of it together did not. */
function withDoubts(whole: Screening, part: Screening): Screening {
  const fresh = part.signs.filter((sign) => !whole.signs.includes(sign))
  if (fresh.length === 0) return whole
  const signs = SIGN_IDS.filter((sign) => whole.signs.includes(sign) || fresh.includes(sign))
  const isFresh = (sign: SignId | 'all'): boolean => sign !== 'all' && fresh.includes(sign)
  return {
    signs,
    denied: whole.denied.filter((sign) => sign !== 'all' && !isFresh(sign)),
    care: careFor(signs),
    unsure: signs.filter((sign) => whole.unsure.includes(sign) || fresh.includes(sign)),
    evidence: [
      ...whole.evidence.filter(({ sign }) => sign !== 'all' && !isFresh(sign)),
      ...part.evidence.filter(({ sign }) => isFresh(sign)),
    ],
  }
}

function screenFeatures(folded: Folded, features: Features): Screening {
  const { reading, net } = features
  if (reading.units.length === 0) return NOTHING
  const judged = judgedOf(reading, learnedOf(features), netMatches(net, reading))
  const { sure, unsure } = sorted(judged)
  const signs = SIGN_IDS.filter((sign) => sure.has(sign) || unsure.has(sign))
  const denied = denials(reading, judged, signs)
  if (signs.length === 0 && denied.length === 0) return NOTHING
  const { units } = reading
  const quote = (from: number, to: number): string => folded.quote(units[from]!.start, units[to]!.end)
  return {
    signs,
    denied,
    care: careFor(signs),
    unsure: signs.filter((sign) => !sure.has(sign)),
    evidence: evidenceOf(reading, judged, signs, denied, quote),
  }
}

/** A message made ready for all three layers. */
export function readingOf(text: string, locale: string): Features & { readonly folded: Folded } {
  const folded = fold(text)
  return { folded, ...featuresOf(tokenise(folded), lexiconFor(locale)) }
}

function featuresOf(tokens: readonly Token[], lexicon: Compiled): Features {
  const said: Said = { tokens, words: wordsOf(tokens, lexicon) }
  const units = unitsOf(said, lexicon, 'main')
  const context = contextOf(units, asidesOf(said, units, lexicon), lexicon, endsAsking(tokens))
  const reading: Reading = {
    units,
    lexicon,
    polarity: polarityOf(units, lexicon, context.anywhere),
    context,
    carries: carriesOf(units, lexicon, context.anywhere),
  }
  return { said, reading, net: unitsOf(said, lexicon, 'net') }
}

/**
 * What the patterns found, of what the net caught the signs that they did not tell, and what was learned to be a
 * sign where neither tells it.
 */
function judgedOf(reading: Reading, asked: Learned, caught: readonly Match[]): Judged[] {
  const judgedOne = (match: Match): Judged => ({ match, verdict: judge(reading, match) })
  const judged = matchesOf(reading).map(judgedOne)
  const told = new Set(judged.filter(({ verdict }) => isTold(verdict)).map(({ match }) => match.rule.sign))
  const isNew = ({ rule }: Match): boolean => !told.has(rule.sign)
  const more = caught.filter((match) => isNew(match) && !isOfSaddle(match, judged)).map(judgedOne)
  judged.push(...more.filter((one) => isTold(one.verdict)))
  const isTakenBack = (sign: SignId): boolean => judged.some(({ match }) => match.rule.sign === sign)
  for (const match of asked(isTakenBack).filter(isNew)) judged.push({ match, verdict: 'unsure' })
  return judged
}

/** "numb between my legs" speaks of the legs only to say where. */
function isOfSaddle({ rule, at }: Match, judged: readonly Judged[]): boolean {
  if (rule.sign !== 'both-legs') return false
  const saddle = judged.filter(
    ({ match, verdict }) => match.rule.sign === 'saddle-numbness' && isTold(verdict),
  )
  return at.every((i) => saddle.some(({ match }) => match.at.includes(i)))
}

const isTold = (verdict: Verdict): boolean => verdict === 'sure' || verdict === 'unsure'

const endsAsking = (tokens: readonly Token[]): boolean => tokens.slice(-2).some((token) => token.text === '?')

/** The highest of the signs; two `soon` signs together are seen the same day. */
export function careFor(signs: readonly SignId[]): Care {
  const highest = signs.reduce<Care>((care, sign) => higherCare(care, careOf(sign)), 'none')
  const soon = signs.filter((sign) => careOf(sign) === 'soon').length
  return highest === 'soon' && soon > 1 ? 'same-day' : highest
}

function sorted(judged: readonly Judged[]): { sure: Set<SignId>; unsure: Set<SignId> } {
  const sure = new Set<SignId>()
  const unsure = new Set<SignId>()
  for (const { match, verdict } of judged) {
    if (verdict === 'sure') sure.add(match.rule.sign)
    if (verdict === 'unsure') unsure.add(match.rule.sign)
  }
  for (const [weaker, stronger] of Object.entries(TOLD_BY) as [SignId, SignId][])
    if (sure.has(stronger)) {
      sure.delete(weaker)
      unsure.delete(weaker)
    }
  return { sure, unsure }
}

/** "no to all"; "all of those: no", where nothing that the "no" could belong to comes after it. */
function deniesAll({ units, lexicon: { cue } }: Reading, i: number): boolean {
  const { entry } = units[i]!
  if (entry.has(cue['deny-all'])) return true
  const next = units[i + 1]
  if (!entry.has(cue['all-those']) || next === undefined) return false
  const isNo = next.entry.has(cue.no) || next.entry.has(cue.nil)
  const after = units[i + 2]
  return isNo && (after === undefined || after.gap >= BREAK.comma)
}

function denials(reading: Reading, judged: readonly Judged[], signs: readonly SignId[]): (SignId | 'all')[] {
  const { units, lexicon, polarity, context } = reading
  if (signs.length === 0 && units.some((_, i) => deniesAll(reading, i))) return ['all']
  const found = new Set<SignId>()
  for (const { match, verdict } of judged) if (verdict === 'denied') found.add(match.rule.sign)
  units.forEach((unit, i) => {
    if (polarity.fine[i] !== 1 && polarity.negated[i] !== 1) return
    if (context.other[i] === 2 || context.supposed[i] === 2) return
    for (const id of unit.entry.classes) if (lexicon.subjects[id]) found.add(lexicon.subjects[id])
  })
  return SIGN_IDS.filter((sign) => found.has(sign) && !signs.includes(sign))
}

function evidenceOf(
  reading: Reading,
  judged: readonly Judged[],
  signs: readonly SignId[],
  denied: readonly (SignId | 'all')[],
  quote: (from: number, to: number) => string,
): Screening['evidence'] {
  const evidence: { sign: SignId | 'all'; words: string; negated: boolean }[] = []
  const seen = new Set<string>()
  const told = new Set<SignId | 'all'>()
  const add = (sign: SignId | 'all', words: string, negated: boolean): void => {
    const key = `${sign} ${words}`
    if (seen.has(key)) return
    seen.add(key)
    told.add(sign)
    evidence.push({ sign, words, negated })
  }
  for (const { match, verdict } of judged) {
    const { sign } = match.rule
    const isPresent = (verdict === 'sure' || verdict === 'unsure') && signs.includes(sign)
    const isDenied = verdict === 'denied' && denied.includes(sign)
    if (isPresent || isDenied) add(sign, quote(match.at[0]!, match.at.at(-1)!), isDenied)
  }
  const { subjects } = reading.lexicon
  reading.units.forEach((unit, i) => {
    if (denied.includes('all') && deniesAll(reading, i)) add('all', quote(i, i), true)
    for (const id of unit.entry.classes) {
      const sign = subjects[id]
      if (sign !== undefined && denied.includes(sign) && !told.has(sign)) add(sign, quote(i, i), true)
    }
  })
  return evidence
}
