import { addDays, type Day } from '../domain/day.ts'
import type { ClientFile } from '../engine/ports.ts'
import type { ClientRow, CoverRow, PracticeRow } from '../engine/rows.ts'
import type { Db } from './database.ts'
import { type StoredRows, type StoredTable, tableOf } from './tables.ts'

/** Days of check-ins that a file holds, up to the latest. */
const CHECK_IN_DAYS = 100
// Counted back from the latest check-in, which lies at or before now, so that at least the last 60 days are there.
const ENDED_DAYS = 61
// A statement on SQLite takes fewer than 1,000 parameters here, and the longest condition five for each client.
const CLIENTS_AT_ONCE = 100
const LONG_AGO: Day = '1970-01-01'

/** Tables of which a file holds the rows of one client, in order of time. */
type Listed = Exclude<
  StoredTable,
  'practice' | 'client' | 'alertStep' | 'version' | 'inbound' | 'note' | 'outbox' | 'cover'
>
type Lists = { [T in Listed]: Map<string, StoredRows[T][]> }

/** How far a file goes back: what the engine looks at day by day, or to the beginning. */
export type Reach = 'recent' | 'whole'

/** The files of some clients of one practice, in the order given. */
export async function loadFiles(
  db: Db,
  practice: PracticeRow,
  clients: readonly ClientRow[],
  reach: Reach = 'recent',
): Promise<ClientFile[]> {
  const files: ClientFile[] = []
  const covers = await tableOf(db, 'cover').findMany({
    where: { practiceId: practice.id },
    orderBy: [{ from: 'asc' }, { id: 'asc' }],
  })
  for (let from = 0; from < clients.length; from += CLIENTS_AT_ONCE) {
    const some = clients.slice(from, from + CLIENTS_AT_ONCE)
    const lists = await loadLists(
      db,
      some.map((client) => client.id),
      reach,
    )
    files.push(...some.map((client) => fileOf(practice, client, lists, covers)))
  }
  return files
}

function fileOf(
  practice: PracticeRow,
  client: ClientRow,
  lists: Lists,
  covers: readonly CoverRow[],
): ClientFile {
  const list = <T extends Listed>(table: T): StoredRows[T][] => lists[table].get(client.id) ?? []
  return {
    practice,
    client,
    consent: list('consent').at(-1) ?? null,
    screening: list('screening').at(-1) ?? null,
    plan: list('plan').at(-1) ?? null,
    rungs: list('rung'),
    checkIns: list('checkIn'),
    signs: list('sign'),
    holds: list('hold'),
    flags: list('flag'),
    decisions: list('decision'),
    alerts: list('alert'),
    asked: list('asked'),
    dues: list('due'),
    activities: list('activity'),
    questions: list('question'),
    covers,
  }
}

async function loadLists(db: Db, ids: readonly string[], reach: Reach = 'recent'): Promise<Lists> {
  const latest = await latestDays(db, ids)
  const all = { clientId: { in: ids } }
  const recent = (n: number, condition: (day: Day, from: Date) => object): object =>
    reach === 'whole'
      ? all
      : { OR: ids.map((clientId) => ({ clientId, ...since(latest.get(clientId), n, condition) })) }

  const read = async <T extends Listed>(table: T, where: object, order: readonly string[]) =>
    byClient(
      await tableOf(db, table).findMany({
        where,
        orderBy: [...order, 'id'].map((name) => ({ [name]: 'asc' })),
      }),
    )

  return {
    consent: await read('consent', all, ['at']),
    screening: await read('screening', all, ['startedAt']),
    plan: await read('plan', all, ['at']),
    rung: await read('rung', all, ['at']),
    checkIn: await read(
      'checkIn',
      recent(CHECK_IN_DAYS, (day) => ({ day: { gt: day } })),
      ['day'],
    ),
    sign: await read(
      'sign',
      recent(ENDED_DAYS, (day, from) => ({
        OR: [{ state: { in: ['asked', 'open'] } }, { day: { gte: day } }, { endedAt: { gte: from } }],
      })),
      ['at'],
    ),
    hold: await read(
      'hold',
      recent(ENDED_DAYS, (day, from) => ({
        OR: [{ endedAt: null }, { day: { gte: day } }, { endedAt: { gte: from } }],
      })),
      ['at'],
    ),
    flag: await read(
      'flag',
      recent(ENDED_DAYS, (day, from) => ({
        OR: [{ closedAt: null }, { day: { gte: day } }, { closedAt: { gte: from } }],
      })),
      ['openedAt'],
    ),
    decision: await read(
      'decision',
      recent(ENDED_DAYS, (day) => ({ day: { gte: day } })),
      ['at'],
    ),
    alert: await read(
      'alert',
      recent(ENDED_DAYS, (_, from) => ({
        OR: [{ closedAt: null }, { openedAt: { gte: from } }, { closedAt: { gte: from } }],
      })),
      ['openedAt'],
    ),
    asked: await read('asked', all, ['at']),
    due: await read('due', all, ['at']),
    activity: await read('activity', all, ['at']),
    question: await read(
      'question',
      recent(ENDED_DAYS, (_, from) => ({ OR: [{ answeredAt: null }, { at: { gte: from } }] })),
      ['at'],
    ),
  }
}

/** The condition n days back from the latest check-in; who never checked in has no old rows to leave out. */
function since(latest: Day | undefined, n: number, condition: (day: Day, from: Date) => object): object {
  const day = addDays(latest ?? LONG_AGO, -n)
  return condition(day, new Date(`${day}T00:00:00Z`))
}

/**
 * Runs the reading queries once for nobody: the client compiles each when it is first used (a quarter of a second
 * in all), and the first reply after a start should not wait for that.
 */
export async function warmUp(db: Db): Promise<void> {
  await loadLists(db, [''])
}

async function latestDays(db: Db, ids: readonly string[]): Promise<Map<string, Day>> {
  const groups = await db.checkIn.groupBy({
    by: ['clientId'],
    where: { clientId: { in: [...ids] } },
    _max: { day: true },
  })
  return new Map(
    groups.flatMap((group) => (group._max.day === null ? [] : [[group.clientId, group._max.day]])),
  )
}

function byClient<Row extends { clientId: string | null }>(rows: readonly Row[]): Map<string, Row[]> {
  const map = new Map<string, Row[]>()
  for (const row of rows) {
    if (row.clientId === null) continue
    const list = map.get(row.clientId)
    if (list) list.push(row)
    else map.set(row.clientId, [row])
  }
  return map
}
