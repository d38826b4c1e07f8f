import type { Answer, Message } from './message.ts'
import type {
  ActivityRow,
  AlertRow,
  AskedRow,
  Change,
  CheckInRow,
  ClientRow,
  ConsentRow,
  CoverRow,
  DecisionRow,
  DueRow,
  FlagRow,
  HoldRow,
  NoteRow,
  OutboxRow,
  PlanRow,
  PracticeRow,
  QuestionRow,
  Rows,
  RungRow,
  ScreeningRow,
  SignRow,
  Stage,
  Table,
  VersionRow,
} from './rows.ts'

/** All that the engine looks at of one client. Lists are in order of time; old ended rows are left out. */
export interface ClientFile {
  readonly practice: PracticeRow
  readonly client: ClientRow
  readonly consent: ConsentRow | null
  readonly screening: ScreeningRow | null
  /** The latest plan, and every change of rung (a few dozen over a course). */
  readonly plan: PlanRow | null
  readonly rungs: readonly RungRow[]
  /** The last 100 days of check-ins up to the latest. */
  readonly checkIns: readonly CheckInRow[]
  /** Open and asked ones, and those of the last 60 days. */
  readonly signs: readonly SignRow[]
  /** Open ones, and those of the last 60 days. */
  readonly holds: readonly HoldRow[]
  readonly flags: readonly FlagRow[]
  readonly decisions: readonly DecisionRow[]
  readonly alerts: readonly AlertRow[]
  readonly asked: readonly AskedRow[]
  readonly dues: readonly DueRow[]
  /** Every score of the activities that matter, after the screening's own. */
  readonly activities: readonly ActivityRow[]
  /** Unanswered ones, and those of the last 60 days. */
  readonly questions: readonly QuestionRow[]
  /** Who stands in for which coach of the practice. */
  readonly covers: readonly CoverRow[]
}

/** Everything that the store holds about one client. */
export type Kept = {
  readonly [T in Exclude<
    Table,
    'practice' | 'client' | 'cover' | 'inbound' | 'due' | 'asked'
  >]: readonly Rows[T][]
} & { readonly outbox: readonly OutboxRow[] }

/** Rows by the name of their table; tables without one are left out. */
export type RowCounts = Readonly<Record<string, number>>

/** A message and how it is to travel. */
export interface Posting {
  readonly message: Message
  readonly clientId: string | null
  /** Null for an answer to somebody who belongs to no practice; nothing of it is kept once it has gone. */
  readonly practiceId: string | null
  readonly priority: 0 | 1 | 2 | 3 | 4
  readonly notBefore: Date
  readonly expires: Date | null
}

/** What an event leads to, written in one transaction. */
export interface Outcome {
  readonly changes: readonly Change[]
  readonly postings: readonly Posting[]
}

/** Reading and writing inside one transaction. */
export interface Tx {
  /** True where this platform id was applied before. */
  seen(id: string): Promise<boolean>
  practice(id: string): Promise<PracticeRow | null>
  practiceOfGuild(guild: string): Promise<PracticeRow | null>
  /** Every practice, by name. */
  practices(): Promise<PracticeRow[]>
  /** Every file of a person, left and discharged ones included, latest first. */
  clientsOfUser(user: string): Promise<ClientFile[]>
  /** The first page of each of them alone. */
  clientRowsOfUser(user: string): Promise<ClientRow[]>
  client(id: string): Promise<ClientFile | null>
  /** The same with every row since the beginning, for looking at a time long past. */
  wholeClient(id: string): Promise<ClientFile | null>
  clientByRef(practiceId: string, ref: string): Promise<ClientFile | null>
  /** All clients of a practice except those who left, by alias. */
  roster(practiceId: string): Promise<ClientFile[]>
  /** Their aliases alone. */
  refs(practiceId: string): Promise<string[]>
  /** Who stands in for whom in a practice, past covers included, by the first day. */
  covers(practiceId: string): Promise<CoverRow[]>
  notes(clientId: string): Promise<NoteRow[]>
  /** Every episode of a rule and every decision of a practice since the beginning, in order of time. */
  proposals(practiceId: string): Promise<{ flags: FlagRow[]; decisions: DecisionRow[] }>
  /** Every plan of a client, in order of time. */
  plans(clientId: string): Promise<PlanRow[]>
  /** Every row about one client by table, in order of time, messages to them included. */
  kept(clientId: string): Promise<Kept>
  /** How many rows would go with a client, by table. */
  rowsOf(clientId: string): Promise<RowCounts>
  /** All that a client has told since the beginning: each day as it stands, and the trail of every version. */
  told(clientId: string): Promise<{ checkIns: CheckInRow[]; versions: VersionRow[] }>
  outbox(id: string): Promise<OutboxRow | null>
  outboxByKey(key: string): Promise<OutboxRow | null>
  due(id: string): Promise<DueRow | null>
  /** Keeps a message that is shown in place, for its choices: it is not delivered. Gives its id. */
  keepShown(message: Message, of: { practiceId: string; clientId: string | null; at: Date }): Promise<string>
  /** Writes all of it; a posting whose key exists already is left out. */
  apply(outcome: Outcome): Promise<void>
  /** Drops those waiting messages of a client (not yet sent) that `which` picks, noting the reason. */
  withdraw(clientId: string, reason: string, which: (row: OutboxRow) => boolean): Promise<void>
  /**
   * Removes every row of a client, outbox bodies included; gives how many went, by table. That it was done is kept
   * outside the database as well, so that a backup put back does not bring the client back.
   */
  erase(clientId: string, at: Date): Promise<RowCounts>
}

export interface Store {
  /** Runs the work in one transaction; whatever it throws undoes all of it. */
  transaction<T>(work: (tx: Tx) => Promise<T>): Promise<T>
}

/** What must be known of a person to answer an urgent sign while the store is away: no words, no values. */
export interface KnownClient {
  readonly client: {
    readonly id: string
    readonly user: string
    /** The alias, which the alert names. */
    readonly ref: string
    readonly stage: Stage
    readonly region: string | null
    readonly zone: string
    readonly language: string
  }
  readonly practice: {
    readonly id: string
    readonly zone: string
    readonly language: string
    readonly quote: boolean
    /** Where alerts go; null where the practice has no channel yet. */
    readonly channel: string | null
  }
  /** Platform id of whoever is called first. */
  readonly coach: string | null
  /** The private channel; null where the client was never reached. */
  readonly direct: string | null
}

/** Clients and practices (ids) of which something has changed that concerns who is known. */
export interface Concerned {
  readonly clients: readonly string[]
  readonly practices: readonly string[]
}

/** The part of the store that delivery uses. */
export interface OutboxStore {
  /** The next waiting rows whose time has come, urgent first, then in order of writing. */
  waiting(now: Date, most: number): Promise<OutboxRow[]>
  /**
   * The same, up to a priority, claimed for a bounded time: no other process gets them until they are settled, tried
   * again or the time is over. Gives those claimed before by this process too.
   */
  claim(now: Date, most: number, leastPressing: number): Promise<OutboxRow[]>
  sent(id: string, at: Date, channel: string, platformId: string): Promise<void>
  failed(id: string, reason: string): Promise<void>
  dropped(id: string, reason: string): Promise<void>
  retry(id: string, notBefore: Date): Promise<void>
  /** Which of these messages of the platform are marked as sent. */
  marked(platformIds: readonly string[]): Promise<ReadonlySet<string>>
  /** The earliest instant at which a waiting row may go, or null. */
  nextDue(): Promise<Date | null>
}

/** The part of the store that the schedule uses. */
export interface DueStore {
  /** Rows due at or before an instant, earliest first. */
  dueBy(now: Date, most: number): Promise<DueRow[]>
  nextDue(): Promise<Date | null>
}

/** Where a message ended up. */
export interface Sent {
  readonly channel: string
  readonly platformId: string
}

/** Brings one message to the platform. Throws `Undeliverable` where that is final; all else may be tried again. */
export interface Courier {
  deliver(row: OutboxRow): Promise<Sent>
}

/** Final: the person or channel cannot be reached. */
export class Undeliverable extends Error {
  constructor(readonly reason: 'closed' | 'no-access' | 'gone' | 'open' | 'refused') {
    super(`undeliverable: ${reason}`)
  }
}

/** What the engine gives back to whoever brought an event. */
export interface Handled {
  /** Shown in place: the answer to a command, the changed message after a press. Null: nothing to show. */
  readonly answer: Answer | null
}
export interface Engine {
  handle(event: import('./event.ts').Event, now: Date): Promise<Handled>
}
