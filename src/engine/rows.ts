import type { Care } from '../domain/care.ts'
import type { Denied, Side } from '../domain/checkin.ts'
import type { Day } from '../domain/day.ts'
import type { GateSettings } from '../domain/ladder/plan.ts'
import type { Reach } from '../domain/reach.ts'
import type { SignId } from '../domain/signs/catalogue.ts'
import type { DecisionRow, FlagRow, HoldRow, SignRow } from './standing-rows.ts'
import type {
  ActivityRow,
  AlertRow,
  AlertStepRow,
  AskedRow,
  CoverRow,
  DueRow,
  InboundRow,
  NoteRow,
  QuestionRow,
} from './work-rows.ts'

export type { DecisionRow, FlagRow, HoldRow, SignRow } from './standing-rows.ts'
export type {
  ActivityRow,
  AlertRow,
  AlertStepRow,
  AskedRow,
  CoverRow,
  DueKind,
  DueRow,
  InboundRow,
  NoteRow,
  OutboxRow,
  QuestionRow,
} from './work-rows.ts'

/**
 * The rows of the store, one interface a table, each with a text `id` made of what the row stands for, so that
 * writing one twice changes nothing. Times are instants (UTC); local days are ISO dates beside the client's zone.
 */
export interface PracticeRow {
  id: string
  guild: string
  name: string
  zone: string
  region: string | null
  language: string
  /** "Sun 18:00": weekday and local time of the digest. */
  digest: string
  coachRole: string | null
  coachChannel: string | null
  alertChannel: string | null
  /** Platform id of a deputy named with the role when an alert widens. */
  deputy: string | null
  /** Minutes over which prompts may be spread, 0..60. */
  window: number
  /** False: the client's own words stay out of the coach's channel. */
  quote: boolean
  /** Local date on which the keeper confirmed that the platform's policy is settled. */
  policyConfirmed: Day | null
  /** Days after the end of a client's way at which all of it is erased. */
  retentionDays: number
  /** Country codes in which the practice works; empty: not limited. */
  regions: string[]
  createdAt: Date
}

export type Stage = 'invited' | 'screening' | 'enrolled' | 'discharged' | 'left'

export interface ClientRow {
  id: string
  practiceId: string
  /** The alias by which the practice knows the client: letters, digits, hyphen. */
  ref: string
  /** Platform id of the person. */
  user: string
  zone: string
  region: string | null
  language: string
  prompt: string
  reminder: string | null
  /** Weekdays without sessions. */
  off: string[]
  side: Side | null
  stage: Stage
  /** The client answers in words and is never shown a component. */
  wordsOnly: boolean
  /** First local day of the plan. */
  start: Day | null
  /** The coach in charge, as "<@id>"; null: whoever made the plan. */
  coach: string | null
  /** Whether one word some weeks after the end is wanted; null: not asked yet. */
  remind: boolean | null
  /** When the way ended: declined, left or discharged. The retention clock runs from it. */
  endedAt: Date | null
  createdAt: Date
}

export interface ConsentRow {
  id: string
  clientId: string
  answer: 'yes' | 'no'
  at: Date
  /** Version of the text that was agreed to. */
  version: string
  sexualQuestions: boolean
}

/** The screening as far as it is filled in; values by question id. */
export interface ScreeningRow {
  id: string
  clientId: string
  answers: Record<string, string | number | string[] | Record<string, number>>
  startedAt: Date
  doneAt: Date | null
}

export interface PlanRow {
  id: string
  clientId: string
  day: Day
  at: Date
  sessions: number
  /** By drill id, as in "lift:2": the load as the client reads it. */
  loads: Record<string, string>
  gate: GateSettings
  /** Ladders of which the coach has confirmed that band and anchor were checked. */
  checked: string[]
  by: string
}

export interface RungRow {
  id: string
  clientId: string
  at: Date
  day: Day
  ladder: string
  from: number
  to: number
  why: 'plan' | 'advance' | 'ease-back' | 'return' | 'clearance' | 'undo'
  by: string
}

/** The check-in of a local day as it stands now. */
export interface CheckInRow {
  id: string
  clientId: string
  day: Day
  sessions: number | null
  planned: number
  reach: Reach | null
  pain: number | null
  side: Side | null
  signs: SignId[]
  denied: Denied
  care: Care
  filled: Day
  late: boolean
  comfort: boolean | null
  settled: boolean | null
  updatedAt: Date
}

/** The trail: every version with its words, never changed afterwards. */
export interface VersionRow {
  id: string
  clientId: string
  /** Null where the words named no day. */
  day: Day | null
  at: Date
  zone: string
  via: 'words' | 'form' | 'choice' | 'edit' | 'deleted' | 'import'
  words: string
  /** What was understood, and by which lexicon. */
  reading: Record<string, unknown>
  lexicon: string
}

export interface Rows {
  practice: PracticeRow
  client: ClientRow
  consent: ConsentRow
  screening: ScreeningRow
  plan: PlanRow
  rung: RungRow
  checkIn: CheckInRow
  version: VersionRow
  sign: SignRow
  hold: HoldRow
  flag: FlagRow
  decision: DecisionRow
  alert: AlertRow
  alertStep: AlertStepRow
  asked: AskedRow
  due: DueRow
  inbound: InboundRow
  note: NoteRow
  activity: ActivityRow
  question: QuestionRow
  cover: CoverRow
}
export type Table = keyof Rows

/** A row to be written as it stands (inserted, or replaced by id), or to be removed. */
export type Change =
  | { [T in Table]: { readonly put: T; readonly row: Rows[T] } }[Table]
  | { readonly drop: Table; readonly id: string }
