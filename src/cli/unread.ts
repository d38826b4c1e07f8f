/**
 * What to say of a file that the file system does not give ("file", "scenario").
 * @throws the error itself where it is none of the file system's
 */
export function unread(what: string, path: string, error: unknown): string {
  const { code } = error as NodeJS.ErrnoException
  if (code === undefined) throw error
  return `The ${what} ${path} cannot be read (${code}): check its name.`
}
