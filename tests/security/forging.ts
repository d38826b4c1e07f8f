import { expect } from 'vitest'
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
import { type Stage, setStage } from '../end-to-end/chat-stage.ts'

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

export type Sent = Omit<Forged, 'user'> & { user?: string }
interface Place {
  readonly channelId: string
  readonly messageId: string
}

/** A stage with a message to heron in private, and one in the coaches' channel, and ways to forge what comes of them. */
export interface Forging {
  readonly stage: Stage
  readonly toHeron: OutboxRow
  readonly toCoaches: OutboxRow
  readonly direct: Place
  readonly coaches: Place
  /** A channel of the server that has none of the messages. */
  readonly elsewhere: string
  /** What the bot has posted since `begin`. */
  readonly posted: PostedEvent[]
  /** Forgets what was heard and posted. */
  begin(): void
  /** Sends it, by heron where nobody is named, and waits until the bot is done with it. */
  forge(sent: Sent): Promise<void>
  /** Expects that it is not heard, and told to be expired to whoever sent it alone. */
  refused(sent: Sent): Promise<void>
  press(id: string, at?: Place): Sent
  choose(id: string, chosen: readonly string[]): Sent
  send(id: string, fields: readonly Field[], at?: Place): Sent
  close(): Promise<void>
}

export async function openForging(): Promise<Forging> {
  let close = async (): Promise<void> => {}
  const stage = await setStage({
    onTestFinished(end) {
      close = end
    },
  })
  const { build } = stage.platform
  const channel = build.addChannel(stage.guildId, 'coaches', { everyoneCanView: false }).id
  const elsewhere = build.addChannel(stage.guildId, 'hall').id
  const toHeron = row({
    body: message({ address: { to: 'client', user: stage.heron.id }, buttons: [plain, opens], pick }),
  })
  const toCoaches = row({ body: message({ address: { to: 'coach', channel }, buttons: [plain, opens] }) })
  const direct = placeOf(await stage.post(toHeron))
  const coaches = placeOf(await stage.post(toCoaches))
  const posted: PostedEvent[] = []
  stage.platform.on('message', (event) => posted.push(event))

  const forge = async (sent: Sent): Promise<void> => {
    void stage.platform.forger.send({ user: stage.heron.id, ...sent })
    await stage.settled()
  }
  return {
    ...{ stage, toHeron, toCoaches, direct, coaches, elsewhere, posted, forge, close: () => close() },
    begin() {
      stage.heard.length = 0
      posted.length = 0
      stage.respond = () => null
    },
    async refused(sent) {
      await forge(sent)
      expect(stage.heard).toEqual([])
      expect(posted.map(({ content, ephemeral }) => [content, ephemeral])).toEqual([[texts.expired, true]])
    },
    press: (id, at = direct) => ({
      ...{ type: InteractionType.component, ...at },
      data: { component_type: ComponentType.button, custom_id: id, id: 1 },
    }),
    choose: (id, chosen) => ({
      ...{ type: InteractionType.component, ...direct },
      data: { component_type: ComponentType.stringSelect, custom_id: id, id: 1, values: chosen },
    }),
    send: (id, fields, at = direct) => ({
      ...{ type: InteractionType.modal, ...at },
      data: { custom_id: id, components: fields.map(labelled) },
    }),
  }
}

const placeOf = ({ id, channelId }: { id: string; channelId: string }): Place => ({
  channelId,
  messageId: id,
})

interface Field {
  type: number
  custom_id: string
  value?: string
  values?: string[]
}
export const list = (name: string, ...values: string[]): Field => ({
  type: ComponentType.stringSelect,
  custom_id: name,
  values,
})
export const line = (name: string, value: string): Field => ({
  type: ComponentType.textInput,
  custom_id: name,
  value,
})
const labelled = (component: Field, n: number) => ({
  ...{ type: 18, id: n + 1 },
  component: { id: n + 20, ...component },
})
