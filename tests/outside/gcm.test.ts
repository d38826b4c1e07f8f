import { describe, expect, it } from 'vitest'
import { decrypt, encrypt } from '../../src/seal.ts'

/**
 * AES-256-GCM against the test cases 13 to 16 of McGrew and Viega, "The Galois/Counter Mode of Operation (GCM)", as
 * submitted to NIST (the mode is NIST SP 800-38D). The values were written down from memory; that they agree with an
 * implementation that did not take part in that is the check.
 */
const KEY = 'feffe9928665731c6d6a8f9467308308feffe9928665731c6d6a8f9467308308'
const NONCE = 'cafebabefacedbaddecaf888'
const TEXT =
  'd9313225f88406e5a55909c5aff5269a86a7a9531534f7da2e4c303d8a318a721c3c0c95956809532fcf0e2449a6b525b16aedf5aa0de657ba637b391aafd255'
const SEALED =
  '522dc1f099567d07f47f37a32a84427d643a8cdcbfe5c0c97598a2bd2555d1aa8cb08e48590dbb3da7b08b1056828838c5f61e6393ba7a0abcc9f662898015ad'
const ZERO_KEY = '00'.repeat(32)
const ZERO_NONCE = '00'.repeat(12)

const CASES = [
  {
    n: 13,
    key: ZERO_KEY,
    nonce: ZERO_NONCE,
    text: '',
    place: '',
    sealed: '',
    tag: '530f8afbc74536b9a963b4f1c4cb738b',
  },
  {
    ...{ n: 14, key: ZERO_KEY, nonce: ZERO_NONCE, text: '00'.repeat(16), place: '' },
    ...{ sealed: 'cea7403d4d606b6e074ec5d3baf39d18', tag: 'd0d1c8a799996bf0265b98b5d48ab919' },
  },
  {
    n: 15,
    key: KEY,
    nonce: NONCE,
    text: TEXT,
    place: '',
    sealed: SEALED,
    tag: 'b094dac5d93471bdec1a502270e3cc6c',
  },
  {
    ...{ n: 16, key: KEY, nonce: NONCE, text: TEXT.slice(0, 120), sealed: SEALED.slice(0, 120) },
    ...{ place: 'feedfacedeadbeeffeedfacedeadbeefabaddad2', tag: '76fc6ece0f4e1768cddf8853bb2d551b' },
  },
]
const bytes = (hex: string): Buffer => Buffer.from(hex, 'hex')
const hex = (given: Uint8Array): string => Buffer.from(given).toString('hex')

describe('AES-256-GCM, published test cases', () => {
  it.each(CASES)('case $n', ({ key, nonce, text, place, sealed, tag }) => {
    const made = encrypt(bytes(key), bytes(nonce), bytes(text), bytes(place))
    expect([hex(made.sealed), hex(made.tag)]).toEqual([sealed, tag])
    expect(hex(decrypt(bytes(key), bytes(nonce), made, bytes(place)))).toBe(text)
    expect(() => decrypt(bytes(key), bytes(nonce), made, bytes(`${place}00`))).toThrow('altered')
  })
})
