import type { Address } from './address.ts'
import { driverProblem } from './driver-problem.ts'
import { serverProblem } from './postgresql.ts'
import { codeOf, StoreProblem } from './problem.ts'

/** Which of the two databases, by the option that names it. */
export type Side = '--from' | '--to'

/**
 * Runs work on one of the two; where that database is what fails, the mend names its option.
 * @throws StoreProblem in one sentence with the mend
 */
export async function onSide<T>(side: Side, address: Address, work: () => Promise<T>): Promise<T> {
  try {
    return await work()
  } catch (error) {
    const problem = problemOf(error, address)
    if (problem === null) throw error
    throw new StoreProblem(problem.message.replaceAll('DATABASE_URL', side), { cause: problem.cause })
  }
}

/** Null: no failure of a database that a keeper could mend. */
function problemOf(error: unknown, address: Address): StoreProblem | null {
  if (error instanceof StoreProblem) return error
  if (address.kind === 'sqlite') return driverProblem(error, address.path)
  // a cut connection comes in many shapes, most of them without a code
  return error instanceof TypeError ? null : serverProblem({ code: serverCode(error) }, address.server)
}

/** The server's own code, which the client wraps; the client's ("P2010") would tell a keeper nothing. */
function serverCode(error: unknown): string {
  const { meta } = (error ?? {}) as { meta?: { driverAdapterError?: { cause?: { originalCode?: string } } } }
  const code = meta?.driverAdapterError?.cause?.originalCode ?? codeOf(error)
  return /^P\d{4}$/.test(code) ? '' : code
}
