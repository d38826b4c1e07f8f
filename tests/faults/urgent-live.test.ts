import { mkdtempSync, readFileSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import SqliteDatabase from 'better-sqlite3'
import pino from 'pino'
import { expect, it, onTestFinished } from 'vitest'
import { createPlatform, Permission, type PostedEvent } from '../../src/rehearsal/platform/index.ts'
import { type Service, startService } from '../../src/service.ts'
import { putOnFile } from './on-file.ts'

const CANNOT_PEE = "I can't pee since this morning"

/** A practice with one client on the stand-in, and the bot in service with real time. */
async function inService() {
  const folder = mkdtempSync(join(tmpdir(), 'ebbline-live-'))
  const path = join(folder, 'live.db')
  const databaseUrl = `file:${path}`
  const platform = createPlatform()
  const coach = platform.addUser('coach')
  const heron = platform.addUser('heron')
  const stranger = platform.addUser('plover')
  const guild = platform.build.addGuild('boathouse', { ownerId: coach.id })
  const role = platform.build.addRole(guild.id, 'coach').id
  platform.build.addMember(guild.id, coach.id, [role])
  for (const { id } of [heron, stranger]) platform.build.addMember(guild.id, id)
  const room = {
    everyoneCanView: false,
    overwrites: [{ id: role, type: 'role' as const, allow: Permission.viewChannel, deny: 0n }],
  }
  const alerts = platform.build.addChannel(guild.id, 'alerts', room)
  await platform.start()
  const people = { guild: guild.id, role, alerts: alerts.id, coach: coach.id, heron: heron.id }
  await putOnFile(databaseUrl, people)
  const posted: (PostedEvent & { readonly ms: number })[] = []
  platform.on('message', (event) => void posted.push({ ...event, ms: performance.now() }))
  const logs: string[] = []
  const log = pino({ level: 'debug', base: null }, { write: (line) => void logs.push(line) })
  const { token, apiUrl: api } = platform
  const start = (): Promise<Service> => startService({ databaseUrl, token, api, now: () => new Date(), log })
  const service = await start()
  onTestFinished(async () => {
    await service.stop()
    await platform.stop()
  })
  const seen = async (found: (event: PostedEvent) => boolean, most = 20_000): Promise<number> => {
    for (const late = performance.now() + most; performance.now() < late; ) {
      const event = posted.find(found)
      if (event) return event.ms
      await new Promise((resolve) => setTimeout(resolve, 5))
    }
    throw new Error('waited in vain')
  }
  return { folder, path, platform, coach, heron, stranger, alerts, posted, logs, service, start, seen }
}

function lock(path: string): () => void {
  const other = new SqliteDatabase(path)
  other.exec('BEGIN IMMEDIATE')
  return () => {
    other.exec('ROLLBACK')
    other.close()
  }
}

it('answers within the 3 s of the platform while the database is locked, and alerts, each once', async () => {
  const { heron, alerts, posted, path, service, seen, logs, folder } = await inService()
  const unlock = lock(path)
  const begun = performance.now()
  await heron.say(CANNOT_PEE)
  const reply = (await seen((event) => event.recipient === heron.id)) - begun
  const alert = (await seen((event) => event.channelId === alerts.id)) - begun
  console.info(`locked: reply after ${reply.toFixed(0)} ms, alert after ${alert.toFixed(0)} ms`)
  expect(reply).toBeLessThan(3_000)
  expect(alert).toBeLessThan(3_000)
  // kept on the disk meanwhile, closed to others; no words of it in who is known nor in the log
  const spool = readFileSync(join(folder, 'live.db-spool'), 'utf8')
  expect(spool).toContain(CANNOT_PEE)
  for (const name of ['live.db-spool', 'live.db-known.json'])
    expect(statSync(join(folder, name)).mode & 0o777).toBe(0o600)
  expect(readFileSync(join(folder, 'live.db-known.json'), 'utf8')).not.toContain('pee')
  expect(logs.join('')).not.toMatch(/pee|heron/)
  unlock()
  await service.bot.idle()
  await service.bot.tick()
  await service.bot.tick()
  expect(posted.filter((event) => event.recipient === heron.id)).toHaveLength(1)
  expect(posted.filter((event) => event.channelId === alerts.id)).toHaveLength(1)
  expect(readFileSync(join(folder, 'live.db-spool'), 'utf8').replaceAll('\0', '')).toBe('')
  const file = await service.store.store.transaction((tx) => tx.client('c:heron'))
  expect(file!.signs.map(({ sign, state }) => `${sign} ${state}`)).toEqual(['bladder-change open'])
  expect(file!.holds.some(({ kind, endedAt }) => kind === 'lock' && endedAt === null)).toBe(true)
  expect(file!.alerts).toHaveLength(1)
  const waiting = await service.store.outbox.waiting(new Date(Date.now() + 60_000), 10)
  expect(waiting.filter(({ kind }) => kind === 'urgent' || kind === 'alert')).toEqual([])
}, 90_000)

it('writes to the coach in person where the platform refuses the alert channel', async () => {
  const { platform, heron, coach, alerts, posted, path, seen, service, logs } = await inService()
  const match = new RegExp(`^POST /channels/${alerts.id}/messages$`)
  platform.fault({ match, status: 403, body: { code: 50001, message: 'Missing Access' }, times: 50 })
  const unlock = lock(path)
  const begun = performance.now()
  await heron.say(CANNOT_PEE)
  const told = (await seen((event) => event.recipient === coach.id)) - begun
  console.info(`alert channel refused: coach in person after ${told.toFixed(0)} ms`)
  expect(told).toBeLessThan(3_000)
  unlock()
  await service.bot.idle()
  await service.bot.tick()
  await service.bot.tick()
  const inPerson = posted.filter((event) => event.recipient === coach.id)
  expect(inPerson).toHaveLength(1)
  expect(inPerson[0]!.content).toContain('heron')
  expect(logs.some((line) => line.includes('"reason":"no-access"'))).toBe(true)
}, 90_000)

it('tells somebody unknown to seek care, without a number and without telling anybody', async () => {
  const { stranger, posted, path, seen } = await inService()
  const unlock = lock(path)
  await stranger.say(CANNOT_PEE)
  await seen((event) => event.recipient === stranger.id)
  unlock()
  expect(posted).toHaveLength(1)
  expect(posted[0]!.content).not.toMatch(/\d/)
}, 90_000)

it('takes up once what a killed bot had put aside', async () => {
  const { heron, alerts, posted, path, seen, service, start } = await inService()
  const unlock = lock(path)
  await heron.say(CANNOT_PEE)
  await seen((event) => event.recipient === heron.id)
  await seen((event) => event.channelId === alerts.id)
  // where it went is written to the disk right behind
  await new Promise((resolve) => setTimeout(resolve, 100))
  service.abandon()
  await service.client.destroy()
  unlock()
  const again = await start()
  onTestFinished(() => again.stop())
  await again.bot.tick()
  await again.bot.tick()
  expect(posted.filter((event) => event.recipient === heron.id)).toHaveLength(1)
  expect(posted.filter((event) => event.channelId === alerts.id)).toHaveLength(1)
  const file = await again.store.store.transaction((tx) => tx.client('c:heron'))
  expect(file!.signs.map(({ sign, state }) => `${sign} ${state}`)).toEqual(['bladder-change open'])
  expect(file!.alerts).toHaveLength(1)
}, 90_000)
