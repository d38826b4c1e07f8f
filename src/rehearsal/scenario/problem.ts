import type { z } from 'zod'
import type { Lined, Path, Problem } from './lines.ts'

/** The file cannot be played: every problem at once, `file:line: what; what is allowed`. */
export class ScenarioProblems extends Error {
  constructor(
    readonly file: string,
    readonly problems: readonly Problem[],
  ) {
    const sorted = [...problems].sort((a, b) => a.line - b.line)
    super(sorted.map(({ line, text }) => `${file}:${line}: ${text}`).join('\n'))
  }
}

/** Gathers what is wrong, by the place in the file. */
export class Findings {
  readonly problems: Problem[] = []

  constructor(readonly lined: Lined) {}

  add(path: Path, text: string, key?: string): void {
    this.problems.push({ line: this.lined.lineOf(path, key), text })
  }

  /** Reads a value by its schema; null where it is wrong, and why is kept. */
  read<T>(schema: z.ZodType<T>, value: unknown, path: Path): T | null {
    const result = schema.safeParse(value)
    if (result.success) return result.data
    for (const issue of result.error.issues) {
      const key = issue.code === 'unrecognized_keys' ? issue.keys[0] : undefined
      this.add([...path, ...issue.path], messageOf(issue), key)
    }
    return null
  }
}

// a key that is not allowed says why by itself
const messageOf = (issue: z.core.$ZodIssue): string =>
  issue.code === 'invalid_key' ? (issue.issues[0]?.message ?? issue.message) : issue.message
