import { careOf, SIGN_IDS, type SignId } from './catalogue.ts'
import type { Classifier } from './classifier.ts'
import type { Features } from './features.ts'
import type { Judged } from './judge.ts'
import { countOf, leavesIn, saysTooLittle, unitsIn } from './learned.ts'
import type { Match } from './match.ts'
import { asks } from './net.ts'
import { type SaidParts, saidPartsOf } from './said-parts.ts'

const HARM: SignId = 'self-harm'
/** What is told in fewer words the other layers know better: to let it be, and to ask about it. */
const [LEAST_TO_LET_BE, LEAST_TO_ASK] = [7, 5]

/**
 * What the fourth layer makes of what the others found: hints at a sign are let be where it finds none in the whole
 * message, but for thoughts of self-harm, and what it alone finds likely is asked about. Of what they tell it takes nothing
 * back, and it is not heard where they tell an emergency.
 */
export function lookedAtAgain(features: Features, judged: readonly Judged[]): readonly Judged[] {
  const { classifier } = features.reading.lexicon
  if (classifier === null || countOf(features) < LEAST_TO_ASK || saysTooLittle(features)) return judged
  if (judged.some(isEmergency)) return judged
  const said = saidPartsOf(features)
  const likelihoods = said.length < LEAST_TO_ASK ? null : classifier.likelihoods(said.whole)
  if (likelihoods === null) return judged
  const mayLetBe = said.length >= LEAST_TO_LET_BE && judged.some(isHint)
  const rest = mayLetBe ? lettingBe(judged, said, likelihoods, classifier) : judged
  const isFound = (sign: SignId): boolean => judged.some(({ match }) => match.rule.sign === sign)
  const likely = SIGN_IDS.filter(
    (sign, i) =>
      likelihoods[i]! >= classifier.limits.ask && !isFound(sign) && !(sign === HARM && leavesIn(features)),
  )
  if (likely.length === 0) return rest
  // what is likely only by a figure of speech is none
  const { literal } = said
  if (literal !== null && literal.length < LEAST_TO_ASK) return rest
  const literally = literal === null ? likelihoods : (classifier.likelihoods(literal) ?? likelihoods)
  const asked = likely.filter((sign) => literally[SIGN_IDS.indexOf(sign)]! >= classifier.limits.ask)
  return [
    ...rest,
    ...asked.map((sign): Judged => ({ match: matchOf(sign, features, said), verdict: 'unsure' })),
  ]
}

const isEmergency = ({ verdict, match }: Judged): boolean =>
  verdict === 'sure' && careOf(match.rule.sign) === 'emergency'

/** No more than a hint; thoughts of self-harm are asked about in any case. */
const isHint = ({ verdict, match: { rule } }: Judged): boolean =>
  verdict === 'unsure' && rule.unsure && !rule.isPicture && rule.sign !== HARM

/** Of the limit for any sign: so little likely must the emergency itself be that is hinted at. */
const OWN = 0.1

/** What only the third layer asks about is let be where this one does not agree, any other hint where it finds nothing. */
function lettingBe(
  judged: readonly Judged[],
  said: SaidParts,
  whole: readonly number[],
  classifier: Classifier,
): readonly Judged[] {
  const { still, stillOther, agrees } = classifier.limits
  if (Math.max(...whole) >= Math.max(still, stillOther, agrees)) return judged
  const most = mostIn(said, whole, classifier)
  const any = Math.max(...most)
  const isStill = (sign: SignId): boolean => any < still && most[SIGN_IDS.indexOf(sign)]! < still * OWN
  return judged.map((one) => {
    const { sign } = one.match.rule
    const isNothing = one.isGuess
      ? any < agrees
      : careOf(sign) === 'emergency'
        ? isStill(sign)
        : any < stillOther
    return isHint(one) && isNothing ? { match: one.match, verdict: 'dropped' } : one
  })
}

/** How likely each sign is in the message or in a part of it: what is told in one must not be lost among the others. */
function mostIn({ parts }: SaidParts, whole: readonly number[], classifier: Classifier): readonly number[] {
  const each = parts.map(({ words }) => classifier.likelihoods(words) ?? SIGN_IDS.map(() => 1))
  return whole.map((own, i) => Math.max(own, ...each.map((likelihoods) => likelihoods[i]!)))
}

/** The part of the message that speaks most for it. */
function matchOf(sign: SignId, { reading }: Features, { parts }: SaidParts): Match {
  const place = SIGN_IDS.indexOf(sign)
  const speaks = parts.map(({ words }) => reading.lexicon.classifier!.likelihoods(words)?.[place] ?? 0)
  const part = parts[speaks.indexOf(Math.max(...speaks))]
  return { rule: asks(sign), at: part ? unitsIn(reading, part.window) : [0, reading.units.length - 1] }
}
