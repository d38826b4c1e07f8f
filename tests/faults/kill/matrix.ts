import { randomOf } from '../../../src/domain/diaries/random.ts'
import { bundleChild } from './bundle.ts'
import type { KillEvent } from './events.ts'
import { homesOnFiles, homesOnServer } from './home.ts'
import { type Difference, difference, type Outcome } from './outcome.ts'
import { takeSnapshots } from './snapshot.ts'
import { createTrials, type KillAt, type Tried } from './trial.ts'

/** One kill: at which step of which event. */
export interface Cell {
  readonly event: KillEvent
  readonly at: KillAt
  /** The step with its side, such as "before insert Outbox"; the same step of several events has one name. */
  readonly name: string
}

export interface Row {
  event: string
  steps: number
  kills: number
  survived: number
  lost: number
  twice: number
}

export interface MatrixResult {
  readonly rows: readonly Row[]
  readonly failures: readonly { name: string; difference: Difference }[]
  /** Cells of the whole, and how many names they have. */
  readonly cells: number
  readonly names: number
}

// a request that is written is on its way, whether or not the process lives on: the platform's side counts then
const isRequest = (step: string): boolean => /^(GET|POST|PATCH|PUT|DELETE) /.test(step)
const plainName = (step: string): string => step.replace(/ \d+$/, '')

function cellsOf(event: KillEvent, plain: Tried): Cell[] {
  const atSteps = plain.steps.flatMap((step) =>
    (['before', 'after'] as const)
      .filter((when) => when === 'before' || !isRequest(step))
      .map((when) => ({ event, at: { step, when }, name: `${when} ${plainName(step)}` })),
  )
  const atPlatform = Array.from({ length: plain.stored }, (_, stored) => ({
    ...{ event, at: { stored } },
    name: 'after the platform has stored it, before it answers',
  }))
  return [...atSteps, ...atPlatform]
}

/** Every name once, at an event of the seed's choice, and more of them up to so many; null: all there are. */
export function draw(cells: readonly Cell[], most: number | null, seed: number): readonly Cell[] {
  if (most === null) return cells
  const random = randomOf(seed, 0)
  const drawn = cells
    .map((cell) => ({ cell, order: random.uniform() }))
    .sort((a, b) => a.order - b.order)
    .map(({ cell }) => cell)
  const first = drawn.filter(({ name }, n) => drawn.findIndex((other) => other.name === name) === n)
  return [...first, ...drawn.filter((cell) => !first.includes(cell))].slice(0, Math.max(most, first.length))
}

export interface MatrixParts {
  readonly events: readonly KillEvent[]
  readonly choose: (cells: readonly Cell[]) => readonly Cell[]
  /** Of the weekend in which the events come. */
  readonly days?: 1 | 2
  /** Address of a server for the databases; null: files. */
  readonly server: string | null
  readonly say?: (line: string) => void
}

/** Kills the bot at the chosen cells and compares what came of each with the run that was left alone. */
export async function runMatrix({
  events,
  choose,
  days,
  server,
  say = () => {},
}: MatrixParts): Promise<MatrixResult> {
  const bundle = await bundleChild()
  const snapshots = await takeSnapshots(bundle.path, days)
  const homes = server === null ? homesOnFiles() : homesOnServer(server)
  const trials = createTrials(bundle.path, homes)
  const rows = new Map<string, Row>()
  const plain = new Map<string, Outcome>()
  const failures: { name: string; difference: Difference }[] = []
  try {
    const cells: Cell[] = []
    for (const event of events) {
      const tried = await trials.trial(snapshots[event.from], event, [])
      plain.set(event.name, tried.outcome)
      const own = cellsOf(event, tried)
      cells.push(...own)
      rows.set(event.name, { event: event.name, steps: own.length, kills: 0, survived: 0, lost: 0, twice: 0 })
    }
    for (const { event, at, name } of choose(cells)) {
      const row = rows.get(event.name)!
      const tried = await trials.trial(snapshots[event.from], event, [at])
      if (tried.kills === 0) {
        say(`${event.name}, ${name} ${JSON.stringify(at)}: not reached`)
        continue
      }
      const found = difference(plain.get(event.name)!, tried.outcome)
      row.kills += 1
      if (!found) row.survived += 1
      row.lost += found?.lost.length ?? 0
      row.twice += found?.twice.length ?? 0
      if (found) failures.push({ name: `${event.name}, ${name} ${JSON.stringify(at)}`, difference: found })
      if (found) say(`${event.name}, ${name} ${JSON.stringify(at)}: ${JSON.stringify(found, null, 2)}`)
    }
    const names = new Set(cells.map(({ name }) => name)).size
    return { rows: [...rows.values()], failures, cells: cells.length, names }
  } finally {
    trials.close()
    await homes.remove()
    snapshots.remove()
    bundle.remove()
  }
}
