import { type Care, higherCare } from '../care.ts'
import { type Folded, fold } from '../reply/fold.ts'
import { type Token, tokenise } from '../reply/tokens.ts'
import { answersApart } from './answers.ts'
import { careOf, inTheirOrder, type SignId } from './catalogue.ts'
import type { Compiled } from './compile.ts'
import { Context } from './context.ts'
import { doubtfulDenials } from './doubtful-denials.ts'
import { denials, evidenceOf } from './evidence.ts'
import type { Features } from './features.ts'
import { besideFineElsewhere } from './fine-elsewhere.ts'
import { isTold, type Judged, judge } from './judge.ts'
import { type Learned, type Likely, learnedOf } from './learned.ts'
import { lexiconFor } from './lexicon/languages.ts'
import { carriesOf, type Match, matchesOf, type Reading } from './match.ts'
import { polarityOf } from './negation.ts'
import { asks, netMatches } from './net.ts'
import { isPlain } from './plain.ts'
import type { Screening } from './screening.ts'
import { lookedAtAgain } from './second-look.ts'
import { asidesOf, type Said, unitsOf } from './units.ts'
import type { Weights } from './weights.ts'
import { MAIN, NET, wordsOf } from './words.ts'

const NOTHING: Screening = { signs: [], denied: [], care: 'none', unsure: [], evidence: [] }

const NO_FINDINGS: readonly Judged[] = []

/** A surer or graver sign that already tells what the other would. */
const TOLD_BY: readonly (readonly [weaker: SignId, stronger: SignId])[] = [
  ['new-numbness', 'leg-weakness'],
  ['new-symptoms-elsewhere', 'stroke-signs'],
  ['minor-injury-risk', 'major-injury'],
]

/**
 * Looks for urgent signs in a message; knows no history. Total on any string, cost linear in its length.
 * An unknown locale is read as English.
 */
export function screen(text: string, locale: string): Screening {
  const folded = fold(text)
  return screenTokens(folded, tokenise(folded), locale)
}

/** The same for a message that was cut into tokens already. */
export function screenTokens(folded: Folded, tokens: readonly Token[], locale: string): Screening {
  const lexicon = lexiconFor(locale)
  const said = saidIn(tokens, lexicon)
  if (isPlain(said)) return NOTHING
  const features = featuresOf(said, lexicon)
  const { reading } = features
  if (reading.units.length === 0) return NOTHING
  const whole = screenFeatures(folded, features)
  const part = (some: readonly Token[]): Screening =>
    screenFeatures(folded, featuresOf(saidIn(some, lexicon), lexicon))
  const { isWrittenFor, mayBeWrittenFor } = reading.context
  if (isWrittenFor) return withMore(whole, part(lexicon.asClient.said(tokens)))
  const parts = whole.care === 'emergency' ? [] : besideFineElsewhere(tokens, reading)
  if (mayBeWrittenFor) parts.push(lexicon.asClient.said(tokens))
  return parts.map(part).reduce(withDoubts, whole)
}

/** With what a part of the message, or another way to read it, tells besides; of `surer` there is no doubt. */
function joined(whole: Screening, part: Screening, surer: readonly SignId[]): Screening {
  const fresh = part.signs.filter((sign) => !whole.signs.includes(sign))
  if (fresh.length + surer.length === 0) return whole
  const signs = inTheirOrder([...whole.signs, ...fresh])
  const isFresh = (sign: SignId | 'all'): boolean => sign !== 'all' && fresh.includes(sign)
  const isDoubted = (sign: SignId): boolean => whole.unsure.includes(sign) || fresh.includes(sign)
  return {
    signs,
    denied: whole.denied.filter((sign) => sign !== 'all' && !isFresh(sign)),
    care: careFor(signs),
    unsure: signs.filter((sign) => isDoubted(sign) && !surer.includes(sign)),
    evidence: [
      ...whole.evidence.filter(({ sign }) => sign !== 'all' && !isFresh(sign)),
      ...part.evidence.filter(({ sign }) => isFresh(sign)),
    ],
  }
}

/** What somebody else tells of the client, in their words and as the client would have said it. */
const withMore = (whole: Screening, part: Screening): Screening =>
  joined(
    whole,
    part,
    part.signs.filter((sign) => !part.unsure.includes(sign)),
  )

/** What a part of the message tells by itself is in doubt, since all of it together did not. */
const withDoubts = (whole: Screening, part: Screening): Screening => joined(whole, part, [])

function screenFeatures(folded: Folded, features: Features): Screening {
  const { reading, net } = features
  if (reading.units.length === 0) return NOTHING
  const heard = lookedAtAgain(features, judgedOf(reading, learnedOf(features), netMatches(net, reading)))
  const judged = [...heard, ...doubtfulDenials(reading)]
  const { sure, unsure } = sorted(judged)
  const signs = inTheirOrder([...sure, ...unsure])
  const denied = denials(reading, judged, signs)
  if (signs.length === 0 && denied.length === 0) return NOTHING
  return {
    signs,
    denied,
    care: careFor(signs),
    unsure: signs.filter((sign) => !sure.has(sign)),
    evidence: evidenceOf(reading, judged, signs, denied, folded),
  }
}

/** A message made ready for all four layers. */
export function readingOf(text: string, locale: string): Features & { readonly folded: Folded } {
  const folded = fold(text)
  const lexicon = lexiconFor(locale)
  return { folded, ...featuresOf(saidIn(tokenise(folded), lexicon), lexicon) }
}

function saidIn(written: readonly Token[], lexicon: Compiled): Said {
  const tokens = answersApart(written, lexicon)
  return { tokens, words: wordsOf(tokens, lexicon) }
}

function featuresOf(said: Said, lexicon: Compiled): Features {
  const units = unitsOf(said, lexicon, MAIN)
  const context = new Context(units, asidesOf(said, units, lexicon), lexicon, endsAsking(said.tokens))
  const reading: Reading = {
    units,
    lexicon,
    polarity: polarityOf(units, lexicon, context.anywhere),
    context,
    carries: carriesOf(units, lexicon, context.anywhere),
  }
  return { said, reading, net: unitsOf(said, lexicon, NET) }
}

/**
 * What the patterns found, of what the net caught the signs that they did not tell, and what was learned to be a
 * sign where neither tells it.
 */
function judgedOf(
  reading: Reading,
  { likely, weighed }: Learned,
  caught: readonly Match[],
): readonly Judged[] {
  const matched = matchesOf(reading)
  if (matched.length + likely.length + caught.length === 0) return NO_FINDINGS
  const judgedOne = (match: Match): Judged => ({
    match,
    verdict: weighed(match, judge(reading, match)),
  })
  const judged = matched.map(judgedOne)
  const told = new Set(judged.filter(isTold).map(({ match }) => match.rule.sign))
  const more = caught
    .filter((match) => !told.has(match.rule.sign) && !isOfSaddle(match, judged))
    .map(judgedOne)
  judged.push(...more.filter(isTold))
  for (const one of likely)
    if (!told.has(one.sign) && isEnough(one, judged, reading.lexicon.weights!))
      judged.push({ match: { rule: asks(one.sign), at: one.at }, verdict: 'unsure', isGuess: true })
  return judged
}

/** A sign that another layer has found and taken back needs more to be asked about. */
function isEnough(
  { sign, likelihood }: Likely,
  judged: readonly Judged[],
  { ask, insist }: Weights,
): boolean {
  const isTakenBack = judged.some(({ match }) => match.rule.sign === sign)
  return likelihood >= (isTakenBack ? insist : ask)
}

/** "numb between my legs" speaks of the legs only to say where. */
function isOfSaddle({ rule, at }: Match, judged: readonly Judged[]): boolean {
  if (rule.sign !== 'both-legs') return false
  const saddle = judged.filter((one) => one.match.rule.sign === 'saddle-numbness' && isTold(one))
  return at.every((i) => saddle.some(({ match }) => match.at.includes(i)))
}

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
  for (const [weaker, stronger] of TOLD_BY)
    if (sure.has(stronger)) {
      sure.delete(weaker)
      unsure.delete(weaker)
    }
  return { sure, unsure }
}
