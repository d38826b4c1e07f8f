import type SqliteDatabase from 'better-sqlite3'

type Driver = Pick<SqliteDatabase.Database, 'prepare'>
type Statement = SqliteDatabase.Statement<unknown[], unknown>

// A bot asks with some hundred texts; lists of other lengths are others.
const KEPT = 300

/**
 * Keeps a connection's statements ready: the adapter of the client prepares each anew, which takes as long as a small
 * one takes to run. Its connection is no part of its published type; a test holds that the statements go this way.
 */
export function keepPrepared(adapter: object): void {
  const { client } = adapter as { client: Driver }
  const prepare = client.prepare.bind(client) as (sql: string) => Statement
  const kept = new Map<string, Statement>()
  const ready = (sql: string): Statement => {
    const statement = kept.get(sql) ?? prepare(sql)
    // the least lately used stands first
    kept.delete(sql)
    kept.set(sql, statement)
    if (kept.size > KEPT) kept.delete(kept.keys().next().value!)
    return statement
  }
  // a statement takes its values at each run here: bound to them for good, it could not be kept
  const used = (statement: Statement, values: unknown[]) => ({
    reader: statement.reader,
    columns: () => statement.columns(),
    raw: () => ({ all: () => statement.raw().all(values) }),
    run: () => statement.run(values),
    bind: (given: unknown[]) => used(statement, given),
  })
  client.prepare = ((sql: string) => used(ready(sql), [])) as unknown as Driver['prepare']
}
