import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import SqliteDatabase from 'better-sqlite3'
import { readAddress } from '../../../src/store/address.ts'
import { move } from '../../../src/store/move.ts'
import { addressOn, administer, connected } from '../../store/server.ts'
import { copyFiles, DATABASE, type Snapshot } from './snapshot.ts'

export interface StoredRow {
  readonly table: string
  readonly row: { readonly id?: string; readonly reason?: string | null }
}

/** What one bot under trial has for itself. */
export interface Home {
  readonly databaseUrl: string
  /** Holds the small files of the way without a store. */
  readonly folder: string
  /** All rows, of every table. */
  rows(): Promise<readonly StoredRow[]>
  remove(): Promise<void>
}

/** Gives homes in which all is as it was at a moment. */
export interface Homes {
  at(snapshot: Snapshot): Promise<Home>
  /** Removes what was kept to make them from. */
  remove(): Promise<void>
}

const newFolder = (): string => mkdtempSync(join(tmpdir(), 'ebbline-kill-'))

/** Each a copy of the files. */
export function homesOnFiles(): Homes {
  return {
    async at(snapshot) {
      const folder = newFolder()
      copyFiles(snapshot.folder, folder)
      const path = join(folder, DATABASE)
      return {
        ...{ databaseUrl: `file:${path}`, folder },
        rows: async () => rowsOfFile(path),
        remove: async () => rmSync(folder, { recursive: true }),
      }
    },
    remove: async () => {},
  }
}

/** Each a database of its own on a server: the file is moved there once, and copied from then on. */
export function homesOnServer(server: string): Homes {
  const moved = new Map<Snapshot, string>()
  const name = (n: string | number): string => `ebbline_kill_${process.pid}_${n}`
  let made = 0

  const movedOnce = async (snapshot: Snapshot): Promise<string> => {
    const before = moved.get(snapshot)
    if (before) return before
    const [template, folder] = [name(`from_${moved.size}`), newFolder()]
    moved.set(snapshot, template)
    await administer(server, `CREATE DATABASE "${template}"`)
    copyFiles(snapshot.folder, folder)
    const from = readAddress(`file:${join(folder, DATABASE)}`)
    const quietly = { nothingWaits: () => undefined, progress: () => undefined, stopped: () => false }
    await move(from, readAddress(addressOn(server, template)), { folder: join(folder, 'data'), ...quietly })
    rmSync(folder, { recursive: true })
    return template
  }

  return {
    async at(snapshot) {
      const template = await movedOnce(snapshot)
      made += 1
      const own = name(made)
      await administer(server, `CREATE DATABASE "${own}" TEMPLATE "${template}"`)
      const [databaseUrl, folder] = [addressOn(server, own), newFolder()]
      return {
        ...{ databaseUrl, folder },
        rows: () => rowsOfServer(databaseUrl),
        async remove() {
          await administer(server, `DROP DATABASE "${own}" WITH (FORCE)`)
          rmSync(folder, { recursive: true })
        },
      }
    },
    async remove() {
      for (const template of moved.values()) await administer(server, `DROP DATABASE "${template}"`)
    },
  }
}

export function rowsOfFile(path: string): readonly StoredRow[] {
  const database = new SqliteDatabase(path, { readonly: true })
  const tables = database
    .prepare("SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%'")
    .pluck()
    .all() as string[]
  const rows = tables.flatMap((table) =>
    (database.prepare(`SELECT * FROM "${table}"`).all() as StoredRow['row'][]).map((row) => ({ table, row })),
  )
  database.close()
  return rows
}

async function rowsOfServer(url: string): Promise<readonly StoredRow[]> {
  return connected(url, async (client) => {
    const tables = await client.query<{ name: string }>(
      `SELECT tablename AS name FROM pg_tables WHERE schemaname = 'public'`,
    )
    const rows: StoredRow[] = []
    for (const { name: table } of tables.rows)
      for (const row of (await client.query(`SELECT * FROM "${table}"`)).rows) rows.push({ table, row })
    return rows
  })
}
