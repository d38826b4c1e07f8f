import { mkdtempSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Readable } from 'node:stream'
import { beforeEach, describe, expect, it } from 'vitest'
import * as assess from '../../src/cli/assess.ts'
import * as erase from '../../src/cli/erase.ts'
import * as exported from '../../src/cli/export.ts'
import * as imported from '../../src/cli/import.ts'
import type { Io } from '../../src/cli/io.ts'
import type { ClientFile } from '../../src/engine/ports.ts'
import { openStore } from '../../src/store/open.ts'
import { readBundle } from '../fhir.ts'
import { checkIn, client, outcome, posting, put, samples } from '../store/samples.ts'

const folder = mkdtempSync(join(tmpdir(), 'ebbline-own-data-'))
const NOW = () => new Date('2026-03-20T12:00:00Z')
let database = ''
let n = 0

type Run = (args: string[], io: Io, now: () => Date) => Promise<number>
async function ran(run: Run, ...args: string[]) {
  const out: string[] = []
  const err: string[] = []
  const io = {
    stdin: Readable.from(['']),
    out: (line: string) => void out.push(line),
    err: (line: string) => void err.push(line),
  }
  const code = await run([...args, '--database', database], io, NOW)
  return { code, out: out.join('\n'), err: err.join('\n') }
}

async function inside<T>(work: Parameters<Awaited<ReturnType<typeof openStore>>['store']['transaction']>[0]) {
  const { store, close } = await openStore(database)
  const found = await store.transaction(work)
  await close()
  return found as T
}
const file = () => inside<ClientFile>((tx) => tx.wholeClient('c:heron'))
const trail = async () =>
  (
    await inside<{ versions: { via: string; words: string; day: string | null }[] }>((tx) =>
      tx.told('c:heron'),
    )
  ).versions

const diary = (...lines: string[]): string => {
  const path = join(folder, `diary-${++n}.csv`)
  writeFileSync(path, ['date,sessions,planned,reach,pain,signs,note', ...lines].join('\n'))
  return path
}

beforeEach(async () => {
  database = `file:${join(folder, `${++n}.db`)}`
  await inside((tx) =>
    tx.apply(
      outcome(
        [
          ...Object.entries(samples).map(([table, row]) => put(table as 'note', row as typeof samples.note)),
          put('client', client('dipper')),
          put('checkIn', checkIn('c:heron', '2026-03-09', { pain: 6 })),
          put('checkIn', checkIn('c:dipper', '2026-03-09', { pain: 9 })),
        ],
        [posting('prompt')],
      ),
    ),
  )
})

describe('ebb export', () => {
  it('writes all of it as JSON to standard output, the notes where they are asked for', async () => {
    const { code, out, err } = await ran(exported.run, 'heron')
    expect([code, err]).toEqual([0, ''])
    expect(JSON.parse(out)).toMatchObject({ client: { alias: 'heron' }, leftOut: ['notes'] })
    expect(out).not.toContain(samples.note.text)
    const more = await ran(exported.run, 'heron', '--notes')
    expect(JSON.parse(more.out).notes).toMatchObject([{ text: samples.note.text }])
  })

  it('writes CSV that ebb assess reads, and a valid FHIR Bundle, for their owner alone', async () => {
    const path = join(folder, 'heron.csv')
    expect((await ran(exported.run, 'heron', '--format', 'csv', '--out', path)).code).toBe(0)
    expect(statSync(path).mode & 0o777).toBe(0o600)
    const lines: string[] = []
    const io = { stdin: Readable.from(['']), out: (line: string) => void lines.push(line), err: () => {} }
    expect(await assess.run([path, '--json'], io)).toBe(0)
    expect(JSON.parse(lines[0]!)).toMatchObject({ on: '2026-03-13', adherence: { replies: 2 } })
    const { out } = await ran(exported.run, 'heron', '--format', 'fhir')
    expect(readBundle(out).errors).toEqual([])
  }, 30_000)

  it.each([
    [[], 'Name one client'],
    [['heron', '--format', 'xml'], 'choose json, csv, fhir'],
    [['heron', '--format', 'csv', '--notes'], 'leave out --notes'],
  ])('refuses %j as wrong use', async (args, says) => {
    const { code, err } = await ran(exported.run, ...args)
    expect(code).toBe(2)
    expect(err).toContain(says)
  })

  it('names those to choose from where the alias is not known', async () => {
    const { code, err } = await ran(exported.run, 'wren')
    expect([code, err]).toEqual([1, 'There is no client wren: choose dipper, heron.'])
  })
})

describe('ebb erase', () => {
  it('without --yes says what would go, and changes nothing', async () => {
    const { code, out, err } = await ran(erase.run, 'heron')
    expect(code).toBe(2)
    expect(out).toMatch(/checkIn +2\n/)
    expect(err).toContain('Nothing was changed: run it again with --yes')
    expect((await file()).checkIns).toHaveLength(2)
  })

  it('with --yes erases, with the counts, and names what is out of reach', async () => {
    const before = (await ran(erase.run, 'heron')).out
    const { code, out, err } = await ran(erase.run, 'heron', '--yes')
    expect(code).toBe(0)
    expect(out).toBe(before)
    expect(err).toContain('may hold a copy until 2026-04-19')
    expect(await file()).toBeNull()
    expect((await ran(erase.run, 'heron', '--yes')).code).toBe(1)
  })
})

describe('ebb import', () => {
  it('takes days of the past, marked as filled in later, each with a version', async () => {
    const path = diary('2026-02-20,1,2,foot,7,none,first', '2026-02-21,2,2,calf,6,,')
    const { code, out, err } = await ran(imported.run, 'heron', path)
    expect([code, err]).toEqual([0, ''])
    expect(out).toBe('Taken: 2 days, 2026-02-20 to 2026-02-21.')
    const days = (await file()).checkIns.filter(({ day }) => day < '2026-03-01')
    expect(days).toMatchObject([
      { day: '2026-02-20', reach: 'foot', pain: 7, denied: 'all', filled: '2026-03-20', late: true },
      { day: '2026-02-21', reach: 'calf', pain: 6, denied: null, filled: '2026-03-20', late: true },
    ])
    const versions = (await trail()).filter(({ via }) => via === 'import')
    expect(versions.map(({ words }) => words)).toEqual([
      '2026-02-20,1,2,foot,7,none,first',
      '2026-02-21,2,2,calf,6,,',
    ])
  })

  it('writes nothing where one line is bad, and names each by its number', async () => {
    const path = diary(
      '2026-02-20,1,2,foot,17,,',
      '2026-03-09,1,2,calf,3,,',
      '2026-04-01,1,2,calf,3,,',
      '2026-02-22,1,2,calf,3,,',
      '2026-02-22,2,2,calf,3,,',
    )
    const { code, out, err } = await ran(imported.run, 'heron', path)
    expect(code).toBe(1)
    expect(err.split('\n')).toEqual([
      'line 2: pain must be a whole number from 0 to 10, got "17".',
      'line 3: 2026-03-09 is there already; to put it right by the file, use --replace.',
      'line 4: 2026-04-01 lies in the future.',
      'line 6: 2026-02-22 stands twice in the file; keep one line of it.',
    ])
    expect(out).toContain('Nothing was changed: mend the lines named, or take the other 1 day')
    expect((await file()).checkIns).toHaveLength(2)
    const partly = await ran(imported.run, 'heron', path, '--partly')
    expect([partly.code, partly.out]).toEqual([
      1,
      'Taken: 1 day, 2026-02-22 to 2026-02-22; 4 lines cannot be taken.',
    ])
    const kept = (await file()).checkIns
    expect(kept.map(({ day, pain }) => [day, pain])).toContainEqual(['2026-03-09', 6])
  })

  it('replaces a day only where it is told to, and never a sign', async () => {
    const path = diary('2026-03-08,1,2,thigh,3,none,')
    expect((await ran(imported.run, 'heron', path)).code).toBe(1)
    const { code, out } = await ran(imported.run, 'heron', path, '--replace')
    expect([code, out]).toEqual([0, 'Taken: 1 day, 2026-03-08 to 2026-03-08 (1 replaced).'])
    const day = (await file()).checkIns.find((row) => row.day === '2026-03-08')
    expect(day).toMatchObject({ reach: 'thigh', pain: 3, signs: ['night-pain'], denied: ['saddle-numbness'] })
  })

  it('dry, says the same and changes nothing', async () => {
    const { code, out } = await ran(imported.run, 'heron', diary('2026-02-20,1,2,foot,7,,'), '--dry-run')
    expect([code, out]).toEqual([0, 'Would be taken: 1 day, 2026-02-20 to 2026-02-20. Nothing was changed.'])
    expect((await file()).checkIns).toHaveLength(2)
  })

  it('names signs of the past to operator and coach, and raises no alert', async () => {
    const { code, err } = await ran(imported.run, 'heron', diary('2026-02-20,1,2,foot,7,bladder-change,'))
    expect(code).toBe(0)
    expect(err).toContain('line 2: 2026-02-20 names bladder-change: no alert is raised for a past day')
    const { alerts, signs } = await file()
    expect([alerts.length, signs.length]).toEqual([1, 1])
    const { outbox } = await inside<{ outbox: { body: { text: string; kind: string } }[] }>((tx) =>
      tx.kept('c:heron'),
    )
    expect(outbox.map(({ body }) => body.kind)).toEqual(['prompt', 'notice'])
    expect(outbox[1]!.body.text).toContain('Please ask whether')
  })

  it('refuses a client who has not agreed, and a file that is no diary', async () => {
    const path = diary('2026-02-20,1,2,foot,7,,')
    expect(await ran(imported.run, 'dipper', path)).toMatchObject({ code: 1 })
    const empty = join(folder, 'empty.csv')
    writeFileSync(empty, '')
    expect(await ran(imported.run, 'heron', empty)).toMatchObject({ code: 2 })
    expect(readFileSync(path, 'utf8')).toContain('foot')
  })
})
