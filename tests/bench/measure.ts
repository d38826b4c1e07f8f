/** A median over the rounds of one run, with the least and the most of them. */
export interface Figure {
  readonly median: number
  readonly least: number
  readonly most: number
}

/** Rounds before those that count: until then the engine compiles. */
const WARM_UP = 8

/** What one row of the benchmarks found. */
export interface Measured {
  /** By name: what was measured, in `unit`. */
  readonly figures: Readonly<Record<string, Figure & { readonly unit: string }>>
  /** By name: one figure over another of the same round, and what it is held against. */
  readonly ratios: Readonly<Record<string, Figure & { readonly goal: string; readonly met: boolean }>>
}

/** One row: a file of this folder, by its id. */
export interface Bench {
  readonly id: string
  readonly what: string
  /** @param rounds 3 at least */
  run(rounds: number): Measured | Promise<Measured>
}

export function figureOf(values: readonly number[]): Figure {
  const sorted = [...values].sort((a, b) => a - b)
  return { median: sorted[sorted.length >> 1]!, least: sorted[0]!, most: sorted.at(-1)! }
}

/** The value that this share of the others does not exceed. */
export const rank = (values: readonly number[], share: number): number =>
  [...values].sort((a, b) => a - b)[Math.max(0, Math.ceil(values.length * share) - 1)]!

/** A figure that was measured once. */
export const once = (value: number): Figure => ({ median: value, least: value, most: value })

/** Each value of one list over that of the same round in the other. */
export const over = (above: readonly number[], below: readonly number[]): Figure =>
  figureOf(above.map((value, round) => value / below[round]!))

/** Milliseconds of processor time that some work takes: other work on the machine does not count. */
export function processorTime(work: () => void): number {
  const began = process.cpuUsage()
  work()
  const { user, system } = process.cpuUsage(began)
  return (user + system) / 1000
}

/** The same for work that waits; nothing else may go on in this process meanwhile. */
export async function processorTimeOf(work: () => Promise<unknown>): Promise<number> {
  const began = process.cpuUsage()
  await work()
  const { user, system } = process.cpuUsage(began)
  return (user + system) / 1000
}

/**
 * Times cases in turn, round after round, so that a busy machine hits them alike.
 * @returns milliseconds of each case by name, one a round; the first rounds warm up and are left out
 */
export function inRounds<Name extends string>(
  rounds: number,
  cases: Readonly<Record<Name, () => void>>,
): Record<Name, number[]> {
  const names = Object.keys(cases) as Name[]
  const times = Object.fromEntries(names.map((name) => [name, []])) as unknown as Record<Name, number[]>
  for (let round = 1 - WARM_UP; round <= rounds; round += 1) {
    for (const name of names) {
      const ms = processorTime(cases[name])
      if (round > 0) times[name].push(ms)
    }
  }
  return times
}
