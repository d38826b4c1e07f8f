import { Resvg } from '@resvg/resvg-js'
import { describe, expect, it } from 'vitest'
import { digestPicture } from '../../src/picture/digest-picture.ts'
import { textsFor } from '../../src/text/index.ts'
import { boxesOf, overlaps } from './boxes.ts'
import { CASES } from './cases.ts'

describe.each(Object.entries(CASES))('the picture of %s in Spanish', (_, weeks) => {
  it('has no label upon another, and none beyond the card', () => {
    const svg = digestPicture(weeks, textsFor('es').digest.picture, 'light')
    const boxes = boxesOf(svg)
    expect(overlaps(boxes)).toEqual([])
    const { width } = new Resvg(svg)
    const beyond = boxes.filter(({ left, right }) => left < 4 || right > width - 4)
    expect(beyond.map(({ what }) => what)).toEqual([])
  })
})
