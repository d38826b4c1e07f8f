import { channelRoutes } from './channels.ts'
import { commandRoutes } from './commands.ts'
import { guildRoutes } from './guilds.ts'
import { interactionRoutes } from './interactions.ts'
import { messageRoutes } from './messages.ts'
import type { Routes } from './route.ts'
import { selfRoutes } from './self.ts'
import { webhookRoutes } from './webhooks.ts'

/** Every route that the stand-in has; anything else is recorded as a violation. */
export const ROUTES: Routes = {
  ...selfRoutes,
  ...channelRoutes,
  ...messageRoutes,
  ...guildRoutes,
  ...commandRoutes,
  ...interactionRoutes,
  ...webhookRoutes,
}
