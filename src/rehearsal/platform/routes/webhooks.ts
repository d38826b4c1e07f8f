import type { Context } from '../context.ts'
import type { Interaction } from '../interaction.ts'
import { isLoading, postedMessage } from '../posted.ts'
import { retract, revise } from '../posting.ts'
import { refuse } from '../refusal.ts'
import { checkMessage } from '../rules.ts'
import type { MessageBody } from '../wire.ts'
import type { StoredMessage } from '../world.ts'
import { noContent, ok, type RouteRequest, type Routes } from './route.ts'

const MESSAGES = '/webhooks/{webhook_id}/{webhook_token}/messages'

/** What follows the first answer to an interaction, for as long as its token serves. */
export const webhookRoutes: Routes = {
  'POST /webhooks/{webhook_id}/{webhook_token}': (context, request) => {
    const interaction = interactionOf(context, request)
    const body = request.body as MessageBody
    checkMessage(body, request.files.length, 'create')
    const first = loadingReply(context, interaction)
    // documented: the first follow-up to a deferred reply fills that reply, whose privacy stays as it was
    if (first) return ok(complete(context, interaction, first, body, request.files).wire)
    const message = context.interactions.reply(interaction, body, request.files)
    interaction.complete(postedMessage(context.world, message))
    return ok(message.wire)
  },
  [`GET ${MESSAGES}/@original`]: (context, request) => ok(target(context, request).message.wire),
  [`GET ${MESSAGES}/{message_id}`]: (context, request) => ok(target(context, request).message.wire),
  [`PATCH ${MESSAGES}/@original`]: edit,
  [`PATCH ${MESSAGES}/{message_id}`]: edit,
  [`DELETE ${MESSAGES}/@original`]: remove,
  [`DELETE ${MESSAGES}/{message_id}`]: remove,
}

function edit(context: Context, request: RouteRequest) {
  const { interaction, message } = target(context, request)
  const body = request.body as MessageBody
  checkMessage(body, request.files.length, 'edit')
  return ok(complete(context, interaction, message, body, request.files).wire)
}

function remove(context: Context, request: RouteRequest) {
  retract(context, target(context, request).message)
  return noContent()
}

function complete(
  context: Context,
  interaction: Interaction,
  message: StoredMessage,
  body: MessageBody,
  files: RouteRequest['files'],
): StoredMessage {
  revise(context, message, body, files)
  interaction.complete(postedMessage(context.world, message))
  return message
}

function interactionOf(context: Context, { params }: RouteRequest): Interaction {
  return context.interactions.byToken(params[0]!, params[1]!)
}

function loadingReply(context: Context, interaction: Interaction): StoredMessage | null {
  const original = context.world.messages.get(interaction.originalId ?? '')
  return original && isLoading(original) ? original : null
}

// a token reaches the messages of its own interaction, and the one whose component was used
function target(context: Context, request: RouteRequest) {
  const interaction = interactionOf(context, request)
  const id = request.params[2] ?? interaction.originalId ?? ''
  const message = context.world.messages.get(id)
  const own = message?.interactionId === interaction.id || id === interaction.originalId
  if (!message || !own) throw refuse.unknownMessage()
  return { interaction, message }
}
