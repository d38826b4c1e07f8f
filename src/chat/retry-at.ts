import { createHash } from 'node:crypto'
import type { OutboxRow } from '../engine/rows.ts'

// Short enough that a hiccup of the network is hardly noticed.
const FIRST_MS = 5_000
// Longer gaps would let a message wait long after the platform is back; shorter ones press on one that is down.
export const LONGEST_MS = 5 * 60_000
// Somebody may be waiting for help: a try every half minute for as long as it takes.
const LONGEST_URGENT_MS = 30_000

/** Urgent replies and alerts: they wait for nothing and nobody. */
export const isUrgent = (row: Pick<OutboxRow, 'priority'>): boolean => row.priority <= 1

/**
 * When a message that failed is tried again: 5 s after the first failure, then twice as long each time, at most
 * 5 min (urgent ones 30 s). Up to half of it is taken off by a hash of the row's id, so that many messages that
 * failed together do not come back together, and the same row always waits the same time.
 */
export function retryAt(row: Pick<OutboxRow, 'id' | 'attempts' | 'priority'>, now: Date): Date {
  const longest = isUrgent(row) ? LONGEST_URGENT_MS : LONGEST_MS
  const wait = Math.min(FIRST_MS * 2 ** row.attempts, longest)
  return new Date(now.getTime() + Math.round(wait * (1 - spread(row.id) / 2)))
}

/** A number in [0, 1) that depends on the id alone. */
function spread(id: string): number {
  return createHash('sha256').update(id).digest().readUInt32BE(0) / 2 ** 32
}
