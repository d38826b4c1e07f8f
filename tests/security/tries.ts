import { customId } from '../../src/chat/custom-id.ts'
import type { ChatCommand } from '../../src/engine/command.ts'
import type { Choice, FormFilled } from '../../src/engine/event.ts'
import type { Field } from '../../src/engine/message.ts'
import { ComponentType, type Forged, InteractionType } from '../../src/rehearsal/platform/index.ts'
import { textsFor } from '../../src/text/index.ts'
import { GUILD, person } from '../engine/practice.ts'
import { type Came, CHANNEL, type HouseTown, type Place } from './house-town.ts'
import { GUILD_2, type Kind, SECRET } from './houses.ts'
import { NOTE } from './trial.ts'

export const COLUMNS = [
  'client',
  'other client',
  'coach',
  'coach elsewhere',
  'keeper',
  'stranger',
  'bot',
  'webhook',
] as const
export type Column = (typeof COLUMNS)[number]

/** Who acts: the client is whoever the thing belongs to, or heron where it belongs to nobody. */
export function actorOf(town: HouseTown, column: Column, owner = 'user-heron'): string {
  switch (column) {
    case 'client':
      return owner
    case 'other client':
      return owner === 'user-wren' ? 'user-heron' : 'user-wren'
    case 'coach':
      return 'coach-1'
    case 'coach elsewhere':
      return 'coach-2'
    case 'keeper':
      return 'keeper-1'
    case 'stranger':
      return 'stranger'
    case 'bot':
      return town.platform.appId
    case 'webhook':
      return '1477900763136000003'
  }
}

/** Where somebody would type it: a client in private, a coach in the own server, the rest in that of the practice. */
export function placeOf(town: HouseTown, column: Column, { who }: Pick<ChatCommand, 'who'>): string {
  const user = actorOf(town, column)
  if (who === 'client' && town.platform.world.users.get(user)?.bot === false) return town.direct(user)
  return CHANNEL[column === 'coach elsewhere' ? GUILD_2 : GUILD]!
}

// Numbers of the platform's documentation ("Application Command Option Type").
const OPTION = { text: 3, client: 3, number: 4, 'yes-no': 5, person: 6, channel: 7, role: 8 } as const

/** Values with which a command is carried out where it is allowed. */
const VALUES: Readonly<Record<string, string>> = {
  client: 'heron',
  alias: 'merlin',
  person: 'user-heron',
  by: 'surgeon',
  to: 'coach-3',
  do: 'hold',
  on: '2026-03-03',
  from: '2026-03-03',
  until: '2026-03-20',
  ladders: 'extension:1',
  'coach-role': 'role-coach',
  'coach-channel': 'channel-coach',
}

export const givenFor = ({
  name,
  kind,
  choices,
  least,
}: ChatCommand['options'][number]): string | number | boolean => {
  if (kind === 'yes-no') return true
  if (kind === 'number') return least ?? 1
  return VALUES[name] ?? choices?.[0] ?? 'a word'
}

/** The command with all that it must be given. */
export function command(user: string, channelId: string, { name, options }: ChatCommand): Forged {
  const given = options.filter((option) => option.required)
  const people = given.filter(({ kind }) => kind === 'person').map((option) => String(givenFor(option)))
  const users = people.map((id) => [id, { id, username: id, discriminator: '0', avatar: null }])
  return {
    type: InteractionType.command,
    user,
    channelId,
    data: {
      ...{ id: '1', name, type: 1 },
      options: given.map((option) => ({
        name: option.name,
        type: OPTION[option.kind],
        value: givenFor(option),
      })),
      ...(people.length > 0 ? { resolved: { users: Object.fromEntries(users), members: {} } } : {}),
    },
  }
}

/** A button pressed, the first of a list chosen, or a form sent with something in every field. */
export function act(user: string, place: Place, { row, index, part }: Kind, opens = false): Forged {
  const form = 'form' in part && !opens ? part.form : undefined
  const kind = 'options' in part ? 'pick' : form ? 'form' : 'button'
  const custom_id = customId({ outbox: row.id, part: kind, index })
  const by = { user, ...place }
  if (form)
    return { ...by, type: InteractionType.modal, data: { custom_id, components: form.fields.map(filled) } }
  const select = {
    component_type: ComponentType.stringSelect,
    values: 'options' in part ? [part.options[0]!.value] : [],
  }
  const button = { component_type: ComponentType.button }
  return {
    ...by,
    type: InteractionType.component,
    data: { custom_id, id: 1, ...('options' in part ? select : button) },
  }
}

/** The same straight to the engine, by whom it belongs to. */
export function eventOf(kind: Kind, id: string): Choice | FormFilled {
  const { row, part } = kind
  const { address } = row.body
  const coach = { user: 'coach-1', guild: GUILD, roles: ['role-coach'], keeper: false }
  const actor = address.to === 'client' ? { ...person(''), user: address.user } : coach
  const from = { id, actor, outbox: row.id, act: part.act }
  if ('form' in part && part.form)
    return { ...from, kind: 'form', filled: Object.fromEntries(part.form.fields.map(answered)) }
  const values = 'options' in part ? [part.options[0]!.value] : []
  return { ...from, kind: 'choice', label: part.label, values }
}

const answered = ({ name, options = [] }: Pick<Field, 'name' | 'options'>) =>
  [name, options[0]?.value ?? (name === 'on' ? '2026-03-03' : 'surgeon')] as const

function filled({ name, kind, options = [] }: Field, n: number): object {
  const isText = kind === 'line' || kind === 'lines'
  const [, value] = answered({ name, options })
  const given = isText
    ? { type: ComponentType.textInput, value }
    : { type: ComponentType.stringSelect, values: [value] }
  return { type: LABEL, id: n + 1, component: { id: n + 20, custom_id: name, ...given } }
}
const LABEL = 18

/** Whose it is: the client on whose message or about whom it stands. */
export const ownerOf = ({ row }: Kind): string => {
  const { address, about } = row.body
  return address.to === 'client' ? address.user : about ? `user-${about}` : 'user-heron'
}

const { access, client, coach, chat } = textsFor('en')
const REFUSALS: ReadonlyMap<string, string> = new Map([
  [access.onlyCoach, 'role'],
  [access.onlyKeeper, 'keeper'],
  [client.stranger, 'stranger'],
  [client.notYours, 'not-yours'],
  [coach.unknownClient('heron', ['osprey']), 'alias'],
])
/** Aliases and words of the first practice. */
const THEIRS = /heron|wren|dipper|knot|plover|curlew|rower-|kingfisher/i

/** What it came to, in the words of the table. */
export function outcomeOf(town: HouseTown, { tried, said, form }: Came, column: Column): string {
  if (!tried) {
    if (said.length === 0) return form ? 'opens' : 'unheard'
    return said.length === 1 && said[0] === chat.expired ? 'expired' : `unknown: ${said.join(' / ')}`
  }
  const refused = said.length === 1 ? REFUSALS.get(said[0]!) : undefined
  if (refused) return tried.changes === NOTE ? refused : `${refused}, and ${tried.changes} rows are written`
  if (column === 'other client')
    return tried.touched.includes(town.trial.clients.get('heron')!) || said.join().includes(SECRET)
      ? 'leaks'
      : 'own'
  if (column === 'coach elsewhere')
    return [...town.trial.clients.values()].some((id) => tried.touched.includes(id)) ||
      THEIRS.test(said.join())
      ? 'leaks'
      : 'own'
  return 'done'
}
