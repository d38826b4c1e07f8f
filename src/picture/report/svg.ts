import { digestCard } from '../digest-picture.ts'
import { FAMILY } from '../lettering.ts'
import { PALETTES } from '../palette.ts'
import { element, line, rect, text, title } from '../svg.ts'
import type { PictureWords } from '../words.ts'
import { PAGE, type SheetMark } from './sheet.ts'

const { ink, quiet, rim } = PALETTES.light

/** The page as one SVG on white paper. */
export function sheetSvg(marks: readonly SheetMark[], name: string, words: PictureWords): string {
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${PAGE.width} ${PAGE.height}`,
      width: PAGE.width,
      height: PAGE.height,
      role: 'img',
      'font-family': `${FAMILY}, sans-serif`,
    },
    title(name),
    rect(0, 0, PAGE.width, PAGE.height, { fill: '#ffffff' }),
    ...marks.map((mark) => drawn(mark, words)),
  )
}

function drawn(mark: SheetMark, words: PictureWords): string {
  if (mark.kind === 'rule')
    return line(mark.x, mark.y, mark.x + mark.width, mark.y, { stroke: rim, 'stroke-width': 0.8 })
  if (mark.kind === 'picture') {
    const card = digestCard(mark.weeks, words, 'light')
    const { x, y, width, height } = mark
    return element('svg', { x, y, width, height, viewBox: `0 0 ${card.width} ${card.height}` }, card.markup)
  }
  return text(mark.words, {
    x: mark.x,
    y: mark.y,
    'font-size': mark.size,
    'font-weight': mark.bold ? 'bold' : null,
    fill: mark.quiet ? quiet : ink,
    'xml:space': 'preserve',
  })
}
