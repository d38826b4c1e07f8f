import type { Care } from '../domain/care.ts'
import type { Day } from '../domain/day.ts'
import { LADDERS, type Ladder } from '../domain/ladder/ladders.ts'
import { dayAt } from '../domain/local-time.ts'
import type { Texts } from '../text/index.ts'
import {
  type Address,
  type Asks,
  type Attached,
  type Button,
  type Message,
  type MessageKind,
  NOBODY,
  type Pick,
  type Picture,
} from './message.ts'
import type { ClientFile, Outcome, Posting } from './ports.ts'
import type { Change, DueKind, Rows, Table } from './rows.ts'

/** What a message says; all but kind and text may be left out. */
export interface Saying {
  readonly kind: MessageKind
  readonly text: string
  readonly asks?: Asks | null
  readonly care?: Care
  readonly drills?: readonly string[]
  readonly buttons?: readonly Button[]
  readonly pick?: Pick | null
  readonly picture?: Picture | null
  readonly files?: readonly Attached[]
  readonly mentions?: Message['mentions']
  /** What the message stands for, where that is more than the event that led to it. */
  readonly key?: string
  readonly expires?: Date | null
}

const LISTS = {
  rung: 'rungs',
  checkIn: 'checkIns',
  sign: 'signs',
  hold: 'holds',
  flag: 'flags',
  decision: 'decisions',
  alert: 'alerts',
  asked: 'asked',
  due: 'dues',
  activity: 'activities',
  question: 'questions',
} as const satisfies Partial<Record<Table, keyof ClientFile>>
const SINGLES = ['client', 'consent', 'screening', 'plan'] as const satisfies readonly Table[]

type MutableFile = { -readonly [K in keyof ClientFile]: ClientFile[K] }

/**
 * One client's file while an event is worked on: what is written is seen at once by the steps that follow,
 * and gathered as changes and postings for the one transaction.
 */
export class Draft {
  private readonly pages: MutableFile
  private readonly changes: Change[] = []
  private readonly postings: Posting[] = []
  private stopped = false
  /** Sentences in the practice's language, for coach and keeper. */
  readonly forCoach: Texts

  /**
   * @param cause what the event stands for; it makes ids and message keys the same on a second try
   * @param written when the client wrote it, which lies before `now` where the bot was away
   * @param ladders those that this practice knows: the eight of the house and its own
   */
  constructor(
    file: ClientFile,
    readonly now: Date,
    readonly cause: string,
    /** The sentences of another language. */
    readonly textsFor: (language: string) => Texts,
    readonly written: Date = now,
    readonly ladders: readonly Ladder[] = LADDERS,
  ) {
    this.pages = { ...file }
    this.forCoach = textsFor(file.practice.language)
  }

  get file(): ClientFile {
    return this.pages
  }
  /** Sentences in the client's language, which may have changed just now. */
  get texts(): Texts {
    return this.textsFor(this.client.language)
  }
  get client(): Rows['client'] {
    return this.pages.client
  }
  /** The client's local calendar date. */
  get today(): Day {
    return dayAt(this.now, this.client.zone)
  }
  get outcome(): Outcome {
    return { changes: this.changes, postings: this.postings }
  }

  /** True where a sign was opened or asked about: messages with drills that still wait must not go out. */
  get stopsDrills(): boolean {
    return this.stopped
  }

  stopDrills(): void {
    this.stopped = true
  }

  /** An id of this client's, made of what it stands for. */
  id(...parts: (string | number)[]): string {
    return [this.client.id, ...parts].join('/')
  }

  put<T extends Table>(table: T, row: Rows[T]): void {
    this.changes.push({ put: table, row } as Change)
    if (table in LISTS) {
      const list = LISTS[table as keyof typeof LISTS]
      const kept = (this.pages[list] as readonly { id: string }[]).filter((other) => other.id !== row.id)
      Object.assign(this.pages, { [list]: [...kept, row] })
    } else if ((SINGLES as readonly Table[]).includes(table)) Object.assign(this.pages, { [table]: row })
  }

  drop(table: keyof typeof LISTS, id: string): void {
    this.changes.push({ drop: table, id })
    const list = LISTS[table]
    Object.assign(this.pages, {
      [list]: (this.pages[list] as readonly { id: string }[]).filter((row) => row.id !== id),
    })
  }

  /** Sets (or moves) what is due; one row a kind and client. */
  due(kind: DueKind, at: Date, data: Rows['due']['data'] = {}, id = this.id('due', kind)): void {
    this.put('due', { id, practiceId: this.client.practiceId, clientId: this.client.id, kind, at, data })
  }

  toClient(saying: Saying): Message {
    return this.post(saying, { to: 'client', user: this.client.user })
  }

  /** To the coach's channel; where none is set there is nobody to tell, and the roster shows it. */
  toCoach(saying: Saying): void {
    const channel = this.file.practice.coachChannel
    if (channel) this.post(saying, { to: 'coach', channel })
  }

  toAlerts(saying: Saying): void {
    const channel = this.file.practice.alertChannel ?? this.file.practice.coachChannel
    if (channel) this.post(saying, { to: 'alerts', channel })
  }

  private post(saying: Saying, address: Address): Message {
    const message: Message = {
      key: saying.key ?? this.id(saying.kind, this.cause, this.postings.length),
      address,
      about: this.client.ref,
      kind: saying.kind,
      asks: saying.asks ?? null,
      care: saying.care ?? 'none',
      text: saying.text,
      drills: saying.drills ?? [],
      buttons: saying.buttons ?? [],
      pick: saying.pick ?? null,
      picture: saying.picture ?? null,
      files: saying.files ?? [],
      mentions: saying.mentions ?? NOBODY,
    }
    this.postings.push({
      message: address.to === 'client' && this.client.wordsOnly ? this.inWords(message) : message,
      clientId: this.client.id,
      practiceId: this.client.practiceId,
      priority: PRIORITY[saying.kind],
      notBefore: this.now,
      expires: saying.expires ?? null,
    })
    return message
  }

  /** The same message without components: the choices of its question become a numbered list. */
  private inWords(message: Message): Message {
    const listed = message.asks !== null && !UNLISTED.test(message.asks)
    const row = listed ? this.pages.asked.find((asked) => asked.ask === message.asks) : undefined
    const labels = row?.options.map((option) => option.label) ?? []
    const list = labels.length === 0 ? '' : `\n${this.texts.client.chooseByNumber(labels)}`
    return { ...message, text: message.text + list, buttons: [], pick: null }
  }
}

// Their answers are values that are read by themselves (a numbered list beside them would mislead), or
// their list stands in the text already.
const UNLISTED = /^(sessions|reach|pain|activities|screening:(?!sexual$).*)$/

const PRIORITY: Readonly<Record<MessageKind, Posting['priority']>> = {
  urgent: 0,
  alert: 1,
  'alert-repeat': 1,
  'taken-up': 2,
  receipt: 2,
  ask: 2,
  welcome: 2,
  screening: 2,
  plan: 2,
  proposal: 2,
  decision: 2,
  cleared: 2,
  discharge: 2,
  notice: 2,
  'follow-up': 2,
  prompt: 3,
  reminder: 3,
  nudge: 3,
  lapse: 3,
  report: 4,
  digest: 4,
  'roll-call': 4,
}
