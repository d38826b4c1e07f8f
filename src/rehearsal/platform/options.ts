import { OptionType } from './codes.ts'
import { memberObject, userObject } from './objects.ts'
import type { Command, CommandOption } from './wire.ts'
import type { Channel, World } from './world.ts'

/** Values of a command's options by name; users, roles and channels by id. */
export type OptionValues = Record<string, string | number | boolean>

/** An option on its way to the bot. */
interface SentOption {
  type: number
  name: string
  value?: string | number | boolean
  focused?: boolean
  options?: SentOption[]
}

/**
 * The data of a command as a person's app sends it, after the checks that the app makes itself.
 * @param words the command's name, with group and subcommand after it where it has them
 * @throws Error where an option is unknown, missing or outside what the command allows
 */
export function commandData(
  world: World,
  channel: Channel,
  command: Command,
  words: readonly string[],
  values: OptionValues,
  focused: string | null = null,
) {
  const path = words.slice(1)
  const leaf = path.reduce<{ options?: CommandOption[] }>(
    (level, word) => enter(level, word, command),
    command,
  )
  const declared = leaf.options ?? []
  if (declared.some((o) => o.type <= OptionType.subcommandGroup)) {
    throw new Error(`/${words.join(' ')} needs one of: ${declared.map((o) => o.name).join(', ')}`)
  }
  const sent = sendOptions(declared, values, focused)
  const nested = path.reduceRight<SentOption[]>((options, name, depth) => {
    const type = path.length - depth === 2 ? OptionType.subcommandGroup : OptionType.subcommand
    return [{ type, name, options }]
  }, sent)
  const guild = command.guild_id === undefined ? {} : { guild_id: command.guild_id }
  const shared = { id: command.id, name: command.name, type: 1, ...guild }
  return { ...shared, options: nested, ...resolved(world, channel, sent) }
}

function enter(level: { options?: CommandOption[] }, word: string, command: Command): CommandOption {
  const found = level.options?.find((o) => o.name === word && o.type <= OptionType.subcommandGroup)
  if (!found) throw new Error(`/${command.name} has no part named ${word}`)
  return found
}

function sendOptions(
  declared: readonly CommandOption[],
  values: OptionValues,
  focused: string | null,
): SentOption[] {
  for (const name of Object.keys(values)) {
    if (!declared.some((o) => o.name === name)) throw new Error(`the command has no option ${name}`)
  }
  return declared.flatMap((option) => {
    const value = values[option.name]
    if (value === undefined) {
      if (option.required && focused === null) throw new Error(`the command needs ${option.name}`)
      return []
    }
    const isFocused = option.name === focused
    if (!isFocused) checkValue(option, value)
    return [{ type: option.type, name: option.name, value, ...(isFocused ? { focused: true } : {}) }]
  })
}

function checkValue(option: CommandOption, value: string | number | boolean): void {
  const fail = (why: string): never => {
    throw new Error(`option ${option.name} cannot be ${JSON.stringify(value)}: ${why}`)
  }
  const expected: Record<number, string> = {
    [OptionType.integer]: 'number',
    [OptionType.number]: 'number',
    [OptionType.boolean]: 'boolean',
  }
  const kind = expected[option.type] ?? 'string'
  if (typeof value !== kind) fail(`it takes a ${kind}`)
  if (option.choices?.length && !option.choices.some((c) => c.value === value)) fail('not among its choices')
  if (option.type === OptionType.integer && !Number.isInteger(value)) fail('it takes a whole number')
  const size = typeof value === 'string' ? value.length : Number(value)
  const [min, max] =
    typeof value === 'string' ? [option.min_length, option.max_length] : [option.min_value, option.max_value]
  if (min !== undefined && size < min) fail(`at least ${min}`)
  if (max !== undefined && size > max) fail(`at most ${max}`)
}

// the people and members behind ids, as the platform sends them along
function resolved(world: World, channel: Channel, sent: readonly SentOption[]) {
  const ids = sent.filter((o) => o.type === OptionType.user).map((o) => String(o.value))
  if (ids.length === 0) return {}
  const users = ids.map((id) => {
    const account = world.users.get(id)
    if (!account) throw new Error(`there is no user ${id}`)
    return [id, userObject(account)] as const
  })
  const guild = world.guildOf(channel)
  const members = ids.flatMap((id) => {
    const member = guild?.members.get(id)
    if (!member) return []
    const { user: _user, ...rest } = memberObject(world, member)
    return [[id, { ...rest, permissions: '0' }] as const]
  })
  return { resolved: { users: Object.fromEntries(users), members: Object.fromEntries(members) } }
}
