import { Callback } from '../codes.ts'
import type { CallbackBody } from '../interaction.ts'
import { isLoading } from '../posted.ts'
import { noContent, ok, type Routes } from './route.ts'

/** The first answer to an interaction. */
export const interactionRoutes: Routes = {
  'POST /interactions/{interaction_id}/{interaction_token}/callback': (context, request) => {
    const [id, token] = request.params
    const body = request.body as CallbackBody
    const message = context.interactions.answer(id!, token!, body, request.files)
    if (request.query.get('with_response') !== 'true') return noContent()
    const shown =
      body.type === Callback.message ||
      body.type === Callback.deferredMessage ||
      body.type === Callback.update
    const about = message
      ? {
          response_message_id: message.wire.id,
          response_message_loading: isLoading(message),
          response_message_ephemeral: message.onlyFor !== null,
        }
      : {}
    const resource = message && shown ? { resource: { type: body.type, message: message.wire } } : {}
    const type = context.interactions.typeOf(id!)
    return ok({ interaction: { id, type, ...about }, ...resource })
  },
}
