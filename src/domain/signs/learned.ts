import { SIGN_IDS, type SignId } from './catalogue.ts'
import { FeatureMap } from './feature-map.ts'
import type { Features } from './features.ts'
import type { Verdict } from './judge.ts'
import type { Match } from './match.ts'
import { likelihood as likelihoodOf, Sum, type Weights } from './weights.ts'
import { type Window, windowsOf } from './windows.ts'

/** How likely a sign is in the window of the message that speaks most for it. */
export interface Likely {
  readonly sign: SignId
  readonly likelihood: number
  readonly at: readonly number[]
}

/** What was learned of a message. */
export interface Learned {
  /** The signs to be asked about. */
  readonly likely: readonly Likely[]
  /** What another layer made of a match, told with less certainty where nearly all that was learned speaks against it. */
  weighed(match: Match, verdict: Verdict): Verdict
}

/** Who only wants to leave the programme says little more than that. */
const FAREWELL = 8
const HARM: SignId = 'self-harm'
/** For what a zone among the values is easily taken; of the groin it stays what it says. */
const OF_ZONES: readonly SignId[] = ['leg-weakness', 'new-numbness', 'both-legs', 'calf-swelling']
/** So few words answer a question ("the other one") and are too little to weigh. */
const ANSWER = 3
const NONE: Learned = { likely: [], weighed: (_, verdict) => verdict }

/** The windows in the order in which each can go on from the one before: by their beginning, then by their end. */
const inOrder = (windows: readonly Window[]): number[] =>
  windows
    .map((_, n) => n)
    .sort((a, b) => windows[a]!.start - windows[b]!.start || windows[a]!.end - windows[b]!.end)

/** By the sign: the window that speaks most for it, the first of those that speak alike, and how much. */
class Highest {
  readonly evidence: number[] = SIGN_IDS.map(() => Number.NEGATIVE_INFINITY)
  readonly window: number[] = SIGN_IDS.map(() => -1)

  hear(told: readonly number[], window: number): void {
    for (let i = 0; i < told.length; i++) {
      const more = told[i]! - this.evidence[i]!
      if (more < 0 || (more === 0 && window > this.window[i]!)) continue
      this.evidence[i] = told[i]!
      this.window[i] = window
    }
  }
}

function highestOf(features: Features, weights: Weights, windows: readonly Window[]): Highest {
  const highest = new Highest()
  const map = new FeatureMap(features, weights)
  const sum = new Sum(weights)
  let [begun, from] = [map.from(0), 0]
  for (const n of inOrder(windows)) {
    const { start, end } = windows[n]!
    if (start !== from) {
      from = start
      begun = map.from(start)
      sum.clear()
    }
    begun.upTo(end, sum)
    highest.hear(sum.evidence(), n)
  }
  return highest
}

/**
 * The third layer: weights learned from the corpus, summed over what a message says and how it is said. It tells
 * nothing by itself: what it finds likely is asked about. Where it finds next to impossible what the others only ask
 * about, that is let be, but for thoughts of self-harm; what they tell is asked about then.
 */
export function learnedOf(features: Features): Learned {
  const { weights } = features.reading.lexicon
  if (weights === null || saysTooLittle(features)) return NONE
  const windows = windowsOf(features.reading)
  const { evidence, window } = highestOf(features, weights, windows)
  const leaves = leavesIn(features)
  const likely: Likely[] = []
  for (let i = 0; i < SIGN_IDS.length; i++) {
    const likelihood = likelihoodOf(evidence[i]!)
    if (likelihood < Math.min(weights.ask, weights.insist) || (leaves && SIGN_IDS[i] === HARM)) continue
    likely.push({ sign: SIGN_IDS[i]!, likelihood, at: unitsIn(features.reading, windows[window[i]!]!) })
  }
  return {
    likely,
    weighed({ rule: { sign, unsure, isPicture }, at }, verdict) {
      const likelihood = likelihoodOf(evidence[SIGN_IDS.indexOf(sign)]!)
      const isOfValues =
        OF_ZONES.includes(sign) && at.length > 1 && at.some((i) => isZoneOfValues(features.reading, i))
      if (verdict === 'sure' && likelihood < (isOfValues ? weights.ask : weights.doubt)) return 'unsure'
      // what the words tell plainly, and only the way it is said makes doubtful, is asked about in any case
      const mayDrop = verdict === 'unsure' && (unsure || isOfValues) && !isPicture && sign !== HARM
      return mayDrop && likelihood < (isOfValues ? weights.doubt : weights.still) ? 'dropped' : verdict
    },
  }
}

/** "2 calf 4, gave up sugar": the zone of the values tells how far the pain reaches, and hardly what else befell it. */
function isZoneOfValues({ units }: Features['reading'], i: number): boolean {
  const { value } = units[i]!
  return value === null && units[i - 1]?.value != null && units[i + 1]?.value != null
}

/** How many words a message has. */
export const countOf = ({ said }: Features): number =>
  said.words.reduce((count, word) => count + (word === null ? 0 : 1), 0)

/** So little, or no more than an answer, that there is nothing in it to weigh. */
export const saysTooLittle = (features: Features): boolean =>
  countOf(features) <= ANSWER || onlyAnswers(features)

/** A few words that say that somebody leaves. */
export const leavesIn = (features: Features): boolean =>
  countOf(features) <= FAREWELL && features.reading.context.anywhere.has(features.reading.lexicon.cue.leaving)

/** "no it is not": words that only answer have nothing in them to weigh. */
function onlyAnswers({ reading: { units, lexicon } }: Features): boolean {
  const { no, not, nil, filler, own, restart } = lexicon.cue
  const light = [no, not, nil, filler, own, restart]
  if (units.some(({ entry }) => !light.some((cue) => entry.has(cue)))) return false
  return units.some(({ entry }) => entry.has(no) || entry.has(nil))
}

/** The first and the last unit of a window. */
export function unitsIn({ units }: Features['reading'], { start, end }: Window): number[] {
  const first = units.findIndex((unit) => unit.start >= start)
  const last = units.findLastIndex((unit) => unit.end <= end)
  return first === last ? [first] : [first, last]
}
