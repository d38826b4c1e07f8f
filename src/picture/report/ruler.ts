import PDFDocument from 'pdfkit'
import { BOLD_FILE, REGULAR_FILE } from '../png.ts'
import type { Measure } from './sheet.ts'

export const REGULAR = 'regular'
export const BOLD = 'bold'

/** An empty document with the two faces that the page is set in. */
export function documentWith(options: PDFKit.Options): PDFKit.Document {
  const document = new PDFDocument({ ...options, font: REGULAR_FILE })
  document.registerFont(REGULAR, REGULAR_FILE)
  document.registerFont(BOLD, BOLD_FILE)
  return document
}

// In parts of the size, by letter: looking one up in the font takes a thousand times as long as reading it here.
const WIDTHS = new Map<string, number>()

/** Measures words with the very type that the PDF embeds and the picture is drawn with, letter by letter. */
export function createRuler(): Measure {
  let document: PDFKit.Document | null = null
  const ems = (letter: string, bold: boolean): number => {
    const key = (bold ? BOLD : REGULAR) + letter
    const known = WIDTHS.get(key)
    if (known !== undefined) return known
    document ??= documentWith({ size: 'A4' })
    const width = document
      .font(bold ? BOLD : REGULAR)
      .fontSize(1)
      .widthOfString(letter)
    WIDTHS.set(key, width)
    return width
  }
  return (words, size, bold) => {
    let width = 0
    for (const letter of words) width += ems(letter, bold)
    return width * size
  }
}
