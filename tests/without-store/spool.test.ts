import { appendFileSync, mkdtempSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import type { Words } from '../../src/engine/event.ts'
import { openSpool } from '../../src/without-store/spool.ts'

const path = (): string => join(mkdtempSync(join(tmpdir(), 'ebbline-spool-')), 'inner', 'spool')
const AT = new Date('2026-03-02T15:00:00Z')
const words = (id: string, text = 'numb between my legs'): Words => ({
  ...{ kind: 'words', id, at: AT, text, edits: null, attached: 'none' },
  actor: { user: 'user-heron', guild: null, roles: [], keeper: false },
})
const entry = (id: string) => ({ event: words(id), at: AT, heard: null })
const SENT = { channel: 'dm', platformId: 'm-1' }

it('gives back after a kill what waits, in order, and where messages went', async () => {
  const file = path()
  const spool = await openSpool(file)
  for (const id of ['1', '2', '3']) await spool.take(entry(id))
  await spool.sent('outbox-1', SENT)
  await spool.done('2')
  const again = await openSpool(file)
  expect(again.entries()).toEqual([entry('1'), entry('3')])
  expect(again.sentTo('outbox-1')).toEqual(SENT)
  expect(again.sentTo('outbox-2')).toBeNull()
  expect(statSync(file).mode & 0o777).toBe(0o600)
})

it('leaves no word on the disk once all is taken up, and keeps its room', async () => {
  const file = path()
  const spool = await openSpool(file)
  const size = statSync(file).size
  await spool.take(entry('1'))
  expect(statSync(file).size).toBe(size)
  await spool.done('1')
  expect(readFileSync(file).every((byte) => byte === 0)).toBe(true)
  expect((await openSpool(file)).entries()).toEqual([])
})

it('passes over a line that a power cut has torn, and writes on after the last whole one', async () => {
  const file = path()
  const spool = await openSpool(file)
  await spool.take(entry('1'))
  const whole = readFileSync(file, 'utf8').replaceAll('\0', '')
  writeFileSync(file, `${whole}{"take":{"event":{"id"`)
  const again = await openSpool(file)
  expect(again.entries()).toEqual([entry('1')])
  await again.take(entry('2'))
  expect((await openSpool(file)).entries()).toEqual([entry('1'), entry('2')])
})

it('reads a file in which a line is no JSON', async () => {
  const file = path()
  await (await openSpool(file)).close()
  writeFileSync(file, 'nonsense\n')
  appendFileSync(file, `${JSON.stringify({ take: entry('1') })}\n`)
  expect((await openSpool(file)).entries()).toEqual([entry('1')])
})
