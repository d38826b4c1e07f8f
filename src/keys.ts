import { readFileSync, statSync } from 'node:fs'
import { SettingsError } from './config.ts'
import { createSeal, KEY_BYTES, type Seal } from './seal.ts'

const HOW = 'make one with: (umask 077; openssl rand -base64 32 > ebbline.key)'
const FORM = 'a key is 32 bytes in base64 (44 characters) or hexadecimal (64)'

/**
 * The keys that close and open the words in the database, from the file that EBBLINE_KEY_FILE names (a key a line,
 * lines that begin with # left out), else from EBBLINE_KEY (commas between them); null where neither is set: words are kept as they are.
 * @throws SettingsError where the file cannot be read, is open to others, or holds no key; a key is never repeated
 */
export function readSeal({ keyFile, key }: { keyFile: string | null; key: string | null }): Seal | null {
  if (keyFile === null && key === null) return null
  const named = keyFile === null ? 'EBBLINE_KEY' : `The key file ${keyFile}`
  const given = keyFile === null ? String(key).split(',') : textOf(keyFile).split('\n')
  const lines = given.map((line) => line.trim()).filter((line) => line !== '' && !line.startsWith('#'))
  const [first, ...others] = lines.map((line, n) => bytesOf(line, n, named))
  if (first === undefined) throw new SettingsError(`${named} holds no key: ${FORM}; ${HOW}.`)
  return createSeal([first, ...others])
}

function bytesOf(line: string, n: number, named: string): Uint8Array {
  const bytes = /^[0-9a-f]{64}$/i.test(line)
    ? Buffer.from(line, 'hex')
    : /^[A-Za-z0-9+/]{43}=?$/.test(line)
      ? Buffer.from(line, 'base64')
      : Buffer.alloc(0)
  if (bytes.length === KEY_BYTES) return bytes
  throw new SettingsError(`${named}: key ${n + 1} cannot be read: ${FORM}; ${HOW}.`)
}

function textOf(path: string): string {
  try {
    if ((statSync(path).mode & 0o077) !== 0)
      throw new SettingsError(`The key file ${path} can be read by others: chmod 600 ${path}.`)
    return readFileSync(path, 'utf8')
  } catch (error) {
    if (error instanceof SettingsError) throw error
    const { code } = error as NodeJS.ErrnoException
    throw new SettingsError(
      `EBBLINE_KEY_FILE names ${path}, which cannot be read (${code}): check its name and whose it is.`,
    )
  }
}
