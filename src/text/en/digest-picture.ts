import type { Day } from '../../domain/day.ts'
import type { Mark } from '../../domain/digest/marks.ts'
import type { Weeks, WeeksDay } from '../../domain/digest/weeks.ts'
import type { LadderId } from '../../domain/ladder/plan.ts'
import { REACHES, rank, reachAt } from '../../domain/reach.ts'
import { median } from '../../domain/trend/median.ts'
import { date, shortDate } from './dates.ts'
import { DIRECTION, flagWords } from './digest.ts'
import { inWords, ladderName } from './names.ts'
import { REACH } from './reach.ts'
import { SIGN_WORDS } from './signs.ts'

/** The platform takes 1,024 characters of alt text; here is room to spare. */
const ALT_MOST = 1_000
const WEEK = 7

const plain = (words: string, most = 40): string => {
  const letters = [...words.replace(/[\p{C}\p{Zl}\p{Zp}\s]+/gu, ' ').trim()]
  return letters.length > most ? `${letters.slice(0, most - 1).join('')}…` : letters.join('')
}
const ladder = (id: LadderId): string => plain(ladderName(id), 30)

/** What happened, in a few words. */
function markWords(mark: Mark): string {
  if (mark.kind === 'sign') return `${SIGN_WORDS[mark.sign].short} (${mark.care})`
  if (mark.kind === 'signs-ended') {
    const [first, ...more] = mark.signs
    return `${mark.how}: ${more.length > 0 ? `${mark.signs.length} signs` : SIGN_WORDS[first!].short}`
  }
  if (mark.kind === 'flag')
    return flagWords(mark) + (mark.level === 'note' ? '' : ` (${inWords(mark.level)})`)
  if (mark.kind === 'decision')
    return `coach: ${inWords(mark.decision)}${mark.ladder === null ? '' : `, ${ladder(mark.ladder)}`}`
  return rungWords(mark)
}

const WHY = {
  plan: 'plan changed',
  advance: 'advanced',
  'ease-back': 'eased back',
  rest: 'rests',
  return: 'back after a gap',
  clearance: 'begins again',
  undo: 'undone by the coach',
} as const

function rungWords({ why, ladders }: Extract<Mark, { kind: 'rungs' }>): string {
  const [first] = ladders
  if (ladders.length !== 1 || first === undefined)
    return `${WHY[why]}: ${ladders.length} ladders${together(ladders)}`
  const step = first.from === first.to ? '' : ` ${first.from} to ${first.to}`
  return `${WHY[why]}: ${ladder(first.ladder)}${step}`
}

const together = (ladders: Extract<Mark, { kind: 'rungs' }>['ladders']): string =>
  ladders.every(({ from, to }) => to === from - 1) ? ', a rung lower' : ''

const leftOut = (count: number): string => `and ${count} more, see the record`

/** Every word in the picture; fits `PictureWords` of the picture. */
export const pictureWords = {
  date: shortDate,
  range: (first: Day, on: Day): string => `${shortDate(first)} to ${shortDate(on)} ${on.slice(0, 4)}`,
  direction: (direction: Weeks['direction']): string => `Reach: ${DIRECTION[direction]}`,
  reachNames: REACH,
  reachTitle: 'How far from the spine',
  baseline: (value: string): string => `dashed: ${value} at baseline`,
  painTitle: 'Worst pain of the day',
  worst: (pain: number): string => `worst ${pain}`,
  sessionsTitle: 'Sessions done of planned',
  dayOff: 'cross: day off',
  repliesTitle: (answered: number, days: number): string => `Replies ${answered}/${days}`,
  noReply: 'hatched: no reply',
  filledLater: 'ring: filled in later',
  mark: markWords,
  marksLeftOut: leftOut,
}

/** The facts of the picture in words, at most 1,000 characters: where days are too many, the oldest weeks in short. */
export function digestAlt(weeks: Weeks): string {
  const all = Array.from({ length: weeks.days.length / WEEK }, (_, n) =>
    weeks.days.slice(n * WEEK, (n + 1) * WEEK),
  )
  for (let inShort = 0; inShort <= all.length; inShort++) {
    const alt = altOf(
      weeks,
      all.map((week, n) => (n < inShort ? weekInShort(week) : weekInFull(week))),
    )
    if (alt.length <= ALT_MOST) return alt
  }
  const bare = altOf(weeks, all.map(weekInShort))
  return `${bare.slice(0, ALT_MOST - 1)}…`
}

function altOf(weeks: Weeks, lines: readonly string[]): string {
  const { reach, pain } = weeks.baseline
  const baseline = [reach === null ? [] : [REACH[reach]], pain === null ? [] : [`pain ${pain}`]].flat()
  const marks = weeks.marks.map((mark) => `${shortDate(mark.day)} ${markWords(mark)}`)
  if (weeks.marksLeftOut > 0) marks.push(leftOut(weeks.marksLeftOut))
  return [
    `${plain(weeks.ref)}, ${date(weeks.first)} to ${date(weeks.on)}: ${DIRECTION[weeks.direction]}.`,
    baseline.length === 0 ? '' : `Baseline: ${baseline.join(', ')}.`,
    'Day by day, - is no answer.',
    ...lines,
    marks.length === 0 ? '' : `Marks: ${marks.join('; ')}.`,
  ]
    .filter((line) => line !== '')
    .join('\n')
}

function weekInFull(week: readonly WeeksDay[]): string {
  const days = week.filter(({ state }) => state !== 'before')
  const first = days[0] ?? week[0]!
  const later = days.filter(({ filledLater }) => filledLater).map(({ day }) => shortDate(day))
  return (
    `From ${shortDate(first.day)}: ${inRuns(days.map(({ reach }) => (reach === null ? '-' : REACH[reach])))}` +
    `; pain ${inRuns(days.map(({ pain }) => String(pain ?? '-')))}` +
    `; sessions ${inRuns(days.map(sessions))}` +
    `${later.length === 0 ? '' : `; filled in later ${later.join(', ')}`}.`
  )
}

function sessions({ state, sessions, planned }: WeeksDay): string {
  if (state !== 'answered') return '-'
  if (planned === 0) return sessions ? `${sessions}/off` : 'off'
  return `${sessions ?? '-'}/${planned}`
}

/** "calf calf calf knee" as "calf x3 knee". */
function inRuns(values: readonly string[]): string {
  const runs: { value: string; times: number }[] = []
  for (const value of values) {
    const last = runs.at(-1)
    if (last?.value === value) last.times++
    else runs.push({ value, times: 1 })
  }
  return runs.map(({ value, times }) => (times === 1 ? value : `${value} x${times}`)).join(' ')
}

function weekInShort(week: readonly WeeksDay[]): string {
  const reaches = week.flatMap(({ reach }) => (reach === null ? [] : [rank(reach)]))
  const pains = week.flatMap(({ pain }) => (pain === null ? [] : [pain]))
  const middle = median(reaches)
  const replies = week.filter(({ state }) => state === 'answered')
  const sum = (key: 'sessions' | 'planned'): number =>
    replies.reduce((total, day) => total + (day[key] ?? 0), 0)
  return (
    `From ${shortDate(week[0]!.day)} in short: ` +
    `${middle === null ? '-' : `${REACH[reachAt(middle)]}, furthest ${REACH[REACHES[Math.max(...reaches)]!]}`}` +
    `; pain ${pains.length === 0 ? '-' : `${median(pains)}, worst ${Math.max(...pains)}`}` +
    `; sessions ${sum('sessions')}/${sum('planned')}; replies ${replies.length}/${WEEK}.`
  )
}
