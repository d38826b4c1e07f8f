/** What of an error may stand in a log: its kind, codes and place in the code, never its message or its values. */
export interface SafeError {
  readonly name: string
  readonly code?: string | number
  readonly status?: number
  readonly frames: readonly string[]
}

const FRAMES = 5

export function safeError(error: unknown): SafeError {
  if (!(error instanceof Error)) return { name: typeof error, frames: [] }
  const { code, status } = error as { code?: unknown; status?: unknown }
  return {
    name: error.name,
    ...(typeof code === 'string' || typeof code === 'number' ? { code } : {}),
    ...(typeof status === 'number' ? { status } : {}),
    frames: placesOf(error)
      .slice(0, FRAMES)
      .map((line) => line.trim()),
  }
}

/** A message of several lines may hold one that looks like a place: what somebody wrote, quoted by a driver. */
function placesOf({ stack = '', message }: Error): string[] {
  const after = message === '' ? stack : (stack.split(message).at(-1) ?? '')
  return after.split('\n').filter((line) => /^\s+at .*:\d+:\d+\)?$/.test(line))
}

/** The last line of a program that fails by a fault of its own: for standard error, without what the error quotes. */
export function lastLine(error: unknown): string {
  const { name, code, frames } = safeError(error)
  return [`Ebbline failed by a fault of its own: ${name}${code === undefined ? '' : ` ${code}`}`, ...frames]
    .join('\n  ')
    .concat('\n')
}

/** Whatever nobody caught ends the process with that line instead of the whole error. */
export function endOnFault(): void {
  process.on('uncaughtException', (error) => {
    process.stderr.write(lastLine(error))
    process.exit(1)
  })
}
