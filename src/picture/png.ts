import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { Resvg, renderAsync } from '@resvg/resvg-js'
import { FAMILY } from './lettering.ts'

const fonts = join(dirname(createRequire(import.meta.url).resolve('dejavu-fonts-ttf/package.json')), 'ttf')
// only these files, so that a machine's own fonts never change the picture
export const REGULAR_FILE = join(fonts, 'DejaVuSansCondensed.ttf')
export const BOLD_FILE = join(fonts, 'DejaVuSansCondensed-Bold.ttf')

/** Twice the width of a phone's picture, for sharp letters. */
const PIXELS = 800

const optionsFor = (width: number) => ({
  fitTo: { mode: 'width' as const, value: width },
  font: { fontFiles: [REGULAR_FILE, BOLD_FILE], loadSystemFonts: false, defaultFontFamily: FAMILY },
})

/** An SVG as PNG, 800 pixels wide unless told; the same bytes each time. Throws where it is no SVG. */
export const pngOf = (svg: string, width: number = PIXELS): Uint8Array =>
  new Resvg(svg, optionsFor(width)).render().asPng()

/** The same beside the event loop: a whole page takes so long that an urgent message must not wait for it. */
export const pngBeside = async (svg: string, width: number): Promise<Uint8Array> =>
  (await renderAsync(svg, optionsFor(width))).asPng()
