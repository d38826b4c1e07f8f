import { codeOf, type StoreProblem } from './problem.ts'
import { fileProblem } from './sqlite.ts'

/**
 * What is wrong with a SQLite file, and the mend, where that is what made a piece of work fail; null for any other
 * failure.
 */
export function driverProblem(error: unknown, path: string): StoreProblem | null {
  const code = driverCode(error)
  return code === '' ? null : fileProblem({ code }, path)
}

/** SQLite's own code, which the client wraps twice. */
function driverCode(error: unknown): string {
  const { meta } = (error ?? {}) as { meta?: { driverAdapterError?: { cause?: { originalCode?: string } } } }
  const code = meta?.driverAdapterError?.cause?.originalCode ?? codeOf(error)
  return code.startsWith('SQLITE_') ? code : ''
}
