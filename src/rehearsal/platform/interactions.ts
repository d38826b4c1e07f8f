import { answerFor } from './answer.ts'
import type { BuildFile } from './attachments.ts'
import { Callback, InteractionType, MessageFlag } from './codes.ts'
import type { Answer, CallbackBody, Interaction } from './interaction.ts'
import { interactionObject, type Opening } from './interaction-object.ts'
import { userObject } from './objects.ts'
import { type PostedMessage, postedMessage } from './posted.ts'
import { type Posting, post, revise } from './posting.ts'
import { eventForAll } from './publish.ts'
import { invalidField, refuse } from './refusal.ts'
import { checkForm, checkMessage } from './rules.ts'
import type { Component, MessageBody } from './wire.ts'
import type { StoredMessage } from './world.ts'

/** How long the bot has for a first answer: 3 s of real time (Discord, "Receiving and Responding"). */
const ANSWER_WINDOW_MS = 3000
/** How long the token of an interaction serves: 15 minutes, on the platform's clock. */
const TOKEN_MS = 15 * 60_000

/** Keeps interactions, their windows and their answers. */
export class Interactions {
  private readonly byId = new Map<string, Interaction>()
  private readonly timers = new Map<string, NodeJS.Timeout>()

  constructor(
    private readonly place: () => Posting,
    private readonly windowMs = ANSWER_WINDOW_MS,
  ) {}

  /** Sends an interaction to the bot; the promise tells how it was answered, or that it was not. */
  open(opening: Opening): Promise<Answer> {
    const { world, publish } = this.place()
    const id = world.nextId()
    let complete: Interaction['complete'] = () => {}
    const completed = new Promise<PostedMessage>((resolve) => {
      complete = resolve
    })
    return new Promise((settle) => {
      const rest = { id, token: `interaction-${id}`, at: world.now(), startedAt: performance.now() }
      const record = { ...opening, ...rest, originalId: null, settle, complete, completed }
      const interaction: Interaction = { ...record, state: 'pending' }
      this.byId.set(id, interaction)
      this.timers.set(
        id,
        setTimeout(() => this.expire(interaction), this.windowMs),
      )
      publish(eventForAll('INTERACTION_CREATE', interactionObject(world, interaction)))
    })
  }

  /** Sends one that was sent before once more, under the same id. */
  again(id: string): void {
    const { world, publish } = this.place()
    publish(eventForAll('INTERACTION_CREATE', interactionObject(world, this.byId.get(id)!)))
  }

  /** Takes the bot's first answer; refuses one that is late, double, or does not fit the interaction. */
  answer(id: string, token: string, body: CallbackBody, files: BuildFile[]): StoredMessage | null {
    const interaction = this.byId.get(id)
    if (!interaction || interaction.token !== token || interaction.state === 'expired') {
      throw refuse.unknownInteraction()
    }
    if (interaction.state === 'answered') throw refuse.alreadyAcknowledged()
    checkFit(interaction, body.type)
    const message = this.apply(interaction, body, files)
    this.stopTimer(interaction)
    interaction.state = 'answered'
    interaction.originalId = message?.wire.id ?? null
    const posted = message ? postedMessage(this.place().world, message) : null
    interaction.settle(answerFor(interaction, body, posted))
    if (posted && (body.type === Callback.message || body.type === Callback.update))
      interaction.complete(posted)
    return message
  }

  /** The interaction behind a webhook token; refuses one unknown, not yet answered, or run out. */
  byToken(applicationId: string, token: string): Interaction {
    const interaction = this.byId.get(token.replace(/^interaction-/, ''))
    const { world } = this.place()
    if (!interaction || interaction.token !== token || applicationId !== world.bot.id)
      throw refuse.unknownWebhook()
    if (interaction.state !== 'answered') throw refuse.unknownWebhook()
    if (world.now() - interaction.at > TOKEN_MS) throw refuse.invalidWebhookToken()
    return interaction
  }

  /** The kind of an interaction that is known to be there. */
  typeOf(id: string): number {
    return this.byId.get(id)!.type
  }

  /** How many interactions wait for their first answer. */
  get pending(): number {
    return this.timers.size
  }

  /** Ends every open window, so that nobody waits for an answer that cannot come. */
  stop(): void {
    for (const id of [...this.timers.keys()]) this.expire(this.byId.get(id)!)
  }

  private expire(interaction: Interaction): void {
    this.stopTimer(interaction)
    interaction.state = 'expired'
    interaction.settle({ outcome: 'expired' })
  }

  private stopTimer(interaction: Interaction): void {
    clearTimeout(this.timers.get(interaction.id))
    this.timers.delete(interaction.id)
  }

  private apply(interaction: Interaction, body: CallbackBody, files: BuildFile[]): StoredMessage | null {
    const data = body.data ?? {}
    switch (body.type) {
      case Callback.message:
        checkMessage(data, files.length, 'create')
        return this.reply(interaction, data, files)
      case Callback.deferredMessage:
        return this.reply(interaction, { flags: (data.flags ?? 0) | MessageFlag.loading }, [])
      case Callback.deferredUpdate:
        return interaction.message ?? null
      case Callback.update:
        checkMessage(data, files.length, 'edit')
        revise(this.place(), interaction.message!, data, files)
        return interaction.message!
      case Callback.modal:
        checkForm((data.components ?? []) as Component[])
        return null
      default:
        return null
    }
  }

  /** Writes a message that answers or follows an interaction; private where its flags say so. */
  reply(interaction: Interaction, body: MessageBody, files: BuildFile[]): StoredMessage {
    const isPrivate = ((body.flags ?? 0) & MessageFlag.ephemeral) !== 0
    const { world } = this.place()
    const command = interaction.type === InteractionType.command
    const metadata = { id: interaction.id, type: interaction.type, user: userObject(interaction.user) }
    return post(this.place(), {
      channel: interaction.channel,
      body,
      files,
      type: command ? 20 : 0,
      onlyFor: isPrivate ? interaction.user.id : null,
      interactionId: interaction.id,
      extra: {
        application_id: world.bot.id,
        webhook_id: world.bot.id,
        ...(command ? { interaction_metadata: { ...metadata, authorizing_integration_owners: {} } } : {}),
      },
    })
  }
}

function checkFit(interaction: Interaction, type: number): void {
  const asksForChoices = interaction.type === InteractionType.autocomplete
  const hasMessage = interaction.message !== undefined
  const misfit =
    asksForChoices !== (type === Callback.choices) ||
    ((type === Callback.update || type === Callback.deferredUpdate) && !hasMessage) ||
    (type === Callback.modal && interaction.type === InteractionType.modal)
  if (misfit)
    throw invalidField('type', 'INTERACTION_RESPONSE_TYPE_INVALID', `Type ${type} does not fit here`)
}
