import type { Care } from '../../domain/care.ts'
import type { Day } from '../../domain/day.ts'
import type { SignId } from '../../domain/signs/catalogue.ts'
import { saysChanged } from '../../domain/signs/changed.ts'
import { screen } from '../../domain/signs/screen.ts'
import type { Screening } from '../../domain/signs/screening.ts'
import { answeredNow } from '../check-in/asked.ts'
import { record } from '../check-in/record.ts'
import type { Draft } from '../draft.ts'
import { knownSigns } from '../history.ts'
import { askedSigns, openSigns } from '../status.ts'
import { askSign, denySign } from './sign-rows.ts'
import { raiseSigns } from './urgent.ts'

/** What was heard of signs in one event, whichever way it was said. */
export interface Heard {
  /** Present or likely. */
  readonly signs: readonly SignId[]
  /** Those of them that are asked back. */
  readonly unsure: readonly SignId[]
  readonly denied: Screening['denied']
}

/**
 * Takes everything heard at once, so that one event gives one urgent message: what is there is raised, what is only
 * hinted at is asked back, what is denied is kept as denied. Known trouble is passed over unless it has changed.
 */
export function takeSigns(draft: Draft, heard: Heard, day: Day, words: string): Care {
  takeDenied(draft, heard, day)
  // while thoughts of self-harm are open, a hint at them is no question any more
  const isOpenHarm = openSigns(draft.file).some(({ sign }) => sign === 'self-harm')
  const isAsked = (sign: SignId): boolean =>
    heard.unsure.includes(sign) && !(sign === 'self-harm' && isOpenHarm)
  for (const sign of heard.signs.filter(isAsked)) askSign(draft, sign, day, words)
  return raiseSigns(
    draft,
    heard.signs.filter((sign) => !isAsked(sign)),
    day,
    words,
  )
}

/** Trouble on the client's list, said in words: unchanged it is no sign, changed it is asked about. */
export function setKnownApart(draft: Draft, heard: Heard, words: string): Heard {
  const known = new Set(knownSigns(draft.file))
  const isKnown = (sign: SignId): boolean => known.has(sign)
  if (!heard.signs.some(isKnown)) return heard
  const { language } = draft.client
  const { evidence } = screen(words, language)
  const quotes = (sign: SignId) => evidence.filter((one) => one.sign === sign).map((one) => one.words)
  const signs = heard.signs.filter((sign) => !isKnown(sign) || saysChanged(words, language, quotes(sign)))
  return { ...heard, signs, unsure: signs.filter((sign) => isKnown(sign) || heard.unsure.includes(sign)) }
}

/** Chosen from a list of what is new or changed: what is on the known list is asked about once more. */
export function chosenSigns(draft: Draft, signs: readonly SignId[]): Heard {
  const known = new Set(knownSigns(draft.file))
  return { signs, unsure: signs.filter((sign) => known.has(sign)), denied: [] }
}

function takeDenied(draft: Draft, { denied, signs }: Heard, day: Day): void {
  if (denied.length === 0) return
  for (const row of askedSigns(draft.file)) {
    const isDenied = denied.includes('all') || denied.includes(row.sign)
    if (isDenied && !signs.includes(row.sign)) denySign(draft, row.sign)
  }
  // "one of these" was pressed by mistake: "which?" is answered by "none"
  if (denied.includes('all') && signs.length === 0) answeredNow(draft, 'signs')
  const before = draft.file.checkIns.find((row) => row.day === day)?.denied ?? null
  const single = denied.filter((id): id is SignId => id !== 'all')
  const all = before === 'all' || denied.includes('all')
  record(draft, day, { denied: all ? 'all' : [...new Set([...(before ?? []), ...single])] })
}
