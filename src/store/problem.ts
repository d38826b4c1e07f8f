/** Something about the database that a keeper can mend: one sentence that says what is wrong and what to do. */
export class StoreProblem extends Error {
  constructor(message: string, options?: ErrorOptions) {
    super(message, options)
    this.name = 'StoreProblem'
  }
}

/** The code that a driver or Node put on an error ("ENOENT", "28P01"), or an empty text. */
export function codeOf(error: unknown): string {
  const code = (error as { code?: unknown } | null)?.code
  return typeof code === 'string' ? code : ''
}
