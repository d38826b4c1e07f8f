import { type APIDMChannel, Events, type Interaction, Routes } from 'discord.js'
import type { ChatEvent } from '../engine/event.ts'
import { safeError } from '../safe-error.ts'
import { type CatchUp, createCatchUp } from './catch-up.ts'
import { onCommand, onSuggest } from './command.ts'
import { editFrom, goneFrom, messageFrom, takenBackBy, wordsFrom } from './direct-messages.ts'
import type { InFlight } from './in-flight.ts'
import { inAll, textsIn } from './locale.ts'
import type { ChatParts } from './parts.ts'
import { onForm, onPress } from './press.ts'
import { tell } from './show.ts'

// Whoever takes something back has mostly just written it; of the others the platform is asked.
const TALKERS_MOST = 1_000

/** An event as it stands on the wire; `s` numbers the events of a session. */
interface Packet {
  readonly t: string | null
  readonly s: number | null
  readonly d: unknown
}

export interface Inbound {
  /** Number of the last event that the gateway sent on the present line and that has been taken in, of all lines together; 0 before. */
  lastSequence(): number
  /** Takes in nothing more. */
  stop(): void
}

/**
 * Hears the platform and hands on what people do. Direct messages are read from the wire: the client's own events
 * leave out edits and deletions in channels that it has not met since its start.
 */
export function listen(parts: ChatParts, inFlight: InFlight): Inbound {
  const { client } = parts
  const catchUp = createCatchUp({
    rest: client.rest,
    knownDms: parts.knownDms,
    hear: (words, channel) => hand(words, channel, parts),
    log: parts.log,
  })
  const talkers = createTalkers()
  const sequences = new Map<number, number>()

  const onPacket = (packet: Packet, shard: number): void => {
    if (packet.s !== null) sequences.set(shard, packet.s)
    // private messages come by the first line alone
    const work = packet.t === 'READY' && shard > 0 ? null : workFor(packet, catchUp, talkers, parts)
    if (work) inFlight.track(guard(work, parts))
  }
  const onInteraction = (interaction: Interaction): void => {
    inFlight.track(guard(interact(interaction, parts), parts))
  }
  // a new session counts from the beginning, a resumed one tells its number again
  const onBreak = (shard: number): void => {
    sequences.delete(shard)
  }
  client.on(Events.ShardReconnecting, onBreak)
  client.on(Events.Raw as never, onPacket as never)
  client.on(Events.InteractionCreate, onInteraction)

  return {
    lastSequence: () => [...sequences.values()].reduce((sum, last) => sum + last, 0),
    stop() {
      catchUp.stop()
      client.off(Events.ShardReconnecting, onBreak)
      client.off(Events.Raw as never, onPacket as never)
      client.off(Events.InteractionCreate, onInteraction)
    },
  }
}

function workFor(
  { t, d }: Packet,
  catchUp: CatchUp,
  talkers: Talkers,
  parts: ChatParts,
): Promise<void> | null {
  if (t === 'READY') return catchUp.begin()
  if (t === 'MESSAGE_CREATE' || t === 'MESSAGE_UPDATE') {
    const message = messageFrom(d)
    if (!message) return null
    const { channel, user } = message
    talkers.note(channel, user)
    const words = t === 'MESSAGE_CREATE' ? wordsFrom(message) : editFrom(message)
    return words && catchUp.before(channel, user).then(() => hand(words, channel, parts))
  }
  if (t === 'MESSAGE_DELETE') {
    const gone = goneFrom(d)
    return gone && takenBack(gone, catchUp, talkers, parts)
  }
  return null
}

/** Who took it back is not told: in private it can only be the person, or the bot itself, which never does. */
async function takenBack(
  { id, channel }: { readonly id: string; readonly channel: string },
  catchUp: CatchUp,
  talkers: Talkers,
  parts: ChatParts,
): Promise<void> {
  const user = talkers.in(channel) ?? (await talkerOf(channel, parts))
  if (!user) return
  await catchUp.before(channel, user)
  await hand(takenBackBy(user, id), channel, parts)
}

/** Who wrote lately in which channel. */
interface Talkers {
  note(channel: string, user: string): void
  in(channel: string): string | undefined
}

function createTalkers(): Talkers {
  const latest = new Map<string, string>()
  return {
    note(channel, user) {
      latest.delete(channel)
      latest.set(channel, user)
      if (latest.size > TALKERS_MOST) latest.delete(latest.keys().next().value!)
    },
    in: (channel) => latest.get(channel),
  }
}

async function talkerOf(channel: string, { client }: ChatParts): Promise<string | null> {
  const found = (await client.rest.get(Routes.channel(channel))) as APIDMChannel
  return found.recipients?.[0]?.id ?? null
}

/** Hands on what came in private; where that fails the person hears so, as nothing was kept. */
async function hand(event: ChatEvent, channel: string, parts: ChatParts): Promise<void> {
  const { bot, client, log } = parts
  try {
    await bot.handle(event)
  } catch (error) {
    log.error({ error: safeError(error), kind: event.kind }, 'an event could not be handled')
    const content = inAll(parts, ({ failed }) => failed)
    const once = { nonce: event.id.slice(0, 25), enforce_nonce: true }
    const body = { content, ...once, allowed_mentions: { parse: [] } }
    if (event.kind === 'words') await client.rest.post(Routes.channelMessages(channel), { body })
  }
}

async function interact(interaction: Interaction, parts: ChatParts): Promise<void> {
  // as with messages: only people are heard
  if (interaction.user.bot || interaction.user.system) return
  if (interaction.isAutocomplete()) return onSuggest(interaction, parts)
  const isPress = interaction.isButton() || interaction.isStringSelectMenu()
  if (!isPress && !interaction.isModalSubmit() && !interaction.isChatInputCommand()) return
  try {
    if (isPress) await onPress(interaction, parts)
    else if (interaction.isModalSubmit()) await onForm(interaction, parts)
    else await onCommand(interaction, parts)
  } catch (error) {
    parts.log.error(
      { error: safeError(error), kind: interaction.type },
      'an interaction could not be handled',
    )
    const { failed, failedPress } = textsIn(parts, interaction.locale)
    await tell(interaction, isPress ? failedPress : failed, parts)
  }
}

const guard = (work: Promise<void>, { log }: ChatParts): Promise<void> =>
  work.catch((error) => log.error({ error: safeError(error) }, 'something went wrong in the chat'))
