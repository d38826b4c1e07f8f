import { type ScaleLinear, scaleLinear } from 'd3-scale'
import type { Weeks } from '../domain/digest/weeks.ts'
import type { Palette } from './palette.ts'
import type { PictureWords } from './words.ts'

/** User units; one is a pixel on a phone that shows the picture 400 wide. */
export const WIDTH = 400
export const MARGIN = 12
export const PLOT = { left: 76, right: 388 } as const
/** Right edge of the words at the left of the panels. */
export const LABELS_END = 56
/** The smallest that is read on a phone at arm's length. */
export const SMALL = 12
export const TITLE = 13

/** What every part of the picture is drawn with. */
export interface Frame {
  readonly weeks: Weeks
  readonly words: PictureWords
  readonly palette: Palette
  /** Left edge of the day with this index. */
  readonly x: ScaleLinear<number, number>
  readonly dayWidth: number
}

export function frameOf(weeks: Weeks, words: PictureWords, palette: Palette): Frame {
  const x = scaleLinear().domain([0, weeks.days.length]).range([PLOT.left, PLOT.right])
  return { weeks, words, palette, x, dayWidth: x(1) - x(0) }
}

/** A part of the picture and the height that it takes. */
export interface Part {
  readonly markup: string
  readonly height: number
}

/** A part drawn over the days, whose plot begins and ends at these heights. */
export interface Panel extends Part {
  readonly plot: { readonly top: number; readonly bottom: number }
}

/** Dashes of the line that stands for the baseline. */
export const DASHES = '6 4'

/** Runs of neighbouring days for which `is` holds, as [first index, index after the last]. */
export function runs<T>(items: readonly T[], is: (item: T) => boolean): [number, number][] {
  const found: [number, number][] = []
  items.forEach((item, index) => {
    if (!is(item)) return
    const last = found.at(-1)
    if (last !== undefined && last[1] === index) last[1] = index + 1
    else found.push([index, index + 1])
  })
  return found
}
