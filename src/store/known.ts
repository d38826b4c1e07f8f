import { standsIn } from '../domain/cover.ts'
import { dayAt } from '../domain/local-time.ts'
import type { KnownClient } from '../engine/ports.ts'
import type { Stage } from '../engine/rows.ts'
import type { Database, Db } from './database.ts'
import { tableOf } from './tables.ts'

/** Everybody on file, latest first; the coach is who is called first at this instant. */
export const knownPeople = (database: Database, now: Date): Promise<KnownClient[]> =>
  database.use(async (db) => {
    const practices = new Map((await tableOf(db, 'practice').findMany({})).map((row) => [row.id, row]))
    const covers = await tableOf(db, 'cover').findMany({ orderBy: { id: 'asc' } })
    const planned = await plannedBy(db)
    const directs = await directsOf(db)
    const clients = await db.client.findMany({ orderBy: [{ createdAt: 'desc' }, { id: 'desc' }] })
    return clients.map(({ id, user, ref, stage, region, zone, language, coach, practiceId }): KnownClient => {
      const practice = practices.get(practiceId)!
      const own = covers.filter((row) => row.practiceId === practiceId)
      return {
        client: { id, user, ref, stage: stage as Stage, region, zone, language },
        practice: {
          ...{ id: practiceId, zone: practice.zone, language: practice.language, quote: practice.quote },
          channel: practice.alertChannel ?? practice.coachChannel,
        },
        coach: idIn(standsIn(coach ?? planned.get(id) ?? null, own, dayAt(now, practice.zone))),
        direct: directs.get(id) ?? null,
      }
    })
  })

/** The platform's id within a mention. */
const idIn = (mention: string | null): string | null => /^<@(.+)>$/.exec(mention ?? '')?.[1] ?? null

/** Who made each client's latest plan. */
async function plannedBy(db: Db): Promise<Map<string, string>> {
  const plans = await db.plan.findMany({ select: { clientId: true, by: true }, orderBy: { at: 'asc' } })
  return new Map(plans.map(({ clientId, by }) => [clientId, by]))
}

/** Each client's private channel: where the welcome went. */
async function directsOf(db: Db): Promise<Map<string, string>> {
  const sent = await db.outbox.findMany({
    where: { kind: 'welcome', state: 'sent' },
    select: { clientId: true, channel: true },
  })
  return new Map(sent.flatMap(({ clientId, channel }) => (clientId && channel ? [[clientId, channel]] : [])))
}
