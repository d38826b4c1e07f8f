import { commands } from '../../commands/index.ts'
import { createEngine } from '../../src/engine/engine.ts'
import type { Actor, ChatEvent } from '../../src/engine/event.ts'
import type { Answer, Message } from '../../src/engine/message.ts'
import type { OutboxRow } from '../../src/engine/rows.ts'
import type { Db } from '../../src/store/database.ts'
import { openSqlite } from '../../src/store/sqlite.ts'
import { createTx } from '../../src/store/tx.ts'
import { textsFor } from '../../src/text/index.ts'
import { COACH, openPractice, type Practice } from './practice.ts'

/** Words that stand in the rows of the second practice alone. */
export const SECRET = 'kingfisher'
export const GUILD_2 = 'guild-2'
/** The coach of the second practice; the role has the same id, as roles of two servers never have. */
export const COACH_2: Actor = { ...COACH, user: 'coach-2', guild: GUILD_2 }
const NOW = new Date('2026-03-09T10:00:00Z')

type Row = Record<string, unknown>
type Dump = Readonly<Record<string, readonly Row[]>>

/** What an event came to, though nothing of it was kept. */
export interface Tried {
  readonly answer: Answer | null
  /** Rows of a practice that the event added, changed or took away. */
  touched(guild: string): string[]
  /** Every text written that was not there before. */
  readonly written: string
}

export interface TwoPractices {
  readonly first: Practice
  /** Messages of both, by the guild of their practice. */
  readonly messages: Readonly<Record<string, readonly OutboxRow[]>>
  /** Every id that stands in a row of a practice. */
  readonly ids: Readonly<Record<string, readonly string[]>>
  /** Handles an event, looks at what it did, and takes it back. */
  attempt(event: ChatEvent): Promise<Tried>
  close(): Promise<void>
}

/**
 * Two practices on one store, each with a client `heron` (alert, note, question, plan, digest) and the second with an
 * `osprey` besides.
 */
export async function openTwo(): Promise<TwoPractices> {
  const first = await openPractice('2026-03-02')
  const setUp = { 'coach-role': 'role-coach', 'coach-channel': 'channel-2', zone: 'UTC', region: 'PT' }
  await first.command('set-up', { ...setUp, 'policy-settled': true }, COACH_2)
  await live(first, 'heron', 'heron', COACH, 'swan')
  await live(first, 'b-heron', 'heron', COACH_2, SECRET)
  await live(first, 'b-osprey', 'osprey', COACH_2, SECRET)
  await first.until('2026-03-08', '19:00')
  for (const by of [COACH, COACH_2]) {
    await first.command('note', { client: 'heron', text: by === COACH ? 'swan' : SECRET }, by)
    for (const name of ['roster', 'client-record', 'questions', 'decide'])
      await first.command(name, { client: 'heron', do: 'hold' }, by)
  }
  const database = openSqlite(first.path)
  const before = await database.use(dump)
  const attempt = async (event: ChatEvent): Promise<Tried> => {
    let tried: Tried | null = null
    const engine = createEngine({
      commands,
      textsFor,
      store: {
        transaction: <T>(work: (tx: ReturnType<typeof createTx>) => Promise<T>) =>
          database
            .transaction(async (db): Promise<T> => {
              const handled = await work(createTx(database, db, () => {}))
              tried = compare(handled as { answer: Answer | null }, before, await dump(db))
              throw new TakenBack()
            })
            .catch((error: unknown) => {
              if (error instanceof TakenBack) return { answer: null } as T
              throw error
            }),
      },
    })
    await engine.handle(event, NOW)
    return tried!
  }
  return {
    first,
    messages: byGuild((guild) => outboxOf(before, guild)),
    ids: byGuild((guild) => idsOf(before, guild)),
    attempt,
    async close() {
      await database.close()
      await first.close()
    },
  }
}

class TakenBack extends Error {}

async function live(all: Practice, who: string, alias: string, by: Actor, word: string): Promise<void> {
  await all.command('enrol', { person: `user-${who}`, alias, side: 'left', prompt: '08:00' }, by)
  await all.press(who, 'consent-yes')
  await all.press(who, 'sexual-yes')
  const first = { signs: ['none'], age: '41', onset: word, earlier: ['no'], seen: ['yes'] }
  await all.fill(who, 'fill-in', first)
  const second = { risks: ['none'], known: ['none'], reach: ['calf'], pain: ['6'], side: ['left'] }
  await all.fill(who, 'fill-in', second)
  await all.fill(who, 'fill-in', { eases: ['extension'], activities: `${word} 7`, lift: word })
  const plan = { client: alias, sessions: 2, ladders: 'extension:1 glide:1', anyway: true }
  await all.command('plan', plan, by)
  await all.until('2026-03-02', '09:00')
  await all.say(who, '2 calf 6')
  await all.say(who, `question: is the ${word} good for me?`)
  await all.say(who, `numb between my legs since the ${word} this morning`)
}

const byGuild = <T>(of: (guild: string) => T): Record<string, T> =>
  Object.fromEntries(['guild-1', GUILD_2].map((guild) => [guild, of(guild)]))

async function dump(db: Db): Promise<Dump> {
  const tables = await db.$queryRawUnsafe<{ name: string }[]>(
    `SELECT "name" FROM "sqlite_master" WHERE "type" = 'table' AND "name" NOT LIKE 'sqlite_%' AND "name" NOT LIKE '\\_%' ESCAPE '\\'`,
  )
  const rows: Record<string, Row[]> = {}
  for (const { name } of tables) rows[name] = await db.$queryRawUnsafe<Row[]>(`SELECT * FROM "${name}"`)
  return rows
}

const shown = (row: Row): string =>
  JSON.stringify(row, (_, value) => (typeof value === 'bigint' ? String(value) : value))

/** Each row of a practice as text, by table and key. */
function rowsOf(all: Dump, guild: string): Map<string, string> {
  const clients = new Set((all.Client ?? []).filter((row) => row.practiceId === guild).map((row) => row.id))
  const owned = (table: string, row: Row): boolean =>
    row.practiceId === guild || clients.has(row.clientId) || (table === 'Practice' && row.id === guild)
  const mine = Object.entries(all).flatMap(([table, rows]) =>
    rows
      .filter((row) => owned(table, row))
      .map((row) => [`${table} ${row.id ?? row.key}`, shown(row)] as const),
  )
  return new Map(mine)
}

function compare(handled: { answer: Answer | null }, before: Dump, after: Dump): Tried {
  const old = new Set(Object.values(before).flat().map(shown))
  const written = Object.values(after)
    .flat()
    .map(shown)
    .filter((row) => !old.has(row))
  return {
    answer: handled.answer,
    written: written.join('\n'),
    touched(guild) {
      const [was, is] = [rowsOf(before, guild), rowsOf(after, guild)]
      return [...new Set([...was.keys(), ...is.keys()])].filter((key) => was.get(key) !== is.get(key))
    },
  }
}

function outboxOf(all: Dump, guild: string): OutboxRow[] {
  const keys = rowsOf(all, guild)
  return (all.Outbox ?? [])
    .filter((row) => keys.has(`Outbox ${row.id}`))
    .map((row) => ({ ...row, body: bodyOf(row.body) }) as unknown as OutboxRow)
}

const bodyOf = (body: unknown): Message => (typeof body === 'string' ? JSON.parse(body) : body) as Message

const idsOf = (all: Dump, guild: string): string[] =>
  [...rowsOf(all, guild).keys()].map((key) => key.slice(key.indexOf(' ') + 1))
