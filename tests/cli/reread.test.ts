import { existsSync, mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Readable } from 'node:stream'
import { beforeAll, describe, expect, it } from 'vitest'
import * as reread from '../../src/cli/reread.ts'
import { lexiconVersion } from '../../src/domain/reply/lexicon/index.ts'
import { readReply } from '../../src/domain/reply/read.ts'
import type { ReadingContext } from '../../src/domain/reply/reading.ts'
import type { VersionRow } from '../../src/engine/rows.ts'
import { openStore } from '../../src/store/open.ts'
import { client, outcome, practice, put } from '../store/samples.ts'

const folder = mkdtempSync(join(tmpdir(), 'reread-'))
const database = `file:${join(folder, 'ebbline.db')}`

async function ran(...args: string[]) {
  const out: string[] = []
  const err: string[] = []
  const code = await reread.run(args, {
    stdin: Readable.from(['']),
    out: (line) => void out.push(line),
    err: (line) => void err.push(line),
  })
  return { code, out, err: err.join('\n') }
}

const context: ReadingContext = {
  planned: 3,
  today: '2026-03-04',
  promptDay: '2026-03-03',
  locale: 'en',
  asked: null,
}

const version = (id: string, words: string, more: Partial<VersionRow> = {}): VersionRow => ({
  id,
  clientId: 'c:heron',
  day: '2026-03-03',
  at: new Date('2026-03-04T03:00:00Z'),
  zone: 'America/New_York',
  via: 'words',
  words,
  reading: { ...readReply(words, context), context },
  lexicon: 'en-1.1',
  ...more,
})

const bridge = { ...practice, id: 'p:bridge', guild: '100000000000000009', name: 'The bridge' }

beforeAll(async () => {
  const { store, close } = await openStore(database)
  const older = version('v2', 'calf, 2, pain 6')
  const changes = [
    put('practice', practice),
    put('practice', bridge),
    put('client', client('heron')),
    put('client', client('wren')),
    put('client', { ...client('wren'), id: 'c:wren2', practiceId: bridge.id }),
    put('version', version('v1', 'all done, calf 4')),
    put('version', { ...older, reading: { ...older.reading, pain: 3, unsure: ['reach'] } }),
    put('version', version('v3', 'x', { via: 'choice', reading: { do: 'answer' } })),
  ]
  await store.transaction((tx) => tx.apply(outcome(changes)))
  await close()
})

describe('ebb reread', () => {
  it('prints what is read differently, without the words, in the context first known', async () => {
    const { code, out, err } = await ran('heron', '--database', database)
    expect([code, err]).toEqual([0, ''])
    expect(out).toEqual([
      `2026-03-03, 2026-03-04T03:00:00.000Z, en-1.1 -> ${lexiconVersion('en')}: pain 3 -> 6; unsure ["reach"] -> []`,
      '2 replies read again, 1 read differently.',
    ])
    expect(out.join()).not.toContain('calf')
  })

  it('prints the words where they are asked for, and objects a line', async () => {
    const { out } = await ran('heron', '--words', '--json', '--database', database)
    expect(out.map((line) => JSON.parse(line))).toMatchObject([
      { day: '2026-03-03', by: 'en-1.1', fields: { pain: [3, 6] }, words: 'calf, 2, pain 6' },
      { end: true, read: 2, different: 1 },
    ])
  })

  it('changes nothing', async () => {
    const before = await ran('heron', '--json', '--database', database)
    expect((await ran('heron', '--json', '--database', database)).out).toEqual(before.out)
  })

  it('says which clients there are, and which practices', async () => {
    const unknown = await ran('plover', '--database', database)
    expect(unknown).toMatchObject({ code: 1, out: [], err: 'There is no client plover: choose heron, wren.' })
    const two = await ran('wren', '--database', database)
    expect(two.err).toBe('Several practices know wren: choose with --practice The boathouse, The bridge.')
    expect((await ran('wren', '--practice', 'the bridge', '--database', database)).code).toBe(0)
    const none = await ran('wren', '--practice', 'The weir', '--database', database)
    expect(none).toMatchObject({
      code: 1,
      err: 'There is no practice The weir: choose The boathouse, The bridge.',
    })
  })

  it('makes no database by looking', async () => {
    const path = join(folder, 'none.db')
    const { code, err } = await ran('heron', '--database', `file:${path}`)
    expect([code, existsSync(path)]).toEqual([1, false])
    expect(err).toContain('--database file:PATH')
  })

  it('refuses what it does not know', async () => {
    expect((await ran()).code).toBe(2)
    expect((await ran('heron', 'wren')).code).toBe(2)
    expect((await ran('heron', '--change')).code).toBe(2)
  })
})
