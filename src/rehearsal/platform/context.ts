import type { BuildFile } from './attachments.ts'
import type { Interactions } from './interactions.ts'
import { addMessage, editMessage, type NewMessage, removeMessage } from './messages.ts'
import { isLoading, type PostedEvent, postedMessage } from './posted.ts'
import { messageEvent, type Publish } from './publish.ts'
import type { MessageBody } from './wire.ts'
import type { StoredMessage, World } from './world.ts'

/** What routes and interactions work with. */
export interface Context {
  world: World
  publish: Publish
  interactions: Interactions
  /** Tells listeners of a message of the bot. */
  posted: (event: PostedEvent) => void
  /** Address without a closing slash. */
  url: string
  gatewayUrl: string
  /** Lines that the gateway asks a bot to open. */
  shards: number
}

/** The bot writes a message: kept, sent to the gateway, told to listeners. */
export function post(context: Context, message: Omit<NewMessage, 'baseUrl' | 'author'>): StoredMessage {
  const { world } = context
  const stored = addMessage(world, { ...message, author: world.bot, baseUrl: context.url })
  announce(context, 'MESSAGE_CREATE', stored)
  if (!isLoading(stored)) context.posted({ ...postedMessage(world, stored), change: 'created' })
  return stored
}

/** The bot changes one of its messages. */
export function revise(context: Context, stored: StoredMessage, body: MessageBody, files: BuildFile[]): void {
  const wasLoading = isLoading(stored)
  editMessage(context.world, stored, { body, files, baseUrl: context.url })
  announce(context, 'MESSAGE_UPDATE', stored)
  const change = wasLoading ? 'created' : 'edited'
  context.posted({ ...postedMessage(context.world, stored), change })
}

/** The bot takes a message away. */
export function retract(context: Context, stored: StoredMessage): void {
  const gone = postedMessage(context.world, stored)
  const heard = messageEvent(context.world, 'MESSAGE_DELETE', stored)
  removeMessage(context.world, stored)
  if (heard) {
    const place = gone.guildId === null ? {} : { guild_id: gone.guildId }
    const data = { id: gone.id, channel_id: gone.channelId, ...place }
    context.publish({ name: heard.name, forIntents: (intents) => heard.forIntents(intents) && data })
  }
  if (stored.wire.author.id === context.world.bot.id) context.posted({ ...gone, change: 'deleted' })
}

/** Sends a message event to the gateway where the bot may hear it. */
export function announce(context: Context, name: string, stored: StoredMessage): void {
  const heard = messageEvent(context.world, name, stored)
  if (heard) context.publish(heard)
}
