import { type Day, isDay } from '../day.ts'
import type { GateSettings } from '../ladder/plan.ts'
import type { HistoryDecision } from '../rules/assessment.ts'
import type { DiaryFacts, Fact } from './diary.ts'

type AddedFact = Extract<Fact, 'decisions' | 'resting' | 'gate' | 'late'>

const DECISIONS: readonly HistoryDecision['decision'][] = ['advance', 'hold', 'ease-back', 'refer']
const LADDER = /^[a-z][a-z0-9-]{0,39}$/

/** Parts between ";", each its words; "none" and an empty text have no part. */
const partsOf = (text: string): string[][] =>
  text.toLowerCase() === 'none'
    ? []
    : text
        .toLowerCase()
        .split(';')
        .map((part) => part.trim().split(/\s+/).filter(Boolean))
        .filter((words) => words.length > 0)

/** Every part read; null where one cannot be right. */
function each<T>(text: string, read: (words: readonly string[]) => T | null): T[] | null {
  const found = partsOf(text).map(read)
  return found.some((one) => one === null) ? null : (found as T[])
}

/** "2026-03-09 advance extension", or without a ladder where it is about all. */
function decision(words: readonly string[]): HistoryDecision | null {
  const [day = '', word, ladder = null, ...more] = words
  const known = DECISIONS.find((one) => one === word)
  if (!isDay(day) || !known || more.length > 0 || (ladder !== null && !LADDER.test(ladder))) return null
  return { day, decision: known, ladder }
}

/** "2026-03-09 glide". */
function rest(words: readonly string[]): { day: Day; ladder: string } | null {
  const [day = '', ladder = '', ...more] = words
  return isDay(day) && LADDER.test(ladder) && more.length === 0 ? { day, ladder } : null
}

/** "5 5 0.8 5 2": check-ins, days, share 0..1, pain at most 0..10, days between two advances. */
function gate(text: string): GateSettings | null {
  const numbers = text.split(/[\s,;]+/).map(Number)
  if (numbers.length !== 5 || numbers.some((n) => !Number.isFinite(n) || n < 0)) return null
  const [checkIns, days, share, painAtMost, apart] = numbers as [number, number, number, number, number]
  return share <= 1 && painAtMost <= 10 ? { checkIns, days, share, painAtMost, apart } : null
}

/** One of the facts that an export adds; null where it cannot be right. */
export function readAdded(fact: AddedFact, text: string): Partial<DiaryFacts> | null {
  if (fact === 'gate') {
    const settings = gate(text)
    return settings && { gate: settings }
  }
  if (fact === 'late') {
    const late = each(text, ([day = '', ...more]) => (isDay(day) && more.length === 0 ? day : null))
    return late && { late }
  }
  if (fact === 'resting') {
    const resting = each(text, rest)
    return resting && { resting }
  }
  const decisions = each(text, decision)
  return decisions && { decisions }
}
