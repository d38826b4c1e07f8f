import { expect, it, type TestContext } from 'vitest'
import { createClient } from '../../src/chat/client.ts'
import { leave } from '../../src/chat/leave.ts'
import { Platform } from '../../src/rehearsal/platform/index.ts'
import { logIn } from '../rehearsal/platform/harness.ts'

/** A platform, and a client that is not logged in yet. */
async function apart(context: TestContext) {
  const platform = new Platform()
  platform.build.addGuild('boathouse')
  await platform.start()
  context.onTestFinished(() => platform.stop())
  return { platform, client: createClient(platform.token, platform.apiUrl) }
}

/** Looks between any two steps of the client, which runs in this process too. */
async function until(check: () => boolean): Promise<void> {
  while (!check()) await new Promise((resolve) => setImmediate(resolve))
}

// the client waits 0.5 s before another try, and up to 6.5 s before another greeting
const BACK_MS = 8_000

async function isGone(platform: Platform): Promise<void> {
  const { identified } = platform.sessions
  await new Promise((resolve) => setTimeout(resolve, BACK_MS))
  expect(platform.connected).toBe(false)
  expect(platform.sessions.identified).toBe(identified)
}

it.concurrent('a client that still waits for its greeting leaves at once and for good', async (context) => {
  const { platform, client } = await apart(context)
  void client.login(platform.token).catch(() => {})
  await until(() => platform.sessions.identified === 1)
  await leave(client)
  await isGone(platform)
}, 15_000)

it.concurrent('and so does one whose line broke a moment ago', async (context) => {
  const { platform, client } = await apart(context)
  await logIn(client, platform.token)
  platform.invalidSession()
  await until(() => !platform.connected)
  // the client has heard of it, and waits before it tries again
  await new Promise((resolve) => setTimeout(resolve, 100))
  await leave(client)
  await isGone(platform)
}, 15_000)
