import { stopsDrills } from '../domain/care.ts'
import type { Day } from '../domain/day.ts'
import { careFor } from '../domain/signs/screen.ts'
import { plain } from './answer.ts'
import { afterPress } from './check-in/check-in.ts'
import { applyAct } from './check-in/client-acts.ts'
import { checkInFilled } from './check-in/form-filled.ts'
import { trail } from './check-in/record.ts'
import { coachAct } from './coach/coach-acts.ts'
import { recordPage, recordWish } from './coach/record-page.ts'
import { postReport } from './coach/report.ts'
import { keepChoices } from './coach/shown.ts'
import { activitiesFilled } from './course/activities-answer.ts'
import { backToScreening } from './course/back-to-screening.ts'
import { courseAct } from './course/course-acts.ts'
import { consent } from './course/enrol.ts'
import { sendOwnData } from './course/export.ts'
import { screeningForm } from './course/screening.ts'
import { onDesk } from './desk.ts'
import type { Draft } from './draft.ts'
import type { Choice, FormFilled } from './event.ts'
import { isCoach } from './is-coach.ts'
import type { Answer } from './message.ts'
import { commit, draftOf, type EngineParts } from './parts.ts'
import type { ClientFile, Handled, Tx } from './ports.ts'
import type { OutboxRow, Stage } from './rows.ts'
import { drillsWithheld } from './status.ts'
import { signsToldBy } from './urgent/told-by.ts'

const NOTHING: Handled = { answer: null }

interface Found {
  readonly row: OutboxRow
  readonly file: ClientFile
  readonly by: 'client' | 'coach'
}

/** The message that was acted on, and whether this person may: the client on their own, the coach role on the rest. */
async function find(tx: Tx, event: Choice | FormFilled): Promise<Found | null> {
  const row = await tx.outbox(event.outbox)
  const file = row?.clientId ? await tx.client(row.clientId) : null
  if (!row || !file) return null
  const { address } = row.body
  if (address.to === 'client') return address.user === event.actor.user ? { row, file, by: 'client' } : null
  if (address.only !== undefined && address.only !== event.actor.user) return null
  return isCoach(file.practice, event.actor) ? { row, file, by: 'coach' } : null
}

export async function onChoice(parts: EngineParts, tx: Tx, event: Choice, now: Date): Promise<Handled> {
  const found = await find(tx, event)
  if (!found) return (await onDesk(parts, tx, event, now)) ?? notYours(parts, tx, event)
  const draft = draftOf(parts, found.file, now, event.id)
  if (found.by === 'coach') return byCoach(tx, draft, found.row, event)
  const elsewhere = await underWayElsewhere(tx, draft, event)
  if (elsewhere) return { answer: plain(elsewhere, draft.client.ref, true) }
  const answer =
    event.act.do === 'my-data'
      ? { ...(await sendOwnData(tx, draft, 'json')), privately: true }
      : pressedByClient(draft, found.row, event)
  await commit(tx, draft)
  return { answer }
}

const UNDER_WAY: readonly Stage[] = ['enrolled', 'screening']

/**
 * A yes to a second practice waits until the first has ended: a reply in words belongs to one of them, and a sign
 * must not go to the coach of the other. Only the person hears of it.
 */
async function underWayElsewhere(tx: Tx, { client, texts }: Draft, { act }: Choice): Promise<string | null> {
  if (act.do !== 'consent' || act.value !== 'yes' || client.stage !== 'invited') return null
  const files = await tx.clientsOfUser(client.user)
  const isOther = files.some((file) => file.client.id !== client.id && UNDER_WAY.includes(file.client.stage))
  return isOther ? texts.course.elsewhere : null
}

/**
 * In the language of the practice whose message it was. Whoever has been erased since, rows and all, may have the
 * form still open: a sign in it is answered as a stranger's is.
 */
async function notYours(parts: EngineParts, tx: Tx, event: Choice | FormFilled): Promise<Handled> {
  const row = await tx.outbox(event.outbox)
  const practice = row?.practiceId ? await tx.practice(row.practiceId) : null
  const { client } = parts.textsFor(practice?.language ?? 'en')
  const care = row ? 'none' : careFor(signsToldBy(event))
  if (stopsDrills(care)) return { answer: plain(client.strangerUrgent, null, true) }
  const before = care === 'soon' ? `${client.soonBefore}\n` : ''
  return { answer: plain(before + client.notYours, null, true) }
}

/** A press or form of a coach's on a message about a client. */
async function byCoach(tx: Tx, draft: Draft, row: OutboxRow, event: Choice | FormFilled): Promise<Handled> {
  const { address } = row.body
  const only = address.to !== 'client' && address.only !== undefined
  const answer =
    event.act.do === 'record'
      ? await recordPage(tx, draft, recordWish(event.act), !only)
      : event.act.do === 'report'
        ? await postReport(tx, draft, true)
        : pressedByCoach(draft, row, event)
  await commit(tx, draft)
  if (!answer) return NOTHING
  const to = { practice: draft.file.practice, clientId: draft.client.id, cause: event.id, now: draft.now }
  const alone = only || answer.privately ? event.actor.user : null
  return { answer: await keepChoices(tx, answer, { ...to, only: alone, in: address }) }
}

function pressedByCoach(draft: Draft, row: OutboxRow, event: Choice | FormFilled): Answer | null {
  const filled = event.kind === 'form' ? event.filled : null
  const done = coachAct(draft, event.act, `<@${event.actor.user}>`, filled)
  if (!done) return null
  const text = done.shows || row.body.text === '' ? done.text : `${row.body.text}\n\n${done.text}`
  const answer = plain(text, draft.client.ref, done.shows)
  return done.choices ? { ...answer, choices: done.choices } : answer
}

function pressedByClient(draft: Draft, row: OutboxRow, event: Choice): Answer | null {
  const { client } = draft.texts
  if (event.act.do === 'consent') {
    if (draft.client.stage !== 'invited') return null
    return plain(`${row.body.text}\n\n${consent(draft, event.act.value === 'yes')}`, draft.client.ref)
  }
  const said = courseAct(draft, event.act, event.label)
  if (said !== null) return plain(`${row.body.text}\n\n**${event.label}** · ${said}`, draft.client.ref)
  if (draft.client.stage === 'left') return plain(leftText(draft, isAboutSigns(event)), draft.client.ref)
  if (draft.client.stage === 'discharged' && !isAboutSigns(event))
    return plain(client.notEnrolled, draft.client.ref)
  trail(draft, 'choice', event.label, (event.act.day as Day | undefined) ?? null, event.act)
  const noted = applyAct(draft, event.act, event.values, '')
  if (!noted) return null
  afterPress(draft, noted)
  backToScreening(draft)
  // a prompt keeps its drills and other buttons in view: only a line is added
  return plain(`${withoutDrills(draft, row)}\n\n**${event.label}** · ${noted.text}`, draft.client.ref)
}

/** A press that tells of a sign, or answers about one: it counts for somebody who has ended as well. */
const isAboutSigns = ({ act }: Choice): boolean =>
  act.do === 'sign' ||
  act.do === 'seen' ||
  act.do === 'on-the-way' ||
  (act.do === 'answer' && act.ask === 'signs')

/** Who has left hears what to do, and nothing is kept. */
const leftText = (draft: Draft, sign: boolean): string =>
  sign ? draft.texts.client.leftUrgent : draft.texts.client.notEnrolled

/** While a sign is open or asked about, no message in view may keep an exercise. */
const withoutDrills = (draft: Draft, row: OutboxRow): string =>
  row.body.drills.length > 0 && drillsWithheld(draft.file) ? draft.texts.client.drillsStopped : row.body.text

export async function onForm(parts: EngineParts, tx: Tx, event: FormFilled, now: Date): Promise<Handled> {
  const found = await find(tx, event)
  if (!found) return notYours(parts, tx, event)
  const draft = draftOf(parts, found.file, now, event.id)
  if (found.by === 'coach') return byCoach(tx, draft, found.row, event)
  if (event.act.do === 'activities') activitiesFilled(draft, event.filled)
  else if (event.act.do === 'screening') {
    if (draft.client.stage === 'screening') screeningForm(draft, event.filled)
    else screeningPast(draft, event)
  } else if (event.act.do === 'check-in' || event.act.do === 'put-right') checkInFilled(draft, event)
  await commit(tx, draft)
  return NOTHING
}

/** The first questions were answered or ended while the form was open: a sign ticked in it counts all the same. */
function screeningPast(draft: Draft, event: FormFilled): void {
  const signs = signsToldBy(event)
  const { client } = draft.texts
  if (signs.length === 0) return void draft.toClient({ kind: 'notice', text: client.alreadyAnswered })
  checkInFilled(draft, { ...event, act: { ...event.act, day: draft.today }, filled: { signs } })
}
