import { type APIMessage, MessageFlags, MessageType } from 'discord.js'
import type { TakenBack, Words } from '../engine/event.ts'
import { inPrivate } from './actor.ts'

/** A message as it comes over the gateway; in direct messages without a server. */
export type DirectMessage = APIMessage & { readonly guild_id?: string }

/** Whether a person wrote it to the bot in private: no bot, no notice of the platform. */
export function isFromPerson(message: DirectMessage): boolean {
  const written = message.type === MessageType.Default || message.type === MessageType.Reply
  return message.guild_id === undefined && written && !message.author.bot && !message.author.system
}

export const wordsOf = (message: DirectMessage): Words => ({
  kind: 'words',
  id: message.id,
  actor: inPrivate(message.author.id),
  at: new Date(message.timestamp),
  text: message.content,
  edits: null,
  attached: attachedTo(message),
})

/** An edit; null where only the platform changed something, such as the preview of a link. */
export function editOf(message: DirectMessage): Words | null {
  if (message.edited_timestamp === null || message.edited_timestamp === undefined) return null
  const at = new Date(message.edited_timestamp)
  // every edit has its own id, and the same edit told twice has the same
  return { ...wordsOf(message), id: `${message.id}:${at.getTime()}`, at, edits: message.id }
}

export const takenBackBy = (user: string, message: string): TakenBack => ({
  kind: 'taken-back',
  id: `${message}:gone`,
  actor: inPrivate(user),
  message,
})

function attachedTo(message: DirectMessage): Words['attached'] {
  if (((message.flags ?? 0) & MessageFlags.IsVoiceMessage) !== 0) return 'voice'
  if (message.attachments.length > 0) return 'file'
  return (message.sticker_items?.length ?? 0) > 0 ? 'sticker' : 'none'
}
