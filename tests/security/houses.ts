import { barrierQuestion, yesNoQuestion } from '../../src/engine/check-in/asking.ts'
import type { Actor } from '../../src/engine/event.ts'
import type { Address, Button, Form, Pick } from '../../src/engine/message.ts'
import type { Change, OutboxRow, Rows } from '../../src/engine/rows.ts'
import { textsFor } from '../../src/text/index.ts'
import { message } from '../chat/outbox.ts'
import { COACH, GUILD, openPractice, type Practice } from '../engine/practice.ts'

/** Two practices in one bot, with clients in every state: what is on their messages is what there is to press. */
export const GUILD_2 = 'guild-2'
/** The coach of the second practice. The role has the same id there, which roles of two servers never have. */
const COACH_2: Actor = { ...COACH, user: 'coach-2', guild: GUILD_2 }
/** Words that are heron's alone: nobody but heron and their coach may read them. */
export const SECRET = 'kingfisher'
export const NOW = new Date('2026-03-03T10:00:00Z')

/** A kind of thing to press, choose from or fill in. */
export interface Kind {
  /** What it does: the act, what it asks, and whether it opens a form. */
  readonly name: string
  readonly row: OutboxRow
  readonly index: number
  readonly part: Button | Pick
}

export async function openHouses(): Promise<Practice> {
  const practice = await openPractice('2026-03-02', { name: 'boathouse' })
  const { command, press, say, until } = practice
  const setUp = { 'coach-role': 'role-coach', 'coach-channel': 'channel-2', zone: 'UTC', region: 'PT' }
  await command('set-up', { ...setUp, 'policy-settled': true }, COACH_2)
  const people = { to: { roles: ['role-coach'] } }
  await practice.enrol('heron', {}, { activities: `${SECRET} 7`, lift: SECRET })
  for (const ref of ['wren', 'dipper', 'knot']) await practice.enrol(ref)
  for (const ref of ['plover', 'curlew']) await practice.invite(ref)
  await command('enrol', { person: 'user-osprey', alias: 'osprey', side: 'left' }, COACH_2)
  for (const ref of ['curlew', 'osprey']) await press(ref, 'consent-yes')
  await until('2026-03-02', '09:00')
  for (const words of ['calf', '2 sessions', '2 sessions, calf, pain 4']) await say('wren', words)
  for (const words of ['2 sessions', '4 days ago 2 calf 4', '2 calf 4, right leg today'])
    await say('knot', words)
  await say('wren', 'i wake at night from the pain and it does not settle')
  await say('heron', '2 calf 6')
  await say('heron', `question: is the ${SECRET} good for me?`)
  await say('heron', `numb between my legs since the ${SECRET} this morning`)
  await say('heron', 'hm, maybe my foot feels numb?')
  await command('hand-over', { client: 'heron', to: 'coach-3' }, 'coach', people)
  await command('take-up', { client: 'heron' })
  await command('note', { client: 'heron', text: SECRET })
  await command('digest', { client: 'heron' })
  await command('discharge', { client: 'dipper', sure: true })
  await until('2026-03-03', '09:30')
  await say('wren', 'same as yesterday')
  for (const name of ['client-record', 'digest', 'plan'])
    await command(name, { client: 'wren', sessions: 2, ladders: 'lift:3' })
  await command('decide', { client: 'wren', do: 'refer' })
  await command('my-record', {}, 'wren')
  await fillRoster(practice)
  await command('roster')
  await postRare(practice)
  return practice
}

/** A page of the roster holds twenty: so many more have been invited. */
async function fillRoster(practice: Practice): Promise<void> {
  const { client } = await practice.file('plover')
  const changes = Array.from({ length: 20 }, (_, n): Change => {
    const own = { id: `invited-${n}`, ref: `rower-${n}`, user: `user-rower-${n}` }
    return { put: 'client', row: { ...client, ...own } }
  })
  await practice.store.store.transaction((tx) => tx.apply({ changes, postings: [] }))
}

/** What stands on a message weeks later, or after a turn for the worse. */
async function postRare(practice: Practice): Promise<void> {
  const texts = textsFor('en')
  const day = '2026-03-03'
  const { client: wren } = await practice.file('wren')
  const { client: dipper } = await practice.file('dipper')
  const activities: Button = {
    ...{ name: 'activities', label: 'Tell' },
    ...{ act: { do: 'activities' }, form: activitiesForm },
  }
  const comeBack = ['good', 'worse'].map((value) => ({
    ...{ name: `come-back-${value}`, label: value },
    act: { do: 'come-back', value },
  }))
  const toWren = [
    yesNoQuestion(texts, 'comfort', day, 'Comfortable?').buttons,
    yesNoQuestion(texts, 'settled', day, 'Settled?').buttons,
    barrierQuestion(texts, day).buttons,
    [activities],
  ]
  const coach = { to: 'coach', channel: 'channel-coach' } as const
  const undo = { name: 'undo', label: 'Undo', act: { do: 'undo', rungs: '' } }
  const postings = [
    ...toWren.map((buttons) => ({ buttons, of: wren, address: toClient(wren) })),
    { buttons: comeBack, of: dipper, address: toClient(dipper) },
    { buttons: [undo], of: wren, address: coach },
  ].map(({ buttons, of, address }, n) => ({
    message: message({ key: `rare/${n}`, address, about: of.ref, buttons }),
    ...{ clientId: of.id, practiceId: of.practiceId, priority: 2 as const },
    ...{ notBefore: NOW, expires: null },
  }))
  await practice.store.store.transaction((tx) => tx.apply({ changes: [], postings }))
}

const toClient = ({ user }: Rows['client']): Address => ({ to: 'client', user })

const activitiesForm: Form = {
  name: 'activities',
  title: 'Activities',
  fields: [{ name: 'rowing', label: 'Rowing', kind: 'line', required: false }],
}

/** What a button or list does, its form apart: two that do the same are one kind. */
const nameOf = (part: Button | Pick): string => {
  const { do: does, ask } = part.act
  return [does, ...(ask ? [ask] : []), ...('form' in part && part.form ? ['form'] : [])].join(' ')
}

/** All that stands on messages of the first practice, the latest first. */
function partsOn(rows: readonly OutboxRow[]): Kind[] {
  const own = rows.filter(({ practiceId }) => practiceId === GUILD).reverse()
  return own.flatMap((row) => {
    const { buttons, pick } = row.body
    const of = (part: Button | Pick, index: number): Kind => ({ name: nameOf(part), row, index, part })
    return [...buttons.map(of), ...(pick ? [of(pick, 0)] : [])]
  })
}

const firstOf = (parts: readonly Kind[], key: (kind: Kind) => string): Map<string, Kind> =>
  new Map([...parts].reverse().map((kind) => [key(kind), kind]))

/** One of each kind. */
export const kindsOn = (rows: readonly OutboxRow[]): Map<string, Kind> =>
  firstOf(partsOn(rows), ({ name }) => name)

/** One of each kind and label. */
export const everyButton = (rows: readonly OutboxRow[]): Kind[] => [
  ...firstOf(partsOn(rows), ({ name, part }) => `${name} ${part.label}`).values(),
]
