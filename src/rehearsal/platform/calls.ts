import type { MessageBody } from './wire.ts'

/** Whom a message of the bot may call: an address, a role, everybody who is there. */
export interface Call {
  request: string
  /** It is left to the platform, which calls whoever the words name. */
  open: boolean
  users: string[]
  roles: string[]
}

/** Whom the words of a body may call; null where they call nobody. */
export function callOf(request: string, body: unknown): Call | null {
  const { data, ...own } = (body ?? {}) as MessageBody & { data?: MessageBody | null }
  const { content, allowed_mentions: allowed } = data ?? own
  if (!content) return null
  const call = {
    request,
    open: !allowed?.parse || allowed.parse.length > 0,
    users: allowed?.users ?? [],
    roles: allowed?.roles ?? [],
  }
  return call.open || call.users.length + call.roles.length > 0 ? call : null
}
