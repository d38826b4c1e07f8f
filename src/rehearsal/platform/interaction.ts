import type { Opening } from './interaction-object.ts'
import type { PostedMessage } from './posted.ts'
import type { Component, MessageBody } from './wire.ts'

/** A form that the bot opened for a person; hand it to `submit`. */
export interface Modal {
  customId: string
  title: string
  components: Component[]
  userId: string
  channelId: string
  /** The message whose button or select opened it. */
  messageId: string | null
}

/** How the bot answered an interaction. `afterMs` is real time from the act to the answer. */
export type Answer =
  /** Nothing came within the window. */
  | { outcome: 'expired' }
  /** A new message, or the message that held the component changed. */
  | { outcome: 'message' | 'updated'; message: PostedMessage; afterMs: number }
  /** Taken note of, the words come later; `completed` waits for them. */
  | { outcome: 'deferred'; completed: Promise<PostedMessage>; afterMs: number }
  | { outcome: 'modal'; modal: Modal; afterMs: number }
  | { outcome: 'choices'; choices: { name: string; value: string | number }[]; afterMs: number }

/** One press, choice, filled form or command, from its start to the end of its token. */
export interface Interaction extends Opening {
  id: string
  token: string
  at: number
  startedAt: number
  state: 'pending' | 'answered' | 'expired'
  /** The message that `@original` stands for. */
  originalId: string | null
  settle: (answer: Answer) => void
  complete: (message: PostedMessage) => void
  completed: Promise<PostedMessage>
}

/** A callback as it came: already checked against the published schema. */
export interface CallbackBody {
  type: number
  data?:
    | (MessageBody & {
        title?: string
        custom_id?: string
        choices?: { name: string; value: string | number }[]
      })
    | null
}
