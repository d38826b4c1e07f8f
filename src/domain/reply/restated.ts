import type { Amount } from './amounts.ts'
import type { Item } from './items.ts'

const BETWEEN: readonly Item['cue'][] = [
  'soft',
  'article',
  'be',
  'done',
  'only',
  'session',
  'mark',
  'or',
  'both',
]
const MOST_BETWEEN = 4

/** "half done so 1, knee 5", "all of them, so 2": the count that was just told in words, once more. */
export function restated(items: readonly Item[], bare: readonly Item[], inWords: Amount): Item | null {
  if (inWords === null || inWords.value === null || bare.length === 0) return null
  const from = items.indexOf(inWords.from)
  const again = bare.find((n) => n.value === inWords.value && items.indexOf(n) > from)
  if (!again) return null
  const between = items.slice(from + 1, items.indexOf(again))
  const says = between.some(({ cue }) => cue === 'soft')
  return says &&
    between.length <= MOST_BETWEEN &&
    between.every(({ cue, unread }) => unread || BETWEEN.includes(cue))
    ? again
    : null
}
