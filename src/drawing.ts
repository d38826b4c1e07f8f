import type { Weeks } from './domain/digest/weeks.ts'
import type { DrawnReport } from './engine/coach/report.ts'
import type { Drawn, Picture } from './engine/message.ts'
import type { drawReportPng } from './picture/report/index.ts'
import { textsFor } from './text/index.ts'

// What draws is loaded when something is to be drawn: a start need not wait for it.
const report = () => import('./picture/report/index.ts')

/** The picture of a message, drawn from its facts: a client's weeks, or the page for a clinician. */
export const draw = once(async ({ draw, facts, language = 'en' }: Picture): Promise<{ png: Uint8Array }> => {
  if (draw === 'report') {
    const { drawReportPng } = await report()
    return { png: await drawReportPng(...pageOf(facts as DrawnReport)) }
  }
  const { drawWeeks } = await import('./picture/index.ts')
  return drawWeeks(facts as Weeks, { theme: 'light', words: textsFor(language).digest.picture })
})

/** A file of a message, drawn from its facts: the page for a clinician as a PDF. */
export const drawFile = once(async ({ facts }: Drawn): Promise<Uint8Array> => {
  const { drawReportPdf } = await report()
  return drawReportPdf(...pageOf(facts as DrawnReport))
})

/** What is asked for again of the same message is drawn already: sent anew, or shown by a rehearsal. */
function once<From extends object, T>(make: (from: From) => Promise<T>): (from: From) => Promise<T> {
  const made = new WeakMap<From, Promise<T>>()
  return (from) => {
    const drawn = made.get(from) ?? make(from)
    made.set(from, drawn)
    drawn.catch(() => made.delete(from))
    return drawn
  }
}

/** The page in words, and with what it is drawn. */
export function pageOf({ language, facts }: DrawnReport): Parameters<typeof drawReportPng> {
  const { report, digest } = textsFor(language)
  return [report.page(facts), { words: digest.picture, language, made: facts.made }]
}
