import type { Day } from '../../domain/day.ts'
import type { DayValues } from './form-values.ts'
import type { ClientFileEntry } from './format.ts'

/** A scenario as the player takes it: everything filled in, every step at its instant, in order. */
export interface Script {
  /** The file's name as it was given, for messages. */
  readonly file: string
  readonly title: string
  readonly practice: {
    readonly zone: string
    readonly digest: string
    readonly region: string | null
    readonly window: number
    readonly quote: boolean
    readonly 'by-hand'?: boolean | undefined
  }
  readonly start: Day
  readonly days: number
  readonly clients: readonly ScriptClient[]
  /** In order of time; at one instant faults first, then clients in the order of the file, then the coach. */
  readonly steps: readonly Step[]
  readonly expectations: readonly Expectation[]
}

/** A client of the scenario with all defaults filled in; `days` has become steps. */
export interface ScriptClient
  extends Omit<ClientFileEntry, 'days' | 'zone' | 'region' | 'reminder' | 'side'> {
  readonly zone: string
  readonly region: string | null
  readonly reminder: string | null
  readonly side: 'left' | 'right' | 'both' | null
}

export interface Step {
  readonly at: Date
  /** The day of the run that it stands under, 1 for the first. */
  readonly day: number
  readonly line: number
  readonly act: Act
  /** Its time hangs on the client's prompt, and moves with it where prompts are spread over a window. */
  readonly fromPrompt: boolean
}

export type Act =
  | { readonly who: 'client'; readonly ref: string; readonly does: ClientAct }
  | CoachAct
  | FaultAct

export type ClientAct =
  | { readonly do: 'say' | 'edit'; readonly text: string }
  | { readonly do: 'delete' }
  | { readonly do: 'form'; readonly values: DayValues }
  | { readonly do: 'press'; readonly button: string }
  | { readonly do: 'command'; readonly command: SlashCommand }
  | { readonly do: 'use'; readonly use: Use }
  | { readonly do: 'travel'; readonly zone: string | null; readonly region: string | null }

/** A button (with the form that it opens) or a list under a message, as whoever uses it sees it. */
export interface Use {
  readonly name: string
  /** How many messages that have it are newer; 0 for the newest. */
  readonly back: number
  /** Chosen from the list. */
  readonly values?: readonly string[] | undefined
  /** What goes into the form, by field. */
  readonly fill?: Readonly<Record<string, string | readonly string[]>> | undefined
}

/** A command with its options as the platform's app sends them; clients by alias, people as `person:ALIAS`. */
export interface SlashCommand {
  readonly name: string
  readonly options: Readonly<Record<string, string | number | boolean>>
}
/** A command, or one click: a button of the last message about a client that has it. */
export type CoachAct =
  | { readonly who: 'coach'; readonly command: SlashCommand }
  | { readonly who: 'coach'; readonly press: CoachPress }
  | { readonly who: 'coach'; readonly use: Use }
export interface CoachPress {
  readonly ref: string
  readonly button: string
  readonly line: number
}

export type ChatFault =
  | 'down'
  | 'slow'
  | '500'
  | '429'
  | 'lost-answer'
  | 'gateway-drop'
  | 'no-resume'
  | 'revoked'
export type DatabaseFault = 'locked' | 'slow' | 'full' | 'read-only' | 'gone'
export type Fault =
  | { readonly kind: 'chat'; readonly what: ChatFault; readonly forMs: number | null }
  | { readonly kind: 'database'; readonly what: DatabaseFault; readonly forMs: number | null }
  | { readonly kind: 'restart'; readonly what: 'kill' | 'stop' }
  | { readonly kind: 'clock'; readonly ms: number }
export interface FaultAct {
  readonly who: 'world'
  readonly fault: Fault
}

export type Expectation = MessageExpectation | EndExpectation
export interface MessageExpectation {
  readonly of: 'messages'
  readonly line: number
  /** First and last day of the run; null: any day. */
  readonly days: readonly [number, number] | null
  readonly to: string
  readonly kind: string | null
  readonly about: string | null
  readonly care: string | null
  readonly says: RegExp | null
  readonly withinMs: number | null
  /** Null: at least one. */
  readonly count: number | null
}
export interface EndExpectation {
  readonly of: 'end'
  readonly line: number
  readonly ref: string
  readonly status: string | null
  readonly direction: string | null
  readonly proposal: string | null
}
