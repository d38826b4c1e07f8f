import { createHash } from 'node:crypto'
import { Resvg } from '@resvg/resvg-js'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { addDays } from '../../src/domain/day.ts'
import { type Weeks, weeksOf } from '../../src/domain/digest/weeks.ts'
import { RULE_IDS } from '../../src/domain/rules/assessment.ts'
import { digestPicture } from '../../src/picture/digest-picture.ts'
import { drawWeeks, type PictureWords } from '../../src/picture/index.ts'
import { MARK_SHAPES, shapeOf } from '../../src/picture/marks.ts'
import { PALETTES } from '../../src/picture/palette.ts'
import { pictureWords } from '../../src/text/en/digest-picture.ts'
import { diary } from '../domain/digest/diary.ts'
import { boxesOf, overlaps } from './boxes.ts'
import { CASES } from './cases.ts'

const words: PictureWords = pictureWords
const names = Object.keys(CASES)
const svgOf = (name: string): string => digestPicture(CASES[name]!, words, 'light')
const sizeOf = (svg: string): { width: number; height: number } => new Resvg(svg)

describe.each(names)('the picture of %s', (name) => {
  const weeks: Weeks = CASES[name]!
  const svg = svgOf(name)
  const boxes = boxesOf(svg)

  it('is well-formed, 400 units wide, and a PNG twice as wide', () => {
    // resvg's own XML reader is strict: it throws on anything that is not well-formed
    expect(sizeOf(svg).width).toBe(400)
    const { png } = drawWeeks(weeks, { theme: 'dark', words })
    const view = new DataView(png.buffer, png.byteOffset)
    expect([...png.subarray(1, 4)]).toEqual([0x50, 0x4e, 0x47])
    expect(view.getUint32(16)).toBe(800)
  })

  it('has no label upon another, and none beyond the card', () => {
    expect(overlaps(boxes)).toEqual([])
    const { width, height } = sizeOf(svg)
    for (const box of boxes) {
      expect(box.left, box.what).toBeGreaterThanOrEqual(4)
      expect(box.right, box.what).toBeLessThanOrEqual(width - 4)
      expect(box.top, box.what).toBeGreaterThanOrEqual(4)
      expect(box.bottom, box.what).toBeLessThanOrEqual(height - 4)
    }
  })

  it('gives each mark a shape, a number and a title, at its day and in the list', () => {
    for (const [index, mark] of weeks.marks.entries()) {
      const shape = `<g role="img" data-shape="${shapeOf(mark)}"><title>`
      const title = `${words.date(mark.day)}: ${words.mark(mark)}</title>`
      expect(svg.split(shape + title)).toHaveLength(
        1 +
          2 *
            weeks.marks.filter((other) => words.mark(other) + other.day === words.mark(mark) + mark.day)
              .length,
      )
      expect(svg).toContain(`>${index + 1}</text></g>`)
    }
  })

  it('is the same, also after a way through JSON', () => {
    const again = drawWeeks(JSON.parse(JSON.stringify(weeks)), { theme: 'light', words })
    const first = drawWeeks(weeks, { theme: 'light', words })
    expect(again.svg).toBe(first.svg)
    expect(Buffer.compare(again.png, first.png)).toBe(0)
  })
})

describe('any weeks', () => {
  it('are drawn without a label upon another', () => {
    const word = fc.constantFrom('2c10', '1k4', '0f9', '??5', '2n0', 'off0t3', '-', '2b1~', '?u?')
    const flag = fc.record({
      rule: fc.constantFrom(...RULE_IDS),
      level: fc.constantFrom('note', 'hold', 'ease-back'),
      n: fc.nat(41),
    })
    const start = '2026-10-05'
    fc.assert(
      fc.property(
        fc.array(word, { minLength: 1, maxLength: 42 }),
        fc.array(flag, { maxLength: 14 }),
        fc.stringMatching(/^[A-Za-z0-9-]{1,32}$/),
        (diaryWords, flags, ref) => {
          const log = {
            ref,
            direction: 'peripheralising',
            baseline: { reach: 'buttock', pain: 10 },
            flags: flags.map(({ n, ...flag }) => ({ ...flag, day: addDays(start, n), figures: {} })),
            rungChanges: [],
          } as const
          const on = addDays(start, diaryWords.length - 1)
          const svg = digestPicture(weeksOf(diary(start, diaryWords.join(' ')), log, on), words, 'dark')
          expect(overlaps(boxesOf(svg))).toEqual([])
        },
      ),
      { numRuns: 25 },
    )
  })

  it('would be told of a label that lies upon another', () => {
    const text = (y: number): string => `<text x="10" y="${y}" font-size="12">calf</text>`
    expect(overlaps(boxesOf(text(20) + text(24)))).toEqual(['calf / calf'])
    expect(overlaps(boxesOf(text(20) + text(40)))).toEqual([])
  })
})

describe('what is drawn', () => {
  it('breaks the pain line and the steps of the reach where an answer is missing', () => {
    const pain = svgOf('improving').match(/<path d="([^"]*)" fill="none" stroke="#8f3a0e"/)![1]!
    // four gaps in the diary, the last at its end: four pieces
    expect(pain.match(/M/g)).toHaveLength(4)
    const steps = svgOf('improving').match(/stroke="#155550" stroke-width="3"/g)
    expect(steps).toHaveLength(4)
  })

  it('puts the back above the foot, and reach further down the leg further down', () => {
    const svg = svgOf('improving')
    const y = (label: string): number =>
      Number(svg.match(new RegExp(`y="([\\d.]+)"[^>]*>${label}</text>`))![1])
    const zones = ['none', 'back', 'buttock', 'thigh', 'knee', 'calf', 'foot'].map(y)
    expect(zones).toEqual(zones.toSorted((a, b) => a - b))
  })

  it('hatches days without reply in each of the four panels and says so', () => {
    const svg = svgOf('improving')
    expect(svg.match(/fill="url\(#no-reply\)"/g)).toHaveLength(4 * 4)
    expect(svg).toContain('hatched: no reply')
    expect(svgOf('oddName')).not.toContain('hatched: no reply')
  })

  it('rings the worst day of pain and gives its number', () => {
    expect(svgOf('urgent')).toContain('>worst 9</text>')
    expect(svgOf('painless')).toContain('>worst 0</text>')
    expect(svgOf('blank')).not.toContain('worst ')
  })

  it('shows days filled in later as rings, and days off as crosses, each said beside', () => {
    expect(svgOf('improving')).toContain('ring: filled in later')
    expect(svgOf('daysOff')).toContain('cross: day off')
    expect(svgOf('sparse')).not.toContain('cross: day off')
  })

  it('keeps the meaning of marks apart by shape alone', () => {
    const shapes = [
      shapeOf({ kind: 'sign', day: '2026-03-02', sign: 'bladder-change', care: 'emergency' }),
      shapeOf({ kind: 'flag', day: '2026-03-02', rule: 'pain-up', level: 'hold', figures: {} }),
      shapeOf({ kind: 'flag', day: '2026-03-02', rule: 'gate', level: 'note', figures: {} }),
      shapeOf({ kind: 'decision', day: '2026-03-02', decision: 'advance', ladder: 'glide' }),
      shapeOf({ kind: 'decision', day: '2026-03-02', decision: 'ease-back', ladder: 'glide' }),
      shapeOf({ kind: 'decision', day: '2026-03-02', decision: 'refer', ladder: null }),
      shapeOf({ kind: 'signs-ended', day: '2026-03-02', signs: ['bladder-change'], how: 'cleared' }),
    ]
    expect(shapes).toEqual(MARK_SHAPES)
  })

  it('never lets a name in as markup', () => {
    const svg = svgOf('oddName')
    expect(svg).not.toContain('<b>')
    expect(svg).toContain('&lt;b&gt;&amp;&quot;&#39;wren')
    for (const hidden of ['\u0007', '\u202e']) expect(svg).not.toContain(hidden)
  })
})

describe('the palettes', () => {
  const light = (hex: string): number => {
    const [r, g, b] = [1, 3, 5]
      .map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255)
      .map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4)) as [number, number, number]
    return 0.2126 * r + 0.7152 * g + 0.0722 * b
  }
  /** Contrast ratio as WCAG 2.2 defines it. */
  const contrast = (a: string, b: string): number => {
    const [high, low] = [light(a), light(b)].sort((x, y) => y - x) as [number, number]
    return (high + 0.05) / (low + 0.05)
  }

  it('reckon contrast as the standard does', () => {
    // WCAG 2.2: black on white is 21:1; #767676 on white is the darkest grey's well-known 4.54:1 (from memory)
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5)
    expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2)
  })

  it.each(['light', 'dark'] as const)(
    '%s: words at least 4.5 to the card, lines that mean something 3',
    (theme) => {
      const { card, ink, quiet, pain, alarm, reach, reachFill, sessions } = PALETTES[theme]
      for (const colour of [ink, quiet, pain, alarm])
        expect(contrast(colour, card)).toBeGreaterThanOrEqual(4.5)
      for (const colour of [reach, sessions]) expect(contrast(colour, card)).toBeGreaterThanOrEqual(3)
      expect(contrast(reach, reachFill)).toBeGreaterThanOrEqual(3)
    },
  )
})

describe('the PNG', () => {
  it('uses the font of the package alone: letters are drawn', () => {
    const { png } = drawWeeks(CASES.improving!, { theme: 'light', words })
    const wordless = { ...words, reachTitle: ' ', painTitle: ' ', sessionsTitle: ' ' }
    const other = drawWeeks(CASES.improving!, { theme: 'light', words: wordless })
    const hash = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex')
    expect(hash(png)).not.toBe(hash(other.png))
  })
})
