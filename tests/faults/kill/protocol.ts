import type { Event } from '../../../src/engine/event.ts'
import type { Handled, Sent } from '../../../src/engine/ports.ts'
import type { OutboxRow } from '../../../src/engine/rows.ts'

/** Where a process ends itself: before or after a step, named with its number as in "insert Due 2". */
export interface Aim {
  readonly step: string
  readonly when: 'before' | 'after'
}

/** At each of several instants (ms since 1970) the so-maniest step of all, from 1. */
export interface AimAtInstants {
  readonly instants: readonly { readonly at: number; readonly step: number }[]
  readonly when: 'before'
}

/** The first step of a name that comes after one of another, such as "commit" after "insert Outbox". */
export interface AimBehind {
  readonly first: string
  readonly behind: string
  readonly when: 'before' | 'after'
}

export type AnyAim = Aim | AimAtInstants | AimBehind

/** What the bot in the child process is asked for. */
export type Ask =
  | {
      readonly ask: 'start'
      readonly databaseUrl: string
      readonly folder: string | null
      readonly token: string
      readonly api: string
    }
  | { readonly ask: 'count'; readonly aim: AnyAim | null }
  | { readonly ask: 'tick' | 'quiet' | 'next-due' | 'steps' | 'instants' | 'stop' }

/** Every question brings the time, as the child has no clock of its own. */
export type Question = Ask & { readonly id: number; readonly now: number }

export type Told =
  | { readonly told: 'ready' }
  | { readonly told: 'answer'; readonly id: number; readonly value: unknown }
  | { readonly told: 'failed'; readonly id: number; readonly error: string }
  | { readonly told: 'sent'; readonly row: OutboxRow; readonly sent: Sent }
  | { readonly told: 'handled'; readonly event: Event; readonly handled: Handled }
