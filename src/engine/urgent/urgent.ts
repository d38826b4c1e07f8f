import { CARES, type Care, higherCare, stopsDrills } from '../../domain/care.ts'
import type { Day } from '../../domain/day.ts'
import { addDays } from '../../domain/day.ts'
import { timeAt } from '../../domain/local-time.ts'
import { emergencyNumber, regionOf } from '../../domain/region.ts'
import { isCaudaEquina, SIGNS, type SignId } from '../../domain/signs/catalogue.ts'
import type { Texts } from '../../text/index.ts'
import { answeredNow, endClock } from '../check-in/asked.ts'
import { record } from '../check-in/record.ts'
import { promptDue, schedulePrompt } from '../check-in/schedule-prompt.ts'
import type { Draft } from '../draft.ts'
import type { SignRow } from '../rows.ts'
import { askedSigns, isLocked, openSigns } from '../status.ts'
import { openAlert } from './alert.ts'
import { openRows } from './sign-rows.ts'

/** "Are you on the way?", so long after the urgent message. */
const FOLLOW_UP_MINUTES = 30
const MINUTE = 60_000
const HARM: SignId = 'self-harm'

/**
 * Signs that are there: one urgent message at once, drills stopped, plan locked, coach alerted. Signs of level
 * `soon` bring a word to have it looked at, once an episode. Gives the level of care of what is new.
 */
export function raiseSigns(draft: Draft, signs: readonly SignId[], day: Day, words: string): Care {
  if (signs.length === 0) return 'none'
  record(draft, day, {}, signs)
  const open = new Set(openSigns(draft.file).map((row) => row.sign))
  const fresh = [...new Set(signs)].filter((sign) => !open.has(sign))
  const again = signs.includes(HARM) && open.has(HARM)
  if (again) harmToldAgain(draft, words)
  if (fresh.length === 0) return again ? 'emergency' : 'none'
  const rows = openRows(draft, fresh, day, words)
  const care = careOfRows(rows)
  if (!stopsDrills(care)) haveItLookedAt(draft, fresh)
  else stopAndSeekCare(draft, [...rows, ...foldIn(draft, care)], day, words)
  endClock(draft)
  return again ? 'emergency' : care
}

/** Thoughts of self-harm may have become a plan: each time they are told the client hears the line, and the coach the words. */
function harmToldAgain(draft: Draft, words: string): void {
  const told = urgentText(draft, [HARM], 'emergency')
  draft.toClient({ kind: 'urgent', care: 'emergency', text: told })
  openAlert(draft, { signs: [HARM], care: 'emergency', words, told })
}

const careOfRows = (rows: readonly SignRow[]): Care =>
  rows.reduce<Care>((care, row) => higherCare(care, row.care), 'none')

/** What is still being asked and is no graver is not asked any more: help is on its way for it as well. */
function foldIn(draft: Draft, care: Care): SignRow[] {
  const asked = askedSigns(draft.file).filter((row) => CARES.indexOf(row.care) <= CARES.indexOf(care))
  return asked.flatMap((row) => {
    record(draft, row.day, {}, [row.sign])
    return openRows(draft, [row.sign], row.day, row.words)
  })
}

function stopAndSeekCare(draft: Draft, fresh: readonly SignRow[], day: Day, words: string): void {
  const signs = fresh.map((row) => row.sign)
  // a lesser sign beside an open graver one must not make the advice milder
  const care = higherCare(careOfRows(fresh), careOfRows(openSigns(draft.file)))
  const said = urgentText(draft, signs, care)
  draft.toClient({ kind: 'urgent', care, text: said })
  lock(draft, signs, day)
  for (const asked of draft.file.asked)
    if (!asked.pressing || asked.ask === 'signs') answeredNow(draft, asked.ask)
  // who has left hears what to do now, and is asked nothing after it
  if (draft.client.stage !== 'left')
    draft.due('urgent-follow-up', new Date(draft.now.getTime() + FOLLOW_UP_MINUTES * MINUTE), {
      care,
      signs: signs.join(' '),
    })
  openAlert(draft, { signs, care, words, told: said })
}

/** What the client hears: what to do now, the number of the region, what to say there. No digits are guessed. */
export const urgentText = (draft: Draft, signs: readonly SignId[], care: Care): string =>
  urgentTextFor(draft.client, draft.texts, { signs, care, now: draft.now })

/** The same for whoever is known by region and zone alone. */
export function urgentTextFor(
  where: Pick<Draft['client'], 'region' | 'zone'>,
  { client }: Texts,
  { signs, care, now }: { signs: readonly SignId[]; care: Care; now: Date },
): string {
  const region = where.region ? regionOf(where.region) : null
  const emergency = emergencyNumber(where)
  const bodily = signs.filter((sign) => sign !== 'self-harm')
  const cauda = signs.some(isCaudaEquina)
  if (bodily.length < signs.length) {
    const kind = client.selfHarm({ emergency, crisis: region?.crisis?.number ?? null })
    return bodily.length === 0 ? kind : `${client.emergency({ emergency, cauda })}\n\n${kind}`
  }
  if (care === 'emergency') return client.emergency({ emergency, cauda })
  const hour = Number(timeAt(now, where.zone).slice(0, 2))
  return client.sameDay({
    emergency,
    advice: region?.outOfHours?.number ?? null,
    outOfHours: hour >= 18 || hour < 8,
  })
}

function lock(draft: Draft, signs: readonly SignId[], day: Day): void {
  draft.stopDrills()
  // without a plan there is no daily prompt yet, and the morning follow-up takes its place
  if (!promptDue(draft) && draft.client.stage !== 'left') schedulePrompt(draft, addDays(draft.today, 1))
  if (isLocked(draft.file)) return
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
  const { texts } = draft
  const shorts = signs.map((sign) => texts.signs[sign].short)
  const { coach, signs: names } = draft.forCoach
  draft.toClient({ kind: 'notice', care: 'soon', text: texts.client.soon(shorts) })
  draft.toCoach({
    kind: 'notice',
    care: 'soon',
    text: coach.soon(
      draft.client.ref,
      signs.map((sign) => names[sign].short),
      signs.map((sign) => SIGNS[sign].source),
    ),
    buttons: signs.map((sign) => ({
      name: `noted-${sign}`,
      label: coach.noted(names[sign].short),
      act: { do: 'noted', sign },
    })),
  })
}
