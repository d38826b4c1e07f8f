import { REST } from 'discord.js'
import pino from 'pino'
import { afterEach, beforeEach, expect, it, vi } from 'vitest'
import { createCatchUp } from '../../src/chat/catch-up.ts'
import type { KnownDm } from '../../src/chat/parts.ts'
import { Platform } from '../../src/rehearsal/platform/index.ts'

let platform: Platform
beforeEach(async () => {
  platform = new Platform()
  await platform.start()
})
afterEach(async () => {
  vi.restoreAllMocks()
  await platform.stop()
})

/** Heron and dipper wrote while the bot was away; the store answers for heron and then fails, once. */
function whileAway() {
  const guild = platform.build.addGuild('boathouse').id
  const dms = ['heron', 'dipper'].map((name): KnownDm & { readonly said: string } => {
    const person = platform.addUser(name)
    platform.build.addMember(guild, person.id)
    const said = person.say('2 calf 4')
    return { user: person.id, channel: platform.message(said)!.channelId, after: '0', said }
  })
  let asked = 0
  const heard: string[] = []
  const catchUp = createCatchUp({
    rest: new REST({ api: platform.apiUrl }).setToken(platform.token),
    knownDms: {
      async *all() {
        yield dms.slice(0, 1)
        asked += 1
        if (asked === 1) throw new Error('the store is away')
        yield dms.slice(1)
      },
      of: async (user) => dms.find((dm) => dm.user === user) ?? null,
    },
    hear: async ({ id }) => void heard.push(id),
    log: pino({ level: 'silent' }),
  })
  return { dms, heard, catchUp }
}

it('asks a store again that failed in the middle, and fetches nothing twice', async () => {
  const { dms, heard, catchUp } = whileAway()
  const waits = vi.spyOn(globalThis, 'setTimeout')
  await catchUp.begin()
  expect(heard).toEqual([dms[0]!.said])
  const again = waits.mock.calls.find(([, ms]) => ms === 60_000)!
  await (again[0] as (round: unknown) => Promise<void>)(again[2 as never])
  expect(heard).toEqual(dms.map(({ said }) => said))
  catchUp.stop()
})

it('catches up with whoever writes before that', async () => {
  const { dms, heard, catchUp } = whileAway()
  await catchUp.begin()
  await catchUp.before(dms[1]!.channel, dms[1]!.user)
  expect(heard).toEqual(dms.map(({ said }) => said))
  catchUp.stop()
})
