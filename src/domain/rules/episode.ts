import type { Day } from '../day.ts'
import type { Figures, Level } from './assessment.ts'
import { LEVELS } from './assessment.ts'
import type { Alarm, AlarmRule, AlarmsOn, StateRule } from './rule.ts'
import { before, daysOf, onceOfEach, type View } from './view.ts'

/** An alarm is over after so many answered days in a row without it (evidence: an episode re-arms after 7 quiet days). */
const QUIET_ANSWERS = 7

/** An episode of an alarm rule: its alarms in order, and the day on which it was over (null: still open). */
export interface Episode {
  readonly alarms: readonly Alarm[]
  readonly closed: Day | null
}

const higherLevel = (a: Level, b: Level): Level => (LEVELS.indexOf(a) >= LEVELS.indexOf(b) ? a : b)

function episodesIn(rule: AlarmRule, view: View): Episode[] {
  const alarms = new Map(rule.alarms(view).map((alarm) => [alarm.day, alarm]))
  if (alarms.size === 0) return []
  const episodes: Episode[] = []
  let open: Alarm[] = []
  let quiet = 0
  for (const { day, checkIn } of daysOf(view)) {
    const alarm = alarms.get(day)
    if (alarm) {
      open.push(alarm)
      quiet = 0
      continue
    }
    if (open.length === 0 || checkIn === null || !rule.sees(checkIn)) continue
    quiet += 1
    if (quiet < QUIET_ANSWERS) continue
    episodes.push({ alarms: open, closed: day })
    open = []
    quiet = 0
  }
  if (open.length > 0) episodes.push({ alarms: open, closed: null })
  return episodes
}

/**
 * The episodes of an alarm rule in the sixty days, oldest first; `openOn` tells how they stood on a day. A day
 * without answer neither closes nor feeds one.
 */
export const episodesOf = onceOfEach(episodesIn)

/** The episode open on a day, as it stood then; null where none was. */
export function openOn(episodes: readonly Episode[], day: Day): Episode | null {
  for (const episode of episodes) {
    const alarms = episode.alarms.filter((alarm) => alarm.day <= day)
    if (alarms.length === 0) return null
    if (episode.closed === null || day < episode.closed) return { alarms, closed: null }
  }
  return null
}

/** The highest level of its alarms: an episode does not calm down by itself. */
export const levelOf = (episode: Episode): Level =>
  episode.alarms.map((alarm) => alarm.level).reduce(higherLevel)

/** A state that holds on the last day of the view, and since when without a break. */
export interface Run {
  readonly level: Level
  readonly figures: Figures
  readonly since: Day
}

/**
 * How long a state has held. It is followed back as far as the view shows the rule everything it looks at;
 * of a state older than that the first such day is given.
 */
export function runOf(rule: StateRule, view: View, alarms: AlarmsOn): Run | null {
  const now = rule.holds(view, alarms)
  if (now === null) return null
  const oldest = view.cut ? rule.looksBack - 1 : 0
  let since = view.at
  for (let at = view.at - 1; at >= oldest && since - at <= (rule.bridges ?? 1); at -= 1) {
    const held = rule.holds(before(view, view.at - at)!, alarms)
    if (held !== null && held.key !== now.key) break
    if (held !== null) since = at
  }
  return { level: now.level, figures: now.figures(), since: view.sixty.dates[since]! }
}
