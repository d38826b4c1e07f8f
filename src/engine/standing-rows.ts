import type { Care } from '../domain/care.ts'
import type { Day } from '../domain/day.ts'
import type { Figures, Level, Proposal, RuleId } from '../domain/rules/assessment.ts'
import type { SignId } from '../domain/signs/catalogue.ts'

/** How a client stands: signs, what holds them, open episodes of the rules, and the coach's decisions. */
export interface SignRow {
  id: string
  clientId: string
  sign: SignId
  care: Care
  state: 'asked' | 'open' | 'denied' | 'cleared' | 'noted'
  day: Day
  at: Date
  words: string
  /** Instant at which an unanswered question counts as yes. */
  until: Date | null
  endedAt: Date | null
  /** Who ended it: the client's no, the clinician named by the coach, the coach who noted it. */
  endedBy: string | null
}

/** What stands between a client and the ordinary day; each ends only by its own way. */
export interface HoldRow {
  id: string
  clientId: string
  kind: 'lock' | 'park' | 'pause' | 'rest'
  /** The resting ladder. */
  ladder: string | null
  reason: string
  by: string
  at: Date
  day: Day
  endedAt: Date | null
  endedBy: string | null
}

export interface FlagRow {
  id: string
  clientId: string
  rule: RuleId
  level: Level
  day: Day
  figures: Figures
  openedAt: Date
  closedAt: Date | null
}

export interface DecisionRow {
  id: string
  clientId: string
  at: Date
  day: Day
  by: string
  decision: 'advance' | 'hold' | 'ease-back' | 'refer' | 'stop' | 'clear'
  ladder: string | null
  reason: string
  /** What had been proposed, and by which rules. */
  proposal: Proposal
  rules: readonly RuleId[]
}
