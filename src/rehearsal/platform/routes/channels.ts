import { channelObject } from '../objects.ts'
import { refuse } from '../refusal.ts'
import { reachChannel } from './access.ts'
import { noContent, ok, type Routes } from './route.ts'

/** Channels and direct messages, without what is said in them. */
export const channelRoutes: Routes = {
  'POST /users/@me/channels': ({ world }, { body }) => {
    const id = (body as { recipient_id?: string | null }).recipient_id ?? ''
    const account = world.users.get(id)
    if (!account || account.bot) throw refuse.invalidRecipient()
    return ok(channelObject(world, world.dmChannel(id)))
  },
  'GET /channels/{channel_id}': ({ world }, { params: [id] }) =>
    ok(channelObject(world, reachChannel(world, id!, 0n))),
  'POST /channels/{channel_id}/typing': ({ world }, { params: [id] }) => {
    reachChannel(world, id!, 0n)
    return noContent()
  },
}
