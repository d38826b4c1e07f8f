import { type Frame, MARGIN, SMALL, TITLE } from './frame.ts'
import { element, escapeXml } from './svg.ts'

/** From the top of a panel to its plot. */
export const TITLE_HEIGHT = 24

/** The name of a panel in bold and a short hint beside it. */
export function panelTitle({ palette }: Frame, top: number, name: string, hint: string): string {
  const bold = { 'font-size': TITLE, 'font-weight': 'bold', fill: palette.ink }
  const beside = { dx: 8, 'font-size': SMALL, fill: palette.quiet }
  const spans = [element('tspan', bold, escapeXml(name))]
  if (hint !== '') spans.push(element('tspan', beside, escapeXml(hint)))
  return element('text', { x: MARGIN, y: top + 16 }, ...spans)
}
