import type { ServiceProcess } from '../end-to-end/service-process.ts'
import { ownServer } from '../faults/own-postgresql.ts'
import { faultsIn, type House, openHouse } from '../faults/workers-house.ts'
import { type Bench, figureOf, type Measured, once, over } from './measure.ts'

const CLIENTS = 800
/** Messages for each client in one round of one case. */
const EACH = 2
const CASES = [1, 2, 4] as const
/** Each round starts seven processes and empties the outbox three times. */
const MOST_ROUNDS = 3
/** Far above what this machine sends: no turn is waited for. */
const PER_SECOND = 10_000
const NOT_SLOWER = 1
const START_MS = 120_000

/** What was sent so far, and how often. */
class Sending {
  private written = 0
  constructor(private readonly house: House) {}

  /** Seconds from the instant at which so many messages are due until all have arrived. */
  async all(workers: readonly ServiceProcess[], killOne = false): Promise<number> {
    await this.house.write(EACH, new Date(Date.now() + 86_400_000), this.written)
    this.written += EACH
    const already = this.house.posted.length
    await this.house.makeDue()
    const begun = performance.now()
    if (killOne) {
      await this.arrived(already + (CLIENTS * EACH) / 2)
      workers[0]!.kill()
    }
    await this.arrived(already + CLIENTS * EACH)
    return (performance.now() - begun) / 1000
  }

  faults = (): string[] => faultsIn(this.house, this.written)

  private async arrived(count: number): Promise<void> {
    while (this.house.posted.length < count) await new Promise((resolve) => setTimeout(resolve, 5))
  }
}

async function start(house: House, count: number): Promise<ServiceProcess[]> {
  const workers = Array.from({ length: count }, () => house.worker())
  await Promise.all(workers.map((one) => one.logged('"working"', START_MS)))
  return workers
}

async function measure(house: House, rounds: number): Promise<Measured> {
  const sending = new Sending(house)
  const rates = new Map<number, number[]>(CASES.map((count) => [count, []]))
  // the first round warms up
  for (let round = 0; round <= Math.min(rounds, MOST_ROUNDS); round += 1) {
    for (const count of CASES) {
      const workers = await start(house, count)
      const seconds = await sending.all(workers)
      if (round > 0) rates.get(count)!.push((CLIENTS * EACH) / seconds)
      await Promise.all(workers.map((one) => one.stop()))
    }
  }
  const workers = await start(house, 2)
  const killed = (CLIENTS * EACH) / (await sending.all(workers, true))
  const faults = sending.faults()
  const [one, ...more] = CASES.map((count) => ({ count, rate: rates.get(count)! }))
  const ratios = more.map(({ count, rate }) => {
    const ratio = over(rate, one!.rate)
    const goal = { goal: `>= ${NOT_SLOWER}`, met: ratio.median >= NOT_SLOWER }
    return [`${count} workers / one`, { ...ratio, ...goal }] as const
  })
  return {
    figures: {
      ...Object.fromEntries(
        [one!, ...more].map(({ count, rate }) => [
          `${count} worker${count === 1 ? '' : 's'}`,
          { ...figureOf(rate), unit: 'deliveries a second' },
        ]),
      ),
      '2, of which one is killed': { ...once(killed), unit: 'deliveries a second, one round' },
    },
    ratios: {
      ...Object.fromEntries(ratios),
      'lost, twice or out of order': { ...once(faults.length), goal: '0 clients', met: faults.length === 0 },
    },
  }
}

async function run(rounds: number): Promise<Measured> {
  const given = process.env.EBBLINE_TEST_POSTGRES
  const own = given ? null : ownServer()
  try {
    const house = await openHouse(given ?? own!.url, { clients: CLIENTS, perSecond: PER_SECOND })
    return await measure(house, rounds).finally(() => house.close())
  } finally {
    own?.remove()
  }
}

export const workers: Bench = {
  id: 'workers',
  what: '1, 2 and 4 processes that send from one PostgreSQL database, all on this machine, the limits of the platform aside',
  run,
}
