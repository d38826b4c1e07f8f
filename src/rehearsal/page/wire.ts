import type { Care } from '../../domain/care.ts'
import type { MessageKind } from '../../engine/message.ts'
import type { Status } from '../../engine/status.ts'

/**
 * All that goes between the rehearsal's server and its page. Addresses are relative to the page's own
 * (`http://127.0.0.1:PORT/TOKEN/`), so that the token goes with each request by itself:
 *
 * - `GET events?who=heron`: server-sent events. First one `snapshot` (`Snapshot`), then `change` (`Change`) whenever
 *   something has changed. `who` is the client whose phone is shown; left out, the first one. To be somebody else the
 *   page opens another stream.
 * - `GET cards?who=heron&before=ID`: older cards of that client's phone (`who=coach`: of the coach's rooms), as
 *   `{ "cards": Card[], "more": boolean }`, oldest first.
 * - `POST act`: an `Action` as JSON; answered by `Done` or `Refused` (200; 400 where it is no act). Acts are carried out one at a
 *   time in the order in which they come; what they lead to comes by the stream, before the answer does.
 * - `GET explain?card=ID`: `Explanation`.
 * - `GET scenario`: all that was played and improvised as a scenario file (YAML, to be downloaded).
 * - `GET attached/ID/NAME`: a picture or file of a message, by the address in its card.
 *
 * Texts are what was really written: to be shown as text, never as markup of a page. Bot's texts hold the platform's
 * own light marks (`**bold**`); people and roles are named already (`@heron`).
 */

/** What the page shows at first. */
export interface Snapshot extends State {
  /** Sessions are numbered: another number means that everything began anew. */
  readonly session: number
  readonly title: string
  /** The client whose phone is shown; null where the practice has none yet. */
  readonly who: string | null
  readonly clients: readonly PhoneOwner[]
  readonly days: readonly RibbonDay[]
  /** The newest cards of the client's phone and of the coach's rooms, in order of time; older ones by `GET cards`. */
  readonly cards: readonly Card[]
  /** Whether older cards are to be had. */
  readonly more: { readonly client: boolean; readonly coach: boolean }
  /** Commands that the platform offers, with their options, for whoever may type them. */
  readonly commands: readonly CommandOffer[]
  /** Scenarios that come with the program, to start again with. */
  readonly scenarios: readonly { readonly name: string; readonly title: string }[]
  /** Where an empty practice has come to; null where the practice was set up by a scenario. */
  readonly firstSteps: FirstSteps | null
}

/** What has changed since the event before; parts left out are as they were. Cards replace those of the same id. */
export interface Change extends Partial<State> {
  readonly clients?: readonly PhoneOwner[]
  /** Days that are new or have other marks, to be put in the place of those of the same number. */
  readonly days?: readonly RibbonDay[]
  readonly cards?: readonly Card[]
  /** Ids of cards that are gone (a message taken back). */
  readonly gone?: readonly string[]
  readonly firstSteps?: FirstSteps | null
  /** Everything began anew: the page takes this in place of all that it had. */
  readonly anew?: Snapshot
}

/** Time, faults and whether something is going on. */
export interface State {
  readonly now: Now
  /** True while an act is carried out: buttons may be pressed, they wait for their turn. */
  readonly busy: boolean
  /** Virtual seconds a real second at which time runs by itself; null: it stands still. */
  readonly playing: number | null
  /** True until the scenario has come to its end. */
  readonly hasScript: boolean
  readonly faults: Faults
  /** What went wrong in the rehearsal itself, in sentences, the latest last; empty as a rule. */
  readonly troubles: readonly string[]
}

export interface Now {
  /** ISO instant of the virtual clock. */
  readonly at: string
  /** The same in the practice's zone: "2026-03-08T08:00". */
  readonly local: string
  /** Local date of the practice, and its number in the run (1 for the first). */
  readonly date: string
  readonly day: number
  readonly zone: string
  /** The next instant at which something happens, in the practice's zone; null: nothing more is due. */
  readonly next: string | null
}

/** Faults in force. */
export interface Faults {
  readonly chatDown: boolean
  readonly databaseLocked: boolean
  /** The host's clock is so many minutes ahead of the world's (behind it where below zero). */
  readonly clockAheadMinutes: number
  /** A change of the host's clock waits for 03:00 of the coming night. */
  readonly clockChangeTonight: boolean
}

/** One whom the page can be. */
export interface PhoneOwner {
  readonly ref: string
  /** Null until the coach has enrolled them, and once nothing of them is kept any more. */
  readonly status: Status | null
  readonly zone: string
  /** "2026-03-08T08:00" where they are. */
  readonly local: string
  readonly language: string
}

/** A day of the practice on the ribbon; every day from the first to today has one. */
export interface RibbonDay {
  readonly day: number
  readonly date: string
  readonly marks: readonly Mark[]
}
export interface Mark {
  /** ISO instant. */
  readonly at: string
  readonly kind: 'prompt' | 'reply' | 'flag' | 'alert' | 'decision'
  /** Alias of the client. */
  readonly about: string
  /** The card that it stands for; null for a flag that no message told of. */
  readonly card: string | null
  /** In a few words, for its title: the rule, the decision; null where the kind says it all. */
  readonly what: string | null
}

/** One message as it lies before its reader, or something that a person did. */
export interface Card {
  readonly id: string
  /** Whose phone: a client's, or the coach's rooms. */
  readonly side: 'client' | 'coach'
  /** Whose, or which room: "client:heron", "coach" (their channel), "alerts", "hall" or "coach-private". */
  readonly place: string
  /** Who wrote or did it. */
  readonly from: 'bot' | 'client' | 'coach'
  /** ISO instant, and the local time of whoever's phone it is on: "2026-03-08T08:00". */
  readonly at: string
  readonly local: string
  /** Number of the day on the ribbon (the practice's). */
  readonly day: number
  /**
   * The bot's kind of message; `words` for what a person wrote, `act` for what a person did otherwise (pressed, chose,
   * filled in, a command), `reply` where the bot shows something that has no kind (a refusal).
   */
  readonly kind: MessageKind | 'words' | 'act' | 'reply'
  readonly care: Care
  /** The client whom it is about. */
  readonly about: string | null
  /** What the bot asks with it. */
  readonly asks: string | null
  readonly text: string
  /** True where only the one who acted sees it. */
  readonly isPrivate: boolean
  /** Last change of a message that was edited; null where it was not. */
  readonly edited: string | null
  /** What can be used on it now, row by row as the bot sent it. */
  readonly rows: readonly (readonly Control[])[]
  readonly pictures: readonly {
    readonly url: string
    readonly alt: string
    /** Pixels. */
    readonly width: number
    readonly height: number
  }[]
  readonly files: readonly { readonly url: string; readonly name: string }[]
  /** True where `GET explain` has something to say. */
  readonly explains: boolean
}

export type Control = ButtonControl | ListControl
export interface ButtonControl {
  readonly type: 'button'
  /** The platform's id of the component; goes back in `press`. */
  readonly id: string
  readonly label: string
  readonly style: 'main' | 'plain' | 'danger'
  /** It opens a form: the answer to `press` holds it. */
  readonly opensForm: boolean
}
export interface ListControl {
  readonly type: 'list'
  readonly id: string
  readonly label: string
  readonly options: readonly Choice[]
  readonly least: number
  readonly most: number
}
export interface Choice {
  readonly value: string
  readonly label: string
  /** More of the label, in a second line; null where there is none. */
  readonly more: string | null
}

/** A form that the bot opened. It stays open until it is submitted or dropped; dropping it needs no request. */
export interface OpenForm {
  /** Goes back in `submit`. */
  readonly form: string
  readonly title: string
  readonly fields: readonly FormField[]
}
export interface FormField {
  readonly name: string
  readonly label: string
  readonly hint: string | null
  /** One line, several lines, or a list. */
  readonly kind: 'line' | 'lines' | 'list'
  readonly required: boolean
  /** Of a text: characters at most. Of a list: values at least and at most. */
  readonly longest: number | null
  readonly least: number
  readonly most: number
  readonly options: readonly Choice[]
}

export interface CommandOffer {
  /** Without the slash. */
  readonly name: string
  readonly about: string
  /** Who may type it: a client in private, or the coach. */
  readonly by: 'client' | 'coach'
  readonly options: readonly {
    readonly name: string
    readonly about: string
    /** `person` and `client` take an alias; `channel` and `role` take nothing on the page: they are filled in. */
    readonly kind: 'text' | 'number' | 'yes-no' | 'person' | 'channel' | 'role' | 'client'
    readonly required: boolean
    readonly choices: readonly string[]
    readonly least: number | null
    readonly most: number | null
  }[]
}

/** The way of an empty practice, in order; `step` is what comes next. */
export interface FirstSteps {
  /** `screening` is the client's forms; `plan` the coach's /plan; `go` the first prompt: let time pass. */
  readonly step: 'set-up' | 'client' | 'enrol' | 'consent' | 'screening' | 'plan' | 'go' | 'done'
  /** The first client's alias, once there is one. */
  readonly ref: string | null
  /** A command that would do the step, ready to be changed and sent by `command`; null where none is needed. */
  readonly line: string | null
}

/** `as` is an alias or "coach". Every act takes the next whole minute of the virtual clock. */
export type Action =
  /** Writes in private to the bot. */
  | { readonly do: 'say'; readonly as: string; readonly text: string }
  /** Changes or takes back a message of one's own (a card of kind `words`). */
  | { readonly do: 'edit'; readonly as: string; readonly card: string; readonly text: string }
  | { readonly do: 'take-back'; readonly as: string; readonly card: string }
  /** Presses a button; where it opens a form, the answer holds the form. */
  | { readonly do: 'press'; readonly as: string; readonly card: string; readonly control: string }
  | {
      readonly do: 'choose'
      readonly as: string
      readonly card: string
      readonly control: string
      readonly values: readonly string[]
    }
  /** Sends an open form; fields left out stay empty. */
  | {
      readonly do: 'submit'
      readonly as: string
      readonly form: string
      readonly fields: Readonly<Record<string, string | readonly string[]>>
    }
  /** Types a command: "/decide client:heron do:advance". People are named by alias; channels and roles fill in. */
  | { readonly do: 'command'; readonly as: string; readonly line: string }
  /**
   * Lets time pass until something happens, for a day or a week, to the morning (00:00) of a later day of the run, to
   * noon before the clocks change in the practice's zone next, or to the end of the scenario.
   */
  | { readonly do: 'time'; readonly to: 'event' | 'day' | 'week' | 'clocks' | 'end' }
  | { readonly do: 'time'; readonly to: 'date'; readonly day: number }
  /** Lets time run at so many virtual seconds a real second, 60 to 604,800; `pause` ends it, as does any other act. */
  | { readonly do: 'play'; readonly speed: number }
  | { readonly do: 'pause' }
  /** Begins anew with a scenario of the program; with null, with an empty practice. */
  | { readonly do: 'start'; readonly scenario: string | null }
  /** Begins anew with the scenario in a file of the reader's, and plays it to `at`: its beginning or its end. */
  | { readonly do: 'open'; readonly name: string; readonly yaml: string; readonly at: 'beginning' | 'end' }
  /** Somebody new in the boathouse, whom the coach can enrol. Letters, digits and hyphens. */
  | { readonly do: 'add-client'; readonly ref: string }
  | { readonly do: 'break'; readonly what: 'chat' | 'database'; readonly on: boolean }
  /** Kills the bot without warning, and starts it again on what is on disk. */
  | { readonly do: 'break'; readonly what: 'kill' }
  /** The host's clock goes so many hours on (back where below zero) at 03:00 of the coming night; -12 to 12. */
  | { readonly do: 'break'; readonly what: 'clock'; readonly hours: number }

export interface Done {
  readonly ok: true
  /** The form that a press opened. */
  readonly form: OpenForm | null
  /** Cards that the act led to, in order: what to look at next. */
  readonly cards: readonly string[]
}
export interface Refused {
  readonly ok: false
  /** One sentence that says what to do. */
  readonly problem: string
}

/** Why a card is as it is. */
export interface Explanation {
  readonly card: string
  /** Flags of that client open on that day, with the figures behind them; empty where none is. */
  readonly reasons: readonly Reason[]
  /** What the rules proposed that day; null where they proposed nothing. */
  readonly proposal: string | null
  /** How the bot read it; null where it is no reply of a client. */
  readonly reading: ReadingShown | null
}
export interface Reason {
  readonly rule: string
  readonly level: string
  /** First local day of the episode. */
  readonly day: string
  /** The sentence a coach reads. */
  readonly text: string
  readonly figures: readonly { readonly name: string; readonly value: string }[]
  readonly source: string
}
export interface ReadingShown {
  /** The local day that it was taken for; null where none. */
  readonly day: string | null
  /** Sessions, reach, pain, side and so on, each with the words it came from (null: taken from a form or a button). */
  readonly slots: readonly { readonly slot: string; readonly value: string; readonly words: string | null }[]
  readonly signs: readonly {
    readonly sign: string
    readonly name: string
    readonly care: Care
    readonly words: string | null
    /** Given in a way that was asked back. */
    readonly unsure: boolean
  }[]
  /** Names of the signs denied, "all" for all of them. */
  readonly denied: readonly string[]
  /** Which values were still missing, and which had to be asked back. */
  readonly missing: readonly string[]
  readonly unsure: readonly string[]
  readonly intent: string
}
