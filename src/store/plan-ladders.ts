import type { Database } from './database.ts'

/** How many clients under way have a ladder in their plan. */
export interface LadderInPlans {
  readonly ladder: string
  readonly clients: number
}

/** The ladders in the plans of all who are under way: those of which the latest change of rung has not taken them out. */
export async function laddersInPlans(database: Database): Promise<LadderInPlans[]> {
  const rows = await database.use(
    (db) => db.$queryRaw<{ ladder: string; clients: bigint | number }[]>`
      SELECT "r"."ladder" AS "ladder", COUNT(*) AS "clients"
      FROM "Rung" AS "r" JOIN "Client" AS "c" ON "c"."id" = "r"."clientId"
      WHERE "r"."to" > 0 AND "c"."stage" NOT IN ('left', 'discharged') AND "r"."id" = (
        SELECT "l"."id" FROM "Rung" AS "l"
        WHERE "l"."clientId" = "r"."clientId" AND "l"."ladder" = "r"."ladder"
        ORDER BY "l"."at" DESC, "l"."id" DESC LIMIT 1)
      GROUP BY "r"."ladder" ORDER BY "r"."ladder"`,
  )
  return rows.map(({ ladder, clients }) => ({ ladder, clients: Number(clients) }))
}
