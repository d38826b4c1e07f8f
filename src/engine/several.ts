import type { DueStore, OutboxStore } from './ports.ts'
import type { DueRow, OutboxRow } from './rows.ts'

/** Messages that leave one after another: those about one client, or one that is about nobody. */
export interface Line {
  /** Id of the client, else of the message itself. */
  readonly key: string
  /** That of the most pressing that waits: 0..4. */
  readonly priority: number
}

/** The ledger of messages as several processes share it. */
export interface SharedOutbox extends OutboxStore {
  /**
   * Lines in which something may go that nobody has claimed, most pressing first. What somebody waits for leaves from
   * the process that heard them: it counts only once that did not do it in time.
   */
  linesWaiting(now: Date, most: number): Promise<Line[]>
  /** Claims what may go of these lines, as `claim` does. */
  claimLines(keys: readonly string[], now: Date, most: number): Promise<OutboxRow[]>
  /** Gives back claims before their time. */
  release(ids: readonly string[]): Promise<void>
  /** Ends the claims of processes of this machine that were killed. */
  freeTheDead(): Promise<void>
}

/** What is due, for whoever has been given only ids. */
export interface SharedDues extends DueStore {
  /** Those of these rows that are there and due by now. */
  dueAmong(ids: readonly string[], now: Date): Promise<DueRow[]>
}

/** The platform's limit over all requests, as all processes of a database share it. */
export interface SharedBudget {
  /** Counts a request. Gives the milliseconds until its turn, below zero where that is past. */
  count(): Promise<number>
  /** Somebody needs help: for a while more is kept free. */
  keepFree(): Promise<void>
  /** The platform has refused a request for this limit: nobody's turn comes for so long. */
  hold(ms: number): Promise<void>
  /** Milliseconds for which that still counts, below zero where it does not: turns given before it are void. */
  held(): Promise<number>
}
