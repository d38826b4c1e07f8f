import { LADDERS, type Ladder } from '../ladder/ladders.ts'
import { adherence } from './adherence.ts'
import { belowKneeRule } from './below-knee.ts'
import { flare } from './flare.ts'
import { gateRule } from './gate.ts'
import { GATE_HEED, heeding, PLATEAU_HEED } from './heed.ts'
import { meaningful } from './meaningful.ts'
import { painSevere } from './pain-severe.ts'
import { painUp } from './pain-up.ts'
import { plateau } from './plateau.ts'
import { quiet } from './quiet.ts'
import { reachSpread } from './reach-spread.ts'
import { regain } from './regain.ts'
import type { AlarmRule, Rule, StateRule } from './rule.ts'
import { sign } from './sign.ts'
import { trendPain, trendReach } from './trend.ts'

/** Alarms: open until 7 answered days in a row without them. */
export const ALARM_RULES: readonly AlarmRule[] = [
  reachSpread,
  belowKneeRule,
  painUp,
  painSevere,
  flare,
  regain,
]

/** States: open while their condition holds, or until the coach decides on it. */
export const stateRules = (ladders: readonly Ladder[] = LADDERS): readonly StateRule[] => [
  trendPain,
  trendReach,
  meaningful,
  adherence,
  quiet,
  heeding(plateau, PLATEAU_HEED),
  heeding(gateRule(ladders), GATE_HEED),
]

/**
 * The one table of rules. False-alarm rates were measured on 1,000 made-up people over 13 weeks, seed 7
 * (`ebb simulate --clients 1000 --weeks 13 --seed 7`): pain and reach alone, so rules on signs, sessions and rungs
 * have none. On a stable diary a plateau is right and quiet tells of missing replies: theirs say how often.
 */
export const RULES: readonly Rule[] = [sign, ...ALARM_RULES, ...stateRules()]
