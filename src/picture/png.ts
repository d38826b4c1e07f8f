import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { Resvg } from '@resvg/resvg-js'
import { FAMILY } from './lettering.ts'

const fonts = join(dirname(createRequire(import.meta.url).resolve('dejavu-fonts-ttf/package.json')), 'ttf')
// only these files, so that a machine's own fonts never change the picture
const FONT_FILES = ['DejaVuSansCondensed.ttf', 'DejaVuSansCondensed-Bold.ttf'].map((name) =>
  join(fonts, name),
)

/** Twice the width of a phone's picture, for sharp letters. */
const PIXELS = 800

/** An SVG as PNG, 800 pixels wide unless told; the same bytes each time. Throws where it is no SVG. */
export function pngOf(svg: string, width: number = PIXELS): Uint8Array {
  const font = { fontFiles: FONT_FILES, loadSystemFonts: false, defaultFontFamily: FAMILY }
  return new Resvg(svg, { fitTo: { mode: 'width', value: width }, font }).render().asPng()
}
