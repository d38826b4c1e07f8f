import { existsSync } from 'node:fs'
import { databaseNamed, readSettings, SettingsError } from '../config.ts'
import type { ClientFile, Tx } from '../engine/ports.ts'
import type { PracticeRow } from '../engine/rows.ts'
import { readSeal } from '../keys.ts'
import type { Seal } from '../seal.ts'
import { readAddress } from '../store/address.ts'
import { type OpenStore, openStore } from '../store/open.ts'
import { StoreProblem } from '../store/problem.ts'

/** Something about the words typed that the operator can mend, in one sentence. */
export class NotFound extends Error {}

/** @throws StoreProblem where there is no such file: a new one is never made by looking */
export function mustBeThere(url: string): void {
  const read = readAddress(url)
  if (read.kind === 'sqlite' && !existsSync(read.path))
    throw new StoreProblem(
      `There is no database at ${read.path}: name the bot's own with --database file:PATH.`,
    )
}

/**
 * Opens a database that is there already (`--database`, else `DATABASE_URL`), does the work and closes it.
 * @throws StoreProblem where there is none, or it cannot be used: a new one is never made by looking; where the keys
 * cannot be read
 */
export async function withStore<T>(
  address: string | undefined,
  work: (store: OpenStore) => Promise<T>,
): Promise<T> {
  const url = address ?? databaseNamed(process.env)
  mustBeThere(url)
  const store = await openStore(url, undefined, undefined, sealFor(url))
  try {
    return await work(store)
  } finally {
    await store.close()
  }
}

/** The keys that the environment names; what is wrong with them is told as what is wrong with the database. */
function sealFor(url: string): Seal | null {
  try {
    return readSeal(readSettings({ ...process.env, DATABASE_URL: url }))
  } catch (error) {
    throw error instanceof SettingsError ? new StoreProblem(error.message, { cause: error }) : error
  }
}

/**
 * The whole file of a client by alias, whatever stage they are at.
 * @param practice name of the practice, needed where several know the alias
 * @throws NotFound with the names to choose from
 */
export async function clientByAlias(tx: Tx, alias: string, practice?: string): Promise<ClientFile> {
  const practices = chosen(await tx.practices(), practice)
  const found: ClientFile[] = []
  for (const { id } of practices) {
    const file = await tx.clientByRef(id, alias)
    if (file) found.push(file)
  }
  const [first, second] = found
  if (!first) throw new NotFound(await unknown(tx, alias, practices))
  if (second)
    throw new NotFound(
      `Several practices know ${alias}: choose with --practice ${listed(found.map((file) => file.practice.name))}.`,
    )
  return (await tx.wholeClient(first.client.id)) ?? first
}

function chosen(all: readonly PracticeRow[], name: string | undefined): readonly PracticeRow[] {
  if (name === undefined) return all
  const some = all.filter((one) => one.name.toLowerCase() === name.toLowerCase())
  if (some.length > 0) return some
  throw new NotFound(`There is no practice ${name}: choose ${listed(all.map((one) => one.name))}.`)
}

async function unknown(tx: Tx, alias: string, practices: readonly PracticeRow[]): Promise<string> {
  const refs: string[] = []
  for (const { id } of practices) refs.push(...(await tx.refs(id)))
  return refs.length === 0
    ? `There is no client ${alias}: this database knows none yet.`
    : `There is no client ${alias}: choose ${listed(refs)}.`
}

/** Names to choose from are shown up to this many. */
const SHOWN = 12

function listed(names: readonly string[]): string {
  const some = [...new Set(names)].slice(0, SHOWN)
  return `${some.join(', ')}${names.length > SHOWN ? ' …' : ''}`
}
