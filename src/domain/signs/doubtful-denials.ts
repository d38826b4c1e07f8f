import { careOf, type SignId } from './catalogue.ts'
import type { Judged } from './judge.ts'
import type { Reading } from './match.ts'
import { asks } from './net.ts'
import { BREAK } from './units.ts'

/** Words that may stand between what ought to work and the word for its working. */
const BESIDE = 4

/**
 * What reads like the denial of an emergency and may tell it: "ni orinar puedo", "feeling when I wipe: none", where it is
 * denied that something works; "numb not painful down there", where only the pain is denied; "wee normal: no"; and what
 * is said in two words and may be meant either way: "stand on toes: no", "nothing down there". Asked about.
 */
export function doubtfulDenials(reading: Reading): readonly Judged[] {
  const found = new Map<SignId, Judged>()
  for (let i = 0; i < reading.units.length; i++) {
    const denied = subjectAt(reading, i)
    const sign = denied ?? askedAt(reading, i)
    if (sign === null || found.has(sign)) continue
    const phrase = new Phrase(reading, i)
    const other = denied === null ? phrase.answeredAlone() : phrase.doubted()
    if (other === null) continue
    const at = [Math.min(i, other), Math.max(i, other)]
    found.set(sign, { match: { rule: asks(sign), at }, verdict: 'unsure' })
  }
  return found.size === 0 ? NONE : [...found.values()]
}
const NONE: readonly Judged[] = []

/** The emergency that is denied where the subject of it is. */
function subjectAt({ units, lexicon, context, polarity }: Reading, i: number): SignId | null {
  const isDenied = polarity.negated[i] === 1 || polarity.fine[i] === 1
  if (!isDenied || context.other[i] === 2 || context.supposed[i] === 2) return null
  for (const id of units[i]!.entry.classes) {
    const sign = lexicon.subjects[id]
    if (sign !== undefined && careOf(sign) === 'emergency') return sign
  }
  return null
}

/** What has no sign's name and answered with no tells one: "lift foot: no", "holding on: no", "want to live? no". */
function askedAt({ units, lexicon, context }: Reading, i: number): SignId | null {
  if (context.other[i] === 2 || context.supposed[i] === 2) return null
  const { task, holding, living } = lexicon.cue
  const { entry } = units[i]!
  if (entry.has(task)) return 'leg-weakness'
  if (entry.has(holding)) return 'bladder-change'
  return entry.has(living) ? 'self-harm' : null
}

/** What stands between two breaks, around the subject of a denial. */
class Phrase {
  private readonly from: number
  private readonly to: number

  constructor(
    private readonly reading: Reading,
    private readonly subject: number,
  ) {
    this.from = this.startOf(subject)
    let to = subject
    while (to + 1 < reading.units.length && !this.starts(to + 1)) to += 1
    this.to = to
  }

  /** The word that makes the denial doubtful. */
  doubted(): number | null {
    return (
      this.workBeside() ??
      this.toldBefore() ??
      this.notFine() ??
      this.leftOut() ??
      this.excepted() ??
      this.nothing()
    )
  }

  /** The word for working, where no trouble stands in its part of the phrase or in that of the subject. */
  private workBeside(): number | null {
    if (!this.isNegated(this.subject) || this.isSaidWell()) return null
    const { works, unfelt, cant } = this.reading.lexicon.cue
    for (
      let i = Math.max(this.from, this.subject - BESIDE);
      i <= Math.min(this.to, this.subject + BESIDE);
      i++
    )
      if (this.is(i, works) || this.is(i, unfelt)) {
        // "haven't noticed any problem with my wee": the trouble is what is denied
        if (this.is(i, unfelt) && this.is(i + 1, cant)) return null
        return this.isTroubled(i) || this.isTroubled(this.subject) ? null : i
      }
    return null
  }

  /** "no problems peeing, pooing or feeling it", "peed before the session, no trouble". */
  private isSaidWell(): boolean {
    const { well } = this.reading.lexicon.cue
    if (this.is(this.to + 1, well)) return true
    for (let i = this.subject; i >= 0; i--) {
      if (this.is(i, well)) return true
      if (this.reading.units[i]!.gap === BREAK.sentence) return false
    }
    return false
  }

  /** A symptom that is told before it, where what is denied is no symptom: "numb but no pain down there". */
  private toldBefore(): number | null {
    if (this.answer() !== null) return null
    const { symptom, place, topic } = this.reading.lexicon.cue
    const { gap } = this.reading.units[this.from]!
    const first = this.from > 0 && gap === BREAK.contrast ? this.startOf(this.from - 1) : this.from
    let told: number | null = null
    for (let i = first; i < this.subject; i++) {
      if (this.is(i, place) || this.is(i, topic)) return null
      if (!this.is(i, symptom)) continue
      if (this.isNegated(i)) return null
      told = i
    }
    return told
  }

  /** What is said to be fine, and a no behind it: "wee normal: no". */
  private notFine(): number | null {
    const answer = this.answer()
    if (answer === null) return null
    for (let i = this.from; i < answer; i++)
      if (i !== this.subject && this.is(i, this.reading.lexicon.cue.fine)) return i
    return null
  }

  /** A no behind it and nothing else in the phrase, in no list of such answers: "stand on toes: no". */
  answeredAlone(): number | null {
    const answer = this.answer()
    return answer === null || !this.isBare(answer) || this.isListed(answer) ? null : answer
  }

  /** The same of a sign's own subject, where nothing else is denied: "all fine, bladder not", "legs yes, bladder no". */
  private leftOut(): number | null {
    return this.deniesMore() ? null : this.answeredAlone()
  }

  /** Of all that is fine or works this is not: "everything ok but not my bowels". */
  private excepted(): number | null {
    const { not, fine, works, own } = this.reading.lexicon.cue
    let at = this.subject - 1
    while (this.is(at, own) && !this.is(at, not)) at -= 1
    if (!this.is(at, not) || !this.isBare(at) || this.deniesMore()) return null
    const isWell = this.reading.units.some(
      ({ entry }, i) => i < this.from && (entry.has(fine) || entry.has(works)),
    )
    return isWell ? at : null
  }

  /** "Nothing" of it and no more, where nothing else is denied: "nothing down there", "wee: nothing". */
  private nothing(): number | null {
    const { nothing } = this.reading.lexicon.cue
    const at = [this.subject - 1, this.subject + 1].find((i) => this.is(i, nothing))
    return at === undefined || !this.isBare(at) || this.deniesMore() ? null : at
  }

  /** Whether something else is denied outside the phrase. */
  private deniesMore(): boolean {
    const { units, polarity } = this.reading
    const { entry: subject } = units[this.subject]!
    return units.some(
      ({ entry }, i) => (i < this.from || i > this.to) && polarity.negated[i] === 1 && entry !== subject,
    )
  }

  /** Whether the phrase has nothing but its subject, this and what may stand anywhere. */
  private isBare(other: number): boolean {
    const { filler, own, works, contrast, except, odd, thing, symptom, finding } = this.reading.lexicon.cue
    const light = [filler, own, works, contrast, except]
    const trouble = [odd, thing, symptom, finding]
    const is = (i: number, cues: readonly number[]): boolean => cues.some((cue) => this.is(i, cue))
    let from = Math.min(this.subject, other)
    // "2 calf 4 nothing down there": values are none of it
    while (from > this.from && this.reading.units[from - 1]!.value === null) from -= 1
    for (let i = from; i <= this.to; i++)
      if (i !== this.subject && i !== other && (!is(i, light) || is(i, trouble))) return false
    return true
  }

  /** Whether another phrase of the message, not the same said twice, closes with a no. */
  private isListed(answer: number): boolean {
    const { no, nil, not } = this.reading.lexicon.cue
    const { units } = this.reading
    const { entry: subject } = units[this.subject]!
    return units.some(
      (_, i) =>
        i !== answer &&
        [no, nil, not].some((one) => this.is(i, one)) &&
        this.endsWith(i) &&
        units[i - 1]?.entry !== subject,
    )
  }

  /** The "no" behind the phrase, which says no more than that. */
  private answer(): number | null {
    const { fine, well, no, nil, not, nothing } = this.reading.lexicon.cue
    const answers = (i: number): boolean =>
      i > this.subject && [no, nil, not, nothing].some((one) => this.is(i, one)) && this.endsWith(i)
    const answer = [this.to, this.to + 1].find(answers)
    if (answer === undefined || this.is(answer, fine) || this.is(answer, well)) return null
    return answer
  }

  private endsWith(i: number): boolean {
    return i + 1 >= this.reading.units.length || this.starts(i + 1)
  }

  private startOf(i: number): number {
    let from = i
    while (from > 0 && !this.starts(from)) from -= 1
    return from
  }

  private starts(i: number): boolean {
    return this.reading.units[i]!.gap !== BREAK.none
  }

  private is(i: number, cue: number): boolean {
    return this.reading.units[i]?.entry.has(cue) === true
  }

  private isNegated(i: number): boolean {
    return this.reading.polarity.negated[i] === 1
  }

  /** Whether a trouble is named within the same "neither ... nor". */
  private isTroubled(at: number): boolean {
    const { works, unfelt, no, nil, cant, or, well, finding, thing, symptom, odd, fine } =
      this.reading.lexicon.cue
    let first = at
    while (first > this.from && !this.is(first, or)) first -= 1
    let last = at
    while (last < this.to && !this.is(last + 1, or)) last += 1
    for (let i = first; i <= last; i++) {
      if (this.is(i, well)) return true
      if ([works, unfelt, no, nil, cant].some((cue) => this.is(i, cue))) continue
      if ([finding, thing, symptom, odd, fine].some((cue) => this.is(i, cue))) return true
    }
    return false
  }
}
