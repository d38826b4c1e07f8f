import { type Care, careOfSigns, stopsDrills } from '../domain/care.ts'
import type { Day } from '../domain/day.ts'
import { addDays } from '../domain/day.ts'
import { instantOf, timeAt } from '../domain/local-time.ts'
import { regionOf } from '../domain/region.ts'
import { careOf, isCaudaEquina, SIGNS, type SignId } from '../domain/signs/catalogue.ts'
import { openAlert } from './alert.ts'
import { answeredNow } from './asking.ts'
import type { Draft } from './draft.ts'
import { record } from './record.ts'
import type { SignRow } from './rows.ts'
import { openHold, openSigns } from './status.ts'

/** Minutes without an answer after which a sign that somebody hinted at counts as yes. */
export const ASKED_MINUTES = 10
/** "Are you on the way?", so long after the urgent message. */
export const FOLLOW_UP_MINUTES = 30
const MINUTE = 60_000

/** A sign that somebody hinted at: drills are withheld until the answer, and silence counts as yes. */
export function askSign(draft: Draft, sign: SignId, day: Day, words: string): void {
  const until = new Date(draft.now.getTime() + ASKED_MINUTES * MINUTE)
  writeSign(draft, sign, day, words, 'asked', until)
  draft.stopDrills()
  draft.due('sign-deadline', until, { sign, day }, draft.id('due', 'sign', sign))
}

/** No to the question: kept as denied, never as an all-clear. */
export function denySign(draft: Draft, sign: SignId): void {
  for (const row of draft.file.signs.filter((s) => s.sign === sign && s.state === 'asked'))
    draft.put('sign', { ...row, state: 'denied', endedAt: draft.now, endedBy: 'client', until: null })
  dropDeadline(draft, sign)
}

/**
 * Signs that are there: the urgent message at once, drills stopped, plan locked, coach alerted. Signs of level
 * `soon` bring a word to have it looked at, once an episode. Gives the level of care of what is new.
 */
export function raiseSigns(draft: Draft, signs: readonly SignId[], day: Day, words: string): Care {
  const open = new Set(openSigns(draft.file).map((row) => row.sign))
  const fresh = signs.filter((sign) => !open.has(sign))
  for (const sign of fresh) {
    writeSign(draft, sign, day, words, 'open', null)
    dropDeadline(draft, sign)
  }
  if (signs.length > 0) record(draft, day, {}, signs)
  if (fresh.length === 0) return 'none'
  const care = careOfFresh(draft, fresh, day)
  if (stopsDrills(care)) stopAndSeekCare(draft, fresh, care, day, words)
  else haveItLookedAt(draft, fresh)
  return care
}

/** Two new `soon` signs within 14 days make same-day, over several messages as well. */
function careOfFresh(draft: Draft, fresh: readonly SignId[], day: Day): Care {
  const since = addDays(day, -13)
  const recent = openSigns(draft.file).filter((row) => row.care === 'soon' && row.day >= since)
  return careOfSigns([...new Set([...fresh, ...recent.map((row) => row.sign)])].map(careOf))
}

function writeSign(
  draft: Draft,
  sign: SignId,
  day: Day,
  words: string,
  state: SignRow['state'],
  until: Date | null,
): void {
  const asked = draft.file.signs.find((row) => row.sign === sign && row.state === 'asked')
  draft.put('sign', {
    id: asked?.id ?? draft.id('sign', sign, draft.cause),
    clientId: draft.client.id,
    sign,
    care: careOf(sign),
    state,
    day: asked?.day ?? day,
    at: asked?.at ?? draft.now,
    words: asked?.words || words,
    until,
    endedAt: null,
    endedBy: null,
  })
}

function dropDeadline(draft: Draft, sign: SignId): void {
  const id = draft.id('due', 'sign', sign)
  if (draft.file.dues.some((due) => due.id === id)) draft.drop('due', id)
}

function stopAndSeekCare(draft: Draft, signs: readonly SignId[], care: Care, day: Day, words: string): void {
  const said = urgentText(draft, signs, care)
  draft.toClient({ kind: 'urgent', care, text: said })
  lock(draft, signs, day)
  for (const ask of draft.file.asked) answeredNow(draft, ask.ask)
  draft.due('urgent-follow-up', new Date(draft.now.getTime() + FOLLOW_UP_MINUTES * MINUTE), { care })
  openAlert(draft, signs, care, words, said)
}

/** What the client hears: what to do now, the number of the region, what to say there. No digits are guessed. */
export function urgentText(draft: Draft, signs: readonly SignId[], care: Care): string {
  const { client } = draft.texts
  const region = draft.client.region ? regionOf(draft.client.region) : null
  const emergency = region?.emergency.number ?? null
  if (signs.includes('self-harm'))
    return client.selfHarm({ emergency, crisis: region?.crisis?.number ?? null })
  const cauda = signs.some(isCaudaEquina)
  if (care === 'emergency') return client.emergency({ emergency, cauda })
  const hour = Number(timeAt(draft.now, draft.client.zone).slice(0, 2))
  return client.sameDay({
    emergency,
    advice: region?.outOfHours?.number ?? null,
    outOfHours: hour >= 18 || hour < 8,
  })
}

function lock(draft: Draft, signs: readonly SignId[], day: Day): void {
  draft.stopDrills()
  if (openHold(draft.file, 'lock')) return
  draft.put('hold', {
    id: draft.id('hold', 'lock', draft.cause),
    clientId: draft.client.id,
    kind: 'lock',
    ladder: null,
    reason: signs.join(' '),
    by: 'rules',
    at: draft.now,
    day,
    endedAt: null,
    endedBy: null,
  })
}

/** Signs to be seen about in the next days: told once, the coach told the same day. */
function haveItLookedAt(draft: Draft, signs: readonly SignId[]): void {
  const shorts = signs.map((sign) => draft.texts.signs[sign].short)
  draft.toClient({ kind: 'notice', care: 'soon', text: draft.texts.client.soon(shorts) })
  draft.toCoach({
    kind: 'notice',
    care: 'soon',
    text: draft.texts.coach.soon(
      draft.client.ref,
      shorts,
      signs.map((sign) => SIGNS[sign].source),
    ),
    buttons: signs.map((sign) => ({
      name: `noted-${sign}`,
      label: draft.texts.coach.noted(draft.texts.signs[sign].short),
      act: { do: 'noted', sign },
    })),
  })
}

/** Each morning while locked, instead of a prompt: were they seen, and is anything new? No drills. */
export function morningFollowUp(draft: Draft, day: Day): void {
  const { client } = draft.texts
  draft.toClient({
    kind: 'follow-up',
    key: draft.id('morning', day),
    asks: 'signs',
    text: client.morning,
    buttons: [
      { name: 'seen-yes', label: client.seenYes, act: { do: 'seen', value: 'yes', day } },
      { name: 'seen-no', label: client.seenNo, act: { do: 'seen', value: 'no', day } },
      {
        name: 'none-of-these',
        label: client.nothingNew,
        act: { do: 'answer', ask: 'signs', value: 'none', day },
      },
      {
        name: 'one-of-these',
        label: client.somethingNew,
        act: { do: 'answer', ask: 'signs', value: 'some', day },
        style: 'danger',
      },
    ],
    expires: instantOf(addDays(day, 1), draft.client.prompt, draft.client.zone),
  })
}

/** Half an hour after the urgent message: are they on the way? */
export function urgentFollowUp(draft: Draft): void {
  if (!openHold(draft.file, 'lock')) return
  const { client } = draft.texts
  draft.toClient({
    kind: 'follow-up',
    text: client.onTheWay,
    buttons: [
      { name: 'on-the-way', label: client.onTheWayYes, act: { do: 'on-the-way', value: 'yes' } },
      { name: 'not-yet', label: client.onTheWayNo, act: { do: 'on-the-way', value: 'no' } },
    ],
  })
}

/** The ten minutes are over without an answer: it counts as yes. */
export function signDeadline(draft: Draft, sign: SignId, day: Day): void {
  const row = draft.file.signs.find((s) => s.sign === sign && s.state === 'asked')
  if (row) raiseSigns(draft, [sign], day, row.words)
}
