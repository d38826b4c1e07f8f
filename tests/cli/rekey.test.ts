import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Readable } from 'node:stream'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { databaseLines } from '../../src/cli/doctor/database.ts'
import * as rekey from '../../src/cli/rekey.ts'
import { readSeal } from '../../src/keys.ts'
import { openStore } from '../../src/store/open.ts'
import { ground, outcome, put, samples } from '../store/samples.ts'

const folder = mkdtempSync(join(tmpdir(), 'ebbline-rekey-'))
const database = `file:${join(folder, 'ebbline.db')}`
const keyFile = join(folder, 'ebbline.key')
const keys = (...numbers: number[]) =>
  writeFileSync(keyFile, numbers.map((n) => Buffer.alloc(32, n).toString('base64')).join('\n'), {
    mode: 0o600,
  })

async function ran(...args: string[]) {
  const [out, err]: [string[], string[]] = [[], []]
  const io = {
    stdin: Readable.from(['']),
    out: (line: string) => void out.push(line),
    err: (line: string) => void err.push(line),
  }
  return { code: await rekey.run(args, io), out: out.join('\n'), err: err.join('\n') }
}
const doctor = async () => {
  const seal = readSeal({ keyFile, key: null })
  const { lines } = await databaseLines(database, { backupDays: 30, seal }, new Date())
  return lines.find(({ check }) => check === 'words')
}

afterEach(() => vi.unstubAllEnvs())

describe('ebb rekey', () => {
  it('needs a key, and a database', async () => {
    expect(await ran('--database', database)).toMatchObject({
      code: 2,
      err: expect.stringContaining('There is no key'),
    })
    keys(1)
    vi.stubEnv('EBBLINE_KEY_FILE', keyFile)
    expect(await ran('--database', database)).toMatchObject({
      code: 1,
      err: expect.stringContaining('There is no database'),
    })
  })

  it('seals with the first key, which doctor shows; without it nothing opens', async () => {
    const store = await openStore(database)
    await store.store.transaction((tx) => tx.apply(ground('heron')))
    await store.store.transaction((tx) => tx.apply(outcome([put('note', samples.note)])))
    await store.close()
    expect(await doctor()).toMatchObject({ state: 'not ok', says: expect.stringContaining('run ebb rekey') })
    vi.stubEnv('EBBLINE_KEY_FILE', keyFile)
    expect(await ran('--database', database)).toMatchObject({
      code: 0,
      out: expect.stringContaining('is sealed with key'),
    })
    expect(await doctor()).toMatchObject({ state: 'ok' })
    keys(2)
    expect(await ran('--database', database)).toMatchObject({
      code: 1,
      err: expect.stringContaining('add it to the key file'),
    })
    expect(await doctor()).toMatchObject({ state: 'not ok' })
    keys(2, 1)
    expect((await ran('--database', database)).code).toBe(0)
    keys(2)
    expect(await doctor()).toMatchObject({ state: 'ok' })
  })

  it.each(['export', 'doctor'])('a key that cannot be read is told with the mend by ebb %s', async (verb) => {
    const { run } =
      verb === 'doctor' ? await import('../../src/cli/doctor.ts') : await import('../../src/cli/export.ts')
    writeFileSync(keyFile, 'no key', { mode: 0o600 })
    vi.stubEnv('EBBLINE_KEY_FILE', keyFile)
    const err: string[] = []
    const io = { stdin: Readable.from(['']), out: () => {}, err: (line: string) => void err.push(line) }
    expect(await run([...(verb === 'export' ? ['heron'] : []), '--database', database], io)).toBeGreaterThan(
      0,
    )
    expect(err.join()).toContain('key 1 cannot be read')
  })
})
