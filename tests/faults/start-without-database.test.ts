import { copyFileSync, readFileSync, writeFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { startService } from '../../src/service.ts'
import { startPatiently } from '../../src/start.ts'
import { chat } from '../../src/text/en/chat.ts'
import { run } from '../end-to-end/service-process.ts'
import { oneClient } from './live.ts'

it('answers urgent signs while the database cannot be opened at the start, and starts once it is put back', async () => {
  const { path, heron, parts, until, toHeron, inAlerts, platform } = await oneClient()
  await (await startService(parts)).stop()
  copyFileSync(path, `${path}.good`)
  writeFileSync(path, Buffer.alloc(readFileSync(path).length, 'x'))
  const told: string[] = []
  const starting = startPatiently({ ...parts, tell: ({ message }) => told.push(message) })
  await until(() => platform.connected && told.length > 0)
  expect(told[0]).toContain('put back a backup with ebb restore FILE')

  await heron.say("I can't pee since this morning")
  const reply = await until(() => toHeron().length > 0 && inAlerts().length > 0)
  expect(reply).toBeLessThan(3_000)
  await heron.say('2 calf 4')
  await until(() => toHeron().length === 2)

  copyFileSync(`${path}.good`, path)
  const service = await starting
  await service.bot.tick()
  await service.bot.tick()
  const file = await service.store.store.transaction((tx) => tx.client('c:heron'))
  expect(file!.signs.map(({ sign, state }) => `${sign} ${state}`)).toEqual(['bladder-change open'])
  expect(file!.checkIns.map(({ reach, pain }) => [reach, pain])).toEqual([['calf', 4]])
  expect(toHeron().filter(({ content }) => content === toHeron()[0]!.content)).toHaveLength(1)
  expect(inAlerts()).toHaveLength(1)
  expect(told).toHaveLength(1)
  await service.stop()
  await platform.stop()
}, 90_000)

it('ends as a failure where the token is revoked before the database can be opened', async () => {
  const { path, folder, parts, until, platform } = await oneClient()
  await (await startService(parts)).stop()
  await until(() => !platform.connected)
  writeFileSync(path, Buffer.alloc(readFileSync(path).length, 'x'))
  const bot = run('src/main.ts', [], {
    DATABASE_URL: parts.databaseUrl,
    EBBLINE_SPOOL_DIR: folder,
    DISCORD_TOKEN: platform.token,
    DISCORD_API: platform.apiUrl,
  })
  try {
    await until(() => platform.connected && bot.said().includes('ebb restore'))
    platform.revokeToken()
    const { code, err } = await bot.ended()
    expect(code).toBe(1)
    expect(err).toContain(chat.problem.lost)
  } finally {
    bot.kill()
    await platform.stop()
  }
}, 90_000)

it('ends at once with its sentence where nobody is on file', async () => {
  const { path, parts, platform } = await oneClient()
  writeFileSync(path, Buffer.alloc(8_192, 'x'))
  await expect(startPatiently({ ...parts, tell: () => {} })).rejects.toThrow('is not a SQLite database')
  await platform.stop()
}, 90_000)
