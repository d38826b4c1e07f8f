import { appendFileSync, mkdtempSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import type { KnownClient } from '../../src/engine/ports.ts'
import { createSeal } from '../../src/seal.ts'
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
  await openKnown(path).replace([[known('heron')]])
  expect(openKnown(path).find('user-1')).toEqual(known('heron'))
  expect(statSync(path).mode & 0o777).toBe(0o600)
  expect(openKnown(path).find('user-2')).toBeNull()
})

it('holds of several files of one person the one in use', async () => {
  const path = file()
  await openKnown(path).replace([[known('new', 'invited'), known('old', 'left'), known('now')]])
  expect(openKnown(path).find('user-1')?.client.ref).toBe('now')
})

it('forgets who is not there any more', async () => {
  const path = file()
  const people = openKnown(path)
  await people.replace([[known('heron')]])
  await people.replace([])
  expect(people.find('user-1')).toBeNull()
  expect(readFileSync(path, 'utf8')).not.toContain('heron')
})

it('takes in some anew behind the others, a line that was cut off between', async () => {
  const path = file()
  const people = openKnown(path)
  const dipper = { ...known('dipper'), client: { ...known('dipper').client, user: 'user-2' } }
  await people.replace([[known('heron'), dipper]])
  appendFileSync(path, '[{"client":{"id')
  await people.update([[{ ...known('heron'), direct: 'dm-2' }]])
  for (const one of [people, openKnown(path)]) {
    expect(one.find('user-1')?.direct).toBe('dm-2')
    expect(one.find('user-2')).toEqual(dipper)
  }
  expect(statSync(path).mode & 0o777).toBe(0o600)
})

it('begins with nobody where the file is damaged', () => {
  const path = file()
  writeFileSync(path, '{"client":')
  expect(openKnown(path).find('user-1')).toBeNull()
})

it('is sealed where there is a key, at once where it was plain or has another, and never read as empty without it', async () => {
  const path = file()
  const [one, two] = [1, 2].map((n) => new Uint8Array(32).fill(n)) as [Uint8Array, Uint8Array]
  await openKnown(path).replace([[known('heron')]])
  for (const seal of [createSeal([one]), createSeal([two, one])]) {
    const people = openKnown(path, seal)
    expect(people.find('user-1')).toEqual(known('heron'))
    await people.replace([[known('heron')]])
    expect(readFileSync(path, 'utf8')).toContain(seal.id)
    expect(readFileSync(path, 'utf8')).not.toContain('heron')
  }
  expect(() => openKnown(path)).toThrow('sealed with a key that is not given')
  expect(() => openKnown(path, createSeal([one]))).toThrow('sealed with a key that is not given')
})
