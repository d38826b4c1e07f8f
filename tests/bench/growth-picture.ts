import { scaleLog } from 'd3-scale'
import { line as path } from 'd3-shape'
import { FAMILY } from '../../src/picture/lettering.ts'
import { PALETTES } from '../../src/picture/palette.ts'
import { element, line, rect, text, title } from '../../src/picture/svg.ts'
import type { Figure } from './measure.ts'

/** What one thing costs, by the number of clients. */
export interface Curve {
  readonly name: string
  /** Milliseconds of processor time. */
  readonly points: readonly (Figure & { readonly clients: number })[]
}

export const WIDTH = 720
const HEIGHT = 400
const PLOT = { left: 76, right: 676, top: 104, bottom: 350 }
const SMALL = 13
const LEAST_MS = 0.01
const MOST_MS = 100
const palette = PALETTES.light
/** Each curve has its own mark, so that colour only decorates. */
const STYLES = [
  { stroke: palette.reach, dashes: null, mark: 'circle' },
  { stroke: palette.pain, dashes: '7 4', mark: 'square' },
  { stroke: palette.sessions, dashes: '2 4', mark: 'diamond' },
] as const

const x = scaleLog().domain([100, 100_000]).range([PLOT.left, PLOT.right])
const y = scaleLog().domain([LEAST_MS, MOST_MS]).range([PLOT.bottom, PLOT.top])
const powers = (from: number, to: number): number[] =>
  Array.from({ length: Math.round(Math.log10(to / from)) + 1 }, (_, n) => from * 10 ** n)

/** Costs against clients, both by powers of ten, with the spread of the rounds. */
export function growthPicture(curves: readonly Curve[]): string {
  return element(
    'svg',
    {
      ...{ xmlns: 'http://www.w3.org/2000/svg', viewBox: `0 0 ${WIDTH} ${HEIGHT}` },
      ...{ 'font-family': FAMILY, 'font-size': SMALL, fill: palette.ink },
    },
    title('What one thing costs, by the number of clients'),
    rect(0, 0, WIDTH, HEIGHT, { fill: palette.card }),
    ...powers(LEAST_MS, MOST_MS).map(costLine),
    ...powers(100, 100_000).map(clientsLabel),
    text('clients on file', {
      x: PLOT.right,
      y: PLOT.bottom + 42,
      'text-anchor': 'end',
      fill: palette.quiet,
    }),
    text('processor time, ms', { x: 16, y: PLOT.top - 16, fill: palette.quiet }),
    ...curves.map(curveOf),
    ...curves.map(({ name }, n) => legend(name, n)),
  )
}

const costLine = (ms: number): string =>
  line(PLOT.left, y(ms), PLOT.right, y(ms), { stroke: palette.grid }) +
  text(String(Number(ms.toPrecision(1))), {
    ...{ x: PLOT.left - 10, y: y(ms) + 4, 'text-anchor': 'end', fill: palette.quiet },
  })

const clientsLabel = (clients: number): string =>
  line(x(clients), PLOT.top, x(clients), PLOT.bottom, { stroke: palette.grid }) +
  text(clients.toLocaleString('en'), {
    ...{ x: x(clients), y: PLOT.bottom + 22, 'text-anchor': 'middle', fill: palette.quiet },
  })

function curveOf({ points }: Curve, n: number): string {
  const { stroke, dashes } = STYLES[n]!
  const curve = path<Curve['points'][number]>()
    .x(({ clients }) => x(clients))
    .y(({ median }) => y(median))
  const spread = points.map(({ clients, least, most }) =>
    line(x(clients), y(least), x(clients), y(most), { stroke, 'stroke-width': 1.2 }),
  )
  const marks = points.map(({ clients, median }) => markOf(n, x(clients), y(median)))
  const d = curve(points)
  return (
    element('path', { d, fill: 'none', stroke, 'stroke-width': 2.2, 'stroke-dasharray': dashes }) +
    [...spread, ...marks].join('')
  )
}

function legend(name: string, n: number): string {
  const top = 26 + n * 20
  const { stroke, dashes } = STYLES[n]!
  return (
    line(PLOT.left, top - 4, PLOT.left + 36, top - 4, {
      ...{ stroke, 'stroke-width': 2.2, 'stroke-dasharray': dashes },
    }) +
    markOf(n, PLOT.left + 18, top - 4) +
    text(name, { x: PLOT.left + 48, y: top })
  )
}

function markOf(n: number, cx: number, cy: number): string {
  const { stroke: fill, mark } = STYLES[n]!
  if (mark === 'circle') return element('circle', { cx, cy, r: 4, fill })
  const transform = mark === 'diamond' ? `rotate(45 ${cx} ${cy})` : null
  return rect(cx - 3.8, cy - 3.8, 7.6, 7.6, { fill, transform })
}
