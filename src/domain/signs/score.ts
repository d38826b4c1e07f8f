import { careOf, type SignId } from './catalogue.ts'
import type { Screening } from './screening.ts'

/** A text with what the screen should make of it. */
export interface Expectation {
  readonly text: string
  readonly signs: readonly SignId[]
  readonly denied: readonly (SignId | 'all')[]
  /** Whether asking back is what should happen. */
  readonly ask: boolean
}

/** Shares of a corpus; a sign counts as caught where it is raised, or raised and asked. */
export interface Score {
  readonly texts: number
  readonly emergency: { readonly of: number; readonly caught: number }
  readonly otherSigns: { readonly of: number; readonly caught: number }
  /** Texts without a sign: how many were left alone, only asked about, or raised. */
  readonly signless: {
    readonly of: number
    readonly alone: number
    readonly asked: number
    readonly raised: number
  }
  readonly denials: { readonly of: number; readonly found: number }
  readonly wrong: readonly { readonly text: string; readonly why: string }[]
}

interface Tally {
  emergency: { of: number; caught: number }
  otherSigns: { of: number; caught: number }
  signless: { of: number; alone: number; asked: number; raised: number }
  denials: { of: number; found: number }
  wrong: { text: string; why: string }[]
}

function countSigns(tally: Tally, { text, signs }: Expectation, got: Screening): void {
  for (const sign of signs) {
    const kind = careOf(sign) === 'emergency' ? tally.emergency : tally.otherSigns
    kind.of += 1
    if (got.signs.includes(sign)) kind.caught += 1
    else tally.wrong.push({ text, why: `missed ${sign}` })
  }
}

function countSignless(tally: Tally, { text }: Expectation, got: Screening): void {
  tally.signless.of += 1
  if (got.signs.length === 0) tally.signless.alone += 1
  else if (got.unsure.length === got.signs.length) tally.signless.asked += 1
  else tally.signless.raised += 1
  if (got.signs.length > 0) tally.wrong.push({ text, why: `found ${got.signs.join(', ')}` })
}

function countDenials(tally: Tally, { text, denied }: Expectation, got: Screening): void {
  for (const sign of denied) {
    tally.denials.of += 1
    if (got.denied.includes(sign)) tally.denials.found += 1
    else tally.wrong.push({ text, why: `denial of ${sign} not seen` })
  }
}

/** Compares the screen's answers with a corpus. */
export function score<T extends Expectation>(
  corpus: readonly T[],
  screen: (text: string, expectation: T) => Screening,
): Score {
  const tally: Tally = {
    emergency: { of: 0, caught: 0 },
    otherSigns: { of: 0, caught: 0 },
    signless: { of: 0, alone: 0, asked: 0, raised: 0 },
    denials: { of: 0, found: 0 },
    wrong: [],
  }
  for (const expectation of corpus) {
    const got = screen(expectation.text, expectation)
    if (expectation.signs.length === 0) countSignless(tally, expectation, got)
    else countSigns(tally, expectation, got)
    countDenials(tally, expectation, got)
  }
  return { texts: corpus.length, ...tally }
}
