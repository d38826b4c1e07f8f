import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import SqliteDatabase from 'better-sqlite3'
import pino from 'pino'
import type { Change } from '../../src/engine/rows.ts'
import { Permission, type Person, Platform } from '../../src/rehearsal/platform/index.ts'
import { startService } from '../../src/service.ts'
import { openStore } from '../../src/store/open.ts'
import * as samples from '../store/samples.ts'

/** Practices on a stand-in that keeps the platform's limits, the bot in service on a SQLite file, in real time. */
export interface Practices {
  /** Those who tell of a sign; each may be asked once. */
  readonly urgent: readonly Person[]
  /** Milliseconds from what they say to the urgent reply on the platform. */
  latencyOf(person: Person): Promise<number>
  /** Prompts on the platform so far, and how often the platform refused for its limits. */
  counts(): { readonly prompts: number; readonly refused: readonly string[]; readonly alerts: number }
  /** Another connection holds the database for so long. */
  lock(ms: number): Promise<void>
  /** Begins to send what waits. */
  begin(): void
  stop(): Promise<void>
}

const PRACTICES = 20
const SIGN = "I can't pee since this morning"
const LATE_MS = 30_000

/** @param prompts waiting in the outbox, each for another client */
export async function openPractices(prompts: number, urgent: number): Promise<Practices> {
  const folder = mkdtempSync(join(tmpdir(), 'ebbline-bench-'))
  const path = join(folder, 'urgent.db')
  const platform = new Platform({ limits: 'platform' })
  const coach = platform.addUser('coach')
  const houses = Array.from({ length: PRACTICES }, (_, n) => {
    const guild = platform.build.addGuild(`boathouse ${n}`, { ownerId: coach.id })
    const role = platform.build.addRole(guild.id, 'coach').id
    platform.build.addMember(guild.id, coach.id, [role])
    const room = {
      everyoneCanView: false,
      overwrites: [{ id: role, type: 'role' as const, allow: Permission.viewChannel, deny: 0n }],
    }
    const alerts = platform.build.addChannel(guild.id, 'alerts', room)
    return { guild, role, alerts }
  })
  const people = Array.from({ length: prompts + urgent }, (_, n) => {
    const person = platform.addUser(`client-${n}`)
    platform.build.addMember(houses[n % PRACTICES]!.guild.id, person.id)
    return person
  })
  await platform.start()
  const directs = people.map(({ id }) => platform.world.dmChannel(id).id)
  await fill(`file:${path}`, houses, people, { prompts, directs })

  const arrived = new Map<string, (at: number) => void>()
  let alerts = 0
  let sent = 0
  platform.on('message', ({ recipient, content }) => {
    const at = performance.now()
    if (recipient === null) alerts += 1
    else if (content.startsWith(PROMPT)) sent += 1
    else {
      arrived.get(recipient ?? '')?.(at)
      arrived.delete(recipient ?? '')
    }
  })
  const log = pino({ level: 'silent' })
  const { token, apiUrl: api } = platform
  const service = await startService({ databaseUrl: `file:${path}`, token, api, now: () => new Date(), log })
  const ticks = setInterval(() => void service.bot.tick().catch(() => undefined), 5_000)

  return {
    urgent: people.slice(prompts),
    async latencyOf(person) {
      const reply = new Promise<number>((resolve) => arrived.set(person.id, resolve))
      const late = new Promise<number>((resolve) => setTimeout(() => resolve(Number.NaN), LATE_MS).unref())
      const begun = performance.now()
      await person.say(SIGN)
      return (await Promise.race([reply, late])) - begun
    },
    counts: () => ({
      prompts: sent,
      alerts,
      refused: platform.requests.flatMap(({ path, status }) => (status === 429 ? [path] : [])),
    }),
    async lock(ms) {
      // it must not wait: the bot runs in this process
      const other = new SqliteDatabase(path, { timeout: 0 })
      while (!begin(other)) await new Promise((resolve) => setTimeout(resolve, 2))
      await new Promise((resolve) => setTimeout(resolve, ms))
      other.exec('ROLLBACK')
      other.close()
    },
    begin: () => void service.bot.tick().catch(() => undefined),
    async stop() {
      clearInterval(ticks)
      await service.stop()
      await platform.stop()
    },
  }
}

function begin(db: SqliteDatabase.Database): boolean {
  try {
    db.exec('BEGIN IMMEDIATE')
    return true
  } catch {
    return false
  }
}

const PROMPT = 'How did it go?'

async function fill(
  url: string,
  houses: readonly { guild: { id: string }; role: string; alerts: { id: string } }[],
  people: readonly Person[],
  { prompts, directs }: { readonly prompts: number; readonly directs: readonly string[] },
): Promise<void> {
  const opened = await openStore(url)
  const practices = houses.map(({ guild, role, alerts }, n) => ({
    ...samples.practice,
    ...{ id: `p:${n}`, guild: guild.id, coachRole: role, coachChannel: null, alertChannel: alerts.id },
  }))
  const clients = people.map(({ id: user }, n) =>
    samples.client(`client-${n}`, { practiceId: `p:${n % PRACTICES}`, user, region: 'PT', coach: null }),
  )
  const changes: Change[] = [
    ...practices.map((row): Change => ({ put: 'practice', row })),
    ...clients.map((row): Change => ({ put: 'client', row })),
  ]
  const now = new Date()
  const postings = clients.slice(0, prompts).map((client) => ({
    ...samples.posting(`prompt/${client.ref}`, { notBefore: now, practiceId: client.practiceId }),
    clientId: client.id,
    message: samples.message(`prompt/${client.ref}`, { address: { to: 'client', user: client.user } }),
  }))
  // a transaction may take half a minute: so many rows at once
  const size = 500
  for (let from = 0; from < changes.length; from += size)
    await opened.store.transaction((tx) =>
      tx.apply({ changes: changes.slice(from, from + size), postings: [] }),
    )
  for (let from = 0; from < postings.length; from += size)
    await opened.store.transaction((tx) =>
      tx.apply({ changes: [], postings: postings.slice(from, from + size) }),
    )
  await opened.close()
  welcome(url.slice('file:'.length), clients, directs)
}

/** Everybody was welcomed once, so that the bot knows where they read. */
function welcome(
  path: string,
  clients: readonly { readonly id: string; readonly practiceId: string }[],
  directs: readonly string[],
): void {
  const db = new SqliteDatabase(path)
  const sql = `INSERT INTO "Outbox" ("id", "key", "practiceId", "clientId", "kind", "body", "priority", "seq", "state",
    "notBefore", "attempts", "sentAt", "channel", "platformId")
    VALUES (?, ?, ?, ?, 'welcome', '{}', 2, 0, 'sent', ?, 1, ?, ?, ?)`
  const insert = db.prepare(sql)
  const at = new Date().toISOString().replace('Z', '+00:00')
  db.transaction(() => {
    for (const [n, { id, practiceId }] of clients.entries())
      insert.run(`w${n}`, `welcome/${n}`, practiceId, id, at, at, directs[n], directs[n])
  })()
  db.close()
}
