import type { OutboxStore } from '../engine/ports.ts'
import type { OutboxRow } from '../engine/rows.ts'
import type { SharedOutbox } from '../engine/several.ts'
import { wayOf } from './delivery-holds.ts'
import { within } from './in-flight.ts'
import { isUrgent } from './retry-at.ts'

// So many rows are claimed at a time.
const BATCH = 50
// In the lane for all nothing is sent during a claim: fewer of them, or it falls behind the pace the platform allows.
const BATCH_FOR_ALL = 100
// A healthy store takes some hundredths of a second.
const CLAIM_MS = 300
// What is no more pressing than an answer goes in the lane for all.
const ANSWER = 2
const LEAST_PRESSING = 4
// A claim holds two minutes, and a send may take a minute and a half (the platform's client tries four times, 15 s
// each, and waits for limits): what has not begun by then is claimed anew.
const BEGIN_WITHIN_MS = 30_000

export type Taken = ReturnType<typeof createTaken>

/** What one process has claimed and not settled: no row goes twice, and none before another of its client. */
export function createTaken(outbox: OutboxStore, now: () => Date) {
  const taken = new Map<string, { readonly row: OutboxRow; readonly since: number }>()
  // of each claim under way: what was given back since it began, which it may still show as waiting
  const underWay = new Set<Set<string>>()

  const claim = async (ask: () => Promise<OutboxRow[]>): Promise<OutboxRow[]> => {
    const since = new Set<string>()
    underWay.add(since)
    try {
      const rows = await ask()
      return rows.filter(({ id }) => !taken.has(id) && !since.has(id))
    } finally {
      underWay.delete(since)
    }
  }

  /** Where nothing can be written in time, urgent messages go unclaimed: twice is better than too late. */
  const rowsTo = async (leastPressing: number, most: number): Promise<OutboxRow[]> => {
    const claimed = outbox.claim(now(), most, leastPressing)
    claimed.catch(() => undefined)
    const rows = await within(claimed, CLAIM_MS, null).catch(() => null)
    if (rows) return rows
    const urgent = (await outbox.waiting(now(), most)).filter((row) => isUrgent(row) && !taken.has(row.id))
    return urgent.length > 0 ? urgent : claimed
  }

  /** Another of the same client, for the same place, goes first. */
  const isBehind = (row: OutboxRow): boolean =>
    row.clientId !== null &&
    [...taken.values()].some(
      ({ row: other }) =>
        other.seq < row.seq &&
        (other.priority === row.priority || (other.priority < row.priority && !isUrgent(row))) &&
        wayOf(other) === wayOf(row),
    )

  const take = (row: OutboxRow): void => void taken.set(row.id, { row, since: now().getTime() })

  return {
    /** The next rows in order. */
    async next(): Promise<OutboxRow[]> {
      const rows = (await claim(() => rowsTo(LEAST_PRESSING, BATCH_FOR_ALL))).filter((row) => !isBehind(row))
      for (const row of rows) take(row)
      return rows
    },
    /** The next rows of these lines, in order. */
    async nextOf(
      lines: readonly string[],
      { claimLines }: Pick<SharedOutbox, 'claimLines'>,
    ): Promise<OutboxRow[]> {
      const found = await claim(() => claimLines(lines, now(), BATCH))
      const rows = found.filter((row) => !isBehind(row))
      for (const row of rows) take(row)
      return rows
    },
    /** The next for which somebody waits and which `mayGo`. */
    async nextPressing(mayGo: (row: OutboxRow) => boolean): Promise<OutboxRow | null> {
      const row = (await claim(() => rowsTo(ANSWER, BATCH))).find((row) => mayGo(row) && !isBehind(row))
      if (row) take(row)
      return row ?? null
    },
    isStillOurs({ id }: OutboxRow): boolean {
      const since = taken.get(id)?.since
      return since !== undefined && now().getTime() - since < BEGIN_WITHIN_MS
    },
    giveBack(rows: readonly OutboxRow[]): void {
      for (const { id } of rows) {
        taken.delete(id)
        for (const since of underWay) since.add(id)
      }
    },
  }
}
