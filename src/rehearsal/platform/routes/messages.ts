import type { BuildFile } from '../attachments.ts'
import { findByNonce, listMessages, type Window } from '../messages.ts'
import { Permission } from '../permissions.ts'
import { post, retract, revise } from '../posting.ts'
import { visibleTo } from '../publish.ts'
import { invalidField, refuse } from '../refusal.ts'
import { checkMessage } from '../rules.ts'
import type { MessageBody } from '../wire.ts'
import type { Channel, StoredMessage, World } from '../world.ts'
import { botPermissions, reachChannel, reachMessage } from './access.ts'
import { noContent, ok, type Routes } from './route.ts'

const LIST_DEFAULT = 50
const LIST_MAX = 100

/** What is said in a channel. */
export const messageRoutes: Routes = {
  'POST /channels/{channel_id}/messages': (context, { params: [id], body, files }) => {
    const sent = body as MessageBody
    const channel = reachChannel(context.world, id!, neededFor(sent, files))
    if (channel.guildId === null) checkRecipient(context.world, channel)
    checkMessage(sent, files.length, 'create')
    const twin =
      sent.enforce_nonce && sent.nonce != null ? findByNonce(context.world, channel, sent.nonce) : null
    return ok((twin ?? post(context, { channel, body: sent, files })).wire)
  },
  'GET /channels/{channel_id}/messages': ({ world }, { params: [id], query }) => {
    const channel = reachChannel(world, id!, 0n)
    const window = readWindow(query)
    const canRead = channel.guildId === null || botPermissions(world, channel) & Permission.readMessageHistory
    const found = canRead ? listMessages(channel, window) : [] // documented: no history, no messages
    return ok(found.map((wire) => visibleTo(world, channel, wire, world.privilegedIntents)))
  },
  'GET /channels/{channel_id}/messages/{message_id}': ({ world }, { params: [id, messageId] }) => {
    const channel = reachChannel(world, id!, Permission.readMessageHistory)
    return ok(
      visibleTo(world, channel, reachMessage(world, channel, messageId!).wire, world.privilegedIntents),
    )
  },
  'PATCH /channels/{channel_id}/messages/{message_id}': (
    context,
    { params: [id, messageId], body, files },
  ) => {
    const stored = reachMessage(context.world, reachChannel(context.world, id!, 0n), messageId!)
    if (!isOwn(context.world, stored)) throw refuse.foreignMessage()
    checkMessage(body as MessageBody, files.length, 'edit')
    revise(context, stored, body as MessageBody, files)
    return ok(stored.wire)
  },
  'DELETE /channels/{channel_id}/messages/{message_id}': (context, { params: [id, messageId] }) => {
    const { world } = context
    const channel = reachChannel(world, id!, 0n)
    const stored = reachMessage(world, channel, messageId!)
    if (!isOwn(world, stored)) {
      if (channel.guildId === null) throw refuse.dmAction()
      reachChannel(world, id!, Permission.manageMessages)
    }
    retract(context, stored)
    return noContent()
  },
}

function neededFor(body: MessageBody, files: readonly BuildFile[]): bigint {
  const embeds = body.embeds?.length ? Permission.embedLinks : 0n
  const attached = files.length > 0 ? Permission.attachFiles : 0n
  return Permission.sendMessages | embeds | attached
}

function checkRecipient(world: World, channel: Channel): void {
  const recipient = channel.recipientId!
  if (world.dmsClosed.has(recipient)) throw refuse.dmsClosed()
  if (world.sharedGuilds(recipient).length === 0) throw refuse.noMutualGuild()
}

function isOwn(world: World, stored: StoredMessage): boolean {
  return stored.wire.author.id === world.bot.id
}

function readWindow(query: URLSearchParams): Window {
  const limit = Number(query.get('limit') ?? LIST_DEFAULT)
  if (!Number.isInteger(limit) || limit < 1 || limit > LIST_MAX) {
    throw invalidField('limit', 'NUMBER_TYPE_RANGE', `int value should be between 1 and ${LIST_MAX}.`)
  }
  const window: Window = { limit }
  for (const edge of ['before', 'after', 'around'] as const) {
    const id = query.get(edge)
    if (id === null) continue
    if (!/^\d+$/.test(id)) throw invalidField(edge, 'NUMBER_TYPE_COERCE', `Value "${id}" is not snowflake.`)
    window[edge] = id
  }
  return window
}
