import type { Page } from '../../domain/report/page.ts'
import type { PictureWords } from '../words.ts'
import { column } from './column.ts'
import { type Measure, PAGE, type SheetMark, words } from './sheet.ts'
import { wrap } from './wrap.ts'

const FULL = PAGE.width - 2 * PAGE.margin
const GUTTER = 20
const COLUMN = (FULL - GUTTER) / 2
const HEAD_HEIGHT = 66
// At arm's length this is still read; the page has no more room for what is the same in every report.
const FOOT_SIZE = 6.4
const FOOT_LINE = 8
const FOOT_LINES = 7

/** Everything on the page at its place; it is one page whatever the facts. */
export function layOut(page: Page, measure: Measure, pictureWords: PictureWords): SheetMark[] {
  const foot = footOf(page, measure)
  const setting = { width: COLUMN, measure, pictureWords }
  const between = { top: PAGE.margin + HEAD_HEIGHT, bottom: foot.top - 8 }
  return [
    ...head(page, measure),
    ...column(page.left, { ...setting, ...between, x: PAGE.margin }),
    ...column(page.right, { ...setting, ...between, x: PAGE.margin + COLUMN + GUTTER }),
    ...foot.marks,
  ]
}

function head({ title, name, made, notice }: Page, measure: Measure): SheetMark[] {
  const [x, top] = [PAGE.margin, PAGE.margin]
  const one = (text: string, size: number, bold: boolean): string =>
    (wrap([{ words: text, bold }], { width: FULL, size, most: 1, measure })[0] ?? [])
      .map((run) => run.words)
      .join(' ')
  return [
    words(one(`${title}: ${name}`, 15, true), x, top + 13, { size: 15, bold: true }),
    words(one(made, 9, false), x, top + 30, { size: 9, quiet: true }),
    words(one(notice, 9, true), x, top + 45, { size: 9, bold: true }),
    { kind: 'rule', x, y: top + 54, width: FULL },
  ]
}

function footOf({ foot }: Page, measure: Measure): { top: number; marks: SheetMark[] } {
  const room = { width: FULL, size: FOOT_SIZE, most: FOOT_LINES, measure }
  const lines = foot.flatMap((text) => wrap([{ words: text, bold: false }], room))
  const top = PAGE.height - PAGE.margin - lines.length * FOOT_LINE
  const marks = lines.map((line, n) =>
    words(line.map((run) => run.words).join(' '), PAGE.margin, top + (n + 1) * FOOT_LINE, {
      size: FOOT_SIZE,
      quiet: true,
    }),
  )
  return { top: top - 4, marks: [{ kind: 'rule', x: PAGE.margin, y: top - 2, width: FULL }, ...marks] }
}
