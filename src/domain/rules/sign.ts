import { daysBetween } from '../day.ts'
import { SIGNS } from '../signs/catalogue.ts'
import type { Flag, Level, OpenSign } from './assessment.ts'
import type { SignRule } from './rule.ts'

export const sign: SignRule = {
  kind: 'sign',
  id: 'sign',
  title: 'An urgent sign is open',
  looksAt: 'the signs said, less those on the known list',
  looksBack: Number.POSITIVE_INFINITY,
  condition:
    'said and not yet cleared by a clinician, or (soon) not yet noted by the coach; two new soon signs within 14 days are same-day',
  level: 'emergency',
  source: 'see each sign of the catalogue',
  falseAlarms: null,
}

const LEVEL_OF = {
  none: 'note',
  soon: 'hold',
  'same-day': 'same-day',
  emergency: 'emergency',
} as const satisfies Record<OpenSign['care'], Level>

/** A flag for each open sign: every one is an episode of its own and ends by its own way. */
export const signFlags = (open: readonly OpenSign[], on: string): Flag[] =>
  open.map((s) => ({
    rule: 'sign',
    level: LEVEL_OF[s.care],
    day: s.day,
    figures: { sign: s.sign, care: s.care, days: daysBetween(s.day, on) },
    source: SIGNS[s.sign].source,
  }))
