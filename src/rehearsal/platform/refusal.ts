/** A request that the platform refuses: HTTP status, the platform's own code, and its message. */
export class Refusal extends Error {
  constructor(
    readonly status: number,
    readonly code: number,
    message: string,
    readonly errors?: unknown,
  ) {
    super(message)
  }
}

// Codes and texts: Discord developer documentation, "JSON error codes" (API v10).
export const refuse = {
  notFound: () => new Refusal(404, 0, '404: Not Found'),
  unauthorized: () => new Refusal(401, 0, '401: Unauthorized'),
  unknownChannel: () => new Refusal(404, 10003, 'Unknown Channel'),
  unknownGuild: () => new Refusal(404, 10004, 'Unknown Guild'),
  unknownMember: () => new Refusal(404, 10007, 'Unknown Member'),
  unknownMessage: () => new Refusal(404, 10008, 'Unknown Message'),
  unknownRole: () => new Refusal(404, 10011, 'Unknown Role'),
  unknownUser: () => new Refusal(404, 10013, 'Unknown User'),
  unknownWebhook: () => new Refusal(404, 10015, 'Unknown Webhook'),
  unknownInteraction: () => new Refusal(404, 10062, 'Unknown interaction'),
  unknownCommand: () => new Refusal(404, 10063, 'Unknown application command'),
  alreadyAcknowledged: () => new Refusal(400, 40060, 'Interaction has already been acknowledged.'),
  missingAccess: () => new Refusal(403, 50001, 'Missing Access'),
  dmAction: () => new Refusal(403, 50003, 'Cannot execute action on a DM channel'),
  foreignMessage: () => new Refusal(403, 50005, 'Cannot edit a message authored by another user'),
  emptyMessage: () => new Refusal(400, 50006, 'Cannot send an empty message'),
  dmsClosed: () => new Refusal(403, 50007, 'Cannot send messages to this user'),
  missingPermissions: () => new Refusal(403, 50013, 'Missing Permissions'),
  invalidWebhookToken: () => new Refusal(401, 50027, 'Invalid Webhook Token'),
  invalidRecipient: () => new Refusal(400, 50033, 'Invalid Recipient(s)'),
  invalidBody: (errors: unknown) => new Refusal(400, 50035, 'Invalid Form Body', errors),
  noMutualGuild: () =>
    new Refusal(403, 50278, 'Cannot send messages to this user due to having no mutual guilds'),
} as const

/** A 50035 that names one field and what is wrong with it. */
export function invalidField(path: string, code: string, message: string): Refusal {
  const leaf = { _errors: [{ code, message }] }
  const errors = path.split('.').reduceRight<unknown>((inner, key) => ({ [key]: inner }), leaf)
  return refuse.invalidBody(errors)
}
