/** What a verb of the command line reads from and writes to. */
export interface Io {
  readonly stdin: NodeJS.ReadableStream
  /** One line to standard output; a promise where the reader is slower, kept once it has caught up. */
  out(line: string): void | Promise<void>
  /** One line to standard error. */
  err(line: string): void
}
