import { readFileSync } from 'node:fs'
import { fileInUse } from '../engine/parts.ts'
import type { KnownClient } from '../engine/ports.ts'
import { replaceFile } from './files.ts'

export interface KnownPeople {
  /** Nobody is known: nothing was ever in the store, or all of it has ended. */
  readonly isEmpty: boolean
  /** The file in use of a person; null for somebody who is not known. */
  find(user: string): KnownClient | null
  /** Takes in who is known now, and writes it down where that has changed. Rejects where it cannot be written. */
  replace(people: readonly KnownClient[]): Promise<void>
}

/** Who was known when this was last written; nobody where the file is missing or cannot be read. */
export function openKnown(path: string): KnownPeople {
  let people = new Map<string, KnownClient>()
  let written = ''
  try {
    written = readFileSync(path, 'utf8')
    people = byUser(JSON.parse(written) as KnownClient[])
  } catch {
    written = ''
  }
  return {
    get isEmpty() {
      return people.size === 0
    },
    find: (user) => people.get(user) ?? null,
    async replace(list) {
      people = byUser(list)
      const text = `${JSON.stringify([...people.values()])}\n`
      if (text === written) return
      await replaceFile(path, text)
      written = text
    },
  }
}

function byUser(list: readonly KnownClient[]): Map<string, KnownClient> {
  const files = new Map<string, KnownClient[]>()
  for (const one of list) files.set(one.client.user, [...(files.get(one.client.user) ?? []), one])
  return new Map([...files].map(([user, own]) => [user, fileInUse(own)!]))
}
