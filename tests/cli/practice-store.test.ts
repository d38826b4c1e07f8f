import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { withStore } from '../../src/cli/practice-store.ts'
import { openStore } from '../../src/store/open.ts'

const folder = mkdtempSync(join(tmpdir(), 'ebbline-named-'))
// a database that lies where the tests run is left alone
beforeEach(() => void vi.spyOn(process, 'cwd').mockReturnValue(folder))
afterEach(() => {
  vi.unstubAllEnvs()
  vi.restoreAllMocks()
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const opened = (address?: string) =>
  withStore(address, async () => 'opened').catch((error: Error) => `${error.name}: ${error.message}`)

describe('the database that a verb opens', () => {
  it.each([[undefined], ['']])('is the bot’s own where DATABASE_URL is %j', async (named) => {
    vi.stubEnv('DATABASE_URL', named)
    expect(await opened()).toContain(`There is no database at ${join(folder, 'data/ebbline.db')}: `)
  })

  it('is the one in DATABASE_URL, or in its place the one that was typed', async () => {
    vi.stubEnv('DATABASE_URL', 'file:named.db')
    await (await openStore('file:typed.db')).close()
    expect(await opened('file:typed.db')).toBe('opened')
    expect(await opened()).toContain('named.db')
  })
})
