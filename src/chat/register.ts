import { createHash } from 'node:crypto'
import {
  type APIApplicationCommandBasicOption,
  ApplicationCommandOptionType,
  ApplicationIntegrationType,
  ChannelType,
  InteractionContextType,
  PermissionFlagsBits,
  type REST,
  type RESTPostAPIChatInputApplicationCommandsJSONBody,
  Routes,
} from 'discord.js'
import type { ChatCommand, OptionSpec } from '../engine/command.ts'

export type CommandJson = RESTPostAPIChatInputApplicationCommandsJSONBody

/** What the platform shows beside commands, options and values. */
export interface CommandWords {
  /** By command name. */
  readonly describe: Readonly<Record<string, string>>
  /** By option name. */
  readonly option: Readonly<Record<string, string>>
  /** By value of a closed list; the value itself where left out. */
  readonly choice?: Readonly<Record<string, string>>
}

/** Words in other languages, by the platform's code of a locale ("es-419"); who uses another reads the first. */
export type OtherWords = Readonly<Record<string, CommandWords>>

// Limits of the platform (its documentation, "Application Command Object").
const NAME = /^[a-z][a-z-]{0,31}$/
const DESCRIPTION_MOST = 100
const OPTIONS_MOST = 25
const CHOICES_MOST = 25
const LABEL_MOST = 100

const TYPES = {
  text: ApplicationCommandOptionType.String,
  client: ApplicationCommandOptionType.String,
  number: ApplicationCommandOptionType.Integer,
  'yes-no': ApplicationCommandOptionType.Boolean,
  person: ApplicationCommandOptionType.User,
  channel: ApplicationCommandOptionType.Channel,
  role: ApplicationCommandOptionType.Role,
} as const satisfies Record<OptionSpec['kind'], ApplicationCommandOptionType>

/**
 * Declarations as the platform takes them: what is for clients works in private too, the rest in a server alone.
 * @throws RangeError that names the command and what of it the platform would refuse
 */
export function commandsJson(
  commands: readonly ChatCommand[],
  words: CommandWords,
  others: OtherWords = {},
): CommandJson[] {
  return commands.map((command) => {
    const { name, options, who } = command
    checkName(name, `/${name}`)
    if (options.length > OPTIONS_MOST) throw new RangeError(`/${name} has more than ${OPTIONS_MOST} options`)
    const { Guild, BotDM } = InteractionContextType
    return {
      name,
      description: described(words.describe[name], `/${name}`),
      ...inOthers(others, ({ describe }) => describe[name], `/${name}`),
      // the platform wants the required ones first
      options: [...options]
        .sort((a, b) => Number(b.required) - Number(a.required))
        .map((o) => optionJson(o, name, words, others)),
      contexts: who === 'client' ? [Guild, BotDM] : [Guild],
      integration_types: [ApplicationIntegrationType.GuildInstall],
      default_member_permissions: who === 'keeper' ? String(PermissionFlagsBits.ManageGuild) : null,
    }
  })
}

function optionJson(
  option: OptionSpec,
  command: string,
  words: CommandWords,
  others: OtherWords,
): APIApplicationCommandBasicOption {
  const { name, kind, required, choices, least, most } = option
  const where = `/${command} ${name}`
  checkName(name, where)
  if ((choices?.length ?? 0) > CHOICES_MOST)
    throw new RangeError(`${where} has more than ${CHOICES_MOST} choices`)
  const labelled = choices?.map((value) => ({
    name: checkLabel(words.choice?.[value] ?? value, where),
    value,
  }))
  return {
    type: TYPES[kind],
    name,
    description: described(words.option[name], where),
    ...inOthers(others, (other) => other.option[name], where),
    required,
    ...(labelled ? { choices: labelled } : {}),
    ...(kind === 'client' ? { autocomplete: true } : {}),
    ...(kind === 'channel' ? { channel_types: [ChannelType.GuildText, ChannelType.GuildAnnouncement] } : {}),
    ...(kind === 'number' && least !== undefined ? { min_value: least } : {}),
    ...(kind === 'number' && most !== undefined ? { max_value: most } : {}),
  } as APIApplicationCommandBasicOption
}

function checkName(name: string, where: string): void {
  if (!NAME.test(name)) throw new RangeError(`${where}: a name is 1 to 32 lower-case letters and hyphens`)
}

function checkLabel(label: string, where: string): string {
  if (label.length > LABEL_MOST)
    throw new RangeError(`${where}: a choice is longer than ${LABEL_MOST} characters`)
  return label
}

function described(text: string | undefined, where: string): string {
  if (!text) throw new RangeError(`${where} has no description`)
  if (text.length > DESCRIPTION_MOST) {
    throw new RangeError(
      `${where}: the description has ${text.length} characters, ${DESCRIPTION_MOST} are allowed`,
    )
  }
  return text
}

/** The same description by locale; nothing where there is one language alone. */
function inOthers(
  others: OtherWords,
  text: (words: CommandWords) => string | undefined,
  where: string,
): { description_localizations?: Record<string, string> } {
  const all = Object.entries(others).map(
    ([locale, words]) => [locale, described(text(words), where)] as const,
  )
  return all.length > 0 ? { description_localizations: Object.fromEntries(all) } : {}
}

export interface RegisterParts {
  readonly rest: REST
  readonly appId: string
  readonly commands: readonly ChatCommand[]
  readonly words: CommandWords
  readonly others?: OtherWords
  /** Keeps what was registered last, over restarts. */
  readonly settings: {
    get(key: string): Promise<string | null>
    set(key: string, value: string): Promise<void>
  }
}

const KEY = 'chat-commands'

/** Declares the commands for all servers and private messages, only where they changed. True where it did. */
export async function registerCommands({
  rest,
  appId,
  commands,
  words,
  others = {},
  settings,
}: RegisterParts): Promise<boolean> {
  const body = commandsJson(commands, words, others)
  const hash = createHash('sha256')
    .update(JSON.stringify([appId, body]))
    .digest('hex')
  if ((await settings.get(KEY)) === hash) return false
  await rest.put(Routes.applicationCommands(appId), { body })
  await settings.set(KEY, hash)
  return true
}
