import { commands } from '../../../commands/index.ts'
import { textsFor } from '../../text/index.ts'
import type { Answer } from '../platform/index.ts'
import { onPlatform } from '../player/acts.ts'
import { readSlash } from '../scenario/slash.ts'
import { formOf } from './controls.ts'
import { passToFreeMinute, type Seen } from './passing.ts'
import type { Session } from './session.ts'
import type { Action, ButtonControl, ListControl, OpenForm } from './wire.ts'

/** What cannot be done, in one sentence with the mend. */
export class NotDone extends Error {}

type By<D extends Action['do']> = Extract<Action, { do: D }>
const { page } = textsFor('en').rehearsal

/** What a person's own app refuses is no fault of the rehearsal's. */
const byApp = async <T>(work: () => Promise<T> | T): Promise<T> => {
  try {
    return await work()
  } catch (error) {
    throw error instanceof NotDone ? error : new NotDone(`${page.cannot} (${(error as Error).message})`)
  }
}

export function checkWho(session: Session, as: string): void {
  if (as !== 'coach' && !session.stage.cast.clients.has(as)) throw new NotDone(page.unknownWho)
}

export async function say(session: Session, { as, text }: By<'say'>, seen: Seen): Promise<void> {
  if (as === 'coach') throw new NotDone(page.cannot)
  await passToFreeMinute(session.programme, seen)
  session.programme.log.deed(as, `“${text}”`)
  await byApp(() => session.stage.say(as, text))
  session.record(as, { say: text })
}

/** Only the latest message of one's own can be changed in a scenario; the page offers no other. */
export async function change(
  session: Session,
  action: By<'edit'> | By<'take-back'>,
  seen: Seen,
): Promise<void> {
  const { as, card } = action
  const mine = [...session.cards.all.values()].findLast(
    (one) => one.kind === 'words' && one.place === `client:${as}`,
  )
  if (mine?.id !== card) throw new NotDone(page.gone)
  await passToFreeMinute(session.programme, seen)
  if (action.do === 'edit') {
    await byApp(() => session.stage.edit(as, card, action.text))
    session.record(as, { edit: action.text })
  } else {
    await byApp(() => session.stage.takeBack(as, card))
    session.record(as, { delete: true })
  }
}

/** Presses or chooses; gives the form that was opened. */
export async function use(
  session: Session,
  action: By<'press'> | By<'choose'>,
  seen: Seen,
): Promise<OpenForm | null> {
  const { as, card, control } = action
  const shown = session.cards.all
    .get(card)
    ?.rows.flat()
    .find(({ id }) => id === control)
  if (!shown) throw new NotDone(page.gone)
  await passToFreeMinute(session.programme, seen)
  const { stage, cards, now, forms } = session
  const place = await placeOf(session, as, card, control, shown.label)
  const person = stage.people.person(as)
  const work = (): Promise<Answer> =>
    action.do === 'press' ? person.press(card, control) : person.choose(card, control, action.values)
  const answer = await byApp(() => stage.settled(stage.people.answered(work())))
  if (answer.outcome === 'modal') {
    const form = `form-${forms.size + 1}`
    forms.set(form, { as, modal: answer.modal, card, control, label: shown.label })
    return formOf(form, answer.modal)
  }
  cards.deed(
    as,
    action.do === 'press' ? page.pressed(shown.label) : page.chose(chosen(shown, action.values)),
    now,
  )
  session.record(as, { use: { ...place, ...(action.do === 'choose' ? { values: [...action.values] } : {}) } })
  return null
}

/** By which name, and under how many newer ones, a scenario finds it; with the database away as the newest. */
async function placeOf({ stage }: Session, as: string, card: string, control: string, label: string) {
  const place = stage.isDatabaseAway ? null : await stage.shown.placeOf(as, card, control)
  return place ?? { name: label, back: 0 }
}

const chosen = (shown: ButtonControl | ListControl, values: readonly string[]): string =>
  shown.type === 'list'
    ? shown.options
        .filter((one) => values.includes(one.value))
        .map((one) => one.label)
        .join('; ')
    : shown.label

export async function submit(
  session: Session,
  { as, form, fields }: By<'submit'>,
  seen: Seen,
): Promise<void> {
  const open = session.forms.get(form)
  if (!open || open.as !== as) throw new NotDone(page.formGone)
  await passToFreeMinute(session.programme, seen)
  const { stage, cards, now } = session
  const place = await placeOf(session, as, open.card, open.control, open.label)
  await byApp(() =>
    stage.settled(stage.people.answered(stage.people.person(as).submit(open.modal, filled(fields)))),
  )
  session.forms.delete(form)
  cards.deed(as, page.filled(open.modal.title), now)
  session.record(as, { use: { ...place, fill: filled(fields) } })
}

/** Empty fields are left out, as a person leaves them empty. */
const filled = (fields: By<'submit'>['fields']): Record<string, string | string[]> =>
  Object.fromEntries(
    Object.entries(fields).flatMap(([name, value]) =>
      value.length === 0 ? [] : [[name, typeof value === 'string' ? value : [...value]]],
    ),
  )

export async function command(session: Session, { as, line }: By<'command'>, seen: Seen): Promise<void> {
  const full = withRooms(line)
  const read = readSlash(full)
  if (typeof read === 'string') throw new NotDone(page.notSent(read))
  const spec = commands.find((one) => one.name === read.name)!
  if (as !== 'coach' && spec.who === 'keeper') throw new NotDone(page.cannot)
  await passToFreeMinute(session.programme, seen)
  const { stage, programme } = session
  programme.log.deed(as, full)
  await byApp(() => stage.command(as, { name: read.name, options: onPlatform(read.options, stage) }))
  session.record(as, { command: full })
  if (read.name === 'enrol') enrolled(session, read.options)
  if (read.name === 'set-up' && session.doc.practice['by-hand'] === true)
    session.doc.practice.zone = String(read.options.zone ?? session.doc.practice.zone)
}

/** A scenario reads a client's days in the zone in which they were enrolled. */
function enrolled(
  { doc, programme, practiceZone }: Session,
  { person, zone, language, alias }: Readonly<Record<string, unknown>>,
): void {
  const client = doc.clients.find((one) => one.ref === person)
  if (client?.['by-hand'] !== true) return
  client.zone = String(zone ?? practiceZone)
  if (language !== undefined) client.language = language
  programme.log.moved(String(alias ?? person), String(client.zone))
}

/** The rooms and the role of the boathouse need not be typed. */
function withRooms(line: string): string {
  const name = /^\/([\w-]+)/.exec(line.trim())?.[1]
  const spec = commands.find((one) => one.name === name)
  const lacking = (spec?.options ?? []).filter(
    (one) => (one.kind === 'channel' || one.kind === 'role') && !line.includes(`${one.name}:`),
  )
  return [line.trim(), ...lacking.map((one) => `${one.name}:here`)].join(' ')
}
