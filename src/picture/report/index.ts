import type { Day } from '../../domain/day.ts'
import type { Page } from '../../domain/report/page.ts'
import { pngBeside } from '../png.ts'
import type { PictureWords } from '../words.ts'
import { layOut } from './layout.ts'
import { sheetPdf } from './pdf.ts'
import { createRuler } from './ruler.ts'
import { sheetSvg } from './svg.ts'

/** What the page is drawn with. */
export interface Drawing {
  readonly words: PictureWords
  /** BCP 47. */
  readonly language: string
  readonly made: Day
}

/** Pixels across the page: 150 an inch. */
const PIXELS = 1240

/** The report for a clinician as a picture of one A4 page, 1240 pixels wide. */
export function drawReportPng(page: Page, { words }: Drawing): Promise<Uint8Array> {
  return pngBeside(sheetSvg(layOut(page, createRuler(), words), titleOf(page), words), PIXELS)
}

/** The same page as a PDF. */
export function drawReportPdf(page: Page, { words, language, made }: Drawing): Promise<Uint8Array> {
  const about = { title: titleOf(page), language, made: new Date(`${made}T12:00:00Z`) }
  return sheetPdf(layOut(page, createRuler(), words), about, words)
}

const titleOf = ({ title, name }: Page): string => `${title}: ${name}`
