import { Answered } from './answered.ts'
import type { ClassSet } from './class-set.ts'
import type { Compiled } from './compile.ts'
import { findFine } from './fine.ts'
import { ListItems } from './list-items.ts'
import { NEUTRAL, type Polarity } from './polarity.ts'
import { BREAK, FARTHEST, type Unit } from './units.ts'

/** Words of no account that a negation reaches past before it lapses. */
const REACH_PAST = 1

class Walk extends ListItems {
  readonly negated: Uint8Array
  readonly fine: Uint8Array
  readonly turnedOdd: Uint8Array
  readonly listed: Uint8Array
  readonly denying: Uint8Array
  /** Where the item of the list begins that has no noun yet to be denied, else -1. */
  private item = -1
  private level = 0
  private opened = -1
  private unknown = 0
  private isVerbal = false
  private joinedByOr = false
  private inList = false
  private hasCovered = false
  /** Whether it denied anything of the body: "no questions, numb down there" has no list to open. */
  private hasDenied = false
  private deniedThings = 0
  /** What makes it whole, so that a word that tells something begins anew behind it. */
  private whole: 'no' | 'by a place' | 'by a finding' | 'by a noun' = 'no'
  /** Items of the list after its first. */
  private further = 0

  constructor(units: readonly Unit[], lexicon: Compiled) {
    super(units, lexicon)
    this.negated = new Uint8Array(units.length)
    this.fine = new Uint8Array(units.length)
    this.turnedOdd = new Uint8Array(units.length)
    this.listed = new Uint8Array(units.length)
    this.denying = new Uint8Array(units.length)
  }

  forward(): void {
    for (let i = 0; i < this.units.length; i++) {
      this.atBreak(i)
      // "thigh n knee": an "n" in between is an and, whatever it answers at an end
      const opens = this.isNo(i) || (this.is(i, this.cue.nil) && !this.is(i, this.cue.and))
      if (opens && this.is(i, this.cue.double) && this.isAfterCannot(i)) this.close()
      else if (opens) this.open(i)
      else if (this.is(i, this.cue.ender) || this.is(i, this.cue.except)) this.lapse(i)
      else if (this.is(i, this.cue['my-turn'])) this.close()
      else if (this.is(i, this.cue.and)) this.atAnd(i)
      else if (this.is(i, this.cue.or)) this.joinedByOr = true
      else if (this.level > 0) this.cover(i)
    }
  }

  /** "can't finish a sentence without gasping" tells of gasping. */
  private isAfterCannot(i: number): boolean {
    for (let j = i; j > 0 && i - j < FARTHEST && this.units[j]!.gap === BREAK.none; j--)
      if (this.is(j - 1, this.cue.cant) && this.negated[j - 1] === 0) return true
    return false
  }

  private close(): void {
    this.level = 0
    this.item = -1
  }

  /** "no fever, the right leg has started tingling": an item that turns out to be a sentence was never denied. */
  private lapse(i: number): void {
    if (this.level > 0 && this.item >= 0 && !this.joinedByOr && this.findsAhead(i)) {
      this.negated.fill(0, this.item, i)
      this.listed.fill(0, this.item, i)
    }
    this.close()
  }

  private findsAhead(i: number): boolean {
    for (let j = i; j < this.units.length && j - i < FARTHEST; j++) {
      if (j > i && this.units[j]!.gap !== BREAK.none) return false
      if (this.is(j, this.cue.finding) || this.is(j, this.cue.cant)) return true
    }
    return false
  }

  private open(i: number): void {
    if (this.endsClause(i)) {
      this.close()
      return
    }
    // "no numbness nor weakness" denies both
    if (this.level > 0 && this.is(i, this.cue.or)) {
      this.joinedByOr = true
      return
    }
    // "no numbness no weakness" is a list without its commas
    const isDouble =
      this.level > 0 && i - this.opened <= 3 && !this.inList && !this.hasDenied && !this.isAnswered(i)
    this.level = isDouble ? 2 : 1
    if (this.isUnfelt(i)) {
      this.negated[i] = this.level
      this.denying[i] = 1
    }
    this.opened = i
    this.unknown = 0
    this.isVerbal = this.is(i, this.cue.not) || this.isUnfelt(i)
    this.inList = false
    this.hasCovered = false
    this.hasDenied = this.is(i, this.cue.topic)
    this.deniedThings = 0
    // "none today I can't pee": an answer needs nothing behind it
    this.whole = this.isNo(i) ? 'no' : 'by a finding'
    this.further = 0
    this.joinedByOr = false
  }

  /** "so no it isn't unbearable": a no that answers, and the sentence that says it again. */
  private isAnswered(i: number): boolean {
    return this.opened === i - 2 && this.is(this.opened, this.cue.no) && this.is(i - 1, this.cue.own)
  }

  private atBreak(i: number): void {
    const { gap } = this.units[i]!
    if (gap >= BREAK.contrast) this.close()
    if (gap !== BREAK.comma || this.level === 0) return
    // "a cushion that isn't there, no feeling": a verb that denied nothing before the comma has no list to open
    if ((this.isVerbal && !this.hasCovered) || !this.hasDenied || this.is(i, this.cue.restart)) this.close()
    else this.enterList(i)
  }

  private atAnd(i: number): void {
    if (this.level === 0) return
    if (!this.hasDenied || this.is(i + 1, this.cue.restart)) this.close()
    else this.enterList(i + 1)
  }

  /** After a comma or "and" a negation reaches on only to a further item of its list. */
  private enterList(start: number): void {
    this.inList = true
    this.item = start
    this.further += 1
    this.joinedByOr = false
    this.unknown = 0
    let i = start
    while (this.is(i, this.cue.and) || this.is(i, this.cue.or) || this.is(i, this.cue.filler)) {
      if (this.is(i, this.cue.or)) this.joinedByOr = true
      i += 1
    }
    if (this.joinedByOr) return
    const item = this.units[i]
    if (item === undefined || !this.isItem(i)) this.close()
    // "no numbness, pain in both legs", "not sweat, pee": a list, or something new; asked
    else if (this.further === 1 && (this.isFresh(i) || (this.isVerbal && this.isLast(i)))) this.level = 2
  }

  private cover(i: number): void {
    // "no pain i cant pee"
    const isWhole = this.whole === 'by a finding' || this.whole === 'by a noun'
    if (isWhole && !this.joinedByOr && this.is(i, this.cue.restart)) {
      this.close()
      return
    }
    if ((this.whole === 'by a noun' || this.unknown > 0) && !this.inList && !this.joinedByOr)
      this.atFurther(i)
    if (!this.is(i, this.cue.filler) && !this.is(i, this.cue.own)) this.hasCovered = true
    if (this.is(i, this.cue.fine)) {
      this.turn(i)
      return
    }
    if (this.is(i, this.cue.finding) || this.is(i, this.cue.cant)) {
      const isPredicate = !this.is(i, this.cue.thing) && !this.is(i, this.cue.gerund)
      // "no pain numb down there", "didn't sleep numb down there"
      const isListed = this.inList || this.whole === 'by a noun'
      if (isPredicate && ((isListed && !this.joinedByOr) || this.unknown > 0)) {
        this.lapse(i)
        return
      }
      // "not drunk numb down there"
      if (isPredicate && this.whole !== 'no' && !this.joinedByOr && this.isLast(i)) this.level = 2
      this.deny(i)
      return
    }
    const isSubject = this.is(i, this.cue.place) || this.is(i, this.cue.topic)
    if (isSubject || (this.joinedByOr && this.is(i, this.cue.works))) this.deny(i)
    else if (!this.is(i, this.cue.filler) && !this.is(i, this.cue.own)) this.passUnknown(i)
  }

  /** What stands behind a whole denial without a comma: one thing with its place is asked, "both legs are weak" is told. */
  private atFurther(i: number): void {
    if (this.deniedThings <= 1 && this.isOneMore(i)) this.level = 2
    if (this.item < 0 && this.is(i, this.cue.place)) this.item = i
  }

  private deny(i: number): void {
    this.negated[i] = this.level
    if (this.inList && !this.joinedByOr) this.listed[i] = 1
    const isNoun = this.is(i, this.cue.thing) || this.is(i, this.cue.gerund)
    if (isNoun) this.item = -1
    if (this.is(i, this.cue.thing)) this.deniedThings += 1
    if (isNoun || this.is(i, this.cue.elsewhere)) this.whole = 'by a noun'
    else if (this.whole !== 'by a noun' && this.is(i, this.cue.finding)) this.whole = 'by a finding'
    else if (this.whole === 'no' && this.is(i, this.cue.place)) this.whole = 'by a place'
    this.hasDenied ||= !this.is(i, this.cue.elsewhere)
  }

  private passUnknown(i: number): void {
    this.unknown += 1
    if (this.unknown > (this.isVerbal ? 0 : REACH_PAST)) this.lapse(i)
  }

  /** "peeing isn't normal" tells a finding, it denies nothing. */
  private turn(i: number): void {
    // "no numbness no problems peeing": what is fine stands beside what is denied
    if (this.level === 1 && !this.inList && (this.whole === 'no' || this.whole === 'by a place')) {
      this.turnedOdd[i] = 1
      this.negated.fill(0, this.opened, i)
    }
    this.close()
  }
}

/**
 * Negation after the kinds of rule of NegEx (Chapman 2001) and ConText (Harkema 2009).
 * @param anywhere what the message tells: without a word that denies there is nothing to walk through
 */
export function polarityOf(units: readonly Unit[], lexicon: Compiled, anywhere: ClassSet): Polarity {
  const { no, not, nil, unfelt, fine } = lexicon.cue
  const denies = anywhere.hasAny([no, not, nil, unfelt])
  if (!denies && !anywhere.has(fine)) return NEUTRAL
  const walk = new Walk(units, lexicon)
  if (denies) {
    walk.forward()
    new Answered(units, lexicon).deny(walk.negated)
  }
  if (anywhere.has(fine)) findFine(units, lexicon, walk)
  return walk
}
