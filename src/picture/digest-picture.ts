import type { Weeks } from '../domain/digest/weeks.ts'
import { type Frame, frameOf, MARGIN, type Panel, runs, SMALL, TITLE, WIDTH } from './frame.ts'
import { cutTo, FAMILY, widthOf } from './lettering.ts'
import { marksList, marksStrip } from './marks.ts'
import { painPanel } from './pain-panel.ts'
import { PALETTES, type Theme } from './palette.ts'
import { reachPanel } from './reach-panel.ts'
import { repliesPanel } from './replies-panel.ts'
import { sessionsPanel } from './sessions-panel.ts'
import { element, line, rect, text, title } from './svg.ts'
import type { PictureWords } from './words.ts'

const HEADER = 50
const NAME = 17

/** What stands inside the SVG of a client's weeks, and the size of that in user units. */
export interface Card {
  readonly markup: string
  readonly width: number
  readonly height: number
}

/** A client's weeks as one SVG, 400 user units wide, on a card of its own. */
export function digestPicture(weeks: Weeks, words: PictureWords, theme: Theme): string {
  const { markup, width, height } = digestCard(weeks, words, theme)
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${width} ${height}`,
      width,
      height,
      role: 'img',
      'font-family': `${FAMILY}, sans-serif`,
    },
    markup,
  )
}

/** The same without its outer element, to stand inside another picture. */
export function digestCard(weeks: Weeks, words: PictureWords, theme: Theme): Card {
  const palette = PALETTES[theme]
  const frame = frameOf(weeks, words, palette)
  const strip = marksStrip(frame, HEADER)
  const panels = stack(frame, HEADER + strip.height)
  const end = HEADER + strip.height + panels.reduce((sum, { height }) => sum + height, 0)
  const list = marksList(frame, end)
  const height = end + list.height + 6
  const parts = [
    title(`${weeks.ref}, ${words.range(weeks.first, weeks.on)}`),
    hatching(frame),
    rect(0.5, 0.5, WIDTH - 1, height - 1, { rx: 10, fill: palette.card, stroke: palette.rim }),
    header(frame),
    ...panels.map(({ plot }) => ground(frame, plot)),
    ...panels.map(({ markup }) => markup),
    strip.markup,
    list.markup,
  ]
  return { markup: parts.join(''), width: WIDTH, height }
}

function stack(frame: Frame, top: number): Panel[] {
  let at = top
  return [reachPanel, painPanel, sessionsPanel, repliesPanel].map((draw) => {
    const panel = draw(frame, at)
    at += panel.height
    return panel
  })
}

function header({ weeks, words, palette }: Frame): string {
  const range = words.range(weeks.first, weeks.on)
  const room = WIDTH - 3 * MARGIN - widthOf(range, SMALL)
  return [
    text(cutTo(weeks.ref, NAME, room, true), {
      x: MARGIN,
      y: 24,
      'font-size': NAME,
      'font-weight': 'bold',
      fill: palette.ink,
    }),
    text(range, { x: WIDTH - MARGIN, y: 24, 'text-anchor': 'end', 'font-size': SMALL, fill: palette.quiet }),
    text(words.direction(weeks.direction), { x: MARGIN, y: 43, 'font-size': TITLE, fill: palette.ink }),
  ].join('')
}

const hatching = ({ palette }: Frame): string =>
  element(
    'defs',
    {},
    element(
      'pattern',
      { id: 'no-reply', width: 6, height: 6, patternUnits: 'userSpaceOnUse', patternTransform: 'rotate(45)' },
      line(0, 0, 0, 6, { stroke: palette.hatch, 'stroke-width': 1.4 }),
    ),
  )

/** What lies behind a plot: hatching over days without reply (a gap, not a zero), week lines, days of marks. */
function ground({ weeks, x, dayWidth, palette }: Frame, { top, bottom }: Panel['plot']): string {
  const gaps = runs(weeks.days, ({ state }) => state === 'no-reply').map(([from, to]) =>
    rect(x(from), top, x(to) - x(from), bottom - top, { fill: 'url(#no-reply)' }),
  )
  const starts = Array.from({ length: weeks.days.length / 7 + 1 }, (_, week) => x(week * 7)).map((at) =>
    line(at, top, at, bottom, { stroke: palette.weekLine }),
  )
  const marked = new Set(weeks.marks.map((mark) => weeks.days.findIndex(({ day }) => day === mark.day)))
  const threads = [...marked].map((index) => {
    const at = x(index) + dayWidth / 2
    return line(at, top, at, bottom, {
      stroke: palette.quiet,
      'stroke-width': 1.2,
      'stroke-dasharray': '1 2.5',
    })
  })
  return [...gaps, ...starts, ...threads].join('')
}
