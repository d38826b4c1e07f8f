import type { Token } from '../reply/tokens.ts'
import type { Said } from './units.ts'

/** From here on pain is a sign of its own. */
const SEVERE = 9
const TOP_OF_PAIN = 10

/** "4/10": the top of the scale, not a pain of ten. */
const isTop = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]!.value === TOP_OF_PAIN && tokens[at - 1]?.text === '/' && tokens[at - 2]?.kind === 'number'

/**
 * A check-in and nothing more ("did 2, calf, pain 4"): every word is one of those in which no sign can be told, so
 * that no layer need look at it. "both calf" might mean both calves.
 */
export function isPlain({ tokens, words }: Said): boolean {
  return tokens.every((token, at) => {
    if (token.kind === 'mark') return true
    if (token.kind === 'number') return (token.value ?? SEVERE) < SEVERE || isTop(tokens, at)
    const word = words[at]!
    return word.isPair ? !words[at + 1]?.isZone : word.isPlain
  })
}
