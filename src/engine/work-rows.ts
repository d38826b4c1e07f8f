import type { Care } from '../domain/care.ts'
import type { Day } from '../domain/day.ts'
import type { SignId } from '../domain/signs/catalogue.ts'
import type { Act, Asks, Message, MessageKind } from './message.ts'

/** Rows of work under way: alerts, questions that wait, what is due, what came in and what goes out. */
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
  /** Who had it before whoever has it now. */
  had: { by: string; at: string }[]
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
  | 'screening'
  | 'activities'
  | 'come-back'
  | 'retention'

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

/** How hard the activities that matter were on a day, 0 (easy) to 10 by name. */
export interface ActivityRow {
  id: string
  clientId: string
  day: Day
  at: Date
  scores: Record<string, number>
}

/** A client's question in words, and the coach's answer once it is there. */
export interface QuestionRow {
  id: string
  clientId: string
  at: Date
  words: string
  answeredAt: Date | null
  answeredBy: string | null
  answer: string | null
}

/** A coach away from one local day to another (both included), and who stands in; both as "<@id>". */
export interface CoverRow {
  id: string
  practiceId: string
  coach: string
  cover: string
  from: Day
  until: Day
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
