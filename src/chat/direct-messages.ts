import { MessageFlags, MessageType, SnowflakeUtil } from 'discord.js'
import { z } from 'zod'
import type { TakenBack, Words } from '../engine/event.ts'
import { inPrivate } from './actor.ts'

const id = z.string().regex(/^\d{1,20}$/)
const list = z.array(z.unknown()).catch([])
const instant = z.string().nullish().catch(null)

/**
 * What is needed of a message, as it comes over the gateway or is fetched; in a server it has `guild_id`. Whatever is
 * missing or odd beside the ids is taken as if it were not there: a sign must not be lost over a field.
 */
const wire = z.object({
  id,
  channel_id: id,
  guild_id: z.unknown().optional(),
  webhook_id: id.optional().catch(undefined),
  type: z.number().catch(MessageType.Default),
  author: z.object({ id, bot: z.boolean().catch(false), system: z.boolean().catch(false) }),
  content: z.string().catch(''),
  timestamp: instant,
  edited_timestamp: instant,
  attachments: list,
  sticker_items: list,
  flags: z.number().catch(0),
})

/** A message that a person wrote to the bot in private. */
export interface DirectMessage {
  readonly id: string
  readonly channel: string
  readonly user: string
  readonly text: string
  readonly at: Date
  /** When it was last changed by its writer; null where it was not. */
  readonly editedAt: Date | null
  readonly attached: Words['attached']
}

/** Null where it is none: written by a bot, over a webhook or in a server, a notice of the platform, or without who, where or id. */
export function messageFrom(data: unknown): DirectMessage | null {
  const read = wire.safeParse(data)
  if (!read.success) return null
  const { id, channel_id: channel, guild_id: guild, webhook_id: webhook, type, author, content } = read.data
  const written = type === MessageType.Default || type === MessageType.Reply
  if (guild !== undefined || !written || author.bot || author.system || webhook !== undefined) return null
  return {
    ...{ id, channel, user: author.id, text: content, attached: attachedTo(read.data) },
    // an id holds the instant at which it was given
    at: instantIn(read.data.timestamp) ?? new Date(SnowflakeUtil.timestampFrom(id)),
    editedAt: instantIn(read.data.edited_timestamp),
  }
}

function instantIn(text: string | null | undefined): Date | null {
  const at = new Date(text ?? '')
  return Number.isNaN(at.getTime()) ? null : at
}

export const wordsFrom = ({ id, user, at, text, attached }: DirectMessage): Words => ({
  kind: 'words',
  id,
  actor: inPrivate(user),
  at,
  text,
  edits: null,
  attached,
})

/** An edit; null where only the platform changed something, such as the preview of a link. */
export function editFrom(message: DirectMessage): Words | null {
  const { id, editedAt } = message
  if (editedAt === null) return null
  // every edit has its own id, and the same edit told twice has the same
  return { ...wordsFrom(message), id: `${id}:${editedAt.getTime()}`, at: editedAt, edits: id }
}

const gone = z.object({ id, channel_id: id, guild_id: z.undefined().optional() })

/** A message taken back in private: which, and where. Who it was is not told. */
export function goneFrom(data: unknown): { readonly id: string; readonly channel: string } | null {
  const read = gone.safeParse(data)
  return read.success ? { id: read.data.id, channel: read.data.channel_id } : null
}

export const takenBackBy = (user: string, message: string): TakenBack => ({
  kind: 'taken-back',
  id: `${message}:gone`,
  actor: inPrivate(user),
  message,
})

function attachedTo({ flags, attachments, sticker_items }: z.infer<typeof wire>): Words['attached'] {
  if ((flags & MessageFlags.IsVoiceMessage) !== 0) return 'voice'
  if (attachments.length > 0) return 'file'
  return sticker_items.length > 0 ? 'sticker' : 'none'
}
