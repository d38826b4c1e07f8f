import { createCipheriv, createDecipheriv, createHash, randomBytes } from 'node:crypto'

/** Bytes of a key, of a nonce and of a tag: AES-256-GCM with the 96-bit nonce that NIST SP 800-38D recommends. */
export const KEY_BYTES = 32
const NONCE_BYTES = 12
const TAG_BYTES = 16

/** Sealed text: this, the id of its key, a point, and nonce, cipher text and tag in base64url. */
const PREFIX = '§ebb1.'
const SEALED = /^§ebb1\.([0-9a-f]{8})\.([A-Za-z0-9_-]{38,})$/

/** A sealed text that was altered, or has been moved to another row. */
export class Altered extends Error {
  override readonly name = 'Altered'
}

/** Something about keys that a keeper can mend: one sentence that says what is wrong and what to do. */
export class SealProblem extends Error {
  override readonly name = 'SealProblem'
}

/** Closes text for whoever has no key, and opens it again. */
export interface Seal {
  /** Id of the key that closes: the first 8 hex digits of the key's SHA-256. */
  readonly id: string
  /** Ids of all keys that open, the one that closes first. */
  readonly ids: readonly string[]
  /** @param place where the text stands (table, column, row): it opens nowhere else */
  close(text: string, place: string): string
  /**
   * Text that is not sealed, or sealed with a key that is not among these, comes back as it is.
   * @throws Altered
   */
  open(text: string, place: string): string
}

const keyId = (key: Uint8Array): string => createHash('sha256').update(key).digest('hex').slice(0, 8)

/** @param keys of 32 bytes each: the first closes, all of them open */
export function createSeal(keys: readonly [Uint8Array, ...Uint8Array[]]): Seal {
  const byId = new Map(keys.map((key) => [keyId(key), key]))
  const [first] = keys
  const id = keyId(first)
  return {
    id,
    ids: [...byId.keys()],
    close(text, place) {
      const nonce = randomBytes(NONCE_BYTES)
      const { sealed, tag } = encrypt(first, nonce, Buffer.from(text), Buffer.from(place))
      return `${PREFIX}${id}.${Buffer.concat([nonce, sealed, tag]).toString('base64url')}`
    },
    open(text, place) {
      const [, by, body] = SEALED.exec(text) ?? []
      const key = by === undefined ? undefined : byId.get(by)
      if (key === undefined || body === undefined) return text
      const bytes = Buffer.from(body, 'base64url')
      const [nonce, tag] = [bytes.subarray(0, NONCE_BYTES), bytes.subarray(-TAG_BYTES)]
      const sealed = bytes.subarray(NONCE_BYTES, -TAG_BYTES)
      return decrypt(key, nonce, { sealed, tag }, Buffer.from(place)).toString()
    },
  }
}

/** How a text begins that was sealed with this key. */
export const textSealedWith = (id: string): string => `${PREFIX}${id}.`
export const isSealed = (text: string): boolean => SEALED.test(text)

interface Sealed {
  readonly sealed: Uint8Array
  readonly tag: Uint8Array
}

/** AES-256-GCM; `place` is authenticated and not encrypted. */
export function encrypt(key: Uint8Array, nonce: Uint8Array, text: Uint8Array, place: Uint8Array): Sealed {
  const cipher = createCipheriv('aes-256-gcm', key, nonce, { authTagLength: TAG_BYTES })
  cipher.setAAD(place)
  const sealed = Buffer.concat([cipher.update(text), cipher.final()])
  return { sealed, tag: cipher.getAuthTag() }
}

/** @throws Altered where text, tag, place or key are not those of the closing */
export function decrypt(
  key: Uint8Array,
  nonce: Uint8Array,
  { sealed, tag }: Sealed,
  place: Uint8Array,
): Buffer {
  const decipher = createDecipheriv('aes-256-gcm', key, nonce, { authTagLength: TAG_BYTES })
  decipher.setAAD(place)
  decipher.setAuthTag(tag)
  try {
    return Buffer.concat([decipher.update(sealed), decipher.final()])
  } catch {
    throw new Altered('a sealed text was altered, or stands where it was not written')
  }
}
