import { describe, expect, it } from 'vitest'
import { saysGotIt } from '../../../src/domain/reply/got-it.ts'

describe('that something was heard', () => {
  it.each([
    'ok',
    ' OK!! ',
    'K.',
    'Okay',
    'okey',
    'Got it.',
    'will do',
    'understood',
    'Vale',
    'de acuerdo!',
    'bueno',
    'ENTENDIDO',
  ])('may be all that %s says', (said) => expect(saysGotIt(said)).toBe(true))

  it.each(['', '!', 'ok, on my way', 'ok. going', 'yes', 'sí', 'not ok', 'okra', '2', '👍'])(
    'is not all that “%s” says',
    (said) => expect(saysGotIt(said)).toBe(false),
  )
})
