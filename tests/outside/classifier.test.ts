import { expect, it } from 'vitest'
import { SIGN_IDS } from '../../src/domain/signs/catalogue.ts'
import { Classifier, DIMENSIONS, FILTERS, HIDDEN, POOLED, WIDTHS } from '../../src/domain/signs/classifier.ts'

/**
 * The classifier of the fourth layer against PyTorch 2.13 (BSD-3): conv1d with padding of half the width, relu,
 * max-pooling, two linear layers and a sigmoid, over tables made by the same formula. Figures computed with it.
 */
const PIECES = 7
const SIGNS = ['saddle-numbness', 'bladder-change', 'leg-weakness'] as const

function table(length: number, kind: number, step: number): { step: number; bytes: string } {
  const numbers = Int8Array.from({ length }, (_, i) => ((i * 37 + 11 * kind + ((i * i) % 251)) % 255) - 127)
  return { step, bytes: Buffer.from(numbers.buffer).toString('base64') }
}

const classifier = new Classifier({
  limits: { still: 0, stillOther: 0, agrees: 0, ask: 1 },
  signs: [...SIGNS],
  words: 'press ups',
  pieces: PIECES,
  tables: {
    words: table(3 * DIMENSIONS, 1, 0.004),
    pieces: table(PIECES * DIMENSIONS, 2, 0.004),
    ...Object.fromEntries(
      WIDTHS.flatMap((width) => [
        [`filters ${width}`, table(FILTERS * width * DIMENSIONS, 3 + width, 0.003)],
        [`filter bias ${width}`, table(FILTERS, 9 + width, 0.002)],
      ]),
    ),
    hidden: table(HIDDEN * POOLED, 20, 0.0005),
    'hidden bias': table(HIDDEN, 21, 0.002),
    out: table(SIGNS.length * HIDDEN, 22, 0.002),
    'out bias': table(SIGNS.length, 23, 0.01),
  },
})

it.each<[text: string, likelihoods: number[]]>([
  ['press', [0.786323, 0.144514, 0.623954]],
  ['press ups', [0.825411, 0.157565, 0.715034]],
  ['ups press', [0.506963, 0.179652, 0.669474]],
  ['two press ups before bed , calf 3 and then slept well', [0.877773, 0.152378, 0.690221]],
])('reads “%s” as PyTorch does', (text, expected) => {
  const likelihoods = classifier.likelihoods(text.split(' '))!
  SIGNS.forEach((sign, i) => {
    expect(likelihoods[SIGN_IDS.indexOf(sign)]).toBeCloseTo(expected[i]!, 4)
  })
  expect(likelihoods[SIGN_IDS.indexOf('self-harm')]).toBe(0)
})

it('says nothing of a message longer than people write', () => {
  expect(classifier.likelihoods(Array.from({ length: 97 }, () => 'press'))).toBeNull()
})
