import { ListItems } from './list-items.ts'
import { BREAK, FARTHEST } from './units.ts'

/** What is denied by an answer behind it. */
export class Answered extends ListItems {
  /** "numbness: none", "bladder no": an answer covers the item just before it. */
  deny(negated: Uint8Array): void {
    for (let i = 1; i < this.units.length; i++) {
      const answers = (this.isNo(i) || this.is(i, this.cue.nil)) && this.endsClause(i)
      if (!answers || this.units[i]!.gap === BREAK.contrast || this.is(i - 1, this.cue.or)) continue
      if (this.units[i]!.gap === BREAK.sentence && !this.units[i]!.afterQuestion) continue
      for (let j = this.firstAnswered(i); j < i; j++)
        if (!this.is(j, this.cue.filler) && !this.is(j, this.cue.and) && !this.is(j, this.cue.or))
          negated[j] ||= 1
    }
  }

  /** "numb down there pain none": of what a sentence tells the answer covers only the noun that stands last. */
  private firstAnswered(i: number): number {
    let first = i
    let noun = i
    while (first > 0 && i - first < FARTHEST && this.isAnswered(first - 1)) {
      first -= 1
      if (noun === i && this.is(first, this.cue.thing)) noun = first
      if (this.units[first]!.gap !== BREAK.none) return first
    }
    const isTold = first > 0 && (this.is(first - 1, this.cue.finding) || this.is(first - 1, this.cue.cant))
    return isTold && noun < i ? noun : first
  }

  private isAnswered(j: number): boolean {
    const { place, topic, works, thing, gerund, and, or, filler, own } = this.cue
    return [place, topic, works, thing, gerund, and, or, filler, own].some((cue) => this.is(j, cue))
  }
}
