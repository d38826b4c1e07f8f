import type { Care } from '../domain/care.ts'
import type { Ask } from '../domain/reply/reading.ts'

/** A step of consent or screening: `consent`, or `screening:` and the id of the question. */
export type ScreeningAsk = 'consent' | `screening:${string}`
/** What a message may ask: a value or answer of a day, a step of screening or of the end, or "are you on your way?". */
export type Asks = Ask | ScreeningAsk | 'on-the-way' | 'activities' | 'remind' | 'come-back'

export const MESSAGE_KINDS = [
  'welcome',
  'screening',
  'prompt',
  'reminder',
  'receipt',
  'ask',
  'urgent',
  'alert',
  'alert-repeat',
  'taken-up',
  'plan',
  'proposal',
  'decision',
  'nudge',
  'lapse',
  'follow-up',
  'cleared',
  'digest',
  'roll-call',
  'report',
  'discharge',
  'notice',
] as const
export type MessageKind = (typeof MESSAGE_KINDS)[number]

/** What a press means to the engine; it stays in the outbox row and never travels to the platform. */
export type Act = Readonly<Record<string, string | number | boolean | null>> & { readonly do: string }

export interface Button {
  /** Stable name, by which a scenario presses it. Letters, digits, hyphen. */
  readonly name: string
  readonly label: string
  readonly act: Act
  readonly style?: 'main' | 'danger'
  /** Opens this form instead of acting at once; `act` is then what the filled form means. */
  readonly form?: Form
}

/** A choice of one or several from a list. */
export interface Pick {
  readonly name: string
  readonly label: string
  readonly options: readonly Option[]
  readonly most: number
  readonly act: Act
}
export interface Option {
  readonly value: string
  readonly label: string
}

/** At most five fields: what the platform shows at once. */
export interface Form {
  readonly name: string
  readonly title: string
  readonly fields: readonly Field[]
}
export interface Field {
  readonly name: string
  readonly label: string
  readonly hint?: string
  readonly kind: 'one' | 'many' | 'line' | 'lines'
  readonly options?: readonly Option[]
  readonly required: boolean
}

/** Facts from which a picture is drawn at delivery, and the same facts in words. */
export interface Picture {
  /** File name without ending. */
  readonly name: string
  readonly alt: string
  /** The page for a clinician; left out: a client's weeks. */
  readonly draw?: 'report'
  /** Code of the language of the words in a picture of weeks; English where left out. */
  readonly language?: string
  /** A `Weeks` of domain/digest, or a `DrawnReport`. */
  readonly facts: unknown
}

/** A file that goes with a message, under its name with the ending: "heron.csv". */
export type Attached = Written | Drawn
/** Its text as it is known now. */
export interface Written {
  readonly name: string
  readonly text: string
}
/** Facts from which it is drawn at delivery: a `DrawnReport`. */
export interface Drawn {
  readonly name: string
  readonly draw: 'report'
  readonly facts: unknown
}

export type Address =
  | { readonly to: 'client'; readonly user: string }
  | {
      readonly to: 'coach' | 'alerts'
      readonly channel: string
      /** Shown in place to this person alone. */
      readonly only?: string
    }

/** One message as the engine means it; the chat folder turns it into the platform's own. */
export interface Message {
  /** What it stands for, e.g. `prompt/heron/2026-03-08`. */
  readonly key: string
  readonly address: Address
  /** Alias of the client that it is about. */
  readonly about: string | null
  readonly kind: MessageKind
  readonly asks: Asks | null
  readonly care: Care
  readonly text: string
  /** Drills that the message tells somebody to do, as "extension:1". */
  readonly drills: readonly string[]
  readonly buttons: readonly Button[]
  readonly pick: Pick | null
  readonly picture: Picture | null
  /** Files beside the picture, in order; more than one message holds go on in the next. */
  readonly files: readonly Attached[]
  /** Platform ids deliberately called by the message; nothing else in it may call anybody. */
  readonly mentions: { readonly roles: readonly string[]; readonly users: readonly string[] }
}

export const NOBODY: Message['mentions'] = { roles: [], users: [] }

/** What a message of words alone leaves empty. */
export const BARE: Omit<Message, 'key' | 'address' | 'kind' | 'text'> = {
  about: null,
  asks: null,
  care: 'none',
  drills: [],
  buttons: [],
  pick: null,
  picture: null,
  files: [],
  mentions: NOBODY,
}

/** Buttons and a list beside an answer; like a message's own they are known by the row that the store keeps. */
export interface Choices {
  readonly buttons: readonly Button[]
  readonly pick: Pick | null
  /** Id of the kept row, once it is kept: by it a press finds its way back. */
  readonly outbox?: string
}

/** What answers a command or a press: shown in place. */
export interface Answer {
  readonly text: string
  readonly kind: MessageKind
  readonly about: string | null
  readonly drills: readonly string[]
  readonly picture: Picture | null
  readonly files: readonly Attached[]
  readonly asks: Asks | null
  readonly care: Care
  /** After a press: shown beside the message to whoever pressed, and the message stays as it is. */
  readonly privately: boolean
  /** Left out: after a press the message keeps those that are not settled. */
  readonly choices?: Choices
  /** Every row of the client goes once this has been said. */
  readonly erases?: true
}
