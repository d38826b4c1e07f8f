import { area, line as path } from 'd3-shape'
import { REACHES, rank } from '../domain/reach.ts'
import { DASHES, type Frame, LABELS_END, type Panel, PLOT, runs, SMALL } from './frame.ts'
import { panelTitle, TITLE_HEIGHT } from './panel-title.ts'
import { element, line, text, title } from './svg.ts'

const ROW = 16

/** Reach as steps that hang from the spine: the further they come down, the further down the leg. */
export function reachPanel(frame: Frame, top: number): Panel {
  const { weeks, words, palette, x } = frame
  const y = (value: number): number => top + TITLE_HEIGHT + ROW * (value + 0.5)
  const baseline = weeks.baseline.reach
  const rows = REACHES.map((reach, value) => {
    const label = { x: LABELS_END, y: y(value) + 4, 'text-anchor': 'end', 'font-size': SMALL }
    return (
      line(PLOT.left, y(value), PLOT.right, y(value), { stroke: palette.grid }) +
      text(words.reachNames[reach], { ...label, fill: palette.quiet })
    )
  })
  const steps = runs(weeks.days, ({ reach }) => reach !== null).map(([from, to]) => {
    const corners = weeks.days.slice(from, to).flatMap(({ reach }, n): [number, number][] => {
      const level = y(rank(reach!))
      return [
        [x(from + n), level],
        [x(from + n + 1), level],
      ]
    })
    return (
      element('path', { d: area().y0(y(0))(corners), fill: palette.reachFill, 'fill-opacity': 0.85 }) +
      element('path', { d: path()(corners), fill: 'none', stroke: palette.reach, 'stroke-width': 3 })
    )
  })
  const dashed =
    baseline === null
      ? ''
      : line(PLOT.left, y(rank(baseline)), PLOT.right, y(rank(baseline)), {
          stroke: palette.quiet,
          'stroke-dasharray': DASHES,
        })
  const hint = baseline === null ? '' : words.baseline(words.reachNames[baseline])
  const heading = panelTitle(frame, top, words.reachTitle, hint)
  const markup = element(
    'g',
    { role: 'img' },
    title(words.reachTitle),
    heading,
    ...rows,
    ...steps,
    dashed,
    leg(frame, y),
  )
  const height = TITLE_HEIGHT + ROW * REACHES.length
  return { markup, height: height + 2, plot: { top: y(0), bottom: y(6) } }
}

/** A small spine and leg beside the names of the zones. */
function leg({ palette }: Frame, y: (value: number) => number): string {
  const x = (LABELS_END + PLOT.left) / 2 + 1
  const limb = { stroke: palette.ink, 'stroke-linecap': 'round' }
  const vertebrae = [-0.35, -0.05, 0.25].map((offset) =>
    element('rect', {
      x: x - 4,
      y: y(1 + offset) - 1.6,
      width: 8,
      height: 3.4,
      rx: 1,
      fill: palette.ink,
    }),
  )
  const joint = (value: number, r: number): string =>
    element('circle', { cx: x, cy: y(value), r, fill: palette.card, stroke: palette.ink, 'stroke-width': 2 })
  return [
    ...vertebrae,
    line(x, y(2), x, y(4), { ...limb, 'stroke-width': 4.5 }),
    line(x, y(4), x, y(6), { ...limb, 'stroke-width': 3 }),
    line(x, y(6), x + 6, y(6) + 1.5, { ...limb, 'stroke-width': 3.5 }),
    joint(2, 4.5),
    joint(4, 3.5),
  ].join('')
}
