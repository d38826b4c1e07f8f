import type { Compiled } from './compile.ts'
import { BREAK, type Unit } from './units.ts'

/** One sentence, or the part of one behind a contrast, and what its words say about time and certainty. */
export interface Clause {
  readonly isOld: boolean
  readonly isOngoing: boolean
  readonly isGone: boolean
  readonly isAlways: boolean
  readonly isDoubted: boolean
  /** A question, and where its opening words end (-1: it has none). */
  readonly isQuestion: boolean
}

export interface Context {
  readonly clauseOf: (unit: number) => Clause
  /** Sentence numbers, contrasts not counted. */
  readonly sentence: Int16Array
  /** 2 clearly of another person, 1 perhaps. */
  readonly other: Uint8Array
  /** 2 clearly supposed, 1 perhaps. */
  readonly supposed: Uint8Array
}

/** "gone since Monday" within six weeks is asked about; from the seventh week on it is history. */
const WEEKS_THAT_COUNT = 6

function clauses(
  units: readonly Unit[],
  lexicon: Compiled,
  questions: ReadonlySet<number>,
  sentence: Int16Array,
) {
  const { cue } = lexicon
  const number = new Int16Array(units.length)
  const list: { -readonly [K in keyof Clause]: Clause[K] }[] = []
  for (let i = 0; i < units.length; i++) {
    const unit = units[i]!
    if (i === 0 || unit.gap >= BREAK.contrast)
      list.push({
        isOld: false,
        isOngoing: false,
        isGone: false,
        isAlways: false,
        isDoubted: false,
        isQuestion: questions.has(sentence[i]!),
      })
    number[i] = list.length - 1
    const clause = list.at(-1)!
    const { has } = unit.entry
    if (has[cue.old] === 1 || isYear(unit) || isManyWeeks(units, i, lexicon)) clause.isOld = true
    if (has[cue.ongoing] === 1) clause.isOngoing = true
    if (has[cue.gone] === 1) clause.isGone = true
    if (has[cue.always] === 1) clause.isAlways = true
    if (has[cue.doubt] === 1) clause.isDoubted = true
  }
  return (unit: number): Clause => list[number[unit]!]!
}

const isYear = (unit: Unit): boolean =>
  unit.value !== null && Number.isInteger(unit.value) && unit.value >= 1940 && unit.value < 2100

function isManyWeeks(units: readonly Unit[], i: number, lexicon: Compiled): boolean {
  const weeks = units[i - 1]?.value
  return (
    units[i]!.entry.has[lexicon.cue['weeks-ago']] === 1 &&
    typeof weeks === 'number' &&
    weeks > WEEKS_THAT_COUNT
  )
}

/** Another person owns what follows until the writer speaks of themselves again. */
function otherPerson(units: readonly Unit[], lexicon: Compiled): Uint8Array {
  const other = new Uint8Array(units.length)
  const { cue } = lexicon
  let owner = 0
  let wasOther = false
  for (let i = 0; i < units.length; i++) {
    const { has } = units[i]!.entry
    const { gap } = units[i]!
    if (gap === BREAK.sentence) owner = 0
    if (gap === BREAK.comma && owner === 2) owner = 1
    const next = units[i + 1]?.entry.has
    if (has[cue.me] === 1 && next?.[cue.person] !== 1) {
      owner = 0
      wasOther = false
    } else if (has[cue.report] === 1) owner = 0
    else if (has[cue.person] === 1) {
      const likened = [1, 2].some((back) => units[i - back]?.entry.has[cue.like] === 1)
      owner = likened ? 0 : 2
      wasOther = true
    } else if (has[cue.third] === 1 && (wasOther || i === 0 || gap !== BREAK.none)) owner = 2
    other[i] = owner
  }
  return other
}

/** "What if ...", "should I watch for ...", "can this cause ...?" tell of nothing that happened. */
function supposed(
  units: readonly Unit[],
  lexicon: Compiled,
  questions: ReadonlySet<number>,
  sentence: Int16Array,
) {
  const flags = new Uint8Array(units.length)
  const { cue } = lexicon
  let now = 0
  let isWorry = false
  for (let i = 0; i < units.length; i++) {
    const { has } = units[i]!.entry
    const startsSentence = i === 0 || sentence[i] !== sentence[i - 1]
    if (startsSentence || units[i]!.gap === BREAK.contrast) now = 0
    if (has[cue.supposed] === 1) {
      now = 2
      isWorry = false
    } else if (has[cue.worried] === 1) {
      now = 2
      isWorry = true
    } else if (startsSentence && has[cue.asking] === 1 && questions.has(sentence[i]!)) {
      now = 2
      isWorry = true
    } else if (isWorry && now === 2 && (has[cue.own] === 1 || has[cue.me] === 1)) now = 1
    else if (isWorry && now === 2 && has[cue.cant] === 1) now = 1
    flags[i] = now
  }
  return flags
}

function sentences(units: readonly Unit[]): { sentence: Int16Array; questions: Set<number> } {
  const sentence = new Int16Array(units.length)
  const questions = new Set<number>()
  for (let i = 1; i < units.length; i++) {
    const isNew = units[i]!.gap === BREAK.sentence
    sentence[i] = sentence[i - 1]! + (isNew ? 1 : 0)
    if (isNew && units[i]!.afterQuestion) questions.add(sentence[i - 1]!)
  }
  return { sentence, questions }
}

/** Reads who, when and how certain, after the kinds of rule of ConText (Harkema 2009). */
export function contextOf(units: readonly Unit[], lexicon: Compiled, endsAsking: boolean): Context {
  const { sentence, questions } = sentences(units)
  if (endsAsking && units.length > 0) questions.add(sentence[units.length - 1]!)
  return {
    clauseOf: clauses(units, lexicon, questions, sentence),
    sentence,
    other: otherPerson(units, lexicon),
    supposed: supposed(units, lexicon, questions, sentence),
  }
}
