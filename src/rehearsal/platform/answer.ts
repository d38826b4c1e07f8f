import { Callback } from './codes.ts'
import type { Answer, CallbackBody, Interaction, Modal } from './interaction.ts'
import type { PostedMessage } from './posted.ts'

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
