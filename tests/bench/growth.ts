import { mkdirSync, writeFileSync } from 'node:fs'
import { commands } from '../../commands/index.ts'
import { cardOf } from '../../src/engine/coach/digest.ts'
import { createEngine } from '../../src/engine/engine.ts'
import { pngOf } from '../../src/picture/png.ts'
import { type OpenStore, openStore } from '../../src/store/open.ts'
import { textsFor } from '../../src/text/index.ts'
import { type Curve, growthPicture, WIDTH } from './growth-picture.ts'
import { type Bench, figureOf, type Measured, over, processorTimeOf } from './measure.ts'
import { MANY } from './tick.ts'
import { sharedTown, type Town, ZONES } from './town.ts'

const SIZES = [100, 1_000, 10_000, MANY] as const
/** Rounds that count at each size, after as many that warm up. */
const ROUNDS = 12
const TIMES = { tick: 40, reply: 6 } as const
/** What is found by an index grows with the depth of its tree alone. */
const GOAL = 3
const FOLDER = new URL('../../.github/pictures/', import.meta.url)

type Cost = 'tick' | 'reply' | 'digest'
const NAMES: Readonly<Record<Cost, string>> = {
  tick: 'a tick with nothing due',
  reply: 'a reply, read and written',
  digest: 'a digest’s words and figures, one client of a practice of forty',
}

/** Milliseconds of processor time by size, one a round. */
async function costsAt(clients: number): Promise<Record<Cost, number[]>> {
  const town = await sharedTown({ clients, days: 1, zones: ZONES })
  const store = await openStore(`file:${town.path}`)
  try {
    const costs: Record<Cost, number[]> = { tick: [], reply: [], digest: [] }
    const next = repliesOf(store, town)
    for (let round = -ROUNDS; round < ROUNDS; round += 1) {
      const found = {
        tick: (await processorTimeOf(() => ticks(store))) / TIMES.tick,
        reply: (await processorTimeOf(next)) / TIMES.reply,
        digest: await digestCost(store, town, round + ROUNDS),
      }
      if (round < 0) continue
      for (const cost of Object.keys(costs) as Cost[]) costs[cost].push(found[cost])
    }
    return costs
  } finally {
    await store.close()
  }
}

async function ticks({ dues }: OpenStore): Promise<void> {
  const before = new Date(0)
  for (let time = 0; time < TIMES.tick; time += 1) await dues.dueBy(before, 100)
}

/** Each time the next people of the town, spread over all of it, reply. */
function repliesOf({ store }: OpenStore, { people }: Town): () => Promise<void> {
  const engine = createEngine({ store, commands, textsFor })
  const step = Math.max(1, Math.floor(people.length / (2 * ROUNDS * TIMES.reply)))
  let n = 0
  return async () => {
    for (let time = 0; time < TIMES.reply; time += 1) {
      const [user] = people[(n * step) % people.length]!
      const actor = { user, guild: null, roles: [], keeper: false }
      const now = new Date()
      const event = { actor, at: now, edits: null, attached: 'none', kind: 'words' } as const
      await engine.handle({ ...event, id: `growth-${n}`, text: '2 knee 4' }, now)
      n += 1
    }
  }
}

async function digestCost({ store }: OpenStore, { houses }: Town, round: number): Promise<number> {
  const [practice] = houses[round % houses.length]!
  let cards = 0
  const ms = await processorTimeOf(async () => {
    const now = new Date()
    const files = await store.transaction((tx) => tx.roster(practice!))
    for (const file of files) cardOf(file, now, { textsFor }, now.toISOString())
    cards = files.length
  })
  return ms / cards
}

async function run(): Promise<Measured> {
  const all = new Map<number, Record<Cost, number[]>>()
  for (const clients of SIZES) all.set(clients, await costsAt(clients))
  const costs = Object.keys(NAMES) as Cost[]
  const at = (clients: number, cost: Cost): number[] => all.get(clients)![cost]
  const curves = costs.map(
    (cost): Curve => ({
      name: NAMES[cost],
      points: SIZES.map((clients) => ({ clients, ...figureOf(at(clients, cost)) })),
    }),
  )
  mkdirSync(FOLDER, { recursive: true })
  writeFileSync(new URL('growth.png', FOLDER), pngOf(growthPicture(curves), WIDTH * 2))
  return {
    figures: Object.fromEntries(
      costs.flatMap((cost) =>
        SIZES.map((clients) => [
          `${cost}, ${clients.toLocaleString('en')} clients`,
          { ...figureOf(at(clients, cost)), unit: `ms of processor, ${ROUNDS} rounds` },
        ]),
      ),
    ),
    ratios: Object.fromEntries(
      costs.map((cost) => {
        const grown = over(at(MANY, cost), at(SIZES[0], cost))
        return [`${cost}, 100,000 / 100 clients`, { ...grown, goal: `<= ${GOAL}`, met: grown.median <= GOAL }]
      }),
    ),
  }
}

export const growth: Bench = {
  id: 'growth',
  what: 'a tick, a reply and a digest among 100 to 100,000 clients; draws .github/pictures/growth.png',
  run,
}
