import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { isShort, LEFT_OUT } from '../long.ts'
import { type House, openHouse } from './workers-house.ts'

const SERVER = process.env.EBBLINE_TEST_POSTGRES
if (!SERVER) console.warn('who leads: skipped, EBBLINE_TEST_POSTGRES names no server')
// From the end of one to the next one's being ready.
const MOST_MS = 30_000
const POLL = { timeout: 15_000, interval: 50 }

// the locks of this database: other tests use the same server
const LOCKS = `SELECT pid FROM pg_locks WHERE locktype = 'advisory' AND objid = 37021947
  AND database = (SELECT oid FROM pg_database WHERE datname = current_database())`
const END_LEADERS = `SELECT pg_terminate_backend(pid) FROM pg_stat_activity
  WHERE application_name = 'ebbline leader' AND datname = current_database()`

const END_STAND_BY = `${END_LEADERS}
  AND pid NOT IN (${LOCKS} AND granted)`

describe.skipIf(!SERVER)(
  `who leads${SERVER ? '' : ' (skipped: EBBLINE_TEST_POSTGRES names no server)'}`,
  () => {
    let house: House
    beforeAll(async () => {
      house = await openHouse(SERVER!, { clients: 2, perSecond: 50 })
    })
    afterAll(() => house.close())

    it('lets a second process stand by, and take over when the first is killed, though its own line was cut', async () => {
      const first = house.leader()
      await first.logged('"ready"')
      const second = house.leader()
      await second.logged('stand-by')
      const { identified } = house.platform.sessions
      expect(await house.query(END_STAND_BY)).toHaveLength(1)
      first.kill()
      const since = performance.now()
      await second.logged('"ready"')
      const ms = performance.now() - since
      console.info(`a stand-by was ready ${(ms / 1000).toFixed(1)} s after the leader was killed`)
      expect(ms).toBeLessThan(MOST_MS)
      expect(house.platform.sessions.identified).toBe(identified + 1)
      expect((await second.stop()).code).toBe(0)
    })

    it('goes on leading where only its line to the database was cut, and ends where another has the lock', async () => {
      const leader = house.leader()
      await leader.logged('"ready"')
      await house.query(END_LEADERS)
      await expect.poll(() => house.query(LOCKS), POLL).toHaveLength(1)
      expect(house.platform.connected).toBe(true)

      // it waits in the line for the lock, and has it as soon as the leader is cut off
      const other = house.query('SELECT pg_advisory_lock(37021947), pg_sleep(5)')
      await expect.poll(() => house.query(`${LOCKS} AND NOT granted`), POLL).toHaveLength(1)
      await house.query(END_LEADERS)
      const ended = await leader.ended()
      expect(ended.code).toBe(1)
      expect(ended.err).toContain('Another process has the gateway now')
      expect(house.platform.connected).toBe(false)
      await other
    })

    it.skipIf(isShort)(`is taken over where its process stands still${LEFT_OUT}`, async () => {
      const first = house.leader()
      await first.logged('"ready"')
      const second = house.leader()
      await second.logged('stand-by')
      first.freeze(true)
      const since = performance.now()
      await second.logged('"ready"')
      const ms = performance.now() - since
      console.info(`a stand-by was ready ${(ms / 1000).toFixed(1)} s after the leader stood still`)
      expect(ms).toBeLessThan(MOST_MS)
      first.freeze(false)
      expect((await first.ended()).code).toBe(1)
      await second.stop()
    })
  },
)
