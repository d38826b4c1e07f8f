import { type Frame, type Panel, SMALL } from './frame.ts'
import { panelTitle, TITLE_HEIGHT } from './panel-title.ts'
import { element, line, text, title } from './svg.ts'

const ROW = 12
const DATES = 18
// "23 Mar" and a gap
const DATE_WIDTH = 44

/** One dot a reply, hollow where it was filled in later; below it the date of each week's first day. */
export function repliesPanel(frame: Frame, top: number): Panel {
  const { weeks, words, palette, x, dayWidth } = frame
  const inPlan = weeks.days.filter(({ state }) => state !== 'before')
  const answered = inPlan.filter(({ state }) => state === 'answered').length
  const hints = [
    answered < inPlan.length ? words.noReply : '',
    weeks.days.some(({ filledLater }) => filledLater) ? words.filledLater : '',
  ]
  const heading = words.repliesTitle(answered, inPlan.length)
  const y = top + TITLE_HEIGHT + ROW / 2
  const dots = weeks.days.map(({ state, filledLater }, index) =>
    state !== 'answered'
      ? ''
      : element('circle', {
          cx: x(index) + dayWidth / 2,
          cy: y,
          r: Math.min(2.4, dayWidth / 2),
          fill: filledLater ? palette.card : palette.ink,
          stroke: palette.ink,
          'stroke-width': Math.min(1.3, dayWidth / 4),
        }),
  )
  const markup = element(
    'g',
    { role: 'img' },
    title(heading),
    panelTitle(frame, top, heading, hints.filter((hint) => hint !== '').join(', ')),
    ...dots,
  )
  const plot = { top: y - ROW / 2, bottom: y + ROW / 2 }
  return { markup: markup + dates(frame, plot.bottom), height: TITLE_HEIGHT + ROW + DATES + 6, plot }
}

/** Below the first day of each week, or of every so many where they would touch; of each day of a single week. */
function dates({ weeks, words, palette, x, dayWidth }: Frame, top: number): string {
  const daily = weeks.days.length <= 7
  const apart = 7 * Math.max(1, Math.ceil(DATE_WIDTH / (7 * dayWidth)))
  const label = { y: top + DATES - 2, 'font-size': SMALL, fill: palette.quiet }
  return weeks.days
    .map(({ day }, index) => {
      if (daily)
        return text(words.date(day), { x: x(index) + dayWidth / 2, 'text-anchor': 'middle', ...label })
      if (index % apart !== 0) return ''
      return (
        line(x(index), top, x(index), top + 5, { stroke: palette.weekLine }) +
        text(words.date(day), { x: x(index), ...label })
      )
    })
    .join('')
}
