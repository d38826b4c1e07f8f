import type { Care } from '../domain/care.ts'
import type { Denied, Side } from '../domain/checkin.ts'
import type { Day } from '../domain/day.ts'
import type { GateSettings } from '../domain/ladder/plan.ts'
import type { Reach } from '../domain/reach.ts'
import type { Figures, Level, Proposal, RuleId } from '../domain/rules/assessment.ts'
import type { SignId } from '../domain/signs/catalogue.ts'
import type { Act, Asks, Message, MessageKind } from './message.ts'

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
  retentionDays: number
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
  loads: Record<string, string>
  gate: GateSettings
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
  decision: 'advance' | 'hold' | 'ease-back' | 'refer'
  ladder: string | null
  reason: string
  /** What had been proposed, and by which rules. */
  proposal: Proposal
  rules: readonly RuleId[]
}

export interface AlertRow {
  id: string
  clientId: string
  signs: SignId[]
  care: Care
  openedAt: Date
  takenBy: string | null
  takenAt: Date | null
  outcome: string | null
  closedAt: Date | null
}

/** One delivery of an alert; step 0 is the first. */
export interface AlertStepRow {
  id: string
  alertId: string
  clientId: string
  step: number
  at: Date
}

/** A question that waits for its answer. */
export interface AskedRow {
  id: string
  clientId: string
  ask: Asks
  day: Day
  at: Date
  /** Outbox key of the message that asked. */
  message: string
  /** True where silence counts as yes (a sign that somebody hinted at). */
  pressing: boolean
  /** What may be chosen, in the order shown: "2" in words is the second. */
  options: { name: string; label: string; act: Act }[]
}
/** Something that is due at an instant; the row goes in the transaction that handles it. */
export interface DueRow {
  id: string
  practiceId: string
  clientId: string | null
  kind: DueKind
  at: Date
  data: Record<string, unknown>
}
export type DueKind =
  | 'prompt'
  | 'reminder'
  | 'deadline'
  | 'alert-step'
  | 'untaken'
  | 'urgent-follow-up'
  | 'digest'

/** A platform id already applied. */
export interface InboundRow {
  id: string
  clientId: string | null
  at: Date
}

export interface NoteRow {
  id: string
  clientId: string
  at: Date
  by: string
  text: string
}

/** A message to be delivered, and the ledger of what was. */
export interface OutboxRow {
  id: string
  /** What the message stands for; unique, so that it can be written once only. */
  key: string
  /** Null for an answer to a stranger, kept only until it has gone. */
  practiceId: string | null
  clientId: string | null
  kind: MessageKind
  body: Message
  /** 0 urgent, 1 alert, 2 answer, 3 prompt, 4 digest. */
  priority: number
  /** Order of writing. */
  seq: number
  state: 'waiting' | 'sent' | 'dropped' | 'failed'
  notBefore: Date
  expires: Date | null
  attempts: number
  sentAt: Date | null
  channel: string | null
  platformId: string | null
  reason: string | null
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
}
export type Table = keyof Rows

/** A row to be written as it stands (inserted, or replaced by id), or to be removed. */
export type Change =
  | { [T in Table]: { readonly put: T; readonly row: Rows[T] } }[Table]
  | { readonly drop: Table; readonly id: string }
