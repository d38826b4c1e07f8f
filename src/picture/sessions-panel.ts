import { scaleLinear } from 'd3-scale'
import type { WeeksDay } from '../domain/digest/weeks.ts'
import { type Frame, LABELS_END, type Panel, PLOT, SMALL } from './frame.ts'
import { panelTitle, TITLE_HEIGHT } from './panel-title.ts'
import { element, line, rect, text, title } from './svg.ts'

const HEIGHT = 32
/** Keeps the number of the highest bar clear of the title. */
const HEADROOM = 5
const WIDEST_BAR = 18

/** Sessions as bars: an outline for what was planned, filled as far as it was done. */
export function sessionsPanel(frame: Frame, top: number): Panel {
  const { weeks, words, palette } = frame
  const most = Math.max(1, ...weeks.days.flatMap((day) => [day.planned ?? 0, day.sessions ?? 0]))
  const ground = top + TITLE_HEIGHT + HEADROOM + HEIGHT
  const y = scaleLinear()
    .domain([0, most])
    .range([ground, ground - HEIGHT])
  const ticks = [0, most].map((tick) =>
    text(String(tick), {
      x: LABELS_END + 14,
      y: y(tick) + 4,
      'text-anchor': 'end',
      'font-size': SMALL,
      fill: palette.quiet,
    }),
  )
  const off = weeks.days.some(({ planned }) => planned === 0)
  const markup = element(
    'g',
    { role: 'img' },
    title(words.sessionsTitle),
    panelTitle(frame, top, words.sessionsTitle, off ? words.dayOff : ''),
    ...ticks,
    line(PLOT.left, ground, PLOT.right, ground, { stroke: palette.weekLine }),
    ...weeks.days.map((day, index) => bar(frame, day, index, y)),
  )
  return { markup, height: ground - top + 6, plot: { top: ground - HEIGHT, bottom: ground } }
}

function bar(
  { x, dayWidth, palette }: Frame,
  { planned, sessions, state }: WeeksDay,
  index: number,
  y: (sessions: number) => number,
): string {
  if (state !== 'answered') return ''
  const width = Math.min(WIDEST_BAR, dayWidth * 0.7)
  const left = x(index) + (dayWidth - width) / 2
  const ground = y(0)
  const filled =
    sessions === null ? '' : rect(left, y(sessions), width, ground - y(sessions), { fill: palette.sessions })
  if (planned === 0) return filled + (sessions ? '' : cross(left + width / 2, ground - 6, palette.quiet))
  const outline = rect(left, y(planned ?? 0), width, ground - y(planned ?? 0), {
    fill: 'none',
    stroke: palette.sessions,
    'stroke-width': 1.2,
    // not answered is not none: a broken outline
    'stroke-dasharray': sessions === null ? '2 2' : null,
  })
  return filled + outline
}

const cross = (x: number, y: number, stroke: string): string =>
  line(x - 2.5, y - 2.5, x + 2.5, y + 2.5, { stroke, 'stroke-width': 1.6 }) +
  line(x - 2.5, y + 2.5, x + 2.5, y - 2.5, { stroke, 'stroke-width': 1.6 })
