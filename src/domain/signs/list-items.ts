import type { Compiled } from './compile.ts'
import { BREAK, FARTHEST, type Unit } from './units.ts'

/** What stands in a list of denials ("no numbness, fever or leaks"), and what only looks as if it did. */
export class ListItems {
  protected readonly cue: Compiled['cue']

  constructor(
    protected readonly units: readonly Unit[],
    lexicon: Compiled,
  ) {
    this.cue = lexicon.cue
  }

  is(i: number, cue: number): boolean {
    return this.units[i]?.entry.has(cue) === true
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
      if (
        this.goesOn(j) ||
        this.is(j, this.cue.fine) ||
        (this.units[j]!.gap === BREAK.comma && this.isItem(j))
      )
        return false
    return true
  }

  /** A noun with a place of its own, and no "or" to come that would show a list. */
  isFresh(i: number): boolean {
    if (this.isNo(i)) return false
    const isNoun = this.is(i, this.cue.thing) || this.is(i, this.cue.gerund)
    const isPlaceFirst =
      this.is(i, this.cue.place) && (this.is(i + 1, this.cue.gerund) || this.is(i + 1, this.cue.thing))
    if (!isNoun && !isPlaceFirst) return false
    let hasPlace = this.is(i, this.cue.place) || this.is(i, this.cue.topic)
    let isSameItem = true
    const last = Math.min(this.units.length, i + FARTHEST)
    for (let j = i + 1; j < last && this.units[j]!.gap < BREAK.contrast; j++) {
      if (this.goesOn(j) || (this.units[j]!.gap === BREAK.comma && this.isItem(j))) return false
      isSameItem &&= this.units[j]!.gap === BREAK.none
      if (isSameItem && (this.is(j, this.cue.place) || this.is(j, this.cue.topic))) hasPlace = true
    }
    return hasPlace
  }

  /** "no pain chest pain": a thing with its place, alone behind a denial that is whole; a list has more. */
  isOneMore(i: number): boolean {
    if (!this.isFresh(i)) return false
    let things = 0
    for (let j = i; j < this.units.length && j - i < FARTHEST; j++) {
      if (j > i && this.units[j]!.gap !== BREAK.none) break
      if (this.is(j, this.cue.thing) || this.is(j, this.cue.finding)) things += 1
    }
    return things === 1
  }

  private goesOn(i: number): boolean {
    return this.is(i, this.cue.or) || this.is(i, this.cue.and)
  }

  isNo(i: number): boolean {
    return this.is(i, this.cue.no) || this.is(i, this.cue.not) || this.isUnfelt(i)
  }

  /** "I don't feel any numbness" denies the numbness; "I don't feel my foot" tells of it. */
  isUnfelt(i: number): boolean {
    if (!this.is(i, this.cue.unfelt)) return false
    let next = i + 1
    while (this.is(next, this.cue.filler) && next - i < FARTHEST && this.units[next]!.gap === BREAK.none)
      next += 1
    return this.units[next]?.gap === BREAK.none && this.is(next, this.cue.symptom)
  }

  /** What a list of denials can go on with; a sentence of its own cannot. */
  isItem(i: number): boolean {
    if (this.isNo(i) || this.is(i, this.cue.thing)) return true
    if (this.is(i, this.cue.verb)) return false
    if (this.is(i, this.cue.gerund)) return true
    if (!this.is(i, this.cue.place) && !this.is(i, this.cue.topic)) return false
    for (
      let j = i + 1;
      j < Math.min(this.units.length, i + FARTHEST) &&
      this.units[j]!.gap === BREAK.none &&
      !this.is(j, this.cue.and);
      j++
    ) {
      // "no fever, each leg burns": a sentence of its own
      if (this.is(j, this.cue.verb) || (this.isNo(j) && !this.endsClause(j))) return false
      if (this.is(j, this.cue.thing)) return true
      if (this.is(j, this.cue.finding) || this.is(j, this.cue.cant)) return false
    }
    return true
  }
}
