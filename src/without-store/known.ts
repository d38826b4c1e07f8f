import { readFileSync } from 'node:fs'
import { fileInUse } from '../engine/parts.ts'
import type { KnownClient } from '../engine/ports.ts'
import { isSealed, type Seal, SealProblem } from '../seal.ts'
import { replaceFile } from './files.ts'

/** What the file is sealed for. */
const PLACE = 'known'

export interface KnownPeople {
  /** Nobody is known: nothing was ever in the store, or all of it has ended. */
  readonly isEmpty: boolean
  /** The file in use of a person; null for somebody who is not known. */
  find(user: string): KnownClient | null
  /** Takes in who is known now, and writes it down where that has changed. Rejects where it cannot be written. */
  replace(people: readonly KnownClient[]): Promise<void>
}

/**
 * Who was known when this was last written; nobody where the file is missing or cannot be read.
 * @throws SealProblem where it is sealed with a key that is not given
 */
export function openKnown(path: string, seal: Seal | null = null): KnownPeople {
  let people = new Map<string, KnownClient>()
  let written = ''
  try {
    const kept = readFileSync(path, 'utf8')
    const text = opened(kept, seal, path)
    people = byUser(JSON.parse(text) as KnownClient[])
    // one that is plain, or sealed with an older key, is written anew
    written = sealedBy(kept) === (seal?.id ?? null) ? text : ''
  } catch (error) {
    if (error instanceof SealProblem) throw error
  }
  return {
    get isEmpty() {
      return people.size === 0
    },
    find: (user) => people.get(user) ?? null,
    async replace(list) {
      people = byUser(list)
      const text = JSON.stringify([...people.values()])
      if (text === written) return
      await replaceFile(path, `${seal === null ? text : seal.close(text, PLACE)}\n`)
      written = text
    },
  }
}

function opened(kept: string, seal: Seal | null, path: string): string {
  const line = kept.trimEnd()
  const text = seal === null ? line : seal.open(line, PLACE)
  if (isSealed(text))
    throw new SealProblem(
      `The list of clients in ${path} is sealed with a key that is not given: add it to the file that EBBLINE_KEY_FILE names.`,
    )
  return text
}

/** Id of the key that a text was sealed with; null for a plain one. */
const sealedBy = (kept: string): string | null =>
  isSealed(kept.trimEnd()) ? (kept.split('.')[1] ?? null) : null

function byUser(list: readonly KnownClient[]): Map<string, KnownClient> {
  const files = new Map<string, KnownClient[]>()
  for (const one of list) files.set(one.client.user, [...(files.get(one.client.user) ?? []), one])
  return new Map([...files].map(([user, own]) => [user, fileInUse(own)!]))
}
