import type { Weeks } from '../domain/digest/weeks.ts'
import { digestPicture } from './digest-picture.ts'
import type { Theme } from './palette.ts'
import { pngOf } from './png.ts'
import type { PictureWords } from './words.ts'

export type { Theme } from './palette.ts'
export type { PictureWords } from './words.ts'

/** A client's weeks as a picture for the digest: SVG, and PNG 800 pixels wide. */
export function drawWeeks(
  weeks: Weeks,
  { theme, words }: { readonly theme: Theme; readonly words: PictureWords },
): { svg: string; png: Uint8Array } {
  const svg = digestPicture(weeks, words, theme)
  return { svg, png: pngOf(svg) }
}
