import { Callback } from './codes.ts'
import type { CallbackBody, Interaction } from './interactions.ts'
import type { PostedMessage } from './posted.ts'
import type { Component } from './wire.ts'

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

/** Puts a callback in the words of the person who acted. */
export function answerFor(
  interaction: Interaction,
  body: CallbackBody,
  message: PostedMessage | null,
): Answer {
  const afterMs = performance.now() - interaction.startedAt
  const data = body.data ?? {}
  switch (body.type) {
    case Callback.message:
      return { outcome: 'message', message: message!, afterMs }
    case Callback.update:
      return { outcome: 'updated', message: message!, afterMs }
    case Callback.choices:
      return { outcome: 'choices', choices: data.choices ?? [], afterMs }
    case Callback.modal:
      return { outcome: 'modal', modal: modalOf(interaction, data), afterMs }
    default:
      return { outcome: 'deferred', completed: interaction.completed, afterMs }
  }
}

function modalOf(interaction: Interaction, data: NonNullable<CallbackBody['data']>): Modal {
  return {
    customId: data.custom_id!,
    title: data.title!,
    components: data.components ?? [],
    userId: interaction.user.id,
    channelId: interaction.channel.id,
    messageId: interaction.message?.wire.id ?? null,
  }
}
