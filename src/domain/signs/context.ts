import { ClassSet } from './class-set.ts'
import type { Compiled } from './compile.ts'
import { otherPerson } from './other-person.ts'
import type { Entry } from './phrases.ts'
import { type Aside, BREAK, NOWHERE, type Unit } from './units.ts'
import { isWrittenFor, mayBeWrittenFor } from './written-for.ts'

/** "gone since Monday" within six weeks is asked about; from the seventh week on it is history. */
const WEEKS_THAT_COUNT = 6

const isYear = (unit: Unit): boolean =>
  unit.value !== null && Number.isInteger(unit.value) && unit.value >= 1940 && unit.value < 2100

/** Words and circumstances of a message, in order. */
class Told {
  private readonly asides: readonly Aside[]
  /** By the unit: how many circumstances begin before it. */
  private readonly before: readonly number[]

  constructor(
    readonly units: readonly Unit[],
    asides: readonly Aside[],
    private readonly lexicon: Compiled,
  ) {
    this.asides = asides.filter((aside) => !isOfFinding(units, aside, lexicon))
    const before = [0]
    let begun = 0
    for (let i = 0; i < units.length; i++) {
      while (this.asides[begun]?.unit === i) begun += 1
      before.push(begun)
    }
    this.before = before
  }

  /** The classes told from one unit up to another; years count as dates where asked for. */
  between(from: number, to: number, withYears: boolean): ClassSet {
    const set = new ClassSet(this.lexicon.size)
    const { old, past, own } = this.lexicon.cue
    for (let k = this.before[from]!; k < this.before[to]!; k++) {
      const aside = this.asides[k]!
      add(set, aside.entry)
      if (isOldDate(this.units, aside, this.lexicon)) set.add(old)
    }
    for (let i = from; i < to; i++) {
      const unit = this.units[i]!
      add(set, unit.entry)
      if (withYears && isYear(unit)) set.add(this.units[i - 1]?.entry.has(own) ? past : old)
    }
    return set
  }
}

/** A message cut at breaks of one strength; what is told in a piece is put together once it is asked for. */
class Pieces {
  private numbers: readonly number[] | null = null
  private readonly sets: (ClassSet | undefined)[] = []

  constructor(
    private readonly told: Told,
    private readonly strength: number,
  ) {}

  /** By the unit: the number of its piece. */
  get number(): readonly number[] {
    this.numbers ??= this.counted()
    return this.numbers
  }

  private counted(): number[] {
    let piece = 0
    return this.told.units.map(({ gap }, i) => {
      if (i > 0 && gap >= this.strength) piece += 1
      return piece
    })
  }

  around(unit: number): ClassSet {
    const piece = this.number[unit]!
    this.sets[piece] ??= this.gather(piece, unit)
    return this.sets[piece]
  }

  private gather(piece: number, unit: number): ClassSet {
    let [from, to] = [unit, unit + 1]
    while (from > 0 && this.number[from - 1] === piece) from -= 1
    while (to < this.number.length && this.number[to] === piece) to += 1
    return this.told.between(from, to, this.strength === BREAK.contrast)
  }
}

function add(set: ClassSet, entry: Entry): void {
  for (const id of entry.classes) set.add(id)
}

/** Weeks count only with their number: "8 weeks ago" is old, "3 weeks ago" is not. */
function isOldDate(units: readonly Unit[], { entry, unit }: Aside, lexicon: Compiled): boolean {
  if (!entry.has(lexicon.cue['weeks-ago'])) return false
  const weeks = units[unit - 1]?.value
  return typeof weeks === 'number' && weeks > WEEKS_THAT_COUNT
}

/** "gone red": a gone that leads to a finding ends nothing; "no longer wakes me" holds its finding and ends it. */
function isOfFinding(units: readonly Unit[], { entry, unit }: Aside, { cue }: Compiled): boolean {
  const next = units[unit + 1]
  if (next === undefined || next.gap !== BREAK.none || !next.entry.has(cue.finding)) return false
  return (entry.has(cue.gone) || entry.has(cue.ended)) && !entry.has(cue['gone-finding'])
}

/** "What if ...", "should I watch for ...", "can this cause ...?" tell of nothing that happened. */
function supposed(
  units: readonly Unit[],
  { cue }: Compiled,
  sentence: readonly number[],
  questions: ReadonlySet<number>,
  anywhere: ClassSet,
) {
  if (!anywhere.hasAny([cue.supposed, cue.worried, cue.uneasy, cue.asking])) return NOWHERE
  const flags = new Uint8Array(units.length)
  let now = 0
  let isWorry = false
  let isUneasy = false
  for (let i = 0; i < units.length; i++) {
    const { entry } = units[i]!
    const startsSentence = i === 0 || sentence[i] !== sentence[i - 1]
    isUneasy = (isUneasy && !startsSentence) || entry.has(cue.uneasy)
    if (startsSentence || units[i]!.gap === BREAK.contrast) now = 0
    // "bit worried, my foot drags": after the comma comes what is
    if (isWorry && units[i]!.gap === BREAK.comma) now = 0
    const speaksOut = entry.has(cue.own) || entry.has(cue.me) || entry.has(cue.cant)
    if (now === 2 && units[i]!.gap === BREAK.comma && speaksOut) now = 1
    const asks = startsSentence && entry.has(cue.asking) && questions.has(sentence[i]!)
    if (entry.has(cue.supposed)) {
      now = 2
      isWorry = false
    } else if (entry.has(cue.worried) || asks) {
      now = 2
      isWorry = true
    } else if (isWorry && now === 2 && (entry.has(cue.own) || entry.has(cue.me) || entry.has(cue.cant)))
      now = 1
    flags[i] = Math.max(now, isUneasy ? 1 : 0)
  }
  return flags
}

function questionsOf(units: readonly Unit[], sentence: readonly number[], endsAsking: boolean): Set<number> {
  const questions = new Set<number>()
  for (let i = 1; i < units.length; i++)
    if (units[i]!.gap === BREAK.sentence && units[i]!.afterQuestion) questions.add(sentence[i - 1]!)
  if (endsAsking && units.length > 0) questions.add(sentence.at(-1)!)
  return questions
}

/** What a message says around its words: who, when, how certain, how new. */
export class Context {
  private readonly sentence: Pieces
  private readonly clause: Pieces
  private readonly phrase: Pieces
  private readonly questions: ReadonlySet<number>
  /** All classes of the message. */
  readonly anywhere: ClassSet
  /** Somebody else writes for the client, and says so. */
  readonly isWrittenFor: boolean
  /** Another's emergency may be the client's. */
  readonly mayBeWrittenFor: boolean
  /** 2 clearly of another person, 1 perhaps. */
  readonly other: Uint8Array
  /** 2 clearly supposed, 1 perhaps. */
  readonly supposed: Uint8Array

  /** Reads who, when and how certain, after the kinds of rule of ConText (Harkema 2009). */
  constructor(units: readonly Unit[], asides: readonly Aside[], lexicon: Compiled, endsAsking: boolean) {
    const told = new Told(units, asides, lexicon)
    this.sentence = new Pieces(told, BREAK.sentence)
    this.clause = new Pieces(told, BREAK.contrast)
    this.phrase = new Pieces(told, BREAK.comma)
    this.anywhere = told.between(0, units.length, false)
    this.anywhere.add(lexicon.cue.odd)
    this.questions = questionsOf(units, this.sentence.number, endsAsking)
    this.isWrittenFor = isWrittenFor(units, asides, lexicon, this.anywhere)
    this.mayBeWrittenFor = mayBeWrittenFor(units, lexicon, this.anywhere)
    this.other = otherPerson(units, lexicon, this.anywhere, this.isWrittenFor)
    this.supposed = supposed(units, lexicon, this.sentence.number, this.questions, this.anywhere)
  }

  /** Classes told in the sentence of a unit, words and circumstances alike. */
  told(unit: number): ClassSet {
    return this.sentence.around(unit)
  }

  /** The same for the sentence behind; null where there is none. */
  toldNext(unit: number): ClassSet | null {
    const { number } = this.sentence
    const next = number.indexOf(number[unit]! + 1, unit)
    return next < 0 ? null : this.sentence.around(next)
  }

  /** The same for its clause, which ends at a contrast. */
  toldInClause(unit: number): ClassSet {
    return this.clause.around(unit)
  }

  /** The same for its phrase, which ends at any break. */
  toldInPhrase(unit: number): ClassSet {
    return this.phrase.around(unit)
  }

  isQuestion(unit: number): boolean {
    return this.questions.has(this.sentence.number[unit]!)
  }
}
