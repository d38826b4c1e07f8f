import { mkdtempSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import type { KnownClient } from '../../src/engine/ports.ts'
import { openKnown } from '../../src/without-store/known.ts'

const file = (): string => join(mkdtempSync(join(tmpdir(), 'ebbline-known-')), 'known.json')
const known = (ref: string, stage: KnownClient['client']['stage'] = 'enrolled'): KnownClient => ({
  client: { id: `c:${ref}`, user: 'user-1', ref, stage, region: 'PT', zone: 'Europe/Lisbon', language: 'en' },
  practice: { id: 'p', zone: 'Europe/Lisbon', language: 'en', quote: true, channel: 'alerts' },
  coach: 'coach-1',
  direct: 'dm-1',
})

it('is there again after a restart, closed to others', async () => {
  const path = file()
  await openKnown(path).replace([known('heron')])
  expect(openKnown(path).find('user-1')).toEqual(known('heron'))
  expect(statSync(path).mode & 0o777).toBe(0o600)
  expect(openKnown(path).find('user-2')).toBeNull()
})

it('holds of several files of one person the one in use', async () => {
  const path = file()
  await openKnown(path).replace([known('new', 'invited'), known('old', 'left'), known('now')])
  expect(openKnown(path).find('user-1')?.client.ref).toBe('now')
})

it('forgets who is not there any more', async () => {
  const path = file()
  const people = openKnown(path)
  await people.replace([known('heron')])
  await people.replace([])
  expect(people.find('user-1')).toBeNull()
  expect(readFileSync(path, 'utf8')).not.toContain('heron')
})

it('begins with nobody where the file is damaged', () => {
  const path = file()
  writeFileSync(path, '{"client":')
  expect(openKnown(path).find('user-1')).toBeNull()
})
