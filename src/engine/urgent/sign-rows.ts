import { type Care, higherCare } from '../../domain/care.ts'
import type { Day } from '../../domain/day.ts'
import { daysBetween } from '../../domain/day.ts'
import { careOf, type SignId } from '../../domain/signs/catalogue.ts'
import { endClock, ensureClock } from '../check-in/asked.ts'
import type { Draft } from '../draft.ts'
import type { SignRow } from '../rows.ts'
import { openSigns } from '../status.ts'

/** Two new `soon` signs no further apart than this many days are seen the same day. */
const PAIR_DAYS = 14

/** A sign that somebody hinted at: drills are withheld until the answer, and silence counts as yes. */
export function askSign(draft: Draft, sign: SignId, day: Day, words: string): void {
  if (openSigns(draft.file).some((row) => row.sign === sign)) return
  writeSign(draft, sign, day, words, 'asked')
  draft.stopDrills()
  ensureClock(draft)
}

/** No to the question: kept as denied, never as an all-clear. */
export function denySign(draft: Draft, sign: SignId): void {
  for (const row of draft.file.signs.filter((s) => s.sign === sign && s.state === 'asked'))
    draft.put('sign', { ...row, state: 'denied', endedAt: draft.now, endedBy: 'client', until: null })
  // denied beside a check-in: left standing, the question would read as "one of these", and silence as urgent
  for (const { id, options } of draft.file.asked)
    if (options[0]?.act.do === 'sign' && options[0].act.sign === sign) draft.drop('asked', id)
  endClock(draft)
}

/** The level of the signs that this very event has opened, now or while the store was away. */
export const careOfCause = (draft: Draft): Care =>
  openSigns(draft.file)
    .filter((row) => row.id === draft.id('sign', row.sign, draft.cause))
    .reduce<Care>((care, row) => higherCare(care, row.care), 'none')

/** Opens signs that are there; two `soon` ones within two weeks become same-day together. */
export function openRows(draft: Draft, signs: readonly SignId[], day: Day, words: string): SignRow[] {
  const rows = signs.map((sign) => writeSign(draft, sign, day, words, 'open'))
  const soon = rows.filter((row) => row.care === 'soon')
  const before = draft.file.signs.filter(
    (row) =>
      careOf(row.sign) === 'soon' &&
      ['open', 'noted'].includes(row.state) &&
      Math.abs(daysBetween(row.day, day)) <= PAIR_DAYS &&
      !rows.some((fresh) => fresh.id === row.id),
  )
  if (soon.length === 0 || soon.length + before.length < 2) return rows
  const open = before.filter((row) => row.state === 'open')
  for (const row of [...soon, ...open]) draft.put('sign', { ...row, care: 'same-day' })
  // the one told of before belongs to the event: the alert names both
  return [...rows, ...open].map((row) => (row.care === 'soon' ? { ...row, care: 'same-day' as const } : row))
}

function writeSign(draft: Draft, sign: SignId, day: Day, words: string, state: SignRow['state']): SignRow {
  const asked = draft.file.signs.find((row) => row.sign === sign && row.state === 'asked')
  const row: SignRow = {
    id: asked?.id ?? draft.id('sign', sign, draft.cause),
    clientId: draft.client.id,
    sign,
    care: careOf(sign),
    state,
    day: asked?.day ?? day,
    at: asked?.at ?? draft.now,
    words: asked?.words || words,
    until: state === 'asked' ? (asked?.until ?? null) : null,
    endedAt: null,
    endedBy: null,
  }
  draft.put('sign', row)
  return row
}
