import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import type { FormFilled } from '../../src/engine/event.ts'
import type { Button, Form, Pick } from '../../src/engine/message.ts'
import type { OutboxRow } from '../../src/engine/rows.ts'
import {
  ComponentType,
  type Forged,
  InteractionType,
  type PostedEvent,
} from '../../src/rehearsal/platform/index.ts'
import { chat as texts } from '../../src/text/en/chat.ts'
import { message, row } from '../chat/outbox.ts'
import { answer, type Stage, setStage } from '../end-to-end/chat-stage.ts'

/**
 * What no person's app sends: values that were never offered, ids of other parts, forms of other people. The
 * platform checks most of it; the bot does not count on that.
 */
const form: Form = {
  name: 'check-in',
  title: 'Sunday, 8 March',
  fields: [
    { name: 'pain', label: 'Worst pain', kind: 'one', options: optionsOf('4', '5'), required: false },
    { name: 'signs', label: 'Any of these?', kind: 'many', options: optionsOf('none', 'a'), required: false },
    { name: 'note', label: 'Anything else', kind: 'lines', required: false },
    { name: 'day', label: 'Which day', kind: 'line', required: true },
  ],
}
const plain: Button = { name: 'yes', label: 'Yes', act: { do: 'pause' } }
const opens: Button = { name: 'check-in', label: 'Check in', act: { do: 'check-in' }, form }
// more than one list of 25 holds
const values = Array.from({ length: 30 }, (_, n) => `alias-${n}`)
const pick: Pick = {
  name: 'which',
  label: 'Which?',
  options: optionsOf(...values),
  most: 2,
  act: { do: 'open' },
}

function optionsOf(...values: string[]) {
  return values.map((value) => ({ value, label: value.toUpperCase() }))
}

let stage: Stage
let close: () => Promise<void>
/** A message to heron in private, and one in the coaches' channel. */
let toHeron: OutboxRow
let toCoaches: OutboxRow
let direct: { channelId: string; messageId: string }
let coaches: { channelId: string; messageId: string }
let elsewhere: string
const posted: PostedEvent[] = []

beforeAll(async () => {
  stage = await setStage({
    onTestFinished(end) {
      close = end
    },
  })
  const { build } = stage.platform
  const shut = { everyoneCanView: false }
  const channel = build.addChannel(stage.guildId, 'coaches', shut).id
  elsewhere = build.addChannel(stage.guildId, 'hall').id
  toHeron = row({
    body: message({ address: { to: 'client', user: stage.heron.id }, buttons: [plain, opens], pick }),
  })
  toCoaches = row({ body: message({ address: { to: 'coach', channel }, buttons: [plain, opens] }) })
  direct = placeOf(await stage.post(toHeron))
  coaches = placeOf(await stage.post(toCoaches))
  stage.platform.on('message', (event) => posted.push(event))
}, 30_000)
afterAll(() => close())

const placeOf = ({ id, channelId }: { id: string; channelId: string }) => ({ channelId, messageId: id })

beforeEach(() => {
  stage.heard.length = 0
  posted.length = 0
  stage.respond = () => null
})
afterEach(() => expect(stage.platform.violations).toEqual([]))

type Sent = Omit<Forged, 'user'> & { user?: string }

/** Sends it, and waits until the bot is done with it. */
async function forge(sent: Sent): Promise<void> {
  void stage.platform.forger.send({ user: stage.heron.id, ...sent })
  await stage.settled()
}

async function refused(sent: Sent): Promise<void> {
  await forge(sent)
  expect(stage.heard).toEqual([])
  expect(posted.map(({ content, ephemeral }) => [content, ephemeral])).toEqual([[texts.expired, true]])
}

const press = (id: string, at = direct): Sent => ({
  type: InteractionType.component,
  ...at,
  data: { component_type: ComponentType.button, custom_id: id, id: 1 },
})
const choose = (id: string, chosen: readonly string[]): Sent => ({
  type: InteractionType.component,
  ...direct,
  data: { component_type: ComponentType.stringSelect, custom_id: id, id: 1, values: chosen },
})
interface Field {
  type: number
  custom_id: string
  value?: string
  values?: string[]
}
const list = (name: string, ...values: string[]): Field => ({
  type: ComponentType.stringSelect,
  custom_id: name,
  values,
})
const line = (name: string, value: string): Field => ({
  type: ComponentType.textInput,
  custom_id: name,
  value,
})
const send = (id: string, fields: readonly Field[], at = direct): Sent => ({
  type: InteractionType.modal,
  ...at,
  data: {
    custom_id: id,
    components: fields.map((component, n) => ({
      type: 18,
      id: n + 1,
      component: { id: n + 20, ...component },
    })),
  },
})

describe('a choice', () => {
  it.each([
    ['was never offered', '.p', ['osprey']],
    ['is offered beside one that never was', '.p', ['alias-1', 'osprey']],
    ['is more than may be chosen', '.p', ['alias-1', 'alias-2', 'alias-3']],
    ['comes twice', '.p', ['alias-1', 'alias-1']],
    ['is none at all', '.p', []],
    ['stands in the next list', '.p', ['alias-27']],
    ['stands in a list that is not there', '.p7', ['alias-1']],
    ['is of a button', '.0', ['alias-1']],
    ['is of a form', '.f1', ['alias-1']],
    ['is of nothing of ours', '.x', ['alias-1']],
  ])('that %s is not taken', async (_, part, chosen) => {
    await refused(choose(toHeron.id + part, chosen))
  })

  it('is taken from each of the lists', async () => {
    await forge(choose(`${toHeron.id}.p`, ['alias-1', 'alias-2']))
    await forge(choose(`${toHeron.id}.p1`, ['alias-27']))
    expect(stage.heard).toMatchObject([{ values: ['alias-1', 'alias-2'] }, { values: ['alias-27'] }])
  })
})

describe('a press', () => {
  it.each([
    ['of a list', '.p'],
    ['of a form', '.f1'],
    ['of a button that the message does not have', '.7'],
    ['of nothing of ours', ''],
    ['with something behind the id', '.0\n'],
  ])('%s is not taken', async (_, part) => {
    await refused(press(toHeron.id + part))
  })

  it('of a message that was never written is not taken', async () => {
    await refused(press('never-written.0'))
  })

  it.each([0, 1])('on a message to somebody else opens and does nothing (button %i)', async (button) => {
    const { id: user } = stage.coach
    await refused({ ...press(`${toHeron.id}.${button}`), user })
  })

  it.each([0, 1])('in another channel than that of the message does nothing (button %i)', async (button) => {
    await refused(press(`${toCoaches.id}.${button}`, { ...coaches, channelId: elsewhere }))
    posted.length = 0
    await refused(press(`${toCoaches.id}.${button}`, direct))
  })

  it('by somebody who is in the channel and not in the server counts without any role', async () => {
    const { id: user } = stage.platform.addUser('osprey')
    await forge({ ...press(`${toCoaches.id}.0`, coaches), user })
    expect(stage.heard).toMatchObject([{ actor: { user, roles: [], keeper: false, guild: stage.guildId } }])
  })
})

describe('a form', () => {
  const full = [list('pain', '4'), list('signs', 'a'), line('note', 'a word'), line('day', 'today')]
  const filled = (): unknown => (stage.heard[0] as FormFilled | undefined)?.filled

  it.each([
    ['under the id of its button', '.1', full],
    ['of a button that opens none', '.f0', full],
    ['of a list', '.p', full],
    ['of a button that is not there', '.f9', full],
    ['with a value that was never offered', '.f1', [list('pain', '11'), ...full.slice(1)]],
    ['with two where one may be chosen', '.f1', [list('pain', '4', '5'), ...full.slice(1)]],
    ['with one twice', '.f1', [list('signs', 'a', 'a'), line('day', 'today')]],
    ['with words for a list', '.f1', [line('signs', 'a'), line('day', 'today')]],
    ['with a list for words', '.f1', [list('note', 'a'), line('day', 'today')]],
  ])('%s is not taken', async (_, part, fields) => {
    await refused(send(toHeron.id + part, fields))
  })

  it('of somebody else, or sent in another channel, is not taken', async () => {
    await refused({ ...send(`${toHeron.id}.f1`, full), user: stage.coach.id })
    posted.length = 0
    await refused(send(`${toCoaches.id}.f1`, full, { ...coaches, channelId: elsewhere }))
  })

  it('with a field that it does not have is taken without it', async () => {
    await forge(send(`${toHeron.id}.f1`, [...full, line('client', 'osprey'), list('__proto__', 'x')]))
    expect(filled()).toEqual({ pain: '4', signs: ['a'], note: 'a word', day: 'today' })
  })

  it('with fields missing is taken as if they were left empty: a sign in the others must not be lost', async () => {
    await forge(send(`${toHeron.id}.f1`, [list('signs', 'a')]))
    expect(filled()).toEqual({ signs: ['a'] })
  })

  it('with more words than fit is cut to what the form takes', async () => {
    await forge(send(`${toHeron.id}.f1`, [line('note', 'x'.repeat(90_000)), line('day', 'y'.repeat(4_000))]))
    expect(filled()).toEqual({ note: 'x'.repeat(2_000), day: 'y'.repeat(200) })
  })
})

describe('what is sent once more under its id', () => {
  it('changes nothing of what was answered', async () => {
    stage.respond = () => answer('Noted')
    await forge(press(`${toCoaches.id}.0`, coaches))
    stage.respond = () => null
    stage.platform.forger.again((stage.heard[0] as { id: string }).id)
    await stage.settled()
    expect(stage.heard).toHaveLength(2)
    expect(posted.map(({ content }) => content)).toEqual(['Noted'])
    posted.length = 0
    stage.respond = () => answer('Your drills')
    await stage.heron.slash('dm', 'today')
    await stage.settled()
    stage.respond = () => null
    stage.platform.forger.again((stage.heard.at(-1) as { id: string }).id)
    await stage.settled()
    expect(stage.heard).toHaveLength(4)
    expect(posted.map(({ content }) => content)).toEqual(['Your drills'])
  })
})

describe('what is no person', () => {
  const command = { id: '1', name: 'today', type: 1, options: [] }

  it.each([
    ['a bot', () => stage.platform.appId],
    ['a webhook', () => '1477900763136000003'],
  ])('%s is not heard, whatever it sends', async (_, user) => {
    for (const sent of [
      press(`${toCoaches.id}.0`, coaches),
      press(`${toCoaches.id}.1`, coaches),
      choose(`${toHeron.id}.p`, ['alias-1']),
      send(`${toCoaches.id}.f1`, [], coaches),
      { type: InteractionType.command, channelId: coaches.channelId, data: command },
      { type: InteractionType.autocomplete, channelId: coaches.channelId, data: command },
    ])
      await forge({ ...sent, user: user() })
    expect([stage.heard, posted]).toEqual([[], []])
  })
})
