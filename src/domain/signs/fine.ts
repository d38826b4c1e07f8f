import type { Compiled } from './compile.ts'
import type { Polarity } from './polarity.ts'
import { BREAK, FARTHEST, type Unit } from './units.ts'

/** "fine", "normal", "ok down there": each denies only the thing that it is said of. */
class Fines {
  private readonly cue: Compiled['cue']

  constructor(
    private readonly units: readonly Unit[],
    lexicon: Compiled,
    private readonly polarity: Polarity,
  ) {
    this.cue = lexicon.cue
  }

  private is(i: number, cue: number): boolean {
    return this.units[i]?.entry.has(cue) === true
  }

  find(): void {
    for (let i = 0; i < this.units.length; i++) {
      if (!this.is(i, this.cue.fine) || this.polarity.turnedOdd[i] === 1) continue
      if (this.opensClause(i)) continue
      if (this.saysCannot(i) || this.tellsHowBadly(i)) this.polarity.turnedOdd[i] = 1
      // "controlo la caca" is a verb, and speaks of what follows
      else if (this.is(i, this.cue.restart) || !this.fineBefore(i)) this.fineAfter(i)
    }
  }

  /** "..., normally I run up them" speaks of other times. */
  private opensClause(i: number): boolean {
    return (
      this.units[i]!.gap === BREAK.comma &&
      this.units[i + 1]?.gap === BREAK.none &&
      this.is(i + 1, this.cue.me)
    )
  }

  /** "can't go properly", "cannot pee normally". */
  private saysCannot(i: number): boolean {
    return this.standsBefore(i, (j) => this.is(j, this.cue.cant) && this.polarity.negated[j] === 0)
  }

  /** "don't feel my bum properly": how it fails, not that it is well. */
  private tellsHowBadly(i: number): boolean {
    if (!this.is(i, this.cue.manner)) return false
    return this.standsBefore(i, (j) => this.is(j, this.cue.finding) && this.polarity.negated[j] === 0)
  }

  /** Looks back within the phrase, and no farther than people speak in one breath. */
  private standsBefore(i: number, fits: (j: number) => boolean): boolean {
    for (let j = i; j > 0 && i - j < FARTHEST && this.units[j]!.gap === BREAK.none; j--)
      if (fits(j - 1)) return true
    return false
  }

  /** Things in a row: "bladder and bowels fine". "Pooed in my sleep and the knee is fine" speaks of two. */
  private fineBefore(i: number): boolean {
    let found = false
    let joined = false
    let gap = this.units[i]!.gap
    if (this.answers(i)) {
      this.polarity.fine[i - 1] = 1
      return true
    }
    for (let j = i - 1; j >= 0 && i - j <= FARTHEST && gap <= BREAK.comma; j--) {
      if (
        this.is(j, this.cue.no) ||
        this.is(j, this.cue.not) ||
        this.is(j, this.cue.finding) ||
        this.is(j, this.cue.fine)
      )
        break
      if (this.is(j, this.cue.rest) || (gap !== BREAK.none && this.failsBefore(j))) break
      const isSubject = this.isSubject(j)
      const isListed = gap !== BREAK.none || this.joins(j + 1)
      if (isSubject && ((joined && !isListed) || (found && this.isTroubled(j)))) break
      if (isSubject) this.polarity.fine[j] = 1
      else if (!this.isLink(j)) break
      found ||= isSubject
      joined ||= this.joins(j)
      gap = this.units[j]!.gap
    }
    return found
  }

  /** "bladder? fine": the whole answer to one thing asked. */
  private answers(i: number): boolean {
    const asked = this.units[i - 1]
    if (!asked || !this.units[i]!.afterQuestion || !this.isSubject(i - 1)) return false
    const next = this.units[i + 1]
    return (i === 1 || asked.gap !== BREAK.none) && (next === undefined || next.gap !== BREAK.none)
  }

  /** "feeling great today, my bladder won't start": what stands behind a comma belongs to it only in a list. */
  private fineAfter(i: number): void {
    let found = false
    for (let j = i + 1; j < this.units.length && j <= i + 8 && this.units[j]!.gap <= BREAK.comma; j++) {
      if (!found && (this.units[j]!.gap === BREAK.comma || this.is(j, this.cue.and))) return
      // "sin novedades no puedo orinar"
      if (this.is(j, this.cue.cant) || this.is(j, this.cue.finding)) return
      if (this.isSubject(j)) this.polarity.fine[j] = 1
      else if (!this.isLink(j)) return
      found ||= this.isSubject(j)
    }
  }

  /** What can be said to be fine; a finding that names its place ("heartbeat in my belly") cannot. */
  private isSubject(j: number): boolean {
    return (this.is(j, this.cue.place) || this.is(j, this.cue.topic)) && !this.is(j, this.cue.finding)
  }

  /** "can't pee, all normal": what fails is not fine because of what stands after the comma. */
  private failsBefore(j: number): boolean {
    return this.standsBefore(
      j,
      (k) => (this.is(k, this.cue.cant) || this.is(k, this.cue.finding)) && this.polarity.negated[k] === 0,
    )
  }

  /** "numb down below and the knee is fine": the first place has its trouble, whatever is said of the second. */
  private isTroubled(j: number): boolean {
    for (let k = j; k > 0 && j - k < FARTHEST && this.units[k]!.gap === BREAK.none; k--) {
      if (this.joins(k - 1)) return false
      if (
        (this.is(k - 1, this.cue.cant) || this.is(k - 1, this.cue.finding)) &&
        this.polarity.negated[k - 1] === 0
      )
        return true
    }
    return false
  }

  private joins(j: number): boolean {
    return this.is(j, this.cue.and) || this.is(j, this.cue.or)
  }

  private isLink(j: number): boolean {
    const { filler, and, or, own, me } = this.cue
    return this.is(j, filler) || this.is(j, and) || this.is(j, or) || this.is(j, own) || this.is(j, me)
  }
}

/** Marks what is said to be fine, and what was said to be anything but. */
export function findFine(units: readonly Unit[], lexicon: Compiled, polarity: Polarity): void {
  new Fines(units, lexicon, polarity).find()
}
