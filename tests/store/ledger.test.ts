import { appendFileSync, existsSync, mkdirSync, readFileSync, rmSync, statSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { appendLedger, erasureOf, isOf, readLedger } from '../../src/store/ledger.ts'
import { openStore } from '../../src/store/open.ts'
import { onBothDatabases, temporaryFolder } from './databases.ts'
import { at, client, ground, practice } from './samples.ts'

const folder = temporaryFolder()
let n = 0
const fresh = (): string => join(folder, `${++n}.jsonl`)
const ERASED = at('2026-03-20T12:00:00Z')

describe('an erasure as it is remembered', () => {
  it('is of its own client alone, tells nothing of the id, and is another each time', () => {
    fc.assert(
      fc.property(fc.string({ minLength: 4 }), fc.string(), (id, other) => {
        const erasure = erasureOf(id, ERASED)
        expect(isOf(erasure, id)).toBe(true)
        expect(isOf(erasure, other)).toBe(other === id)
        expect(erasureOf(id, ERASED).hash).not.toBe(erasure.hash)
      }),
    )
    expect(JSON.stringify(erasureOf('c:heron', ERASED))).not.toContain('heron')
  })
})

describe('the ledger', () => {
  it('is a file for its owner alone, a line an erasure, read as it was written', () => {
    const path = join(folder, 'made', 'here.jsonl')
    const [one, two] = [erasureOf('c:heron', ERASED), erasureOf('c:wren', ERASED)]
    appendLedger(path, [one])
    appendLedger(path, [two])
    expect(statSync(path).mode & 0o777).toBe(0o600)
    expect(readFileSync(path, 'utf8').split('\n')).toHaveLength(3)
    expect(readLedger(path)).toEqual({ isThere: true, erasures: [one, two], unreadable: 0 })
  })

  it('passes over a line that was cut off, and loses none after it', () => {
    const path = fresh()
    const [one, two] = [erasureOf('c:heron', ERASED), erasureOf('c:wren', ERASED)]
    appendLedger(path, [one])
    appendFileSync(path, '{"hash":"00')
    appendLedger(path, [two])
    expect(readLedger(path)).toEqual({ isThere: true, erasures: [one, two], unreadable: 1 })
  })

  it('that is not there holds nothing, and says so', () => {
    expect(readLedger(fresh())).toEqual({ isThere: false, erasures: [], unreadable: 0 })
  })
})

onBothDatabases('the erased', (bench) => {
  const clientsIn = async (url: string, ledger: string): Promise<string[]> => {
    const opened = await openStore(url, ledger)
    const refs = await opened.store.transaction((tx) => tx.refs(practice.id))
    await opened.close()
    return refs
  }
  const filled = async (): Promise<string> => {
    const url = await bench.address()
    const opened = await openStore(url, null)
    await opened.store.transaction((tx) => tx.apply(ground('heron', 'dipper')))
    await opened.close()
    return url
  }

  it('stay erased where an older copy of the database is put in its place', async () => {
    const [url, older, ledger] = [await filled(), await filled(), fresh()]
    const opened = await openStore(url, ledger)
    await opened.store.transaction((tx) => tx.erase('c:heron', ERASED))
    await opened.close()
    expect(readLedger(ledger).erasures).toMatchObject([{ at: ERASED.toISOString() }])

    const again = await openStore(older, ledger)
    expect(again.erasures).toEqual({ again: 1, wasThere: true, unreadable: 0, problem: null })
    expect(await again.store.transaction((tx) => tx.client('c:heron'))).toBeNull()
    await again.close()
    expect(await clientsIn(older, ledger)).toEqual(['dipper'])
    expect(readLedger(ledger).erasures).toHaveLength(1)
  })

  it('may be invited again: a new record is not the old one', async () => {
    const [url, ledger] = [await filled(), fresh()]
    const opened = await openStore(url, ledger)
    await opened.store.transaction((tx) => tx.erase('c:heron', ERASED))
    const second = client('heron', { id: 'c:second' })
    await opened.store.transaction((tx) =>
      tx.apply({ changes: [{ put: 'client', row: second }], postings: [] }),
    )
    await opened.close()
    expect(await clientsIn(url, ledger)).toEqual(['dipper', 'heron'])
  })

  it('are in the database itself, so that a lost ledger is written anew', async () => {
    const [url, ledger] = [await filled(), fresh()]
    const opened = await openStore(url, ledger)
    await opened.store.transaction((tx) => tx.erase('c:heron', ERASED))
    await opened.close()
    const lines = readFileSync(ledger, 'utf8')
    rmSync(ledger)
    expect(await clientsIn(url, ledger)).toEqual(['dipper'])
    expect(readFileSync(ledger, 'utf8')).toBe(lines)
  })

  it('are erased though the ledger cannot be written, which is said and made good later', async () => {
    const [url, ledger] = [await filled(), fresh()]
    // a folder in its place fails for every user
    mkdirSync(ledger)
    const opened = await openStore(url, ledger)
    expect(opened.erasures?.problem).toMatch(/list of erasures .*EISDIR.*give this user access/)
    await opened.store.transaction((tx) => tx.erase('c:heron', ERASED))
    expect(await opened.store.transaction((tx) => tx.client('c:heron'))).toBeNull()
    await opened.close()
    rmSync(ledger, { recursive: true })
    await clientsIn(url, ledger)
    expect(readLedger(ledger).erasures).toHaveLength(1)
  })

  it('leave no line where the erasure was undone', async () => {
    const [url, ledger] = [await filled(), fresh()]
    const opened = await openStore(url, ledger)
    const undone = opened.store.transaction(async (tx) => {
      await tx.erase('c:heron', ERASED)
      throw new Error('undone')
    })
    await expect(undone).rejects.toThrow('undone')
    await opened.close()
    expect(readLedger(ledger).erasures).toEqual([])
    expect(await clientsIn(url, ledger)).toEqual(['dipper', 'heron'])
  })
})

it('a store without a ledger makes none', async () => {
  const path = join(folder, 'none.db')
  await (await openStore(`file:${path}`, null)).close()
  expect(existsSync(`${path}-erased.jsonl`)).toBe(false)
  await (await openStore(`file:${path}`)).close()
  expect(existsSync(`${path}-erased.jsonl`)).toBe(true)
})
