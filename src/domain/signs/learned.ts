import { SIGN_IDS, type SignId } from './catalogue.ts'
import { FeatureMap } from './feature-map.ts'
import type { Features } from './features.ts'
import type { Match } from './match.ts'
import { asks } from './net.ts'
import { likelihood, Sum } from './weights.ts'
import { type Window, windowsOf } from './windows.ts'

/** Signs that are likely enough to be asked about; likelier, where another layer had taken the sign back. */
export type Learned = (isTakenBack: (sign: SignId) => boolean) => Match[]

/** Who only wants to leave the programme says little more than that. */
const FAREWELL = 8
const HARM: SignId = 'self-harm'

/** So few words answer a question ("the other one") and are too little to weigh. */
const ANSWER = 3

/**
 * The third layer: weights learned from the corpus, summed over what a message says and how it is said. It tells
 * nothing by itself and stills nothing: what it finds likely is asked about.
 */
export function learnedOf(features: Features): Learned {
  const { weights } = features.reading.lexicon
  const words = features.said.words.filter((word) => word !== null).length
  if (weights === null || words <= ANSWER) return () => []
  const highest = SIGN_IDS.map(() => Number.NEGATIVE_INFINITY)
  const where: (Window | undefined)[] = SIGN_IDS.map(() => undefined)
  const told = new FeatureMap(features, weights)
  const sum = new Sum(weights)
  for (const window of windowsOf(features.reading)) {
    sum.over(told, window)
    for (let i = 0; i < SIGN_IDS.length; i++) {
      const evidence = sum.evidenceFor(i)
      if (evidence <= highest[i]!) continue
      highest[i] = evidence
      where[i] = window
    }
  }
  const { context, lexicon } = features.reading
  const leaves = words <= FAREWELL && context.anywhere.has(lexicon.cue.leaving)
  return (isTakenBack) =>
    SIGN_IDS.flatMap((sign, i) => {
      const window = where[i]
      const least = isTakenBack(sign) ? weights.insist : weights.ask
      if (window === undefined || (leaves && sign === HARM)) return []
      if (likelihood(highest[i]!) < least) return []
      return [{ rule: asks(sign), at: unitsIn(features, window) }]
    })
}

function unitsIn({ reading }: Features, { start, end }: Window): number[] {
  const { units } = reading
  const first = units.findIndex((unit) => unit.start >= start)
  const last = units.findLastIndex((unit) => unit.end <= end)
  return first === last ? [first] : [first, last]
}
