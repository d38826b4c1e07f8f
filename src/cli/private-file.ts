import { randomBytes } from 'node:crypto'
import { realpathSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { syncPath } from '../store/sync.ts'

/**
 * Writes health information to a file for its owner alone (mode 0600). It is written beside and put in place whole: a
 * file of that name that others may read is never written to, and stays as it was where this fails. What is no file (a
 * pipe, a device) is written to as it is.
 * @throws the error of the file system, with its code
 */
export function writePrivate(path: string, content: string | Uint8Array): void {
  const there = statSync(path, { throwIfNoEntry: false })
  if (there && !there.isFile()) return writeFileSync(path, content)
  // a link goes on pointing to where it points
  const place = there ? realpathSync(path) : path
  const fresh = `${place}.${randomBytes(4).toString('hex')}.new`
  try {
    writeFileSync(fresh, content, { mode: 0o600, flag: 'wx' })
    syncPath(fresh)
    renameSync(fresh, place)
  } catch (error) {
    rmSync(fresh, { force: true })
    throw error
  }
}
