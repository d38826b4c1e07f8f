import { addDays, type Day } from '../domain/day.ts'
import type { ClientFile } from '../engine/ports.ts'
import type { ClientRow, ConsentRow, CoverRow, PlanRow, PracticeRow, ScreeningRow } from '../engine/rows.ts'
import type { Db } from './database.ts'

/** Days of check-ins that a file holds, up to the latest. */
const CHECK_IN_DAYS = 100
// Counted back from the latest check-in, which lies at or before now, so that at least the last 60 days are there.
const ENDED_DAYS = 61
// A statement on SQLite takes fewer than 1,000 parameters here, and the longest condition six for each client.
const CLIENTS_AT_ONCE = 100
const LONG_AGO: Day = '1970-01-01'

/** How far a file goes back: what the engine looks at day by day, or to the beginning. */
export type Reach = 'recent' | 'whole'

/** What is found of a client: the row, with the rows of other tables by the names of the relations. */
type Found = ClientRow & {
  readonly practice: PracticeRow & { readonly covers: CoverRow[] }
  readonly consents: ConsentRow[]
  readonly screenings: ScreeningRow[]
  readonly plans: PlanRow[]
} & Omit<ClientFile, 'practice' | 'client' | 'consent' | 'screening' | 'plan' | 'covers'>

/** The files of some clients, in the order given. */
export async function loadFiles(
  db: Db,
  clients: readonly Pick<ClientRow, 'id'>[],
  reach: Reach = 'recent',
): Promise<ClientFile[]> {
  const files = new Map<string, ClientFile>()
  for (let from = 0; from < clients.length; from += CLIENTS_AT_ONCE) {
    const ids = clients.slice(from, from + CLIENTS_AT_ONCE).map(({ id }) => id)
    for (const found of await findAll(db, ids, reach)) files.set(found.id, fileOf(found))
  }
  return clients.flatMap(({ id }) => files.get(id) ?? [])
}

function fileOf(found: Found): ClientFile {
  const { practice: of, consents, screenings, plans, rungs, checkIns, signs, holds, ...more } = found
  const { flags, decisions, alerts, asked, dues, activities, questions, ...client } = more
  const { covers, ...practice } = of
  return {
    practice,
    client,
    consent: consents.at(-1) ?? null,
    screening: screenings.at(-1) ?? null,
    plan: plans.at(-1) ?? null,
    ...{
      rungs,
      checkIns,
      signs,
      holds,
      flags,
      decisions,
      alerts,
      asked,
      dues,
      activities,
      questions,
      covers,
    },
  }
}

/** In one query with all that belongs to them: each query of its own costs more than what it reads. */
async function findAll(db: Db, ids: readonly string[], reach: Reach): Promise<Found[]> {
  const latest = await latestDays(db, ids)
  const by = (...order: string[]) => [...order, 'id'].map((name) => ({ [name]: 'asc' }))
  const recent = (n: number, condition: (day: Day, from: Date) => object) =>
    reach === 'whole'
      ? {}
      : { where: { OR: ids.map((clientId) => ({ clientId, ...since(latest.get(clientId), n, condition) })) } }
  const include = {
    practice: { include: { covers: { orderBy: by('from') } } },
    consents: { orderBy: by('at') },
    screenings: { orderBy: by('startedAt') },
    plans: { orderBy: by('at') },
    rungs: { orderBy: by('at') },
    checkIns: { ...recent(CHECK_IN_DAYS, (day) => ({ day: { gt: day } })), orderBy: by('day') },
    signs: {
      ...recent(ENDED_DAYS, (day, from) => ({
        OR: [{ state: { in: ['asked', 'open'] } }, { day: { gte: day } }, { endedAt: { gte: from } }],
      })),
      orderBy: by('at'),
    },
    holds: {
      ...recent(ENDED_DAYS, (day, from) => ({
        OR: [{ endedAt: null }, { day: { gte: day } }, { endedAt: { gte: from } }],
      })),
      orderBy: by('at'),
    },
    flags: {
      ...recent(ENDED_DAYS, (day, from) => ({
        OR: [{ closedAt: null }, { day: { gte: day } }, { closedAt: { gte: from } }],
      })),
      orderBy: by('openedAt'),
    },
    decisions: { ...recent(ENDED_DAYS, (day) => ({ day: { gte: day } })), orderBy: by('at') },
    alerts: {
      ...recent(ENDED_DAYS, (_, from) => ({
        OR: [{ closedAt: null }, { openedAt: { gte: from } }, { closedAt: { gte: from } }],
      })),
      orderBy: by('openedAt'),
    },
    asked: { orderBy: by('at') },
    dues: { orderBy: by('at') },
    activities: { orderBy: by('at') },
    questions: {
      ...recent(ENDED_DAYS, (_, from) => ({ OR: [{ answeredAt: null }, { at: { gte: from } }] })),
      orderBy: by('at'),
    },
  }
  const where = { id: { in: [...ids] } }
  return (await db.client.findMany({ where, include } as object)) as unknown as Found[]
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
  await findAll(db, [''], 'recent')
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
