import {
  ApplicationCommandOptionType,
  type AutocompleteInteraction,
  type BaseInteraction,
  type ChatInputCommandInteraction,
  MessageFlags,
} from 'discord.js'
import type { Command } from '../engine/event.ts'
import { acknowledge, LOOK_UP_MS } from './acknowledge.ts'
import { actorOf, memberRoles } from './actor.ts'
import { serverOf } from './channel-facts.ts'
import { within } from './in-flight.ts'
import { textsIn } from './locale.ts'
import type { ChatParts } from './parts.ts'
import { showAnswer, tell } from './show.ts'

// The most that the platform shows.
const SUGGESTIONS = 25

/** A command typed after the slash. Its answer is seen by whoever typed it, and nobody else. */
export async function onCommand(interaction: ChatInputCommandInteraction, parts: ChatParts): Promise<void> {
  await acknowledge(() => interaction.deferReply({ flags: MessageFlags.Ephemeral }), parts.log)
  const { answer } = await parts.bot.handle(commandOf(interaction, parts))
  // a place was kept, so something must be said there
  if (answer) await showAnswer(interaction, answer, parts)
  else await tell(interaction, textsIn(parts, interaction.locale).failed, parts)
}

function commandOf(interaction: ChatInputCommandInteraction, { client, texts }: ChatParts): Command {
  const given = interaction.options.data.filter((option) => option.value !== undefined)
  const people = given.filter((option) => option.type === ApplicationCommandOptionType.User)
  const { guildId } = interaction
  const server = guildId === null ? null : serverOf(client, guildId, texts.permissions)
  return {
    kind: 'command',
    id: interaction.id,
    actor: actorOf(interaction),
    name: interaction.commandName,
    options: Object.fromEntries(given.map(({ name, value }) => [name, value!])),
    ...(guildId && people.length > 0
      ? {
          people: Object.fromEntries(
            people.map(({ name, member }) => [name, { roles: memberRoles(asMember(member), guildId) }]),
          ),
        }
      : {}),
    ...(server ? { server } : {}),
  }
}

/** A person named in a command: of somebody who is not in the server the platform sends no member. */
const asMember = (member: unknown): BaseInteraction['member'] => (member ?? null) as BaseInteraction['member']

/** Offers the aliases that begin with, else hold, what has been typed so far. */
export async function onSuggest(interaction: AutocompleteInteraction, parts: ChatParts): Promise<void> {
  const typed = interaction.options.getFocused().toLowerCase()
  const aliases = await within(parts.aliases(actorOf(interaction)), LOOK_UP_MS, [])
  const fit = aliases.filter((alias) => alias.toLowerCase().includes(typed))
  const begins = (alias: string): number => (alias.toLowerCase().startsWith(typed) ? 0 : 1)
  fit.sort((a, b) => begins(a) - begins(b) || a.localeCompare(b))
  await interaction.respond(fit.slice(0, SUGGESTIONS).map((alias) => ({ name: alias, value: alias })))
}
