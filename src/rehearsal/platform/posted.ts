import { MessageFlag } from './codes.ts'
import type { Component, Embed } from './wire.ts'
import type { StoredMessage, World } from './world.ts'

/** A file that the bot sent, with its alt text and its bytes. */
export interface PostedAttachment {
  id: string
  filename: string
  contentType: string
  /** The alt text; null where none was given. */
  description: string | null
  /** Where it can be fetched while the platform runs. */
  url: string
  data: Buffer
}

/** A message of the bot as a reader finds it. */
export interface PostedMessage {
  id: string
  channelId: string
  /** Null for direct messages. */
  guildId: string | null
  /** The channel's name in its server; null for direct messages. */
  channelName: string | null
  /** The person it goes to in direct messages, or who alone sees a private reply; null where a channel sees it. */
  recipient: string | null
  ephemeral: boolean
  /** Set where it answers or follows an interaction. */
  interactionId: string | null
  nonce: string | null
  content: string
  embeds: Embed[]
  components: Component[]
  attachments: PostedAttachment[]
  /** Platform clock, milliseconds since 1970. */
  at: number
  editedAt: number | null
}

/** A message of the bot that came, changed or went. A deferred reply counts as created once it has words. */
export interface PostedEvent extends PostedMessage {
  change: 'created' | 'edited' | 'deleted'
}

/** Shows a stored message to the outside, as a copy that later edits do not touch. */
export function postedMessage(world: World, stored: StoredMessage): PostedMessage {
  const { wire } = stored
  const channel = world.channels.get(stored.channelId)
  return {
    id: wire.id,
    channelId: stored.channelId,
    guildId: channel?.guildId ?? null,
    channelName: channel?.name ?? null,
    recipient: stored.onlyFor ?? channel?.recipientId ?? null,
    ephemeral: stored.onlyFor !== null,
    interactionId: stored.interactionId,
    nonce: wire.nonce === undefined ? null : String(wire.nonce),
    content: wire.content,
    embeds: structuredClone(wire.embeds),
    components: structuredClone(wire.components),
    attachments: wire.attachments.flatMap((a) => {
      const file = world.files.get(a.id)
      if (!file) return []
      const { contentType, data } = file
      return [
        { id: a.id, filename: a.filename, contentType, description: a.description ?? null, url: a.url, data },
      ]
    }),
    at: Date.parse(wire.timestamp),
    editedAt: wire.edited_timestamp === null ? null : Date.parse(wire.edited_timestamp),
  }
}

/** Whether a deferred reply still waits for its words. */
export function isLoading(stored: StoredMessage): boolean {
  return (stored.wire.flags & MessageFlag.loading) !== 0
}
