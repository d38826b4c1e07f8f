import type { Day } from '../domain/day.ts'
import type { SignId } from '../domain/signs/catalogue.ts'
import type { Screening } from '../domain/signs/screening.ts'
import type { Draft } from './draft.ts'
import { knownSigns } from './history.ts'
import { record } from './record.ts'
import { askedSigns } from './status.ts'
import { askSign, denySign, raiseSigns } from './urgent.ts'

type Heard = Pick<Screening, 'signs' | 'unsure' | 'denied'>

/** What was heard of signs: those that are there at once, those hinted at asked back, those denied kept as denied. */
export function takeSigns(draft: Draft, heard: Heard, day: Day, words: string): void {
  const known = new Set(knownSigns(draft.file))
  const told = heard.signs.filter((sign) => !known.has(sign))
  const likely = told.filter((sign) => heard.unsure.includes(sign))
  takeDenied(draft, heard.denied, day)
  for (const sign of likely) askSign(draft, sign, day, words)
  const certain = told.filter((sign) => !heard.unsure.includes(sign))
  if (certain.length > 0) raiseSigns(draft, certain, day, words)
}

function takeDenied(draft: Draft, denied: Heard['denied'], day: Day): void {
  if (denied.length === 0) return
  for (const row of askedSigns(draft.file))
    if (denied.includes('all') || denied.includes(row.sign)) denySign(draft, row.sign)
  const before = draft.file.checkIns.find((row) => row.day === day)?.denied ?? null
  const single = denied.filter((id): id is SignId => id !== 'all')
  const all = before === 'all' || denied.includes('all')
  record(draft, day, { denied: all ? 'all' : [...new Set([...(before ?? []), ...single])] })
}
