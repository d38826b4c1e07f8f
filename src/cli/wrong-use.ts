import type { Io } from './io.ts'

/**
 * What the words typed and the settings come to; null where they cannot be used, which was said.
 * @param help said below what is wrong; null where the one sentence is enough
 */
export function orWrongUse<T>(read: () => T, io: Io, help: string | null): T | null {
  try {
    return read()
  } catch (error) {
    const { message } = error as Error
    io.err(help === null ? message : `${message}\n${help}`)
    return null
  }
}
