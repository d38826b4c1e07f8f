import { type Item, isBreak } from './items.ts'
import type { Language } from './lexicon/compile.ts'
import { isNum } from './rewrite.ts'

/** "gemelo 4, una", "corva, 3, las 2": the form of the number or its article agrees with sessions alone. */
export function settleAgreeing(items: readonly Item[], { ofSessions }: Language): void {
  if (ofSessions.numbers.size + ofSessions.articles.size === 0) return
  if (items.every(({ cue }) => cue === 'num' || cue === 'mark')) return
  items.forEach((n, at) => {
    if (!isNum(n) || n.slot !== null || !isBreak(items[at + 1])) return
    const before = items[at - 1]
    const article = before !== undefined && ofSessions.articles.has(before.text) && isBreak(items[at - 2])
    const opens = isBreak(before) || (before!.cue === 'only' && isBreak(items[at - 2]))
    if (article || (ofSessions.numbers.has(n.text) && opens)) n.slot = 'sessions'
  })
}

const TELLS_SESSIONS: readonly Item['cue'][] = [
  'all',
  'both',
  'half',
  'noSession',
  'count',
  'missed',
  'session',
  'oneSession',
  'done',
  'did',
]

/** "calf, 4, only one": as a clause of its own, and sessions told nowhere else, the one is of sessions. */
export function settleOnlyOne(items: readonly Item[], planned: number): void {
  if (items.some(({ cue }) => TELLS_SESSIONS.includes(cue))) return
  items.forEach((n, at) => {
    const only = items[at - 1]
    if (!isNum(n) || n.slot !== null || n.value !== 1 || n.text === '1' || planned < 2) return
    if (only?.cue !== 'only' || !isBreak(items[at - 2]) || !isBreak(items[at + 1])) return
    if (items.some((other) => other !== n && isNum(other) && other.slot !== 'sessions')) n.slot = 'sessions'
  })
}
