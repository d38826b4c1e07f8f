import SqliteDatabase from 'better-sqlite3'
import pg from 'pg'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest'
import { type OpenStore, openStore } from '../../src/store/open.ts'
import { onServers, sqliteAddresses } from './databases.ts'
import { CLIENTS, grown, grownOn } from './grown.ts'
import { pathOf } from './moving.ts'
import { checkIn, outcome, posting, put, samples } from './samples.ts'

interface Asked {
  readonly sql: string
  readonly values: readonly unknown[]
}
/** A table and how the database would read it for a query. */
interface Step {
  readonly text: string
  /** Every row is read. */
  readonly scans: string | null
}
type Plan = (asked: Asked) => Promise<Step[]>

const now = new Date('2026-03-08T12:10:00Z')
const C = 'c:heron/500'
const P = `${samples.practice.id}/100`

/** What a bot asks again and again, by what it is for. */
const HOT: Readonly<Record<string, (store: OpenStore) => Promise<unknown>>> = {
  'what is due': ({ dues }) => dues.dueBy(now, 100),
  'when something is due next': ({ dues }) => dues.nextDue(),
  'what is due among some': ({ dues }) => dues.dueAmong(['x/4', 'x/5'], now),
  'when a message may go next': ({ outbox }) => outbox.nextDue(),
  'which messages wait': ({ outbox }) => outbox.waiting(now, 50),
  'which lines wait': ({ outbox }) => outbox.linesWaiting(now, 50),
  'a claim on messages': ({ outbox }) => outbox.claim(now, 50, 9),
  'a claim on lines': ({ outbox }) => outbox.claimLines(['c:heron/2', 'c:heron/4'], now, 50),
  'a message sent': ({ outbox }) => outbox.sent(`x/1/1`, now, 'c', '9'),
  'a message tried again': ({ outbox }) => outbox.retry(`x/2/1`, now),
  'whether an event was seen': ({ store }) => store.transaction((tx) => tx.seen('100000000000000001')),
  'the files of a person': ({ store }) => store.transaction((tx) => tx.clientsOfUser('user-heron/500')),
  'a client’s file, alerts and signs': ({ store }) => store.transaction((tx) => tx.client(C)),
  'a client by alias': ({ store }) => store.transaction((tx) => tx.clientByRef(P, 'heron/500')),
  'a practice of a server': ({ store }) =>
    store.transaction((tx) => tx.practiceOfGuild(`${samples.practice.guild}/100`)),
  'a digest: the files of a practice': ({ store }) => store.transaction((tx) => tx.roster(P)),
  'a message by its key': ({ store }) => store.transaction((tx) => tx.outboxByKey('prompt/1/3/3')),
  'what a reply writes': ({ store }) =>
    store.transaction((tx) =>
      tx.apply(
        outcome(
          [
            put('checkIn', checkIn(C, '2026-04-01')),
            put('inbound', { ...samples.inbound, id: '7', clientId: C }),
          ],
          [posting('receipt/7', { clientId: C, practiceId: P })],
        ),
      ),
    ),
  'who is known of some': ({ knownPeople }) => first(knownPeople(now, { clients: [C], practices: [P] })),
  'whom to catch up with': ({ directs }) => first(directs.all()),
  'where somebody is written to': ({ directs }) => directs.of('user-heron/500'),
  'what is withdrawn': ({ store }) => store.transaction((tx) => tx.withdraw(C, 'over', () => true)),
}

const first = async (pages: AsyncIterable<unknown>): Promise<unknown> => {
  for await (const page of pages) return page
}

// So few rows that reading all of them costs less than looking up one.
const SMALL = ['Practice', 'Cover', 'Lease', 'Setting']

const onFile = sqliteAddresses()

describe('query plans', () => {
  describe('on SQLite', () => {
    let url = ''
    beforeAll(async () => {
      url = await onFile()
      await grown(url)
    })
    held(
      () => url,
      () => planOnFile(url),
    )
  })

  onServers('on PostgreSQL', (onServer) => {
    let url = ''
    beforeAll(async () => {
      const file = await onFile()
      await grown(file)
      url = await onServer()
      await grownOn(url, file)
    })
    held(
      () => url,
      () => planOnServer(url),
    )
  })
})

/** Every statement of the hot uses is caught where the driver gets it, and explained. */
function held(url: () => string, planner: () => { plan: Plan; close(): Promise<void> }): void {
  let store: OpenStore
  let explain: ReturnType<typeof planner>
  const caught: Asked[] = []

  beforeAll(() => {
    catchAll(caught)
    explain = planner()
  })
  // opened for each: what a connection has been asked before is not prepared again
  beforeEach(async () => {
    store = await openStore(url(), null)
  })
  afterEach(() => store.close())
  afterAll(async () => {
    await explain.close()
    vi.restoreAllMocks()
  })

  it.each(Object.entries(HOT))('%s', async (what, use) => {
    caught.splice(0)
    await use(store)
    const statements = caught
      .splice(0)
      .filter(({ sql }) => /^\s*(SELECT|INSERT|UPDATE|DELETE|WITH)/i.test(sql))
    const told = new Set<string>()
    for (const asked of statements)
      for (const { text, scans } of await explain.plan(asked)) {
        told.add(text)
        expect(scans !== null && !SMALL.includes(scans), `${what}: ${text}\n${asked.sql}`).toBe(false)
      }
    console.log(`${what}\n${[...told].map((text) => `  ${text}`).join('\n')}`)
    expect(told.size).toBeGreaterThan(0)
  })

  it('one that reads every row is seen', async () => {
    const steps = await explain.plan({
      sql: `SELECT "o"."id" FROM "Outbox" AS "o" WHERE "o"."reason" = 'x'`,
      values: [],
    })
    expect(steps.map(({ scans }) => scans)).toEqual(['Outbox'])
  })
}

function catchAll(caught: Asked[]): void {
  const { prepare } = SqliteDatabase.prototype
  vi.spyOn(SqliteDatabase.prototype, 'prepare').mockImplementation(function (
    this: SqliteDatabase.Database,
    sql,
  ) {
    caught.push({ sql, values: [] })
    return prepare.call(this, sql) as never
  })
  const { query } = pg.Client.prototype
  vi.spyOn(pg.Client.prototype, 'query').mockImplementation(function (this: pg.Client, ...given: unknown[]) {
    const [first, values] = given as [string | { text: string; values?: unknown[] }, unknown]
    if (typeof first === 'string') caught.push({ sql: first, values: Array.isArray(values) ? values : [] })
    else if ('text' in first)
      caught.push({ sql: first.text, values: first.values ?? (Array.isArray(values) ? values : []) })
    return (query as (...all: unknown[]) => unknown).apply(this, given) as never
  })
}

function planOnFile(url: string): ReturnType<Parameters<typeof held>[1]> {
  const db = new SqliteDatabase(pathOf(url), { readonly: true })
  const plan: Plan = async ({ sql }) => {
    // a plan does not depend on the values, but each place needs one
    const places = sql.split('?').length - 1
    const rows = db.prepare(`EXPLAIN QUERY PLAN ${sql}`).all(Array(places).fill(null)) as { detail: string }[]
    return rows.map(({ detail }) => {
      const [, table] = /^SCAN (?:main\.)?(\S+)(?!.* USING )/.exec(detail) ?? []
      const isReal = table !== undefined && !/^(CONSTANT|\d|\()/.test(table)
      return { text: detail, scans: isReal ? namedBy(sql, table) : null }
    })
  }
  return { plan, close: async () => void db.close() }
}

/** The table behind a short name. */
const namedBy = (sql: string, name: string): string =>
  new RegExp(`[."\`](\\w+)["\`] AS ["\`]${name}["\`]`).exec(sql)?.[1] ?? name

function planOnServer(url: string): ReturnType<Parameters<typeof held>[1]> {
  const client = new pg.Client({ connectionString: url })
  const connected = client.connect()
  const plan: Plan = async ({ sql, values }) => {
    await connected
    const { rows } = await client.query(`EXPLAIN (COSTS OFF) ${sql}`, [...values])
    return (rows as { 'QUERY PLAN': string }[]).flatMap((row) => {
      const text = row['QUERY PLAN'].replace(/^[\s>-]+/, '')
      if (!/Scan/.test(text)) return []
      return [{ text, scans: /Seq Scan on "?(\w+)/.exec(text)?.[1] ?? null }]
    })
  }
  return { plan, close: () => client.end() }
}

it('a grown database has what the plans are made for', async () => {
  const url = await onFile()
  await grown(url)
  const db = new SqliteDatabase(pathOf(url), { readonly: true })
  const count = (sql: string): unknown => db.prepare(`SELECT count(*) FROM ${sql}`).pluck().get()
  expect(count('"Client"')).toBe(CLIENTS + 1)
  expect(count(`"Outbox" WHERE "state" = 'waiting'`)).toBeGreaterThan(10)
  expect(db.pragma('foreign_key_check')).toEqual([])
  db.close()
})
