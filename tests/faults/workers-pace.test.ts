import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { ServiceProcess } from '../end-to-end/service-process.ts'
import { faultsIn, type House, openHouse } from './workers-house.ts'

const SERVER = process.env.EBBLINE_TEST_POSTGRES
if (!SERVER) console.warn('the one budget: skipped, EBBLINE_TEST_POSTGRES names no server')
const CLIENTS = 40
const PER_SECOND = 50
// What the platform allows until an answer counts as late.
const LATE_MS = 3_000
const HELD_S = 3
// What leaves in a second: so long the others may take to hear of it, and what is on the way arrives.
const ON_THE_WAY = PER_SECOND

describe.skipIf(!SERVER)(
  `the one budget${SERVER ? '' : ' (skipped: EBBLINE_TEST_POSTGRES names no server)'}`,
  () => {
    let house: House
    let workers: ServiceProcess[]
    let each = 0
    beforeAll(async () => {
      house = await openHouse(SERVER!, { clients: CLIENTS, perSecond: PER_SECOND })
      const leader = house.leader()
      await leader.logged('"ready"')
      workers = [house.worker(), house.worker()]
      await Promise.all(workers.map((one) => one.logged('"working"')))
    })
    afterAll(() => house.close())
    // what waits for somebody with an open sign is withdrawn: the others get all
    const others = () => house.people.slice(1)
    const sent = () => others().flatMap(({ id }) => house.got().get(id) ?? []).length
    const all = () => others().length * each
    const reached = () => expect.poll(sent, { timeout: 60_000, interval: 5 })
    const more = async (count: number): Promise<void> => {
      each += count
      await house.write(count, new Date(), each - count)
    }

    it('lets who needs help go first, though the turns of all processes are given away', async () => {
      await more(8)
      await reached().toBeGreaterThanOrEqual(20)
      const [heron] = house.people
      const isReply = ({ recipient, content }: House['posted'][number]): boolean =>
        recipient === heron!.id && content.includes('112')
      const since = performance.now()
      heron!.say("I can't pee since this morning")
      await expect.poll(() => house.posted.some(isReply), { timeout: 20_000, interval: 5 }).toBe(true)
      const ms = performance.now() - since
      console.info(`urgent reply after ${ms.toFixed(0)} ms, ${all() - sent()} messages waiting`)
      expect(ms).toBeLessThan(LATE_MS)
      expect(sent()).toBeLessThan(all())
      await reached().toBe(all())
    })

    it('obeys in every process what the platform refused one of them', async () => {
      const before = sent()
      await more(8)
      await reached().toBeGreaterThanOrEqual(before + 20)
      house.platform.fault({
        match: /^POST \/channels\/\d+\/messages$/,
        status: 429,
        headers: { 'x-ratelimit-global': 'true', 'retry-after': String(HELD_S) },
        body: { message: 'You are being rate limited.', retry_after: HELD_S, global: true },
      })
      const refused = () => house.platform.requests.filter(({ status }) => status === 429).length
      const already = refused()
      await expect.poll(refused, { timeout: 20_000, interval: 2 }).toBe(already + 1)
      const at = sent()
      await new Promise((resolve) => setTimeout(resolve, HELD_S * 1_000 - 300))
      console.info(`${sent() - at} messages more within ${HELD_S} s`)
      expect(sent() - at).toBeLessThanOrEqual(ON_THE_WAY)
      await reached().toBe(all())
      expect(faultsIn({ ...house, people: others() }, each)).toEqual([])
    })

    it('a worker told to stop in the middle of a send ends in time, and nothing is lost or sent twice', async () => {
      const before = sent()
      await more(4)
      const slow = /^POST \/channels\/\d+\/messages$/
      await reached().toBeGreaterThanOrEqual(before + 20)
      house.platform.fault({ match: slow, times: 40, delayMs: 6_000, afterApply: true })
      const ended = await Promise.all(workers.map((one) => one.stop()))
      expect(ended.map(({ code }) => code)).toEqual([0, 0])
      for (const { ms } of ended) expect(ms).toBeLessThan(LATE_MS + 3_000)
      await reached().toBe(all())
      await expect
        .poll(() => house.query(`SELECT "id" FROM "Outbox" WHERE "state" = 'waiting'`), { timeout: 60_000 })
        .toEqual([])
      expect(faultsIn({ ...house, people: others() }, each)).toEqual([])
      expect(house.platform.violations).toEqual([])
    }, 120_000)
  },
)
