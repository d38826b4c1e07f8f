import SqliteDatabase from 'better-sqlite3'
import { expect, it } from 'vitest'
import { migrateSqlite } from '../../src/store/migrate-sqlite.ts'
import { onBothDatabases, temporaryFolder } from './databases.ts'
import { at, ground, outcome, put, samples } from './samples.ts'

onBothDatabases('dues', (bench) => {
  it('come by instant, earliest first, up to the instant asked for', async () => {
    const { store, dues } = await bench.open()
    const due = (id: string, time: string) => put('due', { ...samples.due, id, at: at(time) })
    await store.transaction((tx) => tx.apply(ground('heron')))
    expect(await dues.nextDue()).toBeNull()
    await store.transaction((tx) =>
      tx.apply(
        outcome([
          due('c', '2026-03-08T12:00:00.001Z'),
          due('b', '2026-03-08T12:00:00Z'),
          due('a', '2026-03-08T12:00:00Z'),
          due('d', '2026-03-07T23:00:00Z'),
        ]),
      ),
    )
    const ids = async (most: number) =>
      (await dues.dueBy(at('2026-03-08T12:00:00Z'), most)).map((row) => row.id)
    expect(await ids(10)).toEqual(['d', 'a', 'b'])
    expect(await ids(1)).toEqual(['d'])
    expect(await dues.nextDue()).toStrictEqual(at('2026-03-07T23:00:00Z'))
    await store.transaction((tx) => tx.apply(outcome([{ drop: 'due', id: 'd' }])))
    expect(await ids(10)).toEqual(['a', 'b'])
  })
})

// EXPLAIN QUERY PLAN as documented at sqlite.org/eqp.html: SEARCH walks an index, SCAN reads the whole table.
it('the hot questions are answered from an index, not by reading the whole table', () => {
  const path = `${temporaryFolder()}/plans.db`
  migrateSqlite(path)
  const db = new SqliteDatabase(path)
  const plan = (sql: string): string =>
    (db.prepare(`EXPLAIN QUERY PLAN ${sql}`).all() as { detail: string }[])
      .map((row) => row.detail)
      .join('\n')
  expect(plan(`SELECT * FROM "Due" WHERE "at" <= '2026' ORDER BY "at", "id" LIMIT 10`)).toMatch(
    /SEARCH.*Due_at_id_idx/,
  )
  expect(plan(`SELECT * FROM "CheckIn" WHERE "clientId" = 'a' AND "day" > '2026' ORDER BY "day"`)).toMatch(
    /SEARCH.*CheckIn_clientId_day_key/,
  )
  expect(plan(`SELECT * FROM "Client" WHERE "user" = '1'`)).toMatch(/SEARCH.*Client_user_idx/)
  expect(
    plan(`SELECT * FROM "Outbox" WHERE "state" = 'waiting' ORDER BY "priority", "seq" LIMIT 10`),
  ).toMatch(/SEARCH.*Outbox_state_priority_seq_idx/)
  expect(plan(`SELECT max("seq") FROM "Outbox"`)).toMatch(/SEARCH.*Outbox_seq_idx/)
  db.close()
})
