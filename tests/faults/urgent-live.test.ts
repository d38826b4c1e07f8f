import { readdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { expect, it, onTestFinished } from 'vitest'
import { type Service, startService } from '../../src/service.ts'
import { onBothDatabases } from '../store/databases.ts'
import { oneClient } from './live.ts'
import { lock } from './lock.ts'

const CANNOT_PEE = "I can't pee since this morning"

onBothDatabases('an urgent sign while the database is locked', (bench) => {
  /** A practice with one client on the stand-in, and the bot in service with real time. */
  async function inService() {
    const live = await oneClient(await bench.address())
    const { platform, parts } = live
    const start = (): Promise<Service> => startService(parts)
    const service = await start()
    onTestFinished(async () => {
      await service.stop()
      await platform.stop()
    })
    return { ...live, service, start, lock: () => lock(parts.databaseUrl) }
  }

  it('answers within the 3 s of the platform, and alerts, each once', async () => {
    const { heron, service, logs, folder, toHeron, inAlerts, ...live } = await inService()
    const unlock = await live.lock()
    await heron.say(CANNOT_PEE)
    const [reply, alert] = await Promise.all([
      live.until(() => toHeron().length > 0),
      live.until(() => inAlerts().length > 0),
    ])
    console.info(`locked: reply after ${reply.toFixed(0)} ms, alert after ${alert.toFixed(0)} ms`)
    expect(reply).toBeLessThan(3_000)
    expect(alert).toBeLessThan(3_000)
    // kept on the disk meanwhile, closed to others; no words of it in who is known nor in the log
    const [spool, known] = filesIn(folder)
    expect(readFileSync(spool, 'utf8')).toContain(CANNOT_PEE)
    for (const path of [spool, known]) expect(statSync(path).mode & 0o777).toBe(0o600)
    expect(readFileSync(known, 'utf8')).not.toContain('pee')
    expect(logs.join('')).not.toMatch(/pee|heron/)
    await unlock()
    await settle(service)
    expect(toHeron()).toHaveLength(1)
    expect(inAlerts()).toHaveLength(1)
    expect(readFileSync(spool, 'utf8').replaceAll('\0', '')).toBe('')
    const file = await service.store.store.transaction((tx) => tx.client('c:heron'))
    expect(file!.signs.map(({ sign, state }) => `${sign} ${state}`)).toEqual(['bladder-change open'])
    expect(file!.holds.some(({ kind, endedAt }) => kind === 'lock' && endedAt === null)).toBe(true)
    expect(file!.alerts).toHaveLength(1)
    const waiting = await service.store.outbox.waiting(new Date(Date.now() + 60_000), 10)
    expect(waiting.filter(({ kind }) => kind === 'urgent' || kind === 'alert')).toEqual([])
  }, 90_000)

  it('writes to the coach in person where the platform refuses the alert channel', async () => {
    const { platform, heron, coach, alerts, posted, service, logs, ...live } = await inService()
    const match = new RegExp(`^POST /channels/${alerts.id}/messages$`)
    platform.fault({ match, status: 403, body: { code: 50001, message: 'Missing Access' }, times: 50 })
    const inPerson = () => posted.filter((event) => event.recipient === coach.id)
    const unlock = await live.lock()
    await heron.say(CANNOT_PEE)
    const told = await live.until(() => inPerson().length > 0)
    console.info(`alert channel refused: coach in person after ${told.toFixed(0)} ms`)
    expect(told).toBeLessThan(3_000)
    await unlock()
    await settle(service)
    expect(inPerson()).toHaveLength(1)
    expect(inPerson()[0]!.content).toContain('heron')
    expect(logs.some((line) => line.includes('"reason":"no-access"'))).toBe(true)
  }, 90_000)

  it('tells somebody unknown to seek care, without a number and without telling anybody', async () => {
    const { stranger, posted, ...live } = await inService()
    const unlock = await live.lock()
    await stranger.say(CANNOT_PEE)
    await live.until(() => posted.some((event) => event.recipient === stranger.id))
    await unlock()
    expect(posted).toHaveLength(1)
    expect(posted[0]!.content).not.toMatch(/\d/)
  }, 90_000)

  it('takes up once what a killed bot had put aside', async () => {
    const { heron, toHeron, inAlerts, service, start, ...live } = await inService()
    const unlock = await live.lock()
    await heron.say(CANNOT_PEE)
    await live.until(() => toHeron().length > 0 && inAlerts().length > 0)
    // where it went is written to the disk right behind
    await pause(100)
    service.abandon()
    await service.client.destroy()
    await unlock()
    const again = await start()
    onTestFinished(() => again.stop())
    await settle(again)
    expect(toHeron()).toHaveLength(1)
    expect(inAlerts()).toHaveLength(1)
    const file = await again.store.store.transaction((tx) => tx.client('c:heron'))
    expect(file!.signs.map(({ sign, state }) => `${sign} ${state}`)).toEqual(['bladder-change open'])
    expect(file!.alerts).toHaveLength(1)
  }, 90_000)
})

/** The spool, and the list of who is known. */
function filesIn(folder: string): readonly [string, string] {
  const ending = (end: string): string => {
    const name = readdirSync(folder).find((one) => one.endsWith(end))
    if (!name) throw new Error(`no file ${end}`)
    return join(folder, name)
  }
  return [ending('spool'), ending('known.json')]
}

/** What had to wait is taken up, and what follows from it sent. */
async function settle(service: Service): Promise<void> {
  await service.bot.idle()
  await service.bot.tick()
  await service.bot.tick()
}
