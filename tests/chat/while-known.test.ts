import { REST } from 'discord.js'
import pino from 'pino'
import { afterEach, beforeEach, expect, it, vi } from 'vitest'
import { createCourier } from '../../src/chat/courier.ts'
import { createLookBack } from '../../src/chat/look-back.ts'
import { Platform } from '../../src/rehearsal/platform/index.ts'
import { message, row } from './outbox.ts'

const HOST_NOW = Date.now
const POST = /^POST \/channels\/\d+\/messages$/
let platform: Platform
let slept = 0

beforeEach(async () => {
  slept = 0
  vi.spyOn(Date, 'now').mockImplementation(() => HOST_NOW() + slept)
  platform = new Platform()
  await platform.start()
})
afterEach(async () => {
  vi.restoreAllMocks()
  await platform.stop()
})

/** The courier of a process that sleeps so long after its message has arrived, and before it hears of it. */
async function deliverAsleep(ms: number) {
  const heron = platform.addUser('heron')
  platform.build.addMember(platform.build.addGuild('boathouse').id, heron.id)
  const rest = new REST({ api: platform.apiUrl, timeout: 300 }).setToken(platform.token)
  const now = () => new Date(Date.now())
  const lookBack = createLookBack({
    ...{ rest, now, marked: async () => new Set<string>() },
    ownId: () => platform.world.bot.id,
  })
  const draw = async () => ({ png: new Uint8Array([1]) })
  const drawFile = async () => new Uint8Array([2])
  const courier = createCourier({ rest, lookBack, draw, drawFile, log: pino({ enabled: false }) })
  const body = message({ address: { to: 'client', user: heron.id }, text: 'number 4' })
  const one = { ...row({ body }), notBefore: now(), practiceId: 'p:boathouse' }
  let count = 0
  platform.on('message', ({ recipient }) => {
    if (recipient === null) return
    count += 1
    slept += ms
    // the platform forgets nonces after some minutes
    if (ms > 60_000) for (const { wire } of platform.world.messages.values()) delete wire.nonce
  })
  platform.fault({ match: POST, afterApply: true, delayMs: 900 })
  const deliver = () =>
    courier.deliver(one).then(
      ({ platformId }) => platformId,
      (error: Error) => error,
    )
  return { first: await deliver(), second: await deliver(), count: () => count }
}

it('a message whose answer was lost is posted again by itself, under its nonce', async () => {
  const { first, count } = await deliverAsleep(0)
  expect(first).toEqual(expect.any(String))
  expect(count()).toBe(1)
})

it('after a sleep it is looked for first, since the platform may have forgotten the nonce', async () => {
  const { first, second, count } = await deliverAsleep(130_000)
  expect(first).toBeInstanceOf(Error)
  expect(second).toEqual(expect.any(String))
  expect(count()).toBe(1)
})
