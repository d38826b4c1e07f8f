import type { Io } from './io.ts'

/** What the words typed and the settings come to; null where they cannot be used, which was said with the help. */
export function orWrongUse<T>(read: () => T, io: Io, help: string): T | null {
  try {
    return read()
  } catch (error) {
    io.err(`${(error as Error).message}\n${help}`)
    return null
  }
}
