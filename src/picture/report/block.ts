import type { ListBlock, PageBlock, TableBlock } from '../../domain/report/page.ts'
import { digestCard } from '../digest-picture.ts'
import type { PictureWords } from '../words.ts'
import { type Measure, type SheetMark, words } from './sheet.ts'
import { type Line, wrap } from './wrap.ts'

/** The smallest that is read on paper without effort. */
const SIZE = 8.2
const LINE = 10.6
const TITLE = { size: 9, bold: true } as const
const TITLE_HEIGHT = 14
/** Between items, and below a block. */
const ITEM_GAP = 1.4
export const BLOCK_GAP = 9
const PICTURE_MOST = 400

/** A block on its way to the page: how many of its parts are left out, for want of room. */
export interface Placing {
  readonly block: PageBlock
  readonly hidden: number
}
export interface Setting {
  readonly width: number
  readonly measure: Measure
  readonly pictureWords: PictureWords
}

/** A block as marks whose upper left corner is (0, 0). */
export interface Placed {
  readonly height: number
  readonly marks: readonly SheetMark[]
}

/** How many parts a block has that can be left out. */
export const partsOf = (block: PageBlock): number =>
  block.kind === 'picture' ? 0 : block.kind === 'list' ? block.items.length : block.rows.length

export function place({ block, hidden }: Placing, setting: Setting): Placed {
  if (block.kind === 'picture') return picture(block.weeks, setting)
  return block.kind === 'list' ? list(block, hidden, setting) : table(block, hidden, setting)
}

function picture(weeks: Parameters<typeof digestCard>[0], { width, pictureWords }: Setting): Placed {
  const card = digestCard(weeks, pictureWords, 'light')
  const height = Math.min(PICTURE_MOST, (width * card.height) / card.width)
  const fitting = (height * card.width) / card.height
  return {
    height,
    marks: [{ kind: 'picture', weeks, x: (width - fitting) / 2, y: 0, width: fitting, height }],
  }
}

const shown = <T>(items: readonly T[], hidden: number, drop: 'first' | 'last'): readonly T[] =>
  drop === 'first' ? items.slice(hidden) : items.slice(0, items.length - hidden)

function list(block: ListBlock, hidden: number, setting: Setting): Placed {
  const room = { width: setting.width, size: SIZE, measure: setting.measure }
  const items = shown(block.items, hidden, block.drop).map(({ lead, words, most }) =>
    wrap([...(lead ? [{ words: `${lead}:`, bold: true }] : []), { words, bold: false }], { ...room, most }),
  )
  const more = wrap([{ words: block.more(hidden), bold: false }], { ...room, most: 1 })
  const rows = hidden === 0 ? items : block.drop === 'first' ? [more, ...items] : [...items, more]
  const marks: SheetMark[] = [words(block.title, 0, TITLE.size, TITLE)]
  let top = TITLE_HEIGHT
  for (const lines of rows) {
    for (const line of lines) {
      marks.push(...lineMarks(line, 0, top + SIZE, setting, hidden > 0 && lines === more))
      top += LINE
    }
    top += ITEM_GAP
  }
  return { height: top, marks }
}

function lineMarks(line: Line, x: number, y: number, { measure }: Setting, quiet: boolean): SheetMark[] {
  let at = x
  return line.map(({ words: run, bold, width }) => {
    const mark = words(run, at, y, { size: SIZE, bold, quiet })
    at += width + measure(' ', SIZE, false)
    return mark
  })
}

function table(block: TableBlock, hidden: number, setting: Setting): Placed {
  const { width } = setting
  const starts = block.columns.map((_, n) => block.columns.slice(0, n).reduce((sum, c) => sum + c, 0) * width)
  const row = (cells: readonly string[], top: number, quiet: boolean): SheetMark[] =>
    cells.flatMap((cell, n) => {
      const room = { width: block.columns[n]! * width - 3, size: SIZE, most: 1, measure: setting.measure }
      const [line] = wrap([{ words: cell, bold: false }], room)
      return lineMarks(line ?? [], starts[n]!, top + SIZE, setting, quiet)
    })
  const marks: SheetMark[] = [
    words(block.title, 0, TITLE.size, TITLE),
    ...row(block.head, TITLE_HEIGHT, true),
  ]
  let top = TITLE_HEIGHT + LINE
  if (hidden > 0) {
    marks.push(words(block.more(hidden), 0, top + SIZE, { size: SIZE, quiet: true }))
    top += LINE
  }
  for (const cells of shown(block.rows, hidden, block.drop)) {
    marks.push(...row(cells, top, false))
    top += LINE
  }
  return { height: top + ITEM_GAP, marks }
}
