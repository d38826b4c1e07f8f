import { scaleLinear } from 'd3-scale'
import { line as path } from 'd3-shape'
import { DASHES, type Frame, LABELS_END, type Panel, PLOT, SMALL } from './frame.ts'
import { widthOf } from './lettering.ts'
import { panelTitle, TITLE_HEIGHT } from './panel-title.ts'
import { element, line, text, title } from './svg.ts'

const HEIGHT = 78
/** Room above 10 for the label of the worst day. */
const HEADROOM = 15
const TICKS = [0, 5, 10]

/** Pain as a line that breaks where an answer is missing, with its worst day ringed and named. */
export function painPanel(frame: Frame, top: number): Panel {
  const { weeks, words, palette, x, dayWidth } = frame
  const ground = top + TITLE_HEIGHT + HEADROOM + HEIGHT
  const y = scaleLinear()
    .domain([0, 10])
    .range([ground, ground - HEIGHT])
  const points = weeks.days.map(({ pain }, index) => ({ x: x(index) + dayWidth / 2, pain }))
  const ticks = TICKS.map(
    (tick) =>
      line(PLOT.left, y(tick), PLOT.right, y(tick), { stroke: palette.grid }) +
      text(String(tick), {
        x: LABELS_END + 14,
        y: y(tick) + 4,
        'text-anchor': 'end',
        'font-size': SMALL,
        fill: palette.quiet,
      }),
  )
  const baseline = weeks.baseline.pain
  const dashed =
    baseline === null
      ? ''
      : line(PLOT.left, y(baseline), PLOT.right, y(baseline), {
          stroke: palette.quiet,
          'stroke-dasharray': DASHES,
        })
  const curve = path<(typeof points)[number]>()
    .defined(({ pain }) => pain !== null)
    .x((point) => point.x)
    .y(({ pain }) => y(pain!))
  const dots = points
    .filter(({ pain }) => pain !== null)
    .map((point) => element('circle', { cx: point.x, cy: y(point.pain!), r: 2.6, fill: palette.pain }))
  const markup = element(
    'g',
    { role: 'img' },
    title(words.painTitle),
    panelTitle(frame, top, words.painTitle, baseline === null ? '' : words.baseline(String(baseline))),
    ...ticks,
    dashed,
    element('path', { d: curve(points), fill: 'none', stroke: palette.pain, 'stroke-width': 2.2 }),
    ...dots,
    worstDay(frame, points, y),
  )
  const plot = { top: ground - HEIGHT, bottom: ground }
  return { markup, height: TITLE_HEIGHT + HEADROOM + HEIGHT + 8, plot }
}

function worstDay(
  { words, palette }: Frame,
  points: readonly { readonly x: number; readonly pain: number | null }[],
  y: (pain: number) => number,
): string {
  const worst = Math.max(...points.map(({ pain }) => pain ?? -1))
  if (worst < 0) return ''
  const { x } = points.findLast(({ pain }) => pain === worst)!
  const label = words.worst(worst)
  const half = widthOf(label, SMALL, true) / 2
  return (
    element('circle', {
      cx: x,
      cy: y(worst),
      r: 5,
      fill: palette.card,
      stroke: palette.pain,
      'stroke-width': 2.4,
    }) +
    text(label, {
      x: Math.max(PLOT.left + half, Math.min(PLOT.right - half, x)),
      y: y(worst) - 9,
      'text-anchor': 'middle',
      'font-size': SMALL,
      'font-weight': 'bold',
      fill: palette.pain,
      // a rim of the card's colour keeps the words apart from the lines below them
      stroke: palette.card,
      'stroke-width': 3,
      'paint-order': 'stroke',
    })
  )
}
