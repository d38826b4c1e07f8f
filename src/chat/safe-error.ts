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
  const frames = (error.stack ?? '').split('\n').filter((line) => /^\s+at /.test(line))
  return {
    name: error.name,
    ...(typeof code === 'string' || typeof code === 'number' ? { code } : {}),
    ...(typeof status === 'number' ? { status } : {}),
    frames: frames.slice(0, FRAMES).map((line) => line.trim()),
  }
}
