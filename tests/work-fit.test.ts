import pg from 'pg'
import { expect, it } from 'vitest'
import { readAddress } from '../src/store/address.ts'
import { openStore } from '../src/store/open.ts'
import { mustFit, noLongerFits } from '../src/work-fit.ts'
import { onServers } from './store/databases.ts'

const shifted = (seconds: number) => () => new Date(Date.now() + seconds * 1_000)

onServers('whether a worker fits the others', (address) => {
  const opened = async () => {
    const url = await address()
    await (await openStore(url, null)).close()
    const server = readAddress(url)
    if (server.kind === 'sqlite') throw new Error('no server')
    return server
  }

  it('is asked of its clock, which may be a minute off', async () => {
    const server = await opened()
    await mustFit(server, shifted(0))
    await mustFit(server, shifted(-40))
    await expect(mustFit(server, shifted(600))).rejects.toThrow(/600 s ahead of that of PostgreSQL.*NTP/)
    await expect(mustFit(server, shifted(-7_200))).rejects.toThrow('7200 s behind')
    expect((await noLongerFits(server, shifted(600)))?.message).toContain('ahead of')
    expect(await noLongerFits(server, shifted(0))).toBeNull()
  })

  it('is asked of its version: the tables of an older or a newer one are refused', async () => {
    const server = await opened()
    const client = new pg.Client({ connectionString: server.url })
    await client.connect()
    const newer = `INSERT INTO "_prisma_migrations" ("id", "checksum", "finished_at", "migration_name", "started_at")
      VALUES ('x', 'x', now(), '99990101000000_later', now())`
    await client.query(newer)
    expect((await noLongerFits(server, shifted(0)))?.message).toContain('which this version does not know')
    await client.query(`DELETE FROM "_prisma_migrations" WHERE "id" = 'x'`)
    expect(await noLongerFits(server, shifted(0))).toBeNull()
    await client.query(`DELETE FROM "_prisma_migrations" WHERE "migration_name" =
      (SELECT max("migration_name") FROM "_prisma_migrations")`)
    await expect(mustFit(server, shifted(0))).rejects.toThrow('start the bot first')
    await client.end()
  })

  it('goes on where the server cannot be asked for now', async () => {
    const server = await opened()
    const away = { ...server, url: Object.assign(new URL(server.url), { port: '1' }).href }
    await expect(mustFit(away, shifted(0))).rejects.toThrow('cannot be reached')
    expect(await noLongerFits(away, shifted(0))).toBeNull()
  })
})
