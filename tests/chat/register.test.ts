import { REST } from 'discord.js'
import { describe, expect, it } from 'vitest'
import { commands } from '../../commands/index.ts'
import { commandsJson, registerCommands } from '../../src/chat/register.ts'
import type { ChatCommand, OptionSpec } from '../../src/engine/command.ts'
import { textsFor } from '../../src/text/index.ts'

const declared = (name: string, who: ChatCommand['who'], options: OptionSpec[] = []): ChatCommand =>
  ({ name, who, options, run: () => null }) as unknown as ChatCommand
const words = {
  describe: { today: 'Your drills', roster: 'Who needs you', 'set-up': 'Set up' },
  option: { client: 'Alias', n: 'N' },
}

describe('commands for the platform', () => {
  it('can be declared, all that there are', () => {
    expect(commandsJson(commands, textsFor('en').commands)).toHaveLength(commands.length)
  })

  it('are described in Spanish too, for Spain and for the Americas', () => {
    const spanish = textsFor('es').commands
    const made = commandsJson(commands, textsFor('en').commands, { 'es-ES': spanish, 'es-419': spanish })
    const today = made.find(({ name }) => name === 'today')
    expect(today?.description_localizations).toEqual({
      'es-ES': spanish.describe.today,
      'es-419': spanish.describe.today,
    })
    expect(made.flatMap(({ options }) => options ?? []).every((one) => one.description_localizations)).toBe(
      true,
    )
  })

  it('are open in private for clients only, and set-up to keepers only', () => {
    const made = [
      declared('today', 'client'),
      declared('roster', 'coach-practice'),
      declared('set-up', 'keeper'),
    ]
    expect(commandsJson(made, words).map((c) => [c.contexts, c.default_member_permissions])).toEqual([
      [[0, 1], null],
      [[0], null],
      [[0], '32'],
    ])
  })

  it('offer aliases while typing, bound numbers, and ask for what is required first', () => {
    const options: OptionSpec[] = [
      { name: 'n', kind: 'number', required: false, least: 0, most: 10 },
      { name: 'client', kind: 'client', required: true },
    ]
    expect(commandsJson([declared('today', 'client', options)], words)[0]?.options).toEqual([
      { type: 3, name: 'client', description: 'Alias', required: true, autocomplete: true },
      { type: 4, name: 'n', description: 'N', required: false, min_value: 0, max_value: 10 },
    ])
  })

  it('are refused with the command and the reason', () => {
    const make = (command: ChatCommand, described = words.describe as Record<string, string>) =>
      commandsJson([command], { ...words, describe: described })
    expect(() => make(declared('Today', 'client'))).toThrow('/Today: a name is')
    expect(() => make(declared('today', 'client'), {})).toThrow('/today has no description')
    expect(() => make(declared('today', 'client'), { today: 'x'.repeat(101) })).toThrow(
      '/today: the description has 101',
    )
  })

  it('are registered once, and again only when they changed', async () => {
    const kept = new Map<string, string>()
    const puts: unknown[] = []
    const rest = new REST()
    rest.put = async (_route, options) => puts.push(options?.body)
    const settings = {
      get: async (key: string) => kept.get(key) ?? null,
      set: async (key: string, value: string) => void kept.set(key, value),
    }
    const register = (list: ChatCommand[]) =>
      registerCommands({ rest, appId: '1', commands: list, words, settings })
    expect(await register([declared('today', 'client')])).toBe(true)
    expect(await register([declared('today', 'client')])).toBe(false)
    expect(await register([declared('roster', 'coach-practice')])).toBe(true)
    expect(puts).toHaveLength(2)
  })
})
