import type { BuildFile } from './attachments.ts'
import { addMessage, editMessage, type NewMessage, removeMessage } from './messages.ts'
import { isLoading, type PostedEvent, postedMessage } from './posted.ts'
import { messageEvent, type Publish } from './publish.ts'
import type { MessageBody } from './wire.ts'
import type { StoredMessage, World } from './world.ts'

/** Where messages are written, and who hears of it. */
export interface Posting {
  world: World
  publish: Publish
  /** Tells listeners of a message of the bot. */
  posted: (event: PostedEvent) => void
  /** Address without a closing slash. */
  url: string
}

/** The bot writes a message: kept, sent to the gateway, told to listeners. */
export function post(place: Posting, message: Omit<NewMessage, 'baseUrl' | 'author'>): StoredMessage {
  const { world } = place
  const stored = addMessage(world, { ...message, author: world.bot, baseUrl: place.url })
  announce(place, 'MESSAGE_CREATE', stored)
  if (!isLoading(stored)) place.posted({ ...postedMessage(world, stored), change: 'created' })
  return stored
}

/** The bot changes one of its messages. */
export function revise(place: Posting, stored: StoredMessage, body: MessageBody, files: BuildFile[]): void {
  const wasLoading = isLoading(stored)
  editMessage(place.world, stored, { body, files, baseUrl: place.url })
  announce(place, 'MESSAGE_UPDATE', stored)
  const change = wasLoading ? 'created' : 'edited'
  place.posted({ ...postedMessage(place.world, stored), change })
}

/** The bot takes a message away. */
export function retract(place: Posting, stored: StoredMessage): void {
  const gone = postedMessage(place.world, stored)
  const heard = messageEvent(place.world, 'MESSAGE_DELETE', stored)
  removeMessage(place.world, stored)
  if (heard) {
    const server = gone.guildId === null ? {} : { guild_id: gone.guildId }
    const data = { id: gone.id, channel_id: gone.channelId, ...server }
    place.publish({ name: heard.name, forIntents: (intents) => heard.forIntents(intents) && data })
  }
  if (stored.wire.author.id === place.world.bot.id) place.posted({ ...gone, change: 'deleted' })
}

/** Sends a message event to the gateway where the bot may hear it. */
export function announce(place: Posting, name: string, stored: StoredMessage): void {
  const heard = messageEvent(place.world, name, stored)
  if (heard) place.publish(heard)
}
