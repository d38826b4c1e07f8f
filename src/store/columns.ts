import type { Seal } from '../seal.ts'
import { openRow } from './sealed-columns.ts'

/** Columns that stand in JSON as text or a number, though they are something else. */
interface Kinds {
  readonly instants: readonly string[]
  /** True and false, which SQLite keeps as 1 and 0. */
  readonly flags: readonly string[]
  /** Any JSON, which SQLite keeps as text. */
  readonly json: readonly string[]
}

const kinds = (instants: string[], json: string[] = [], flags: string[] = []): Kinds => ({
  instants,
  flags,
  json,
})

/** The tables whose rows come as JSON or are written by us, by the models' names; a test holds this against the models. */
export const KINDS = {
  Practice: kinds(['createdAt'], ['regions'], ['quote']),
  Client: kinds(['endedAt', 'createdAt'], ['off'], ['wordsOnly', 'remind']),
  Consent: kinds(['at'], [], ['sexualQuestions']),
  Screening: kinds(['startedAt', 'doneAt'], ['answers']),
  Plan: kinds(['at'], ['loads', 'gate', 'checked']),
  Rung: kinds(['at']),
  CheckIn: kinds(['updatedAt'], ['signs', 'denied'], ['late', 'comfort', 'settled']),
  Version: kinds(['at'], ['reading']),
  Sign: kinds(['at', 'until', 'endedAt']),
  Hold: kinds(['at', 'endedAt']),
  Flag: kinds(['openedAt', 'closedAt'], ['figures']),
  Decision: kinds(['at'], ['rules']),
  Alert: kinds(['openedAt', 'takenAt', 'closedAt'], ['signs', 'had']),
  AlertStep: kinds(['at']),
  Inbound: kinds(['at']),
  Note: kinds(['at']),
  Asked: kinds(['at'], ['options'], ['pressing']),
  Due: kinds(['at'], ['data']),
  Activity: kinds(['at'], ['scores']),
  Question: kinds(['at', 'answeredAt']),
  Cover: kinds([]),
  Outbox: kinds(['notBefore', 'expires', 'sentAt'], ['body']),
} as const satisfies Readonly<Record<string, Kinds>>

export type Model = keyof typeof KINDS
type Row = Record<string, unknown>

/** A row as the store hands it out, made of one that came as JSON; sealed words are opened. */
export function fromJson(model: Model, row: Row, seal: Seal | null): Row {
  const { instants, flags }: Kinds = KINDS[model]
  const here = seal === null ? row : openRow(seal, model, row)
  for (const name of instants) if (here[name] !== null) here[name] = instant(here[name] as string)
  for (const name of flags) if (here[name] !== null) here[name] = Boolean(here[name])
  return here
}

/** SQLite's text names the zone; that of PostgreSQL's columns, which know none, does not: both are UTC. */
const instant = (text: string): Date => new Date(/[Z+]/.test(text) ? text : `${text}Z`)
