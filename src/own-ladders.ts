import { readFileSync } from 'node:fs'
import { SettingsError } from './config.ts'
import { type LadderFileError, type OwnLadder, readLadderFile } from './domain/ladder/ladder-file.ts'

/** The faults of a ladder file, one a line, with file and line in front. */
export const faultLines = (path: string, errors: readonly LadderFileError[]): string[] =>
  errors.map(({ line, where, message }) => `${path}:${line}: ${where}: ${message}`)

/**
 * The practice's own ladders from the file that EBBLINE_LADDERS names; none where it names none.
 * @throws SettingsError where the file cannot be read, or with a line for each fault of it
 */
export function readOwnLadders(path: string | null): readonly OwnLadder[] {
  if (path === null) return []
  const read = readLadderFile(textOf(path))
  if (read.ok) return read.ladders
  throw new SettingsError(
    [
      'EBBLINE_LADDERS names a ladder file with faults; mend them and start again:',
      ...faultLines(path, read.errors),
    ].join('\n'),
  )
}

function textOf(path: string): string {
  try {
    return readFileSync(path, 'utf8')
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException
    throw new SettingsError(
      `EBBLINE_LADDERS names ${path}, which cannot be read (${code}): check its name, or leave it out.`,
    )
  }
}
