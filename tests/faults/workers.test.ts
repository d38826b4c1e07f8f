import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { faultsIn, type House, openHouse } from './workers-house.ts'

const SERVER = process.env.EBBLINE_TEST_POSTGRES
if (!SERVER) console.warn('workers: skipped, EBBLINE_TEST_POSTGRES names no server')
const CLIENTS = 40
const EACH = 8
const ALL = CLIENTS * EACH
// What a killed process had claimed, and a message whose mark was cut off together with its claim, is taken up when the claim ends, after two minutes.
const MARKED_MS = 150_000
// What a restart of the server does to those who use it, on a server that others use as well.
const CUT_ALL = `SELECT pg_terminate_backend(pid) FROM pg_stat_activity
  WHERE datname = current_database() AND pid <> pg_backend_pid()`

describe.skipIf(!SERVER)(
  `workers${SERVER ? '' : ' (skipped: EBBLINE_TEST_POSTGRES names no server)'}`,
  () => {
    let house: House
    beforeAll(async () => {
      house = await openHouse(SERVER!, { clients: CLIENTS, perSecond: 100 })
    })
    afterAll(() => house.close())
    const sent = (timeout = 60_000) => expect.poll(() => house.posted.length, { timeout, interval: 5 })

    it('send each message once and in order, though one of them and the leader are killed and all lines are cut', async () => {
      const leader = house.leader()
      await leader.logged('"ready"')
      const next = house.leader()
      const [one, other] = [house.worker(), house.worker()]
      await Promise.all([next.logged('stand-by'), one.logged('"working"'), other.logged('"working"')])

      await house.write(EACH)
      await sent().toBeGreaterThan(ALL / 4)
      one.kill()
      await sent().toBeGreaterThan(ALL / 2)
      await house.query(CUT_ALL)
      await sent().toBeGreaterThan(ALL * 0.7)
      leader.kill()
      await sent(MARKED_MS).toBeGreaterThanOrEqual(ALL)
      await next.logged('"ready"')
      await expect
        .poll(() => house.query(`SELECT "id" FROM "Outbox" WHERE "state" <> 'sent'`), { timeout: MARKED_MS })
        .toEqual([])

      expect(faultsIn(house, EACH)).toEqual([])
      expect(house.platform.violations).toEqual([])
      expect(next.said() + other.said()).not.toContain('DeprecationWarning')
      expect((await other.stop()).code).toBe(0)
      expect((await next.stop()).code).toBe(0)
    }, 300_000)
  },
)
