import { readFileSync } from 'node:fs'
import { fileInUse } from '../engine/parts.ts'
import type { KnownClient } from '../engine/ports.ts'
import { isSealed, type Seal, SealProblem } from '../seal.ts'
import { extendFile, replaceFile } from './files.ts'

/** What the file is sealed for. */
const PLACE = 'known'

/**
 * Who is known, in memory and in a file for the next start: a list (JSON) a line, of which the later counts for whoever
 * is in several. What has changed goes on behind it.
 */
export interface KnownPeople {
  /** Nobody is known: nothing was ever in the store, or all of it has ended. */
  readonly isEmpty: boolean
  /** The file in use of a person; null for somebody who is not known. */
  find(user: string): KnownClient | null
  /** Takes in who is known now, all files of one person in one page. Rejects where it cannot be written down. */
  replace(pages: Pages): Promise<void>
  /** Takes in these people anew; others stay as they are. Rejects where it cannot be written down. */
  update(pages: Pages): Promise<void>
}
type Pages = AsyncIterable<readonly KnownClient[]> | Iterable<readonly KnownClient[]>

// So many are made a line of the file at a time: others get their turn between.
const A_LINE = 200

/**
 * Who was known when this was last written; nobody where the file is missing or cannot be read.
 * @throws SealProblem where it is sealed with a key that is not given
 */
export function openKnown(path: string, seal: Seal | null = null): KnownPeople {
  let people = new Map<string, KnownClient>()
  for (const line of linesOf(path))
    for (const one of listIn(line, seal, path)) people.set(one.client.user, one)
  const lineOf = (list: readonly KnownClient[]): string => {
    const text = JSON.stringify(list)
    return `${seal === null ? text : seal.close(text, PLACE)}\n`
  }

  return {
    get isEmpty() {
      return people.size === 0
    },
    find: (user) => people.get(user) ?? null,
    async replace(pages) {
      const known = new Map<string, KnownClient>()
      for await (const page of pages) for (const one of inUse(page)) known.set(one.client.user, one)
      people = known
      await replaceFile(path, inLines([...known.values()], lineOf))
    },
    async update(pages) {
      for await (const page of pages) {
        const list = inUse(page)
        for (const one of list) people.set(one.client.user, one)
        // a line that a power cut has left unfinished ends before it
        await extendFile(path, `\n${lineOf(list)}`)
      }
    },
  }
}

function* inLines(
  list: readonly KnownClient[],
  lineOf: (list: readonly KnownClient[]) => string,
): Generator<string> {
  for (let from = 0; from < list.length; from += A_LINE) yield lineOf(list.slice(from, from + A_LINE))
}

function linesOf(path: string): string[] {
  try {
    return readFileSync(path, 'utf8')
      .split('\n')
      .filter((line) => line !== '')
  } catch {
    return []
  }
}

/** Nobody where the line is damaged. */
function listIn(line: string, seal: Seal | null, path: string): KnownClient[] {
  try {
    return JSON.parse(opened(line, seal, path)) as KnownClient[]
  } catch (error) {
    if (error instanceof SealProblem) throw error
    return []
  }
}

function opened(line: string, seal: Seal | null, path: string): string {
  const text = seal === null ? line : seal.open(line, PLACE)
  if (isSealed(text))
    throw new SealProblem(
      `The list of clients in ${path} is sealed with a key that is not given: add it to the file that EBBLINE_KEY_FILE names.`,
    )
  return text
}

/** Of several files of one person the one in use. */
function inUse(page: readonly KnownClient[]): KnownClient[] {
  const files = new Map<string, KnownClient[]>()
  for (const one of page) files.set(one.client.user, [...(files.get(one.client.user) ?? []), one])
  return [...files.values()].map((own) => fileInUse(own)!)
}
