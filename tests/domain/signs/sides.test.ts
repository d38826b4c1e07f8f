import { describe, expect, it } from 'vitest'
import { compare } from '../../../src/domain/signs/sides.ts'

describe('the side on record and the side named', () => {
  it.each([
    ['left', 'left', 'same'],
    ['both', 'both', 'same'],
    ['both', 'right', 'same'],
    ['left', 'both', 'both-legs'],
    ['right', 'both', 'both-legs'],
    [null, 'both', 'both-legs'],
    ['left', 'right', 'other-leg'],
    ['right', 'left', 'other-leg'],
    ['left', null, 'ask'],
    [null, null, 'ask'],
    [null, 'left', 'same'],
    ['both', null, 'same'],
  ] as const)('%s then %s is %s', (recorded, named, change) => {
    expect(compare(recorded, named)).toBe(change)
  })
})
