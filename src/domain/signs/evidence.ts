import type { Folded } from '../reply/fold.ts'
import { inTheirOrder, type SignId } from './catalogue.ts'
import { isTold, type Judged } from './judge.ts'
import type { Reading } from './match.ts'
import type { Screening } from './screening.ts'
import { BREAK } from './units.ts'

type Denied = SignId | 'all'

/** "no to all"; "all of those: no", where nothing that the "no" could belong to comes after it. */
function deniesAll({ units, lexicon: { cue } }: Reading, i: number): boolean {
  const { entry } = units[i]!
  if (entry.has(cue['deny-all'])) return true
  const next = units[i + 1]
  if (!entry.has(cue['all-those']) || next === undefined) return false
  const isNo = next.entry.has(cue.no) || next.entry.has(cue.nil)
  const after = units[i + 2]
  return isNo && (after === undefined || after.gap >= BREAK.comma)
}

function isAllDenied(reading: Reading): boolean {
  const { anywhere } = reading.context
  const { cue } = reading.lexicon
  if (!anywhere.has(cue['deny-all']) && !anywhere.has(cue['all-those'])) return false
  return reading.units.some((_, i) => deniesAll(reading, i))
}

/** The signs denied in so many words, or 'all'; never one of those that are told. */
export function denials(reading: Reading, judged: readonly Judged[], signs: readonly SignId[]): Denied[] {
  const { units, lexicon, polarity, context } = reading
  if (signs.length === 0 && isAllDenied(reading)) return ['all']
  const found = new Set<SignId>()
  for (const { match, verdict } of judged) if (verdict === 'denied') found.add(match.rule.sign)
  for (let i = 0; i < units.length; i++) {
    if (polarity.fine[i] !== 1 && polarity.negated[i] !== 1) continue
    if (context.other[i] === 2 || context.supposed[i] === 2) continue
    for (const id of units[i]!.entry.classes) if (lexicon.subjects[id]) found.add(lexicon.subjects[id])
  }
  return inTheirOrder([...found].filter((sign) => !signs.includes(sign)))
}

/** What stands behind signs and denials, the same words once. */
class Quotes {
  readonly evidence: { sign: Denied; words: string; negated: boolean }[] = []
  readonly told = new Set<Denied>()
  private readonly seen = new Set<string>()

  constructor(
    private readonly folded: Folded,
    private readonly units: Reading['units'],
  ) {}

  add(sign: Denied, from: number, to: number, negated: boolean): void {
    const words = this.folded.quote(this.units[from]!.start, this.units[to]!.end)
    const key = `${sign} ${words}`
    if (this.seen.has(key)) return
    this.seen.add(key)
    this.told.add(sign)
    this.evidence.push({ sign, words, negated })
  }
}

/** The client's words behind the signs that are told and those that are denied. */
export function evidenceOf(
  reading: Reading,
  judged: readonly Judged[],
  signs: readonly SignId[],
  denied: readonly Denied[],
  folded: Folded,
): Screening['evidence'] {
  const { units } = reading
  const { subjects } = reading.lexicon
  const quotes = new Quotes(folded, units)
  for (const one of judged) {
    const { rule, at } = one.match
    const isDenied = one.verdict === 'denied' && denied.includes(rule.sign)
    if (isDenied || (isTold(one) && signs.includes(rule.sign)))
      quotes.add(rule.sign, at[0]!, at.at(-1)!, isDenied)
  }
  if (denied.length === 0) return quotes.evidence
  for (let i = 0; i < units.length; i++) {
    if (denied.includes('all') && deniesAll(reading, i)) quotes.add('all', i, i, true)
    for (const id of units[i]!.entry.classes) {
      const sign = subjects[id]
      if (sign !== undefined && denied.includes(sign) && !quotes.told.has(sign)) quotes.add(sign, i, i, true)
    }
  }
  return quotes.evidence
}
