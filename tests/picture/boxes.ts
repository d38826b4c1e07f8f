import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { Resvg } from '@resvg/resvg-js'

export interface Box {
  readonly what: string
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

const ttf = join(dirname(createRequire(import.meta.url).resolve('dejavu-fonts-ttf/package.json')), 'ttf')
const font = {
  fontFiles: ['DejaVuSansCondensed.ttf', 'DejaVuSansCondensed-Bold.ttf'].map((name) => join(ttf, name)),
  loadSystemFonts: false,
}

/** The box of a piece of SVG as it is really drawn, letters measured in the font of the picture. */
function boxOf(markup: string, what: string): Box {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="400" height="2000" font-family="DejaVu Sans Condensed">${markup}</svg>`
  const box = new Resvg(svg, { font }).getBBox()
  if (box === undefined) throw new Error(`nothing drawn: ${markup}`)
  return { what, left: box.x, top: box.y, right: box.x + box.width, bottom: box.y + box.height }
}

const words = (markup: string): string => markup.replace(/<[^>]*>/g, ' ').trim()
const TEXT = /<text\b.*?<\/text>/g
const MARK = /<g role="img" data-shape="[^"]*">(.*?)<\/g>/g

/** Each text of its own and each mark (shape and number as one) of a picture. */
export function boxesOf(svg: string): Box[] {
  const marks = [...svg.matchAll(MARK)].map(([, inner]) =>
    boxOf(inner!.replace(/<title>.*?<\/title>/, ''), 'mark'),
  )
  const texts = [...svg.replaceAll(MARK, '').matchAll(TEXT)].map(([text]) => boxOf(text, words(text)))
  return [...marks, ...texts]
}

/** Pairs that lie on each other by more than half a unit. */
export function overlaps(boxes: readonly Box[]): string[] {
  const found: string[] = []
  boxes.forEach((a, n) => {
    for (const b of boxes.slice(n + 1)) {
      const wide = Math.min(a.right, b.right) - Math.max(a.left, b.left)
      const high = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top)
      if (wide > 0.5 && high > 0.5) found.push(`${a.what} / ${b.what}`)
    }
  })
  return found
}
