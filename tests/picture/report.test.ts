import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Item, Page } from '../../src/domain/report/page.ts'
import { reportFacts } from '../../src/domain/report/report.ts'
import { drawReportPdf, drawReportPng } from '../../src/picture/report/index.ts'
import { layOut } from '../../src/picture/report/layout.ts'
import { createRuler } from '../../src/picture/report/ruler.ts'
import { PAGE, type SheetMark } from '../../src/picture/report/sheet.ts'
import { pictureWords } from '../../src/text/en/digest-picture.ts'
import { reportPage } from '../../src/text/en/report.ts'
import { course, hostile } from '../domain/report/course.ts'
import { readPdf } from './pdf-text.ts'

const facts = reportFacts(course(98))
const drawing = { words: pictureWords, language: 'en', made: facts.made }
const measure = createRuler()

/** Marks that reach beyond the margins of the page. */
const outside = (marks: readonly SheetMark[]): SheetMark[] =>
  marks.filter((mark) => {
    const width = mark.kind === 'words' ? measure(mark.words, mark.size, mark.bold) : mark.width
    const right = PAGE.width - PAGE.margin + 0.5
    return mark.x < PAGE.margin - 0.5 || mark.x + width > right || mark.y > PAGE.height - PAGE.margin + 0.5
  })

/** Words of the columns that stand on or below the rule above the foot. */
const inTheFoot = (marks: readonly SheetMark[]): SheetMark[] => {
  const rule = marks.filter(({ kind }) => kind === 'rule').at(-1)!
  return marks.filter((mark) => mark.kind === 'words' && mark.size > 7 && mark.y > rule.y)
}

describe('the page of the report', () => {
  it.each([
    ['a course of 14 weeks', facts],
    ['as much as may ever stand in it, none of it well-behaved', hostile],
    ['a first day', reportFacts(course(1))],
    ['two years', reportFacts(course(730))],
  ])('holds %s within its margins', (_, given) => {
    const marks = layOut(reportPage(given), measure, pictureWords)
    expect(outside(marks)).toEqual([])
    expect(inTheFoot(marks)).toEqual([])
  })

  it('says how many it had no room for', () => {
    const marks = layOut(reportPage(hostile), measure, pictureWords)
    const said = marks.flatMap((mark) => (mark.kind === 'words' ? [mark.words] : []))
    const [signs] = said.flatMap((words) => /^and (\d+) more, earlier/.exec(words)?.[1] ?? [])
    const [events] = said.flatMap((words) => /^and (\d+) earlier, see/.exec(words)?.[1] ?? [])
    const shown = said.filter((words) => words.startsWith('bladder change (emergency)')).length
    expect(Number(signs) + shown).toBe(12)
    // decisions give way before signs do
    expect(shown).toBeGreaterThanOrEqual(3)
    const days = said.filter((words) => /^\d+ \w{3}:$/.test(words)).length
    expect(Number(events) + days).toBe(hostile.events.length)
  })

  it('holds any words in any number (property)', () => {
    const item: fc.Arbitrary<Item> = fc.record({
      lead: fc.string({ unit: 'grapheme', maxLength: 120 }),
      words: fc.string({ unit: 'grapheme', maxLength: 500 }),
      most: fc.integer({ min: 1, max: 4 }),
    })
    const page = reportPage(facts)
    fc.assert(
      fc.property(fc.array(item, { maxLength: 80 }), fc.constantFrom('first', 'last'), (items, drop) => {
        const block = {
          kind: 'list' as const,
          title: 'Any',
          items,
          drop,
          least: 2,
          more: (n: number) => `and ${n} more`,
        }
        const full: Page = { ...page, left: [block, ...page.left], right: [...page.right, block] }
        const marks = layOut(full, measure, pictureWords)
        expect(outside(marks)).toEqual([])
        expect(inTheFoot(marks)).toEqual([])
      }),
      { numRuns: 15 },
    )
  })
})

describe('the report as a PDF', () => {
  it('is one page of A4 with words that can be copied, in its own type', async () => {
    const data = await drawReportPdf(reportPage(facts), drawing)
    const pdf = readPdf(data)
    expect(pdf.pages).toBe(1)
    // regular and bold
    expect(pdf.embedded).toBe(2)
    expect(pdf.text).toContain('Report for a clinician: heron')
    expect(pdf.text).toContain('This is a record of self-reported check-ins and not a diagnosis.')
    expect(pdf.text).toContain('start to pee')
    expect(Buffer.from(data).toString('latin1')).toContain('/MediaBox [0 0 595.28 841.89]')
  })

  it('is one page whatever it is given', async () => {
    const pdf = readPdf(await drawReportPdf(reportPage(hostile), drawing))
    expect(pdf.pages).toBe(1)
    expect(pdf.text).toContain('<script>alert("x")</script>')
  })

  it('has the same bytes each time', async () => {
    const twice = [
      await drawReportPdf(reportPage(facts), drawing),
      await drawReportPdf(reportPage(facts), drawing),
    ]
    expect(Buffer.compare(twice[0]!, twice[1]!)).toBe(0)
  })
})

describe('the report as a picture', () => {
  it('is a PNG of the whole page', async () => {
    const png = Buffer.from(await drawReportPng(reportPage(hostile), drawing))
    expect(png.subarray(1, 4).toString()).toBe('PNG')
    expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([1240, 1754])
  })
})
