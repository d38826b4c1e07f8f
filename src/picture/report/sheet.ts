import type { Weeks } from '../../domain/digest/weeks.ts'

/** Points of an A4 page (ISO 216: 210 x 297 mm). */
export const PAGE = { width: 595.28, height: 841.89, margin: 34 } as const

/** What stands on the page, each with its place in points from the upper left corner. */
export type SheetMark =
  | {
      readonly kind: 'words'
      readonly words: string
      readonly x: number
      /** Of the base line. */
      readonly y: number
      readonly size: number
      readonly bold: boolean
      readonly quiet: boolean
    }
  | { readonly kind: 'rule'; readonly x: number; readonly y: number; readonly width: number }
  | {
      readonly kind: 'picture'
      readonly weeks: Weeks
      readonly x: number
      readonly y: number
      readonly width: number
      readonly height: number
    }

/** Width of words in points, as the embedded type sets them. */
export type Measure = (words: string, size: number, bold: boolean) => number

export const words = (
  text: string,
  x: number,
  y: number,
  { size, bold = false, quiet = false }: { size: number; bold?: boolean; quiet?: boolean },
): SheetMark => ({ kind: 'words', words: text, x, y, size, bold, quiet })
