import { describe, expect, it } from 'vitest'
import { decrypt, encrypt } from '../../src/seal.ts'

/**
 * AES-256-GCM (NIST SP 800-38D) against published answers: test cases 13 to 16 of McGrew and Viega, "The Galois/Counter
 * Mode of Operation (GCM)", as submitted to NIST, and six of the NIST Cryptographic Algorithm Validation Program,
 * response file gcmEncryptExtIV256.rsp (key of 256 bits, nonce of 96, tag of 128; the first of each length of text and
 * of what is bound to it). Both were compared with public suites that quote them.
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
/** By the lengths in bits of the text and of what is bound to it. */
const VALIDATION = [
  {
    ...{ lengths: '0 and 0', key: 'b52c505a37d78eda5dd34f20c22540ea1b58963cf8e5bf8ffa85f9f2492505b4' },
    ...{ nonce: '516c33929df5a3284ff463d7', text: '', place: '', sealed: '' },
    tag: 'bdc1ac884d332457a1d2664f168c76f0',
  },
  {
    ...{ lengths: '128 and 0', key: '31bdadd96698c204aa9ce1448ea94ae1fb4a9a0b3c9d773b51bb1822666b8f22' },
    ...{ nonce: '0d18e06c7c725ac9e362e1ce', text: '2db5168e932556f8089a0622981d017d', place: '' },
    ...{ sealed: 'fa4362189661d163fcd6a56d8bf0405a', tag: 'd636ac1bbedd5cc3ee727dc2ab4a9489' },
  },
  {
    ...{ lengths: '256 and 0', key: '268ed1b5d7c9c7304f9cae5fc437b4cd3aebe2ec65f0d85c3918d3d3b5bba89b' },
    ...{ nonce: '9ed9d8180564e0e945f5e5d4', place: '' },
    text: 'fe29a40d8ebf57262bdb87191d01843f4ca4b2de97d88273154a0b7d9e2fdb80',
    sealed: '791a4a026f16f3a5ea06274bf02baab469860abde5e645f3dd473a5acddeecfc',
    tag: '05b2b74db0662550435ef1900e136b15',
  },
  {
    ...{ lengths: '128 and 128', key: '92e11dcdaa866f5ce790fd24501f92509aacf4cb8b1339d50c9c1240935dd08b' },
    ...{ nonce: 'ac93a1a6145299bde902f21a', text: '2d71bcfa914e4ac045b2aa60955fad24' },
    place: '1e0889016f67601c8ebea4943bc23ad6',
    ...{ sealed: '8995ae2e6df3dbf96fac7b7137bae67f', tag: 'eca5aa77d51d4a0a14d9c51e1da474ab' },
  },
  {
    ...{ lengths: '128 and 160', key: '83688deb4af8007f9b713b47cfa6c73e35ea7a3aa4ecdb414dded03bf7a0fd3a' },
    ...{ nonce: '0b459724904e010a46901cf3', text: '33d893a2114ce06fc15d55e454cf90c3' },
    place: '794a14ccd178c8ebfd1379dc704c5e208f9d8424',
    ...{ sealed: 'cc66bee423e3fcd4c0865715e9586696', tag: '0fb291bd3dba94a1dfd8b286cfb97ac5' },
  },
  {
    ...{ lengths: '408 and 128', key: '5fe01c4baf01cbe07796d5aaef6ec1f45193a98a223594ae4f0ef4952e82e330' },
    ...{ nonce: 'bd587321566c7f1a5dd8652d', place: '9013617817dda947e135ee6dd3653382' },
    text: '881dc6c7a5d4509f3c4bd2daab08f165ddc204489aa8134562a4eac3d0bcad7965847b102733bb63d1e5c598ece0c3e5dadddd',
    sealed:
      '16e375b4973b339d3f746c1c5a568bc7526e909ddff1e19c95c94a6ccff210c9a4a40679de5760c396ac0e2ceb1234f9f5fe26',
    tag: 'abd3d26d65a6275f7a4f56b422acab49',
  },
]
const bytes = (hex: string): Buffer => Buffer.from(hex, 'hex')
const hex = (given: Uint8Array): string => Buffer.from(given).toString('hex')

const ANSWERS = [
  ...CASES.map(({ n, ...one }) => ({ name: `McGrew and Viega, case ${n}`, ...one })),
  ...VALIDATION.map(({ lengths, ...one }) => ({ name: `NIST validation program, bits ${lengths}`, ...one })),
]

describe('AES-256-GCM, published answers', () => {
  it.each(ANSWERS)('$name', ({ key, nonce, text, place, sealed, tag }) => {
    const made = encrypt(bytes(key), bytes(nonce), bytes(text), bytes(place))
    expect([hex(made.sealed), hex(made.tag)]).toEqual([sealed, tag])
    expect(hex(decrypt(bytes(key), bytes(nonce), made, bytes(place)))).toBe(text)
    expect(() => decrypt(bytes(key), bytes(nonce), made, bytes(`${place}00`))).toThrow('altered')
  })
})
