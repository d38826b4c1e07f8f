import type { OutboxRow } from '../engine/rows.ts'
import { isUrgent } from './retry-at.ts'

interface Hold {
  readonly seq: number
  readonly priority: number
  readonly until: Date
}

/** Whom a message is about and where it goes: there it must not overtake another. */
export const wayOf = ({ clientId, body: { address } }: OutboxRow): string =>
  `${clientId} > ${address.to === 'client' ? address.user : address.channel}`

/**
 * Keeps order: while a message waits for another try, what comes after it (written later and no more pressing) for
 * that client and place waits too. Urgent ones wait for nothing.
 */
export function createHolds() {
  const holds = new Map<string, Hold>()

  return {
    begin(row: OutboxRow, until: Date): void {
      const held = holds.get(wayOf(row))
      if (row.clientId === null || (held && held.seq < row.seq)) return
      holds.set(wayOf(row), { seq: row.seq, priority: row.priority, until })
    },
    end(row: OutboxRow): void {
      if (holds.get(wayOf(row))?.seq === row.seq) holds.delete(wayOf(row))
    },
    /** Until when the row must wait; null where it may go. */
    until(row: OutboxRow, now: Date): Date | null {
      const held = holds.get(wayOf(row))
      if (!held || isUrgent(row) || row.seq <= held.seq || row.priority < held.priority) return null
      if (held.until > now) return held.until
      holds.delete(wayOf(row))
      return null
    },
  }
}
