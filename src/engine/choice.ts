import type { Day } from '../domain/day.ts'
import { plain } from './answer.ts'
import { carry } from './asking.ts'
import { afterPress, afterRecord } from './check-in.ts'
import { readCheckInForm } from './check-in-form.ts'
import { applyAct } from './client-acts.ts'
import { coachAct } from './coach-acts.ts'
import type { Draft } from './draft.ts'
import { consent } from './enrol.ts'
import type { Choice, FormFilled } from './event.ts'
import type { Answer } from './message.ts'
import { nextQuestion } from './next-question.ts'
import { commit, draftOf, type EngineParts } from './parts.ts'
import type { ClientFile, Handled, Tx } from './ports.ts'
import { record, trail } from './record.ts'
import type { OutboxRow } from './rows.ts'
import { screeningForm } from './screening.ts'
import { takeSide } from './side.ts'
import { openHold } from './status.ts'
import { raiseSigns } from './urgent.ts'

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
  if (event.act.do === 'consent') {
    if (draft.client.stage !== 'invited') return null
    return plain(`${row.body.text}\n\n${consent(draft, event.act.value === 'yes')}`, draft.client.ref)
  }
  trail(draft, 'choice', event.label, (event.act.day as Day | undefined) ?? null, event.act)
  const noted = applyAct(draft, event.act, event.values, '')
  if (!noted) return null
  afterPress(draft, noted)
  // a prompt keeps its drills and other buttons in view: only a line is added
  return plain(`${withoutDrills(draft, row)}\n\n**${event.label}** · ${noted.text}`, draft.client.ref)
}

/** While a sign is open or asked about, no message in view may keep an exercise. */
const withoutDrills = (draft: Draft, row: OutboxRow): string =>
  row.body.drills.length > 0 && openHold(draft.file, 'lock')
    ? draft.texts.client.drillsStopped
    : row.body.text

export async function onForm(parts: EngineParts, tx: Tx, event: FormFilled, now: Date): Promise<Handled> {
  const found = await find(tx, event)
  if (found?.by !== 'client') return { answer: plain(parts.textsFor('en').client.notYours, null, true) }
  const draft = draftOf(parts, found.file, now, event.id)
  if (event.act.do === 'screening') {
    if (draft.client.stage === 'screening') screeningForm(draft, event.filled)
  } else if (event.act.do === 'check-in' || event.act.do === 'put-right') checkIn(draft, event)
  await commit(tx, draft)
  return NOTHING
}

/** A filled form is read as the same record that words would make. */
function checkIn(draft: Draft, event: FormFilled): void {
  const day = event.act.day as Day
  const { given, side, signs } = readCheckInForm(event.filled)
  trail(draft, 'form', JSON.stringify(event.filled), day, { ...given, side, signs })
  if (signs.length > 0) raiseSigns(draft, signs, day, draft.texts.client.ticked)
  if (Object.keys(given).length === 0 && !side && signs.length === 0)
    return void draft.toClient({ kind: 'notice', text: draft.texts.client.formEmpty })
  const row = record(draft, day, given)
  if (side) takeSide(draft, side, day, draft.texts.client.ticked)
  const locked = openHold(draft.file, 'lock') !== undefined
  afterRecord(draft, [day])
  const question = nextQuestion(draft, day, [])
  const { client, words } = draft.texts
  const values = words.values(row)
  const parts = [
    values && client.understood([values]),
    given.denied ? client.signsNone : '',
    locked ? client.stillLocked : '',
    question?.text,
  ]
  draft.toClient({
    kind: 'receipt',
    text: parts.filter(Boolean).join('\n'),
    ...(question ? carry(draft, question) : {}),
  })
}
