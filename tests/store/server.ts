import pg from 'pg'

/** Works with one connection of its own to a PostgreSQL database. */
export async function connected<T>(url: string, work: (client: pg.Client) => Promise<T>): Promise<T> {
  const client = new pg.Client({ connectionString: url })
  await client.connect()
  try {
    return await work(client)
  } finally {
    await client.end()
  }
}

/** Runs one statement, which may make or drop a database. */
export const administer = <Row extends pg.QueryResultRow>(
  url: string,
  statement: string,
): Promise<pg.QueryResult<Row>> => connected(url, (client) => client.query<Row>(statement))

/** Address of another database on the same server. */
export function addressOn(server: string, name: string): string {
  const url = new URL(server)
  url.pathname = `/${name}`
  return url.href
}
