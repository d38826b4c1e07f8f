import { cut } from '../../chat/cut.ts'
import type { Event } from '../../engine/event.ts'
import type { Handled } from '../../engine/ports.ts'
import type { OutboxRow } from '../../engine/rows.ts'
import type { Component, Platform, PostedEvent } from '../platform/index.ts'
import type { Cast } from './cast.ts'

// Longest label of a button on the platform.
const LABEL_MOST = 80

/** What the stand-in really received, held against what the bot says that it sent. */
export interface Received {
  /** The bot says that a message is on the platform. */
  sent(row: OutboxRow): void
  handled(event: Event, handled: Handled): void
  /** Id of the message (a long one has several) that carries a component. */
  messageWith(row: OutboxRow, customId: string): string
  /** Compares all that came since the last time; a difference is trouble. */
  verify(): void
}

export function createReceived(platform: Platform, cast: Cast, trouble: (what: string) => void): Received {
  const byNonce = new Map<string, PostedEvent>()
  const byInteraction = new Map<string, PostedEvent[]>()
  let rows: OutboxRow[] = []
  let answers: { id: string; text: string }[] = []

  platform.on('message', (event) => {
    if (event.change !== 'created') return
    if (event.nonce !== null) byNonce.set(event.nonce, event)
    if (event.interactionId !== null)
      byInteraction.set(event.interactionId, [...(byInteraction.get(event.interactionId) ?? []), event])
  })

  const partsOf = ({ id }: OutboxRow): PostedEvent[] => {
    const parts: PostedEvent[] = []
    for (let n = 0, part = byNonce.get(id); part; n += 1, part = byNonce.get(`${id}+${n}`)) parts.push(part)
    return parts
  }

  return {
    sent(row) {
      rows.push(row)
    },
    handled(event, { answer }) {
      if (event.kind === 'command' && answer) answers.push({ id: event.id, text: answer.text })
    },
    messageWith(row, customId) {
      const part = partsOf(row).find(({ components }) => idsOf(components).includes(customId))
      if (!part) throw new Error(`the message ${row.key} carries no ${customId}`)
      return part.id
    },
    verify() {
      for (const row of rows) {
        const problem = differenceOf(row, partsOf(row), cast)
        if (problem) trouble(`${row.key}: ${problem}`)
      }
      for (const { id, text } of answers) {
        const said = (byInteraction.get(id) ?? []).map((part) => part.content).join('')
        if (bare(said) !== bare(text)) trouble(`a command was answered with other words than meant: ${said}`)
      }
      rows = []
      answers = []
    },
  }
}

/** Without white space, which is where a long text is cut. */
const bare = (text: string): string => text.replace(/\s+/g, '')

function differenceOf({ body }: OutboxRow, parts: readonly PostedEvent[], cast: Cast): string | null {
  if (parts.length === 0) return 'the platform never received it'
  const calls = [
    ...body.mentions.roles.map((role) => `<@&${role}>`),
    ...body.mentions.users.map((user) => `<@${user}>`),
  ].join('')
  if (bare(parts.map((part) => part.content).join('')) !== bare(calls + body.text))
    return 'received with other words than sent'
  const labels = parts.flatMap(({ components }) => labelsOf(components))
  if (labels.join('|') !== body.buttons.map(({ label }) => cut(label, LABEL_MOST)).join('|'))
    return 'received with other buttons than sent'
  const names = parts.flatMap(({ attachments }) => attachments.map(({ filename }) => filename))
  if (names.join('|') !== namesOf(body).join('|')) return 'received without its picture or files'
  const { to } = body.address
  const place = parts[0]!
  const isPrivate = to === 'client' && place.recipient === body.address.user
  const isRoom = place.channelId === (to === 'alerts' ? cast.alertChannel : cast.coachChannel)
  return to === 'client'
    ? isPrivate
      ? null
      : 'received by somebody else'
    : isRoom
      ? null
      : 'in another room'
}

const namesOf = ({ picture, files }: OutboxRow['body']): string[] => [
  ...(picture ? [`${picture.name}.png`] : []),
  ...files.map(({ name }) => name),
]
const flat = (components: readonly Component[]): Component[] =>
  components.flatMap((one) => [one, ...flat(one.components ?? [])])
const idsOf = (components: readonly Component[]): unknown[] => flat(components).map((one) => one.custom_id)
const labelsOf = (components: readonly Component[]): string[] =>
  flat(components).flatMap((one) => (one.type === 2 ? [one.label ?? ''] : []))
