import { endOfChunk, endOfSentence, startOfChunk } from './clauses.ts'
import { type Item, isBreak, isMark } from './items.ts'
import type { Language } from './lexicon/compile.ts'

const VALUES = new Set<Item['cue']>([
  'zone',
  'num',
  'leg',
  'legs',
  'both',
  'all',
  'noSession',
  'painFree',
  'noSymptoms',
])
export const hasValue = (items: readonly Item[]): boolean => items.some((item) => VALUES.has(item.cue))

function forget(items: readonly Item[], from: number, to: number): void {
  for (let at = from; at < to; at++) items[at]!.unread = true
}

const inverts = ({ text }: Item, language: Language): boolean => language.inverted.has(text.split(' ', 1)[0]!)

/** Questions, plans, other people: what follows in the clause is nobody's check-in. */
export function setAside(items: readonly Item[], language: Language): void {
  let opens = true
  for (let at = 0; at < items.length; at++) {
    const item = items[at]!
    const asks = item.cue === 'ask' && (opens || item.text.includes(' '))
    if (
      isMark(item, '¿') ||
      (item.cue === 'be' && opens && inverts(item, language) && isMark(items[endOfSentence(items, at)], '?'))
    )
      forget(items, at + 1, endOfSentence(items, at + 1))
    if ((asks && !isLabel(items, at)) || item.cue === 'later' || item.cue === 'someone')
      forget(items, at, endOfChunk(items, at))
    if (item.cue === 'past') forget(items, startOfChunk(items, at), pastEnd(items, at))
    opens = isBreak(item) || ((item.cue === 'soft' || item.cue === 'and') && opens)
  }
}

const MOST_OF_LABEL = 3

/** "How far: calf. How bad: 4": our own question as a name, with its answer. */
function isLabel(items: readonly Item[], ask: number): boolean {
  for (let at = ask + 1; at <= ask + MOST_OF_LABEL && !isBreak(items[at]); at++)
    if (isMark(items[at], ':=')) return hasValue(items.slice(at + 1, at + 2)) && isBreak(items[at + 2])
  return false
}

function pastEnd(items: readonly Item[], from: number): number {
  let at = from
  while (!isBreak(items[at]) && items[at]!.cue !== 'now' && items[at]!.cue !== 'day') at += 1
  return at
}
