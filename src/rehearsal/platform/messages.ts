import { type BuildFile, buildAttachments, keptAttachments } from './attachments.ts'
import { ComponentType, MessageFlag } from './codes.ts'
import { userObject } from './objects.ts'
import { invalidField } from './refusal.ts'
import { compareSnowflakes } from './snowflake.ts'
import { type Component, type Embed, type MessageBody, type WireMessage, walkComponents } from './wire.ts'
import type { Account, Channel, StoredMessage, World } from './world.ts'

/** How long a nonce is remembered. The platform says "the past few minutes"; five is our reading. */
const NONCE_WINDOW_MS = 5 * 60_000

const REPLY_TYPE = 19

/** What a new message is made of, besides its body. */
export interface NewMessage {
  channel: Channel
  author: Account
  body: MessageBody
  files: BuildFile[]
  /** Where attachments can be fetched, without a closing slash. */
  baseUrl: string
  type?: number
  onlyFor?: string | null
  interactionId?: string | null
  extra?: Partial<WireMessage>
}

/** Writes a message into a channel. */
export function addMessage(world: World, message: NewMessage): StoredMessage {
  const { channel, author, body } = message
  const id = world.nextId()
  const onlyFor = message.onlyFor ?? null
  const attachments = buildAttachments(world, { ...message, ephemeral: onlyFor !== null })
  const wire: WireMessage = {
    id,
    type: message.type ?? (body.message_reference ? REPLY_TYPE : 0),
    channel_id: channel.id,
    author: userObject(author),
    content: body.content ?? '',
    timestamp: new Date(world.now()).toISOString(),
    edited_timestamp: null,
    tts: false,
    mention_everyone: false,
    ...mentionsIn(world, body),
    attachments,
    embeds: embedsOf(body.embeds, attachments),
    components: keepComponents(body.components),
    pinned: false,
    flags: (body.flags ?? 0) | (onlyFor === null ? 0 : MessageFlag.ephemeral),
    ...(body.nonce == null ? {} : { nonce: body.nonce }),
    ...referenceOf(message),
    ...message.extra,
  }
  const stored = { wire, channelId: channel.id, onlyFor, interactionId: message.interactionId ?? null }
  world.messages.set(id, stored)
  channel.messages.push(stored)
  return stored
}

/** Changes what the body names and leaves the rest, as the platform does. */
export function editMessage(
  world: World,
  stored: StoredMessage,
  change: { body: MessageBody; files: BuildFile[]; baseUrl: string },
): void {
  const { wire } = stored
  const { body } = change
  const build = {
    channel: world.channels.get(stored.channelId)!,
    ...change,
    ephemeral: stored.onlyFor !== null,
  }
  if (body.attachments !== undefined || change.files.length > 0) {
    const before = wire.attachments
    wire.attachments = [...keptAttachments(wire.attachments, body), ...buildAttachments(world, build)]
    for (const { id } of before) if (!wire.attachments.some((a) => a.id === id)) world.files.delete(id)
  }
  if (body.content !== undefined)
    Object.assign(wire, { content: body.content ?? '', ...mentionsIn(world, body) })
  if (body.embeds !== undefined) wire.embeds = embedsOf(body.embeds, wire.attachments)
  if (body.components !== undefined) wire.components = keepComponents(body.components)
  // an edit can neither show a private reply to others nor hide one, and it ends the waiting for words
  const kept = wire.flags & ~MessageFlag.loading
  wire.flags =
    body.flags == null ? kept : (kept & MessageFlag.ephemeral) | (body.flags & ~MessageFlag.ephemeral)
  wire.edited_timestamp = new Date(world.now()).toISOString()
}

/** Takes a message away, with its files. */
export function removeMessage(world: World, stored: StoredMessage): void {
  world.messages.delete(stored.wire.id)
  for (const attachment of stored.wire.attachments) world.files.delete(attachment.id)
  const list = world.channels.get(stored.channelId)?.messages ?? []
  const at = list.indexOf(stored)
  if (at >= 0) list.splice(at, 1)
}

/** The bot's message with this nonce in this channel, where it was made within the last minutes. */
export function findByNonce(world: World, channel: Channel, nonce: string | number): StoredMessage | null {
  const oldest = world.now() - NONCE_WINDOW_MS
  for (let i = channel.messages.length - 1; i >= 0; i -= 1) {
    const stored = channel.messages[i]!
    if (Date.parse(stored.wire.timestamp) < oldest) return null
    if (stored.wire.author.id === world.bot.id && stored.wire.nonce === nonce) return stored
  }
  return null
}

/** Which part of a channel to list; at most one of before, after, around. */
export interface Window {
  limit: number
  before?: string
  after?: string
  around?: string
}

/** Messages that everybody in the channel sees, newest first. */
export function listMessages(channel: Channel, window: Window): WireMessage[] {
  const all = channel.messages.filter((m) => m.onlyFor === null).map((m) => m.wire)
  const { limit, before, after, around } = window
  if (after !== undefined) {
    return all
      .filter((m) => compareSnowflakes(m.id, after) > 0)
      .slice(0, limit)
      .reverse() // the ones next after it
  }
  if (around !== undefined) {
    const at = all.filter((m) => compareSnowflakes(m.id, around) < 0).length
    const from = Math.max(0, at - Math.floor(limit / 2))
    return all.slice(from, from + limit).reverse()
  }
  const older = before === undefined ? all : all.filter((m) => compareSnowflakes(m.id, before) < 0)
  return older.slice(-limit).reverse()
}

function referenceOf({ channel, body }: NewMessage): Pick<WireMessage, 'message_reference'> {
  const id = body.message_reference?.message_id
  if (!id) return {}
  const known = channel.messages.some((m) => m.wire.id === id)
  if (!known && body.message_reference?.fail_if_not_exists !== false) {
    throw invalidField('message_reference', 'REPLIES_UNKNOWN_MESSAGE', 'Unknown message')
  }
  return known ? { message_reference: { type: 0, channel_id: channel.id, message_id: id } } : {}
}

function mentionsIn(world: World, body: MessageBody): Pick<WireMessage, 'mentions' | 'mention_roles'> {
  const content = body.content ?? ''
  const users = [...content.matchAll(/<@!?(\d+)>/g)].map((m) => world.users.get(m[1]!))
  const roles = [...content.matchAll(/<@&(\d+)>/g)].map((m) => m[1]!)
  const allowed = body.allowed_mentions
  const rings = (kind: 'users' | 'roles', id: string) =>
    !allowed || allowed.parse?.includes(kind) === true || allowed[kind]?.includes(id) === true
  return {
    mentions: users.filter((u) => u !== undefined && rings('users', u.id)).map((u) => userObject(u!)),
    mention_roles: roles.filter((id) => rings('roles', id)),
  }
}

function embedsOf(
  embeds: readonly Embed[] | null | undefined,
  attachments: WireMessage['attachments'],
): Embed[] {
  const resolve = (picture: { url?: string } | null | undefined) => {
    const name = picture?.url?.startsWith('attachment://') ? picture.url.slice('attachment://'.length) : null
    const file = name === null ? undefined : attachments.find((a) => a.filename === name)
    return file ? { ...picture, url: file.url } : picture
  }
  return (embeds ?? []).map((embed) => ({
    ...embed,
    type: 'rich',
    ...(embed.image ? { image: resolve(embed.image) ?? null } : {}),
    ...(embed.thumbnail ? { thumbnail: resolve(embed.thumbnail) ?? null } : {}),
  }))
}

/** Components as the platform gives them back: numbered where they came without a number, nothing left null. */
function keepComponents(components: readonly Component[] | null | undefined): Component[] {
  const text = JSON.stringify(components ?? [])
  const copy = JSON.parse(text, (_key, value: unknown) => value ?? undefined) as Component[]
  let next = 1
  walkComponents(copy, (component) => {
    component.id = component.id || next // a number of 0 counts as none
    next += 1
    if (component.type !== ComponentType.stringSelect) return
    component.min_values ??= 1
    component.max_values ??= 1
  })
  return copy
}
