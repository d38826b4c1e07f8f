import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { commands } from '../../commands/index.ts'
import { textsFor } from '../../src/text/index.ts'
import { BARE, CHANNEL, type HouseTown, openHouseTown } from './house-town.ts'
import { everyButton, GUILD_2, type Kind, kindsOn } from './houses.ts'
import { REFUSED, TABLE } from './table.ts'
import { NOTE } from './trial.ts'
import { act, actorOf, COLUMNS, type Column, command, eventOf, outcomeOf, ownerOf, placeOf } from './tries.ts'

const { access } = textsFor('en')

let town: HouseTown
let kinds: Map<string, Kind>
let before: string
const refusals = { tried: 0, held: 0 }

beforeAll(async () => {
  town = await openHouseTown()
  kinds = kindsOn(town.rows)
  before = await town.trial.dump()
}, 60_000)
afterAll(async () => {
  console.log(`refusals tried ${refusals.tried}, held ${refusals.held}`)
  await town.close()
})

/** Counts what has to be refused, and what was. */
function counted(expected: string, came: string): string {
  if (!REFUSED.includes(expected)) return came
  refusals.tried += 1
  if (came === expected) refusals.held += 1
  return came
}

describe('the table', () => {
  it('has every command, and nothing that is none', () => {
    const names = [...TABLE.keys()].filter((name) => name.startsWith('/'))
    expect(names.sort()).toEqual(commands.map(({ name }) => `/${name}`).sort())
  })

  it('has every kind of button, list and form that stands on a message', () => {
    const names = [...TABLE.keys()].filter((name) => !name.startsWith('/'))
    expect(names.sort()).toEqual([...kinds.keys()].sort())
  })

  it('has every act that the engine knows', () => {
    const known = new Set([...kinds.keys()].map((name) => name.split(' ')[0]))
    expect(actsInSource().filter((name) => !known.has(name))).toEqual([])
  })
})

/** What stands as `do: '…'` where messages are made. */
function actsInSource(): string[] {
  const root = fileURLToPath(new URL('../../', import.meta.url))
  const files = ['src/engine', 'src/without-store', 'commands'].flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.ts'))
      .map((name) => readFileSync(join(root, folder, name), 'utf8')),
  )
  const acts = files.flatMap((text) => [...text.matchAll(/\bdo: '([a-z-]+)'/g)].map((match) => match[1]!))
  return [...new Set(acts)].sort()
}

describe('who may do what', () => {
  it('commands', async () => {
    for (const one of commands) {
      const cells = new Map<Column, string>()
      for (const column of COLUMNS) {
        const came = await town.send(command(actorOf(town, column), placeOf(town, column, one), one))
        cells.set(
          column,
          counted(TABLE.get(`/${one.name}`)?.get(column) ?? '', outcomeOf(town, came, column)),
        )
      }
      expect.soft(cells, `/${one.name}`).toEqual(TABLE.get(`/${one.name}`))
    }
  })

  it('buttons, lists and forms', async () => {
    for (const kind of kinds.values()) {
      const cells = new Map<Column, string>()
      for (const column of COLUMNS) {
        const sent = act(actorOf(town, column, ownerOf(kind)), town.place(kind.row), kind)
        const came = outcomeOf(town, await town.send(sent), column)
        cells.set(column, counted(TABLE.get(kind.name)?.get(column) ?? '', came))
      }
      expect.soft(cells, kind.name).toEqual(TABLE.get(kind.name))
    }
  })

  it('forms: not even shown to whom they are refused', async () => {
    for (const kind of [...kinds.values()].filter(({ name }) => name.endsWith('form')))
      for (const column of COLUMNS) {
        const expected = TABLE.get(kind.name)?.get(column) ?? ''
        if (expected !== 'expired' && expected !== 'unheard') continue
        const sent = act(actorOf(town, column, ownerOf(kind)), town.place(kind.row), kind, true)
        const came = outcomeOf(town, await town.send(sent), column)
        expect.soft(counted(expected, came), `${kind.name}, ${column}`).toBe(expected)
      }
  })
})

describe('in another place', () => {
  it('a press on what stands elsewhere does nothing, whoever sends it', async () => {
    for (const kind of kinds.values())
      for (const column of COLUMNS.slice(0, 6)) {
        const user = actorOf(town, column, ownerOf(kind))
        const mine = TABLE.get(kind.name)?.get(column) === 'done'
        const { address } = kind.row.body
        // what one person alone was told goes with them, wherever the command was typed
        if (mine && (address.to === 'client' || address.only !== undefined)) continue
        const channelId = column.includes('coach') ? CHANNEL[GUILD_2]! : town.direct(user)
        const sent = act(user, { ...town.place(kind.row), channelId }, kind)
        const came = outcomeOf(town, await town.send(sent), column)
        expect.soft(counted('expired', came), `${kind.name}, ${column}`).toBe('expired')
      }
  })

  it('what one coach was told alone is nothing to another of the same practice', async () => {
    for (const kind of kinds.values()) {
      const { address } = kind.row.body
      if (address.to === 'client' || address.only === undefined) continue
      const came = outcomeOf(town, await town.send(act('coach-3', town.place(kind.row), kind)), 'stranger')
      expect.soft(counted('expired', came), kind.name).toBe('expired')
    }
  })

  it('a coach’s command does nothing in private or in a server that is not set up, whatever role one has', async () => {
    const any = { user: 'coach-1', roles: ['role-coach'], keeper: true }
    for (const { name, who } of commands.filter((one) => one.who !== 'client')) {
      const places = who === 'keeper' ? [null] : [null, BARE]
      for (const guild of places) {
        const options = { client: 'heron' }
        const event = {
          kind: 'command',
          id: `${name} ${guild}`,
          actor: { ...any, guild },
          name,
          options,
        } as const
        const { answer, changes } = (await town.trial.attempt([event]))[0]!
        const expected = guild === null ? access.onlyInServer : access.setUpFirst
        const came = changes === NOTE && answer?.text === expected ? 'expired' : `${answer?.text} ${changes}`
        expect.soft(counted('expired', came), `/${name}`).toBe('expired')
      }
    }
  })
})

describe('what was sent before', () => {
  it('does nothing under the same id; pressed again, it tells nobody else a second time', async () => {
    for (const kind of everyButton(town.rows)) {
      const once = eventOf(kind, 'once')
      const [, same, again] = await town.trial.attempt([once, once, eventOf(kind, 'again')])
      const came = same?.answer === null && same.changes === 0 ? 'expired' : `${same?.changes} rows`
      expect.soft(counted('expired', came), kind.name).toBe('expired')
      // a report is asked for each time, and what one is asked next comes to oneself alone
      if (kind.name === 'report') continue
      const others = again?.messages.filter(({ to }) => to !== once.actor.user)
      expect.soft(others, `${kind.name}: ${kind.part.label}`).toEqual([])
    }
  })
})

it('nothing of all this is left', async () => {
  expect(await town.trial.dump()).toBe(before)
  expect(town.platform.violations).toEqual([])
  expect(town.platform.effects).toEqual({ calls: [], fetched: [] })
  expect(town.logs.filter((line) => /kingfisher|surgeon|heron/.test(line))).toEqual([])
})
