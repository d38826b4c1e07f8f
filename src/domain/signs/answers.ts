import type { Token } from '../reply/tokens.ts'
import type { Compiled } from './compile.ts'

/** Tokens of a greeting before the answer ("hi coach no i can't pee"). */
const GREETING = 3

const comma = ({ end }: Token): Token => ({ kind: 'mark', text: ',', start: end, end })

/** "no i can't pee", "no no puedo orinar": a no that answers, with the comma that people leave out. */
export function answersApart(tokens: readonly Token[], { answers }: Compiled): readonly Token[] {
  let apart: Token[] | null = null
  let opens = true
  tokens.forEach((token, i) => {
    apart?.push(token)
    const next = tokens[i + 1]
    const isAnswer = opens && answers.words.has(token.text) && next && answers.before.has(next.text)
    if (isAnswer) {
      apart ??= tokens.slice(0, i + 1)
      apart.push(comma(token))
    }
    opens = isAnswer || token.kind === 'mark' || i < GREETING || answers.behind.has(token.text)
  })
  return apart ?? tokens
}
