import { applicationObject, selfObject, userObject } from '../objects.ts'
import { refuse } from '../refusal.ts'
import { ok, type Routes } from './route.ts'

const SESSION_STARTS = { total: 1000, remaining: 999, reset_after: 86_400_000 }

/** The bot itself, the way to the gateway, and other accounts. */
export const selfRoutes: Routes = {
  'GET /gateway': ({ gatewayUrl }) => ok({ url: gatewayUrl }),
  'GET /gateway/bot': ({ gatewayUrl, shards }) =>
    ok({ url: gatewayUrl, shards, session_start_limit: { ...SESSION_STARTS, max_concurrency: shards } }),
  'GET /applications/@me': ({ world }) => ok(applicationObject(world)),
  'GET /oauth2/applications/@me': ({ world }) => ok(applicationObject(world)),
  'GET /users/@me': ({ world }) => ok(selfObject(world.bot)),
  'GET /users/@me/guilds': ({ world }) =>
    ok(world.botGuilds().map(({ id, name }) => ({ id, name, icon: null, owner: false, features: [] }))),
  'GET /users/{user_id}': ({ world }, { params: [id] }) => {
    const account = world.users.get(id!)
    if (!account) throw refuse.unknownUser()
    return ok(userObject(account))
  },
}
