import { setImmediate as turn } from 'node:timers/promises'
import { digestPicture } from '../digest-picture.ts'
import { PALETTES } from '../palette.ts'
import { pngBeside } from '../png.ts'
import type { PictureWords } from '../words.ts'
import { BOLD, documentWith, REGULAR } from './ruler.ts'
import type { SheetMark } from './sheet.ts'

const { ink, quiet, rim } = PALETTES.light
/** Pixels across half a page: some 260 an inch. */
const PICTURE_PIXELS = 900
/** Setting words takes time; after so many whatever else waits has its turn. */
const MARKS_A_TURN = 20

export interface About {
  readonly title: string
  /** BCP 47, for whatever reads the page aloud. */
  readonly language: string
  readonly made: Date
}

/** The page as a PDF of one page, its words as text in the embedded type. */
export async function sheetPdf(
  marks: readonly SheetMark[],
  { title, language, made }: About,
  words: PictureWords,
): Promise<Uint8Array> {
  const info = { Title: title, CreationDate: made }
  const document = documentWith({ size: 'A4', margin: 0, lang: language, displayTitle: true, info })
  const chunks: Uint8Array[] = []
  const done = new Promise<Uint8Array>((resolve, reject) => {
    document.on('data', (chunk) => chunks.push(chunk))
    document.on('end', () => resolve(Buffer.concat(chunks)))
    document.on('error', reject)
  })
  for (const [n, mark] of marks.entries()) {
    await draw(document, mark, words)
    if (n % MARKS_A_TURN === MARKS_A_TURN - 1) await turn()
  }
  document.end()
  return done
}

async function draw(document: PDFKit.Document, mark: SheetMark, words: PictureWords): Promise<void> {
  if (mark.kind === 'rule') {
    const { x, y, width } = mark
    document
      .moveTo(x, y)
      .lineTo(x + width, y)
      .lineWidth(0.8)
      .stroke(rim)
  } else if (mark.kind === 'picture') {
    const { x, y, width, height } = mark
    const png = await pngBeside(digestPicture(mark.weeks, words, 'light'), PICTURE_PIXELS)
    document.image(png, x, y, { width, height })
  } else {
    document
      .font(mark.bold ? BOLD : REGULAR)
      .fontSize(mark.size)
      .fillColor(mark.quiet ? quiet : ink)
      .text(mark.words, mark.x, mark.y, { lineBreak: false, baseline: 'alphabetic' })
  }
}
