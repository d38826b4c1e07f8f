import type { BotParts } from '../../bot.ts'
import type { Filled } from '../../engine/event.ts'
import type { OutboxRow } from '../../engine/rows.ts'
import type { OpenStore } from '../../store/open.ts'
import type { Platform } from '../platform/index.ts'
import type { Fault, SlashCommand, Use } from '../scenario/index.ts'
import type { Cast } from './cast.ts'
import type { People } from './people.ts'
import type { Shown } from './shown.ts'

/** What a stage tells of while the play goes on. */
export interface Hooks {
  readonly onSent: NonNullable<BotParts['onSent']>
  readonly onHandled: NonNullable<BotParts['onHandled']>
  /** Something went wrong that the play must not pass over. */
  readonly onTrouble: (what: string) => void
  /** A line of the bot's log, at its most verbose. */
  readonly onLogged: (line: string) => void
}

/** A stage with the stand-in behind it, for whoever plays live. */
export interface LiveStage extends Stage {
  readonly platform: Platform
  readonly people: People
  readonly shown: Shown
  /** The database is struck: nothing is to be read from it meanwhile. */
  readonly isDatabaseAway: boolean
  /** Waits until all that an act leads to is done. */
  settled<T>(work: Promise<T> | T): Promise<T>
  /** Ends a lasting fault before its time. */
  release(kind: 'chat' | 'database'): Promise<void>
}

/**
 * Where a scenario is played: through the real chat client against the stand-in, or straight into the bot.
 * `who` is an alias or 'coach'. Every act resolves when all that it led to is done.
 */
export interface Stage {
  readonly cast: Cast
  readonly store: OpenStore
  /** The store gives no answer, since its database is struck or the bot does not run: who needs one to act waits. */
  readonly isUnreadable: boolean
  /** Gives the platform's id of the message. */
  say(who: string, text: string): Promise<string>
  edit(who: string, message: string, text: string): Promise<void>
  takeBack(who: string, message: string): Promise<void>
  /** Presses the button at a place among the message's buttons. */
  press(who: string, row: OutboxRow, index: number): Promise<void>
  /** Chooses from the message's list. */
  choose(who: string, row: OutboxRow, values: readonly string[]): Promise<void>
  /** Opens the form behind a button, fills it in and sends it. */
  fill(who: string, row: OutboxRow, index: number, filled: Filled): Promise<void>
  command(who: string, command: SlashCommand): Promise<void>
  /** Uses a button or list as it is shown; gives what kept it from being used, or null. Needs the stand-in. */
  use?(who: string, use: Use): Promise<string | null>
  /** Handles what is due and sends what waits. */
  tick(): Promise<void>
  /** The next instant of the world at which the bot has something to do. */
  nextDue(): Promise<Date | null>
  fault(fault: Fault): Promise<void>
  /** The faults that end by themselves: the earliest such instant. */
  nextMend(): Date | null
  /** Ends the faults whose time has come. */
  mend(): Promise<void>
  close(): Promise<void>
}
