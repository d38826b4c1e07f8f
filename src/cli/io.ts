/** What a verb of the command line reads from and writes to. */
export interface Io {
  readonly stdin: NodeJS.ReadableStream
  /** One line to standard output. */
  out(line: string): void
  /** One line to standard error. */
  err(line: string): void
}
