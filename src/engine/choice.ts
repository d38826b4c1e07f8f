import type { Day } from '../domain/day.ts'
import { plain } from './answer.ts'
import { afterPress } from './check-in.ts'
import { applyAct } from './client-acts.ts'
import { coachAct } from './coach-acts.ts'
import type { Draft } from './draft.ts'
import { consent } from './enrol.ts'
import type { Choice, FormFilled } from './event.ts'
import { checkInFilled } from './form-filled.ts'
import type { Answer } from './message.ts'
import { commit, draftOf, type EngineParts } from './parts.ts'
import type { ClientFile, Handled, Tx } from './ports.ts'
import { backToScreening } from './press.ts'
import { trail } from './record.ts'
import type { OutboxRow } from './rows.ts'
import { screeningForm } from './screening.ts'
import { drillsWithheld } from './status.ts'

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
  if (row.body.address.to === 'client')
    return row.body.address.user === event.actor.user ? { row, file, by: 'client' } : null
  return isCoach(file, event.actor) ? { row, file, by: 'coach' } : null
}

export const isCoach = ({ practice }: ClientFile, actor: Choice['actor']): boolean =>
  practice.coachRole !== null && actor.guild === practice.guild && actor.roles.includes(practice.coachRole)

export async function onChoice(parts: EngineParts, tx: Tx, event: Choice, now: Date): Promise<Handled> {
  const found = await find(tx, event)
  if (!found) return { answer: plain(parts.textsFor('en').client.notYours, null, true) }
  const draft = draftOf(parts, found.file, now, event.id)
  const answer =
    found.by === 'coach' ? pressedByCoach(draft, found.row, event) : pressedByClient(draft, found.row, event)
  await commit(tx, draft)
  return { answer }
}

function pressedByCoach(draft: Draft, row: OutboxRow, event: Choice): Answer | null {
  const done = coachAct(draft, event.act, `<@${event.actor.user}>`)
  if (!done) return null
  return plain(done.shows ? done.text : `${row.body.text}\n\n${done.text}`, draft.client.ref, done.shows)
}

function pressedByClient(draft: Draft, row: OutboxRow, event: Choice): Answer | null {
  const { client } = draft.texts
  if (event.act.do === 'consent') {
    if (draft.client.stage !== 'invited') return null
    return plain(`${row.body.text}\n\n${consent(draft, event.act.value === 'yes')}`, draft.client.ref)
  }
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
  if (found?.by !== 'client') return { answer: plain(parts.textsFor('en').client.notYours, null, true) }
  const draft = draftOf(parts, found.file, now, event.id)
  if (event.act.do === 'screening') {
    if (draft.client.stage === 'screening') screeningForm(draft, event.filled)
  } else if (event.act.do === 'check-in' || event.act.do === 'put-right') checkInFilled(draft, event)
  await commit(tx, draft)
  return NOTHING
}
