import { SIDES, type Side } from '../checkin.ts'
import { readAdded } from './added-facts.ts'
import { dayCell, idsCell, reachCell, wholeCell } from './cells.ts'
import { type DiaryFacts, FACTS, type Fact, type Problem } from './diary.ts'

const NONE: DiaryFacts = {
  side: null,
  baseline: null,
  start: null,
  known: [],
  decisions: [],
  resting: [],
  gate: null,
  late: null,
}

/** "calf 6", either order, or one of the two alone; null where it cannot be right. */
function baseline(text: string): DiaryFacts['baseline'] {
  const words = text.split(/[\s,;]+/).filter((word) => word !== '')
  let found = { reach: null, pain: null } as NonNullable<DiaryFacts['baseline']>
  for (const word of words) {
    const reach = reachCell(word)
    const pain = wholeCell(word, 0, 10)
    if (reach.ok && found.reach === null) found = { ...found, reach: reach.value }
    else if (pain.ok && found.pain === null) found = { ...found, pain: pain.value }
    else return null
  }
  return words.length === 0 ? null : found
}

/** One fact read; null where it cannot be right. */
function readFact(fact: Fact, text: string): Partial<DiaryFacts> | null {
  if (fact === 'side') {
    const side = text.toLowerCase() as Side
    return SIDES.includes(side) ? { side } : null
  }
  if (fact === 'baseline') {
    const found = baseline(text)
    return found && { baseline: found }
  }
  if (fact === 'start') {
    const day = dayCell(text)
    return day.ok && day.value !== null ? { start: day.value } : null
  }
  if (fact === 'known') {
    const ids = idsCell(text.toLowerCase() === 'none' ? '' : text)
    return ids.ok ? { known: ids.value } : null
  }
  return readAdded(fact, text)
}

/** A comment "name: value"; null where it is just a remark. */
export function factOf(comment: string): { fact: Fact; text: string } | null {
  const [, name, text] = /^\s*([a-z]+)\s*:\s*(.*?)\s*$/i.exec(comment) ?? []
  const fact = FACTS.find((known) => known === name?.toLowerCase())
  return fact === undefined ? null : { fact, text: text! }
}

/** Facts as given, each with its line; what cannot be right is named and left out. */
export function readFacts(given: readonly { fact: Fact; text: string; line: number }[]): {
  facts: DiaryFacts
  problems: Problem[]
} {
  let facts = NONE
  const problems: Problem[] = []
  for (const { fact, text, line } of given) {
    if (text === '') continue
    const read = readFact(fact, text)
    if (read === null) problems.push({ line, what: fact, value: text })
    else facts = { ...facts, ...read }
  }
  return { facts, problems }
}
