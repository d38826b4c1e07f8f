import { mkdtempSync, readFileSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Readable } from 'node:stream'
import { beforeAll, describe, expect, it, vi } from 'vitest'
import * as report from '../../src/cli/report.ts'
import { openStore } from '../../src/store/open.ts'
import { readPdf } from '../picture/pdf-text.ts'
import { client, outcome, practice, put } from '../store/samples.ts'

const folder = mkdtempSync(join(tmpdir(), 'ebbline-report-'))
const database = `file:${join(folder, 'ebbline.db')}`
const NOW = () => new Date('2026-03-20T12:00:00Z')

async function ran(...args: string[]) {
  const out: string[] = []
  const err: string[] = []
  const io = {
    stdin: Readable.from(['']),
    out: (line: string) => void out.push(line),
    err: (line: string) => void err.push(line),
  }
  const code = await report.run(args, io, NOW)
  return { code, out, err: err.join('\n') }
}

beforeAll(async () => {
  const { store, close } = await openStore(database)
  await store.transaction((tx) =>
    tx.apply(outcome([put('practice', practice), put('client', client('heron'))], [])),
  )
  await close()
})

describe('ebb report', () => {
  it('writes one page as PDF, for its owner alone', async () => {
    const file = join(folder, 'heron.pdf')
    const { code, out } = await ran('heron', '--out', file, '--database', database)
    expect(code).toBe(0)
    expect(out).toEqual([`${file}: the report of heron, one page. Hand it over only where they agree.`])
    const { pages, text } = readPdf(readFileSync(file))
    expect(pages).toBe(1)
    expect(text).toContain('Report for a clinician: heron')
    expect(text).toContain('Made on Fri 20 Mar 2026')
    expect(statSync(file).mode & 0o777).toBe(0o600)
  })

  it('writes a PNG where the file ends so', async () => {
    const file = join(folder, 'heron.PNG')
    expect((await ran('heron', '--out', file, '--database', database)).code).toBe(0)
    expect(readFileSync(file).subarray(1, 4).toString()).toBe('PNG')
  })

  it('names a ladder file that cannot be read, and its mend', async () => {
    vi.stubEnv('EBBLINE_LADDERS', join(folder, 'none.yaml'))
    const { code, err } = await ran('heron', '--out', join(folder, 'x.pdf'), '--database', database)
    vi.unstubAllEnvs()
    expect(code).toBe(1)
    expect(err).toMatch(/none\.yaml, which cannot be read \(ENOENT\): check its name/)
  })

  it.each([
    [['--out', 'x.pdf'], 'Name one client'],
    [['heron', 'dipper', '--out', 'x.pdf'], 'Name one client'],
    [['heron'], 'ending in .pdf or .png'],
    [['heron', '--out', 'x.docx'], 'ending in .pdf or .png'],
    [['heron', '--to', 'x.pdf'], '--to'],
  ])('refuses %j as wrong use', async (args, says) => {
    const { code, err } = await ran(...args, '--database', database)
    expect(code).toBe(2)
    expect(err).toContain(says)
  })

  it.each([
    [['wren', '--out', join(folder, 'wren.pdf'), '--database', database], 'There is no client wren'],
    [
      ['heron', '--out', join(folder, 'x.pdf'), '--database', `file:${folder}/none.db`],
      'There is no database',
    ],
    [['heron', '--out', join(folder, 'none', 'x.pdf'), '--database', database], 'name another file'],
  ])('says what to mend of %j', async (args, says) => {
    const { code, err } = await ran(...args)
    expect(code).toBe(1)
    expect(err).toContain(says)
  })
})
