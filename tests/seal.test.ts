import { chmodSync, mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readSeal } from '../src/keys.ts'
import { createSeal, isSealed } from '../src/seal.ts'

const key = (n: number) => new Uint8Array(32).fill(n)
const [one, two] = [createSeal([key(1)]), createSeal([key(2), key(1)])]

describe('a seal', () => {
  it('opens what it closed, whatever it is, and never closes the same twice the same way', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), fc.string(), (text, place) => {
        const closed = one.close(text, place)
        expect(isSealed(closed)).toBe(true)
        expect(one.open(closed, place)).toBe(text)
        expect(one.close(text, place)).not.toBe(closed)
      }),
      { seed: 7, numRuns: 40 },
    )
  })

  it('leaves what is not sealed as it is, and what another key has closed', () => {
    expect(one.open('2 calf 4', 'here')).toBe('2 calf 4')
    const closed = createSeal([key(9)]).close('2 calf 4', 'here')
    expect(one.open(closed, 'here')).toBe(closed)
  })

  it('opens with an older key, and closes with the first', () => {
    expect(two.open(one.close('2 calf 4', 'here'), 'here')).toBe('2 calf 4')
    expect(one.open(two.close('2 calf 4', 'here'), 'here')).not.toBe('2 calf 4')
  })

  it('refuses what was altered, or moved to another place', () => {
    const closed = one.close('2 calf 4', 'here')
    expect(() => one.open(closed, 'there')).toThrow('altered')
    const last = closed.at(-2) === 'A' ? 'E' : 'A'
    expect(() => one.open(closed.slice(0, -2) + last + closed.at(-1), 'here')).toThrow('altered')
  })
})

describe('keys', () => {
  const folder = mkdtempSync(join(tmpdir(), 'ebbline-keys-'))
  const file = (text: string, mode = 0o600) => {
    const path = join(folder, `${Math.random()}.key`)
    writeFileSync(path, text)
    chmodSync(path, mode)
    return { keyFile: path, key: null }
  }
  const BASE64 = Buffer.from(key(1)).toString('base64')
  const HEX = Buffer.from(key(2)).toString('hex')

  it('are read from a file, a line each, or from the environment', () => {
    expect(readSeal({ keyFile: null, key: null })).toBeNull()
    expect(readSeal({ keyFile: null, key: BASE64 })?.id).toBe(one.id)
    expect(readSeal(file(`# new, then old\n${HEX}\n\n${BASE64}\n`))?.ids).toEqual([...two.ids])
  })

  it.each([
    ['a file that is not there', { keyFile: '/nowhere/ebbline.key', key: null }, /cannot be read \(ENOENT\)/],
    ['a file open to others', file(BASE64, 0o640), /can be read by others: chmod 600/],
    ['an empty file', file('# none yet\n'), /holds no key.*openssl rand/],
    ['a key of another length', file(`${BASE64}\nshort\n`), /key 2 cannot be read: a key is 32 bytes/],
    ['a password', { keyFile: null, key: 'correct horse' }, /^EBBLINE_KEY: key 1 cannot be read/],
  ])('%s is refused with the mend', (_, given, says) => {
    expect(() => readSeal(given)).toThrow(says)
    // a key is never repeated
    expect(() => readSeal(given)).not.toThrow(BASE64)
  })
})
