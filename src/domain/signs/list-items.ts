import type { Compiled } from './compile.ts'
import { BREAK, type Unit } from './units.ts'

/** Units that are looked at around a word, so that the cost stays in line with the length. */
const FARTHEST = 12

/** What stands in a list of denials ("no numbness, fever or leaks"), and what only looks as if it did. */
export class ListItems {
  constructor(
    protected readonly units: readonly Unit[],
    protected readonly lexicon: Compiled,
  ) {}

  is(i: number, cue: keyof Compiled['cue']): boolean {
    return this.units[i]?.entry.has[this.lexicon.cue[cue]] === 1
  }

  /** Nothing follows within the clause, so a "no" here answers what stands before it. */
  endsClause(i: number): boolean {
    const next = this.units[i + 1]
    return next === undefined || next.gap !== BREAK.none
  }

  /** Nothing stands behind it that would show a list, and nothing says that it is fine. */
  isLast(i: number): boolean {
    if (this.isNo(i)) return false
    const last = Math.min(this.units.length, i + FARTHEST)
    for (let j = i + 1; j < last && this.units[j]!.gap < BREAK.contrast; j++)
      if (this.goesOn(j) || this.is(j, 'fine') || (this.units[j]!.gap === BREAK.comma && this.isItem(j)))
        return false
    return true
  }

  /** A noun with a place of its own, and no "or" to come that would show a list. */
  isFresh(i: number): boolean {
    if (this.isNo(i)) return false
    const isNoun = this.is(i, 'thing') || this.is(i, 'gerund')
    const isPlaceFirst = this.is(i, 'place') && (this.is(i + 1, 'gerund') || this.is(i + 1, 'thing'))
    if (!isNoun && !isPlaceFirst) return false
    let hasPlace = this.is(i, 'place') || this.is(i, 'topic')
    let isSameItem = true
    const last = Math.min(this.units.length, i + FARTHEST)
    for (let j = i + 1; j < last && this.units[j]!.gap < BREAK.contrast; j++) {
      if (this.goesOn(j) || (this.units[j]!.gap === BREAK.comma && this.isItem(j))) return false
      isSameItem &&= this.units[j]!.gap === BREAK.none
      if (isSameItem && (this.is(j, 'place') || this.is(j, 'topic'))) hasPlace = true
    }
    return hasPlace
  }

  private goesOn(i: number): boolean {
    return this.is(i, 'or') || this.is(i, 'and')
  }

  isNo(i: number): boolean {
    return this.is(i, 'no') || this.is(i, 'not')
  }

  /** What a list of denials can go on with; a sentence of its own cannot. */
  isItem(i: number): boolean {
    if (this.isNo(i) || this.is(i, 'thing')) return true
    if (this.is(i, 'verb')) return false
    if (this.is(i, 'gerund')) return true
    if (!this.is(i, 'place') && !this.is(i, 'topic')) return false
    for (
      let j = i + 1;
      j < Math.min(this.units.length, i + FARTHEST) &&
      this.units[j]!.gap === BREAK.none &&
      !this.is(j, 'and');
      j++
    ) {
      // "no fever, each leg burns": a sentence of its own
      if (this.is(j, 'verb') || (this.isNo(j) && !this.endsClause(j))) return false
      if (this.is(j, 'thing')) return true
      if (this.is(j, 'finding') || this.is(j, 'cant')) return false
    }
    return true
  }
}
