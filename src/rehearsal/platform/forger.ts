import type { Context } from './context.ts'
import type { Answer } from './interaction.ts'

/** An interaction as it is to be sent: by whom, where, and on which message. */
export interface Forged {
  type: number
  /** Id of an account; where there is none with it, one that is no person's. */
  user: string
  channelId: string
  messageId?: string
  data: unknown
}

/** Sends what no app of a person would send: nothing of it is checked. */
export class Forger {
  constructor(private readonly context: Context) {}

  send({ user, channelId, messageId, ...act }: Forged): Promise<Answer> {
    const { world, interactions } = this.context
    const message = messageId === undefined ? undefined : world.messages.get(messageId)
    const account = world.users.get(user) ?? { id: user, name: 'forged', bot: true, locale: 'en-US' }
    const opening = { ...act, user: account, channel: world.channels.get(channelId)! }
    return interactions.open(message ? { ...opening, message } : opening)
  }

  /** Sends an interaction once more, under the id that it had. */
  again(interactionId: string): void {
    this.context.interactions.again(interactionId)
  }
}
