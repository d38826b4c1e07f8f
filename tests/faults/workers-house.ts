import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type pg from 'pg'
import type { Posting } from '../../src/engine/ports.ts'
import type { Change } from '../../src/engine/rows.ts'
import {
  Permission,
  type Person,
  Platform,
  type PostedEvent,
  type Rates,
} from '../../src/rehearsal/platform/index.ts'
import { openStore } from '../../src/store/open.ts'
import { type Program, run, type ServiceProcess } from '../end-to-end/service-process.ts'
import * as samples from '../store/samples.ts'
import { administer } from '../store/server.ts'

// a transaction may take half a minute: so many rows at once
const AT_ONCE = 500

// what the platform allows a bot in a second, and in 5 s in a channel
const PER_SECOND = 50
const PER_CHANNEL = 5

/** A practice on the stand-in and on a PostgreSQL database of its own, and processes of the bot beside each other. */
export interface House {
  readonly platform: Platform
  readonly people: readonly Person[]
  readonly posted: readonly PostedEvent[]
  readonly databaseUrl: string
  /** `npm start`. */
  leader(): ServiceProcess
  /** `ebb work`. */
  worker(): ServiceProcess
  /** So many messages for each client, numbered in order from `first` (0), due now or then. */
  write(each: number, at?: Date, first?: number): Promise<void>
  /** A due row for each of so many clients that is done with nothing but its going. */
  writeDues(clients: number, at?: Date): Promise<void>
  /** All that was written for later is due at this instant. */
  makeDue(): Promise<void>
  /** Numbers of what each client got, in order of arrival. */
  got(): ReadonlyMap<string, readonly number[]>
  query<Row extends pg.QueryResultRow>(sql: string): Promise<Row[]>
  close(): Promise<void>
}

/** @param server address of a PostgreSQL server on which a database may be made */
export async function openHouse(
  server: string,
  { clients, perSecond }: { clients: number; perSecond: number },
): Promise<House> {
  const name = `ebbline_house_${process.pid}_${Date.now()}`
  await administer(server, `CREATE DATABASE "${name}"`)
  const databaseUrl = Object.assign(new URL(server), { pathname: `/${name}` }).href
  const spool = mkdtempSync(join(tmpdir(), 'ebbline-house-'))
  const limits: Rates = { global: perSecond, perChannel: (perSecond / PER_SECOND) * PER_CHANNEL }
  const platform = new Platform({ limits })
  const coach = platform.addUser('coach')
  const guild = platform.build.addGuild('boathouse', { ownerId: coach.id })
  const role = platform.build.addRole(guild.id, 'coach').id
  platform.build.addMember(guild.id, coach.id, [role])
  const alerts = platform.build.addChannel(guild.id, 'alerts', {
    everyoneCanView: false,
    overwrites: [{ id: role, type: 'role', allow: Permission.viewChannel, deny: 0n }],
  })
  const people = Array.from({ length: clients }, (_, n) => {
    const person = platform.addUser(`client-${n}`)
    platform.build.addMember(guild.id, person.id)
    return person
  })
  await platform.start()
  const posted: PostedEvent[] = []
  platform.on('message', (event) => void posted.push(event))
  const rows = people.map(({ id: user }, n) => samples.client(`client-${n}`, { user, region: 'PT' }))
  await apply(databaseUrl, [
    samples.put('practice', {
      ...samples.practice,
      guild: guild.id,
      coachRole: role,
      alertChannel: alerts.id,
    }),
    ...rows.map((row) => samples.put('client', row)),
  ])
  const running: ServiceProcess[] = []
  const start = (file: Program, ...args: string[]): ServiceProcess => {
    const one = run(file, args, {
      DISCORD_TOKEN: platform.token,
      DISCORD_API: platform.apiUrl,
      DATABASE_URL: databaseUrl,
      EBBLINE_SPOOL_DIR: join(spool, String(running.length)),
      EBBLINE_PER_SECOND: String(perSecond),
      LOG_LEVEL: 'info',
    })
    running.push(one)
    return one
  }
  return {
    ...{ platform, people, posted, databaseUrl },
    leader: () => start('src/main.ts'),
    worker: () => start('src/cli/index.ts', 'work'),
    async write(each, notBefore = new Date(), first = 0) {
      const numbers = Array.from({ length: each }, (_, n) => first + n)
      const postings = numbers.map((n) =>
        rows.map(({ id, user, ref }): Posting => {
          const key = `${ref}/${n}`
          const message = samples.message(key, { address: { to: 'client', user }, text: `number ${n}` })
          return { ...samples.posting(key, { notBefore, message }), clientId: id }
        }),
      )
      await apply(databaseUrl, [], postings.flat())
    },
    async writeDues(clients, at = new Date()) {
      const dues = rows.slice(0, clients).map(({ id }) => {
        const due = { ...samples.samples.due, id: `activities/${id}`, clientId: id, at }
        return samples.put('due', { ...due, kind: 'activities', data: {} })
      })
      await apply(databaseUrl, dues)
    },
    async makeDue() {
      for (const [table, column] of Object.entries({ Outbox: 'notBefore', Due: 'at' }))
        await administer(
          databaseUrl,
          `UPDATE "${table}" SET "${column}" = timezone('UTC', now())
          WHERE "${column}" > timezone('UTC', now())`,
        )
    },
    got() {
      const numbers = new Map<string, number[]>()
      for (const { recipient, content, change } of posted) {
        const number = /^number (\d+)$/.exec(content)?.[1]
        if (change !== 'created' || recipient === null || number === undefined) continue
        numbers.set(recipient, [...(numbers.get(recipient) ?? []), Number(number)])
      }
      return numbers
    },
    async query<Row extends pg.QueryResultRow>(sql: string) {
      return (await administer<Row>(databaseUrl, sql)).rows
    },
    async close() {
      for (const one of running) one.kill()
      await Promise.all(running.map((one) => one.ended()))
      await platform.stop()
      await administer(server, `DROP DATABASE IF EXISTS "${name}" WITH (FORCE)`)
      rmSync(spool, { recursive: true, force: true })
    },
  }
}

/** What is wrong with what was sent: lost, twice, or out of order; empty where nothing is. */
export function faultsIn(house: Pick<House, 'people' | 'got'>, each: number): string[] {
  const got = house.got()
  const right = JSON.stringify(Array.from({ length: each }, (_, n) => n))
  return house.people.flatMap(({ id, name }) => {
    const own = JSON.stringify(got.get(id) ?? [])
    return own === right ? [] : [`${name}: ${own}`]
  })
}

async function apply(url: string, changes: readonly Change[], postings: readonly Posting[] = []) {
  const { store, close } = await openStore(url, null)
  for (let from = 0; from < Math.max(changes.length, postings.length); from += AT_ONCE)
    await store.transaction((tx) =>
      tx.apply({
        changes: changes.slice(from, from + AT_ONCE),
        postings: postings.slice(from, from + AT_ONCE),
      }),
    )
  await close()
}
