import { readFileSync } from 'node:fs'
import { fileInUse } from '../engine/parts.ts'
import type { Stage } from '../engine/rows.ts'
import { replaceFile } from './files.ts'

/** What must be known of a person to answer an urgent sign while the store is away: no words, no values. */
export interface KnownClient {
  readonly client: {
    readonly id: string
    readonly user: string
    /** The alias, which the alert names. */
    readonly ref: string
    readonly stage: Stage
    readonly region: string | null
    readonly zone: string
    readonly language: string
  }
  readonly practice: {
    readonly id: string
    readonly zone: string
    readonly language: string
    readonly quote: boolean
    /** Where alerts go; null where the practice has no channel yet. */
    readonly channel: string | null
  }
  /** Platform id of whoever is called first. */
  readonly coach: string | null
  /** The private channel; null where the client was never reached. */
  readonly direct: string | null
}

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
