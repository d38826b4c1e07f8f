import type { Care } from '../care.ts'
import type { CheckIn } from '../checkin.ts'
import type { Day } from '../day.ts'
import type { GateSettings } from '../ladder/plan.ts'
import type { Reach } from '../reach.ts'
import type { Proposal } from '../rules/assessment.ts'
import type { SignId } from '../signs/catalogue.ts'

/** Name and version of the document; the number goes up when a field changes its meaning or goes. */
export const EXPORT_FORMAT = 'ebbline-client/1'

/** An instant, UTC, ISO 8601. */
export type Instant = string
/** Answers of the screening by question, as they were given. */
export type Answers = Readonly<
  Record<string, string | number | readonly string[] | Readonly<Record<string, number>>>
>

/** One version of what was told of a day, with the words as they came and how they were read. */
export interface Version {
  readonly at: Instant
  readonly zone: string
  readonly via: string
  readonly words: string
  readonly reading: unknown
  /** Which word list read them. */
  readonly lexicon: string
}
export interface DayFacts extends CheckIn {
  readonly care: Care
  readonly updated: Instant
  readonly versions: readonly Version[]
}
export interface PlanFacts {
  readonly day: Day
  readonly at: Instant
  readonly sessions: number
  readonly loads: Readonly<Record<string, string>>
  readonly gate: GateSettings
  readonly checked: readonly string[]
}
export interface RungFacts {
  readonly day: Day
  readonly at: Instant
  readonly ladder: string
  readonly from: number
  /** 0: the ladder leaves the plan. */
  readonly to: number
  readonly why: string
  readonly by: string
}
export interface SignFacts {
  readonly sign: SignId
  readonly care: Care
  readonly state: string
  readonly day: Day
  readonly at: Instant
  readonly words: string
  readonly ended: Instant | null
  readonly endedBy: string | null
}
export interface HoldFacts {
  readonly kind: string
  readonly ladder: string | null
  readonly reason: string
  readonly day: Day
  readonly at: Instant
  readonly by: string
  readonly ended: Instant | null
  readonly endedBy: string | null
}
export interface FlagFacts {
  readonly rule: string
  readonly level: string
  readonly day: Day
  readonly figures: unknown
  readonly opened: Instant
  readonly closed: Instant | null
}
export interface DecisionFacts {
  readonly day: Day
  readonly at: Instant
  readonly by: string
  readonly decision: string
  readonly ladder: string | null
  readonly reason: string
  readonly proposal: Proposal
  readonly rules: readonly string[]
}
export interface AlertFacts {
  readonly signs: readonly SignId[]
  readonly care: Care
  readonly opened: Instant
  readonly takenBy: string | null
  readonly taken: Instant | null
  readonly had: readonly { readonly by: string; readonly at: Instant }[]
  readonly outcome: string | null
  readonly closed: Instant | null
}
export interface SentFacts {
  readonly at: Instant
  readonly kind: string
  readonly text: string
}

/**
 * Everything kept of one client, as `/my-data` and `ebb export` write it. Lists are in order of time; a null was not
 * answered or is not known. People of the practice are "coach": their names are not the client's data.
 */
export interface ClientExport {
  readonly format: typeof EXPORT_FORMAT
  readonly made: Instant
  /** What is kept but left out here, and why: `notes` (the coach's own), `words` (the practice keeps them back). */
  readonly leftOut: readonly ('notes' | 'words')[]
  readonly practice: { readonly name: string; readonly zone: string; readonly retentionDays: number }
  readonly client: {
    readonly alias: string
    /** Id of the person on the chat platform. */
    readonly user: string
    readonly status: string
    readonly zone: string
    readonly region: string | null
    readonly language: string
    readonly prompt: string
    readonly reminder: string | null
    readonly daysOff: readonly string[]
    readonly side: CheckIn['side']
    readonly inWords: boolean
    readonly start: Day | null
    readonly remind: boolean | null
    readonly created: Instant
    readonly ended: Instant | null
  }
  readonly consents: readonly {
    readonly answer: string
    readonly at: Instant
    readonly version: string
    readonly sexualQuestions: boolean
  }[]
  readonly screenings: readonly {
    readonly answers: Answers
    readonly started: Instant
    readonly done: Instant | null
  }[]
  /** How it stood at the beginning, by the screening. */
  readonly baseline: { readonly reach: Reach | null; readonly pain: number | null } | null
  readonly plans: readonly PlanFacts[]
  readonly rungs: readonly RungFacts[]
  readonly checkIns: readonly DayFacts[]
  /** Versions of words that named no day, or one of which nothing was written down. */
  readonly otherWords: readonly (Version & { readonly day: Day | null })[]
  readonly signs: readonly SignFacts[]
  readonly holds: readonly HoldFacts[]
  readonly flags: readonly FlagFacts[]
  readonly decisions: readonly DecisionFacts[]
  readonly alerts: readonly AlertFacts[]
  /** How hard the activities that matter were, 0 (easy) to 10 by name. */
  readonly activities: readonly {
    readonly day: Day
    readonly at: Instant
    readonly scores: Readonly<Record<string, number>>
  }[]
  readonly questions: readonly {
    readonly at: Instant
    readonly words: string
    readonly answered: Instant | null
    readonly answer: string | null
  }[]
  /** What was sent to the client. */
  readonly messages: readonly SentFacts[]
  /** The coach's own notes; absent where they are left out. */
  readonly notes?: readonly { readonly at: Instant; readonly text: string }[]
}
