import { deepStrictEqual } from 'node:assert/strict'
import { copyFileSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import SqliteDatabase from 'better-sqlite3'
import { addDays } from '../../src/domain/day.ts'
import { playScenario } from '../../src/rehearsal/player/index.ts'
import { loadScenario } from '../../src/rehearsal/scenario/index.ts'
import { outboxId } from '../../src/store/apply.ts'
import { openStore } from '../../src/store/open.ts'

/** A practice has so many clients: more than one coach sees in a week, few enough for one digest. */
export const A_PRACTICE = 40

/** A database of many clients, each a copy of one whom the engine itself has led through the days. */
export interface Town {
  readonly path: string
  /** The platform's ids of each practice: server, coach's role, coach's channel and alert channel. */
  readonly houses: readonly (readonly string[])[]
  /** Those of each client, in order: the person and their private channel. */
  readonly people: readonly (readonly [user: string, direct: string])[]
}

interface Wanted {
  readonly clients: number
  /** Days that everybody has been with the bot, each with prompt, reply and receipt; today, not answered yet, beside. */
  readonly days: number
  /** The zones in which they live, in turn. */
  readonly zones?: readonly string[]
}

/** Prompts come then, so that today's is out whatever the hour. */
const PROMPT = '00:05'

/** One in each place where clocks differ from all others; the last are half and quarter hours. */
export const ZONES: readonly string[] = [
  ...['Pacific/Pago_Pago', 'Pacific/Honolulu', 'America/Anchorage', 'America/Los_Angeles', 'America/Denver'],
  ...['America/Chicago', 'America/New_York', 'America/Halifax', 'America/Sao_Paulo', 'America/Noronha'],
  ...['Atlantic/Azores', 'Europe/London', 'Europe/Paris', 'Europe/Athens', 'Europe/Moscow', 'Asia/Dubai'],
  ...['Asia/Karachi', 'Asia/Dhaka', 'Asia/Bangkok', 'Asia/Shanghai', 'Asia/Tokyo', 'Australia/Brisbane'],
  ...['Pacific/Noumea', 'Pacific/Auckland', 'Pacific/Tongatapu', 'Pacific/Kiritimati', 'Pacific/Marquesas'],
  ...['America/St_Johns', 'Asia/Tehran', 'Asia/Kabul', 'Asia/Kolkata', 'Asia/Kathmandu', 'Asia/Yangon'],
  ...['Australia/Eucla', 'Australia/Adelaide', 'Australia/Darwin', 'Australia/Lord_Howe', 'Pacific/Chatham'],
]

type Row = Record<string, unknown>
interface Model {
  readonly id: string
  readonly ref: string
  readonly user: string
  readonly direct: string
  readonly rows: ReadonlyMap<string, Row[]>
}
interface Template {
  readonly path: string
  /** As of `Town.houses`. */
  readonly house: readonly string[]
  /** Rows of the practice itself, by table. */
  readonly common: ReadonlyMap<string, Row[]>
  readonly clients: readonly Model[]
}
type Rename = (text: string) => string

// In this order a row only refers to a table before its own.
const TABLES = [
  ...['Practice', 'Client', 'Consent', 'Screening', 'Plan', 'Rung', 'CheckIn', 'Version', 'Flag', 'Hold'],
  ...['Decision', 'Asked', 'Due', 'Inbound', 'Activity', 'Outbox'],
]
// The platform's ids hold a count in their lowest 22 bits: so far apart, copies never meet.
const APART = 64n
const REPLIES = ['2 calf 5', '2 knee 5', '2 calf 4', '1 knee 4', '2 thigh 4', '2 knee 3', '2 thigh 3']

const made = new Map<string, Promise<Town>>()

/** The town in a file that may be written to; the same wish is filled once a run, and copied. */
export async function town(wanted: Wanted): Promise<Town> {
  const { path, ...ids } = await sharedTown(wanted)
  const copy = join(newFolder(), 'town.db')
  copyFileSync(path, copy)
  return { path: copy, ...ids }
}

/** The same for those who only read it. */
export function sharedTown(wanted: Wanted): Promise<Town> {
  const key = JSON.stringify(wanted)
  const town = made.get(key) ?? build(wanted)
  made.set(key, town)
  return town
}

const newFolder = (): string => {
  const folder = mkdtempSync(join(tmpdir(), 'ebbline-bench-'))
  process.once('exit', () => rmSync(folder, { recursive: true, force: true }))
  return folder
}

async function build({ clients, days, zones = ['Europe/Lisbon'] }: Wanted): Promise<Town> {
  const template = await lived(days, zones)
  const path = join(newFolder(), 'town.db')
  copyFileSync(template.path, path)
  const db = new SqliteDatabase(path)
  for (const pragma of ['journal_mode = OFF', 'synchronous = OFF', 'foreign_keys = OFF']) db.pragma(pragma)
  for (const table of TABLES) db.exec(`DELETE FROM "${table}"`)
  const indexes = withoutIndexes(db)
  const put = new Map(TABLES.map((table) => [table, inserter(db, table)]))
  const houses: string[][] = []
  const people: [string, string][] = []
  let practice: Rename = (text) => text
  db.exec('BEGIN')
  for (let n = 0; n < clients; n += 1) {
    if (n % A_PRACTICE === 0) {
      houses.push(moved(template.house, n / A_PRACTICE))
      practice = replacing(template.house, houses.at(-1)!)
      for (const [table, rows] of template.common) for (const row of rows) put.get(table)!(row, practice)
    }
    const model = template.clients[n % template.clients.length]!
    people.push(moved([model.user, model.direct], n) as [string, string])
    const own = renameClient(model, n, people.at(-1)!, practice)
    for (const [table, rows] of model.rows) for (const row of rows) put.get(table)!(row, own)
  }
  db.exec('COMMIT')
  for (const sql of indexes) db.exec(sql)
  db.exec('ANALYZE')
  db.close()
  const made = { path, houses, people }
  await compare(template, made)
  return made
}

/** Takes the indexes away, which are made sooner when all rows are there. */
function withoutIndexes(db: SqliteDatabase.Database): string[] {
  const found = db
    .prepare(`SELECT name, sql FROM sqlite_master WHERE type = 'index' AND sql IS NOT NULL`)
    .all()
  const indexes = found as { name: string; sql: string }[]
  for (const { name } of indexes) db.exec(`DROP INDEX "${name}"`)
  return indexes.map(({ sql }) => sql)
}

/** The platform's ids moved up by the number of the copy. */
const moved = (ids: readonly string[], n: number): string[] =>
  ids.map((id) => String(BigInt(id) + APART * BigInt(n)))

/** Each of these texts replaced by the one at its place. */
const replacing =
  (texts: readonly string[], by: readonly string[]): Rename =>
  (text) =>
    texts.reduce((all, one, at) => all.replaceAll(one, by[at]!), text)

function renameClient(
  { id, ref, user, direct }: Model,
  n: number,
  own: readonly string[],
  practice: Rename,
): Rename {
  const ids = [n.toString(16).padStart(id.length, '0'), ...own, `${ref}-${n}`]
  const rename = replacing([id, user, direct, ref], ids)
  return (text) => practice(rename(text))
}

function inserter(db: SqliteDatabase.Database, table: string): (row: Row, rename: Rename) => void {
  const columns = db.pragma(`table_info("${table}")`) as { name: string }[]
  const names = columns.map(({ name }) => `"${name}"`).join(', ')
  const insert = db.prepare(`INSERT INTO "${table}" (${names}) VALUES (${columns.map(() => '?').join(', ')})`)
  let count = 0n
  return (row, rename) => {
    count += 1n
    const values = columns.map(({ name: column }) => {
      const value = row[column]
      return typeof value === 'string' ? rename(value) : value
    })
    // what the platform numbered must stay apart
    if (table === 'Inbound') values[0] = String(BigInt(String(row.id)) + APART * count)
    if (table === 'Outbox') values[0] = outboxId(String(values[1]))
    insert.run(...values)
  }
}

/** One client a zone through the whole program, up to now. */
async function lived(days: number, zones: readonly string[]): Promise<Template> {
  const path = join(newFolder(), 'lived.db')
  const start = addDays(new Date().toISOString().slice(0, 10), -days)
  const source = `title: the one who is copied
practice: { zone: Europe/Lisbon, digest: "Sun 18:00", region: PT }
start: ${start}
days: ${days + 1}
clients:\n${zones.map((zone, n) => whoLives(zone, n, days)).join('\n')}\n`
  const script = loadScenario('town', source)
  await playScenario({ script, database: `file:${path}`, folder: tmpdir(), direct: true })
  const db = new SqliteDatabase(path)
  const all = new Map(TABLES.map((name) => [name, db.prepare(`SELECT * FROM "${name}"`).all() as Row[]]))
  db.close()
  const [practice] = all.get('Practice')!
  const of = (id: unknown): Map<string, Row[]> =>
    new Map([...all].map(([name, rows]) => [name, rows.filter((row) => isOf(name, row, id))]))
  const clients = all.get('Client')!.map(({ id, ref, user }) => {
    const rows = of(id)
    const direct = rows.get('Outbox')!.find(({ kind }) => kind === 'welcome')!.channel
    return { ...({ id, ref, user, direct } as Omit<Model, 'rows'>), rows }
  })
  const house = ['id', 'coachRole', 'coachChannel', 'alertChannel'].map((name) => String(practice![name]))
  return { path, house, common: of(null), clients }
}

const isOf = (table: string, row: Row, id: unknown): boolean =>
  table === 'Client' ? row.id === id : (row.clientId ?? null) === id

const whoLives = (zone: string, n: number, days: number): string => `  - ref: grebe${n}
    zone: ${zone}
    region: PT
    prompt: "${PROMPT}"
    reminder: "19:00"
    side: left
    screening: { onset: 2026-02-10, age: 41, baseline: { reach: calf, pain: 6 }, risks: [], known: [], signs: [], eases: extension, activities: { rowing: 7 } }
    plan: { sessions: 2, rungs: { extension: 1, glide: 1 } }
    answers: { comfort: yes, signs: none, side: same, settled: yes, barrier: time }
    days:
${Array.from({ length: days }, (_, day) => `      ${day + 1}: "${REPLIES[day % REPLIES.length]}"`).join('\n')}`

/** The last of the copies reads, names aside, as the one whom the engine led. @throws where it does not */
async function compare({ path, clients }: Template, copied: Town): Promise<void> {
  const n = copied.people.length - 1
  const model = clients[n % clients.length]!
  const read = async (file: string, user: string) => {
    const opened = await openStore(`file:${file}`)
    const files = await opened.store.transaction((tx) => tx.clientsOfUser(user))
    await opened.close()
    return files.map(({ practice: _, client: { id, practiceId: __, ref, ...of }, ...lists }) =>
      JSON.stringify({ of, lists }).replaceAll(id, 'ID').replaceAll(of.user, 'USER').replaceAll(ref, 'REF'),
    )
  }
  const practices = (text: string): string => text.replaceAll(/"practiceId":"\d+"|\d{19}\/due/g, 'PRACTICE')
  const [engine, copy] = [await read(path, model.user), await read(copied.path, copied.people[n]![0])]
  deepStrictEqual(copy.map(practices), engine.map(practices), 'a copied client is not what the engine writes')
}
