import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, afterEach, describe } from 'vitest'
import { type OpenStore, openStore } from '../../src/store/open.ts'
import { addressOn, administer } from './server.ts'

/** Address of a PostgreSQL server on which the tests may make databases of their own. */
export const POSTGRES = process.env.EBBLINE_TEST_POSTGRES
/** Why tests that need it are left out. */
export const SKIPPED = 'skipped: EBBLINE_TEST_POSTGRES names no server'

/** A place for stores that live as long as one test. */
export interface Bench {
  readonly kind: 'sqlite' | 'postgresql'
  /** Address of a new empty database. */
  address(): Promise<string>
  /** Opens a store (on a new database where no address is given) and closes it after the test. */
  open(url?: string): Promise<OpenStore>
}

/** Writes the tests once for both databases; PostgreSQL's are skipped, and say why, where there is no server. */
export function onBothDatabases(title: string, tests: (bench: Bench) => void): void {
  describe(`${title} (sqlite)`, () => tests(bench('sqlite', sqliteAddresses())))
  if (POSTGRES) {
    describe(`${title} (postgresql)`, () => tests(bench('postgresql', postgresAddresses(POSTGRES))))
    return
  }
  console.warn(`${title} on postgresql ${SKIPPED}`)
  describe.skip(`${title} (postgresql, ${SKIPPED})`, () => tests(bench('postgresql', sqliteAddresses())))
}

/** Writes tests that need new databases on a server; skipped, and say why, where there is none. */
export function onServers(title: string, tests: (address: () => Promise<string>) => void): void {
  if (POSTGRES) {
    describe(title, () => tests(postgresAddresses(POSTGRES)))
    return
  }
  console.warn(`${title} ${SKIPPED}`)
  describe.skip(`${title} (${SKIPPED})`, () => tests(sqliteAddresses()))
}

function bench(kind: Bench['kind'], address: () => Promise<string>): Bench {
  const stores: OpenStore[] = []
  afterEach(async () => {
    for (const store of stores.splice(0)) await store.close()
  })
  return {
    kind,
    address,
    async open(url) {
      const store = await openStore(url ?? (await address()))
      stores.push(store)
      return store
    },
  }
}

/** A new folder that is removed when the tests of this file are done. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'ebbline-store-'))
  afterAll(() => rmSync(folder, { recursive: true, force: true }))
  return folder
}

/** Gives addresses of new files, which are removed when the tests of this file are done. */
export function sqliteAddresses(): () => Promise<string> {
  const folder = temporaryFolder()
  let n = 0
  return () => Promise.resolve(`file:${join(folder, `${++n}.db`)}`)
}

/** Gives addresses of new databases on a server, which are dropped when the tests of this file are done. */
function postgresAddresses(server: string): () => Promise<string> {
  const names: string[] = []
  afterAll(async () => {
    for (const name of names) await administer(server, `DROP DATABASE IF EXISTS "${name}" WITH (FORCE)`)
  })
  return async () => {
    const name = `ebbline_test_${process.pid}_${Date.now()}_${names.length}`
    names.push(name)
    await administer(server, `CREATE DATABASE "${name}"`)
    return addressOn(server, name)
  }
}
