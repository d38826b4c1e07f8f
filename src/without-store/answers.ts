import { strangerKey } from '../engine/check-in/stranger.ts'
import { type Address, BARE, type Message, NOBODY } from '../engine/message.ts'
import type { KnownClient } from '../engine/ports.ts'
import type { OutboxRow } from '../engine/rows.ts'
import { alertText, takeUpButton } from '../engine/urgent/alert.ts'
import { urgentTextFor } from '../engine/urgent/urgent.ts'
import type { Texts } from '../text/index.ts'
import type { Entry } from './spool.ts'

type TextsFor = (language: string) => Texts
/** The outbox id of a message's key. */
export type IdOf = (key: string) => string

export interface Answers {
  readonly reply: OutboxRow
  /** Null where there is nobody to tell. */
  readonly alert: OutboxRow | null
}

/**
 * What is sent without the store: the words and keys are those that the engine gives the same event, so that the
 * store's own rows of them are known as sent. Of who is not known (or has left) no region is known, and nobody told.
 */
export function answersTo(
  { event, at, heard }: Entry & { readonly heard: NonNullable<Entry['heard']> },
  known: KnownClient | null,
  textsFor: TextsFor,
  idOf: IdOf,
): Answers {
  const { user } = event.actor
  const address = { to: 'client', user } as const
  if (!known || known.client.stage === 'left') {
    const { client } = textsFor(known?.client.language ?? 'en')
    const text = known ? client.leftUrgent : client.strangerUrgent
    const said = { key: strangerKey(event.id), address, kind: 'urgent', care: heard.care, text } as const
    return { reply: rowOf(said, null, at, idOf), alert: null }
  }
  const { client, practice } = known
  const told = urgentTextFor(client, textsFor(client.language), { ...heard, now: at })
  const key = (kind: string): string => [client.id, kind, event.id, 0].join('/')
  const urgent = { key: key('urgent'), address, kind: 'urgent', care: heard.care, text: told } as const
  const reply = rowOf(urgent, known, at, idOf)
  if (practice.channel === null) return { reply, alert: null }
  const texts = textsFor(practice.language)
  // before a yes to checking in only that it happened is told
  const mayTell = client.stage !== 'invited'
  const text = alertText(client.ref, practice, texts, {
    signs: mayTell ? heard.signs : [],
    care: heard.care,
    words: mayTell ? heard.words || (heard.named ? texts.client.ticked : texts.client.notNamed) : '',
    told,
    now: at,
  })
  const alert: Said = {
    ...{ key: key('alert'), kind: 'alert', care: heard.care, text },
    address: { to: 'alerts', channel: practice.channel },
    buttons: [takeUpButton(texts, [client.id, 'alert', event.id].join('/'))],
    mentions: { roles: [], users: known.coach ? [known.coach] : [] },
  }
  return { reply, alert: rowOf(alert, known, at, idOf) }
}

/** The alert as it goes to the coach in person, where the channel refuses it. */
export const inPerson = (alert: OutboxRow, coach: string, { chat }: Texts): OutboxRow => ({
  ...alert,
  body: {
    ...alert.body,
    address: { to: 'client', user: coach },
    text: `${alert.body.text}\n${chat.alertInPerson}`,
    // a press in private shows no role, and would count as nobody's
    buttons: [],
    mentions: NOBODY,
  },
})

/** One kind line to somebody whose words are kept for later. */
export const keptForLater = (
  entry: Entry,
  known: KnownClient | null,
  textsFor: TextsFor,
  idOf: IdOf,
): OutboxRow =>
  rowOf(
    {
      key: `kept-for-later/${entry.event.id}`,
      address: { to: 'client', user: entry.event.actor.user },
      kind: 'notice',
      care: 'none',
      text: textsFor(known?.client.language ?? 'en').chat.keptForLater,
    },
    known,
    entry.at,
    idOf,
  )

type Said = Pick<Message, 'key' | 'kind' | 'care' | 'text'> & { readonly address: Address } & Partial<
    Pick<Message, 'buttons' | 'mentions'>
  >

function rowOf(said: Said, known: KnownClient | null, at: Date, idOf: IdOf): OutboxRow {
  const body: Message = {
    ...BARE,
    about: known?.client.ref ?? null,
    ...said,
  }
  return {
    id: idOf(said.key),
    key: said.key,
    kind: said.kind,
    body,
    clientId: known?.client.id ?? null,
    practiceId: known?.practice.id ?? null,
    priority: said.kind === 'urgent' ? 0 : said.kind === 'alert' ? 1 : 2,
    seq: 0,
    state: 'waiting',
    notBefore: at,
    expires: null,
    attempts: 0,
    sentAt: null,
    channel: null,
    platformId: null,
    reason: null,
  }
}
