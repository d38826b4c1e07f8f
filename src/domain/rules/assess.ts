import type { Day } from '../day.ts'
import { LADDERS, type Ladder } from '../ladder/ladders.ts'
import { adherenceOf } from './adherence.ts'
import { type Assessment, type Flag, type History, LEVELS, RULE_IDS } from './assessment.ts'
import { directionOf } from './direction.ts'
import { type Episode, episodesOf, levelOf, openOn, runOf } from './episode.ts'
import { painFigures, reachFigures } from './figures.ts'
import { asksSettled } from './flare.ts'
import { gateVerdict } from './gate.ts'
import { signsOf } from './open-signs.ts'
import { propose } from './proposal.ts'
import type { AlarmRule, AlarmsOn } from './rule.ts'
import { signFlags } from './sign.ts'
import { ALARM_RULES, stateRules } from './table.ts'
import { type View, viewOf } from './view.ts'

interface AlarmEpisodes {
  readonly rule: AlarmRule
  readonly episodes: readonly Episode[]
}

const alarmEpisodes = (view: View): AlarmEpisodes[] =>
  ALARM_RULES.map((rule) => ({ rule, episodes: episodesOf(rule, view) }))

/** Looks up which alarms were open on a day of the view. */
const alarmsOf =
  (found: readonly AlarmEpisodes[]): AlarmsOn =>
  (day) =>
    found.flatMap(({ rule, episodes }) => {
      const episode = openOn(episodes, day)
      return episode === null ? [] : [{ rule: rule.id, level: levelOf(episode) }]
    })

/** A flag for each alarm open on the day, with the figures of its latest alarm. */
function alarmFlags(found: readonly AlarmEpisodes[], on: Day): Flag[] {
  return found.flatMap(({ rule, episodes }): Flag[] => {
    const episode = openOn(episodes, on)
    if (episode === null) return []
    const { figures, day: latest } = episode.alarms.at(-1)!
    return [
      {
        rule: rule.id,
        level: levelOf(episode),
        day: episode.alarms[0]!.day,
        figures: { ...figures, latest },
        source: rule.source,
      },
    ]
  })
}

function stateFlags(view: View, alarms: AlarmsOn, ladders: readonly Ladder[]): Flag[] {
  return stateRules(ladders).flatMap((rule): Flag[] => {
    const run = runOf(rule, view, alarms)
    if (run === null) return []
    return [{ rule: rule.id, level: run.level, day: run.since, figures: run.figures, source: rule.source }]
  })
}

/** The highest level first, then the order of the table, then the earliest. */
function byWeight(a: Flag, b: Flag): number {
  const level = LEVELS.indexOf(b.level) - LEVELS.indexOf(a.level)
  if (level !== 0) return level
  const rule = RULE_IDS.indexOf(a.rule) - RULE_IDS.indexOf(b.rule)
  return rule !== 0 ? rule : a.day < b.day ? -1 : 1
}

/**
 * What the shared rules say of a client at the end of a day. Pure and total: the same history gives the same
 * answer, days after `on` are not looked at, and nothing is thrown for any valid history and date.
 * @param ladders those of the practice, for the gate; the eight of the house by default
 */
export function assess(history: History, on: Day, ladders: readonly Ladder[] = LADDERS): Assessment {
  const view = viewOf(history, on)
  const open = signsOf(view)
  const found = alarmEpisodes(view)
  const alarms = alarmsOf(found)
  const flags = [...signFlags(open, on), ...alarmFlags(found, on), ...stateFlags(view, alarms, ladders)].sort(
    byWeight,
  )
  const verdict = open.length === 0 ? gateVerdict(view, alarms, ladders) : null
  const asked = verdict?.askComfort ? { ladder: verdict.ladder, rung: verdict.rung } : null
  return {
    on,
    direction: directionOf(view),
    pain: painFigures(view),
    reach: reachFigures(view),
    adherence: adherenceOf(view),
    flags,
    ...propose(flags, open, view, ladders),
    askComfort: asked !== null,
    comfortOf: asked,
    askSettled: open.length === 0 && asksSettled(view),
    openSigns: open,
  }
}
