import type { Compiled } from './compile.ts'
import type { Entry } from './phrases.ts'
import { type Aside, BREAK, type Unit } from './units.ts'

/** What a message says around its words: who, when, how certain, how new. */
export interface Context {
  /** Classes told in the sentence of a unit, words and circumstances alike. */
  told(unit: number): Uint8Array
  /** Circumstances told in the clause of a unit, a clause ending at a contrast. */
  toldInClause(unit: number): Uint8Array
  /** All classes of the message. */
  readonly anywhere: Uint8Array
  isQuestion(unit: number): boolean
  /** 2 clearly of another person, 1 perhaps. */
  readonly other: Uint8Array
  /** 2 clearly supposed, 1 perhaps. */
  readonly supposed: Uint8Array
}

/** "gone since Monday" within six weeks is asked about; from the seventh week on it is history. */
const WEEKS_THAT_COUNT = 6

const isYear = (unit: Unit): boolean =>
  unit.value !== null && Number.isInteger(unit.value) && unit.value >= 1940 && unit.value < 2100

/** Numbers units by the breaks of at least this strength before them. */
function numbered(units: readonly Unit[], strength: number): Int16Array {
  const numbers = new Int16Array(units.length)
  for (let i = 1; i < units.length; i++) numbers[i] = numbers[i - 1]! + (units[i]!.gap >= strength ? 1 : 0)
  return numbers
}

const emptySets = (numbers: Int16Array, size: number): Uint8Array[] =>
  Array.from({ length: (numbers.at(-1) ?? 0) + 1 }, () => new Uint8Array(size))

function add(set: Uint8Array, entry: Entry): void {
  for (const id of entry.classes) set[id] = 1
}

/** Weeks count only with their number: "8 weeks ago" is old, "3 weeks ago" is not. */
function isOldDate(units: readonly Unit[], { entry, unit }: Aside, lexicon: Compiled): boolean {
  if (entry.has[lexicon.cue['weeks-ago']] !== 1) return false
  const weeks = units[unit - 1]?.value
  return typeof weeks === 'number' && weeks > WEEKS_THAT_COUNT
}

/** "gone red": a gone that leads to a finding ends nothing. */
function isOfFinding(units: readonly Unit[], { entry, unit }: Aside, { cue }: Compiled): boolean {
  const next = units[unit + 1]
  return entry.has[cue.gone] === 1 && next?.gap === BREAK.none && next.entry.has[cue.finding] === 1
}

/** Another person owns what follows until the writer speaks of themselves again. */
function otherPerson(units: readonly Unit[], { cue }: Compiled): Uint8Array {
  const other = new Uint8Array(units.length)
  let owner = 0
  let wasOther = false
  for (let i = 0; i < units.length; i++) {
    const { has } = units[i]!.entry
    const { gap } = units[i]!
    if (gap === BREAK.sentence) owner = 0
    if (gap === BREAK.comma && owner === 2) owner = 1
    if (has[cue.me] === 1 && units[i + 1]?.entry.has[cue.person] !== 1) {
      owner = 0
      wasOther = false
    } else if (has[cue.report] === 1) owner = 0
    else if (has[cue.person] === 1) {
      owner = isLikened(units, i, cue.like) ? 0 : 2
      wasOther = true
    } else if (has[cue.third] === 1 && (wasOther || i === 0 || gap !== BREAK.none)) owner = 2
    other[i] = owner
  }
  return other
}

const isLikened = (units: readonly Unit[], i: number, like: number): boolean =>
  [1, 2].some((back) => units[i - back]?.entry.has[like] === 1)

/** "What if ...", "should I watch for ...", "can this cause ...?" tell of nothing that happened. */
function supposed(
  units: readonly Unit[],
  { cue }: Compiled,
  sentence: Int16Array,
  questions: ReadonlySet<number>,
) {
  const flags = new Uint8Array(units.length)
  let now = 0
  let isWorry = false
  for (let i = 0; i < units.length; i++) {
    const { has } = units[i]!.entry
    const startsSentence = i === 0 || sentence[i] !== sentence[i - 1]
    if (startsSentence || units[i]!.gap === BREAK.contrast) now = 0
    const asks = startsSentence && has[cue.asking] === 1 && questions.has(sentence[i]!)
    if (has[cue.supposed] === 1) {
      now = 2
      isWorry = false
    } else if (has[cue.worried] === 1 || asks) {
      now = 2
      isWorry = true
    } else if (isWorry && now === 2 && (has[cue.own] === 1 || has[cue.me] === 1 || has[cue.cant] === 1))
      now = 1
    flags[i] = now
  }
  return flags
}

function questionsOf(units: readonly Unit[], sentence: Int16Array, endsAsking: boolean): Set<number> {
  const questions = new Set<number>()
  for (let i = 1; i < units.length; i++)
    if (units[i]!.gap === BREAK.sentence && units[i]!.afterQuestion) questions.add(sentence[i - 1]!)
  if (endsAsking && units.length > 0) questions.add(sentence.at(-1)!)
  return questions
}

/** Reads who, when and how certain, after the kinds of rule of ConText (Harkema 2009). */
export function contextOf(
  units: readonly Unit[],
  asides: readonly Aside[],
  lexicon: Compiled,
  endsAsking: boolean,
): Context {
  const sentence = numbered(units, BREAK.sentence)
  const clause = numbered(units, BREAK.contrast)
  const bySentence = emptySets(sentence, lexicon.size)
  const byClause = emptySets(clause, lexicon.size)
  const anywhere = new Uint8Array(lexicon.size)
  anywhere[lexicon.cue.odd] = 1
  for (const aside of asides) {
    if (isOfFinding(units, aside, lexicon)) continue
    for (const set of [bySentence[sentence[aside.unit]!]!, byClause[clause[aside.unit]!]!, anywhere]) {
      add(set, aside.entry)
      if (isOldDate(units, aside, lexicon)) set[lexicon.cue.old] = 1
    }
  }
  units.forEach((unit, i) => {
    add(bySentence[sentence[i]!]!, unit.entry)
    add(anywhere, unit.entry)
    if (isYear(unit)) byClause[clause[i]!]![lexicon.cue.old] = 1
  })
  const questions = questionsOf(units, sentence, endsAsking)
  return {
    told: (unit) => bySentence[sentence[unit]!]!,
    toldInClause: (unit) => byClause[clause[unit]!]!,
    anywhere,
    isQuestion: (unit) => questions.has(sentence[unit]!),
    other: otherPerson(units, lexicon),
    supposed: supposed(units, lexicon, sentence, questions),
  }
}
