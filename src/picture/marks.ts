import type { Mark } from '../domain/digest/marks.ts'
import { type Frame, MARGIN, type Part, PLOT, SMALL, WIDTH } from './frame.ts'
import { cutTo, widthOf } from './lettering.ts'
import { element, short, text, title } from './svg.ts'

const RADIUS = 8.5
/** Least distance between two shapes side by side, and the height of a lane. */
const STEP = 21
const LINE = 22

export const MARK_SHAPES = ['octagon', 'triangle', 'diamond', 'up', 'down', 'square', 'circle'] as const
export type MarkShape = (typeof MARK_SHAPES)[number]

/** A shape a meaning: sign, alarm, note, a step up, a step down, other decisions, a sign ended. */
export function shapeOf(mark: Mark): MarkShape {
  if (mark.kind === 'sign') return 'octagon'
  if (mark.kind === 'signs-ended') return 'circle'
  if (mark.kind === 'flag') return mark.level === 'note' ? 'diamond' : 'triangle'
  if (mark.kind === 'decision')
    return mark.decision === 'advance' ? 'up' : mark.decision === 'ease-back' ? 'down' : 'square'
  const change = mark.ladders.reduce((sum, { from, to }) => sum + to - from, 0)
  return change > 0 ? 'up' : change < 0 ? 'down' : 'square'
}

/** The marks at their days in a strip above the panels, in as many lanes as keep them apart. */
export function marksStrip(frame: Frame, top: number): Part {
  const { weeks, x, dayWidth } = frame
  const lanes: number[] = []
  const placed = weeks.marks.map((mark, index) => {
    const day = weeks.days.findIndex(({ day }) => day === mark.day)
    const at = x(day) + dayWidth / 2
    const centre = Math.max(PLOT.left + RADIUS, Math.min(PLOT.right - RADIUS, at))
    const free = lanes.findIndex((last) => centre - last >= STEP)
    const lane = free === -1 ? lanes.length : free
    lanes[lane] = centre
    return { mark, number: index + 1, centre, lane }
  })
  const height = lanes.length === 0 ? 0 : lanes.length * STEP + 4
  const y = (lane: number): number => top + height - 2 - STEP * (lane + 0.5)
  const shapes = placed.map(({ mark, number, centre, lane }) =>
    numbered(frame, mark, number, centre, y(lane)),
  )
  return { markup: shapes.join(''), height }
}

/** What each number stands for: shape, date and words, a line each. */
export function marksList(frame: Frame, top: number): Part {
  const { weeks, words, palette } = frame
  const dateX = MARGIN + 2 * RADIUS + 8
  const wordsX = dateX + Math.max(0, ...weeks.marks.map(({ day }) => widthOf(words.date(day), SMALL))) + 4
  const lines = weeks.marks.map((mark, index) => {
    const y = top + LINE * (index + 0.5)
    const at = { y: y + 4, 'font-size': SMALL }
    return (
      numbered(frame, mark, index + 1, MARGIN + RADIUS, y) +
      text(words.date(mark.day), { x: dateX, ...at, fill: palette.quiet }) +
      text(cutTo(words.mark(mark), SMALL, WIDTH - MARGIN - wordsX), { x: wordsX, ...at, fill: palette.ink })
    )
  })
  if (weeks.marksLeftOut > 0) {
    const y = top + LINE * (lines.length + 0.5) + 4
    const more = words.marksLeftOut(weeks.marksLeftOut)
    lines.push(text(more, { x: dateX, y, 'font-size': SMALL, fill: palette.quiet }))
  }
  return { markup: lines.join(''), height: lines.length === 0 ? 0 : LINE * lines.length + 4 }
}

function numbered({ palette, words }: Frame, mark: Mark, number: number, x: number, y: number): string {
  const shape = shapeOf(mark)
  const solid = mark.kind === 'sign' ? mark.care !== 'soon' : shape === 'triangle'
  const colour = mark.kind === 'sign' || shape === 'triangle' ? palette.alarm : palette.ink
  const outline = {
    fill: solid ? colour : palette.card,
    stroke: colour,
    'stroke-width': 1.8,
    'stroke-linejoin': 'round',
  }
  const label = text(String(number), {
    x,
    y: y + 4 + DROP[shape],
    'text-anchor': 'middle',
    'font-size': 11,
    'font-weight': 'bold',
    fill: solid ? palette.card : colour,
  })
  const body =
    shape === 'circle'
      ? element('circle', { cx: x, cy: y, r: RADIUS - 1, ...outline })
      : element('polygon', { points: corners(shape, x, y), ...outline })
  return element(
    'g',
    { role: 'img', 'data-shape': shape },
    title(`${words.date(mark.day)}: ${words.mark(mark)}`),
    body,
    label,
  )
}

/** How far the number sits below the middle, where the shape has its room. */
const DROP: Readonly<Record<MarkShape, number>> = {
  octagon: 0,
  triangle: 2.2,
  diamond: 0,
  up: 1.6,
  down: -1.6,
  square: 0,
  circle: 0,
}

// Corners in parts of the radius, from the middle of the shape.
const CORNERS: Readonly<Record<Exclude<MarkShape, 'circle'>, readonly (readonly [number, number])[]>> = {
  octagon: [
    [-0.42, -1],
    [0.42, -1],
    [1, -0.42],
    [1, 0.42],
    [0.42, 1],
    [-0.42, 1],
    [-1, 0.42],
    [-1, -0.42],
  ],
  triangle: [
    [0, -1],
    [1.1, 0.95],
    [-1.1, 0.95],
  ],
  diamond: [
    [0, -1.1],
    [1.1, 0],
    [0, 1.1],
    [-1.1, 0],
  ],
  up: [
    [0, -1.1],
    [0.9, -0.3],
    [0.9, 0.95],
    [-0.9, 0.95],
    [-0.9, -0.3],
  ],
  down: [
    [0, 1.1],
    [0.9, 0.3],
    [0.9, -0.95],
    [-0.9, -0.95],
    [-0.9, 0.3],
  ],
  square: [
    [-0.85, -0.85],
    [0.85, -0.85],
    [0.85, 0.85],
    [-0.85, 0.85],
  ],
}

const corners = (shape: Exclude<MarkShape, 'circle'>, x: number, y: number): string =>
  CORNERS[shape].map(([dx, dy]) => `${short(x + dx * RADIUS)},${short(y + dy * RADIUS)}`).join(' ')
