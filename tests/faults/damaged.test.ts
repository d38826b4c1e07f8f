import { closeSync, openSync, statSync, writeSync } from 'node:fs'
import { expect, it } from 'vitest'
import { startService } from '../../src/service.ts'
import { oneClient } from './live.ts'

const PAGE = 4_096

/** Overwrites the middle of every page but the first ones, which tell that it is a database. */
function damage(path: string): void {
  const file = openSync(path, 'r+')
  for (let at = 2 * PAGE; at < statSync(path).size; at += PAGE)
    writeSync(file, Buffer.alloc(PAGE, 0xa5), 0, PAGE, at)
  closeSync(file)
}

it('answers and tells of a sign though the database is damaged while the bot runs, and keeps what is said', async () => {
  const { path, heron, parts, until, toHeron, inAlerts, platform, logs } = await oneClient()
  // what is in the log of writes would still be read from there
  await (await startService(parts)).stop()
  const service = await startService(parts)
  damage(path)
  await heron.say("I can't pee since this morning")
  const ms = await until(() => toHeron().length > 0 && inAlerts().length > 0)
  expect(ms).toBeLessThan(3_000)
  await heron.say('2 calf 4')
  await until(() => toHeron().length > 1)
  expect(toHeron()[1]!.content).toContain('put it aside')
  expect(logs.join('')).toContain('ebb restore')
  service.abandon()
  await service.client.destroy()
  await platform.stop()
}, 90_000)
