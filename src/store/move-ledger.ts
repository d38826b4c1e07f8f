import { appendLedger, ledgerProblem, readLedger, without } from './ledger.ts'
import { StoreProblem } from './problem.ts'

/** Where the list of erasures lies now. */
export interface MovedLedger {
  readonly path: string
  /** Lines of the old one that could not be read, and stayed behind. */
  readonly unreadable: number
}

/**
 * Adds to the list of one database what that of another holds, and can be done twice. An erasure that only the list
 * knows is made again by the bot's first start on the new database.
 * @throws StoreProblem where a list cannot be read or written
 */
export function moveLedger(from: string, to: string): MovedLedger {
  let path = from
  try {
    const { erasures, unreadable } = readLedger(from)
    path = to
    appendLedger(to, without(erasures, readLedger(to).erasures))
    return { path, unreadable }
  } catch (error) {
    throw new StoreProblem(ledgerProblem(error, path), { cause: error })
  }
}
