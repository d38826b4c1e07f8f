import * as published from 'discord-api-spec/zod'
import { array, union, type ZodMiniType } from 'zod/mini'
import { invalidField, refuse } from './refusal.ts'

type Verb = 'get' | 'put' | 'post' | 'patch' | 'delete'

// by a name that the type-checker does not follow: the package's own types do not compile under our settings
const PACKAGE: string = 'discord-api-spec'
const { pathsList } = (await import(PACKAGE)) as { pathsList: Readonly<Record<Verb, readonly string[]>> }

/** Method and path template of the published API that a request falls under, with the values in its path. */
export interface Operation {
  /** For example `POST /channels/{channel_id}/messages`. */
  name: string
  params: string[]
}

interface Template {
  name: string
  segments: string[]
}

const TEMPLATES: Template[] = Object.entries(pathsList).flatMap(([verb, paths]) =>
  paths.map((path) => ({ name: `${verb.toUpperCase()} ${path}`, segments: path.split('/') })),
)

const callback = union([
  published.ApplicationCommandAutocompleteCallbackRequestSchema,
  published.CreateMessageInteractionCallbackRequestSchema,
  published.LaunchActivityInteractionCallbackRequestSchema,
  published.ModalInteractionCallbackRequestSchema,
  published.PongInteractionCallbackRequestSchema,
  published.UpdateMessageInteractionCallbackRequestSchema,
])
const commandSet = array(published.ApplicationCommandUpdateRequestSchema)
const webhookEdit = published.IncomingWebhookUpdateRequestPartialSchema

// operation -> schema of its body, as the published document pairs them
const BODIES: Record<string, ZodMiniType> = {
  'POST /users/@me/channels': published.CreatePrivateChannelRequestSchema,
  'POST /channels/{channel_id}/messages': published.MessageCreateRequestSchema,
  'PATCH /channels/{channel_id}/messages/{message_id}': published.MessageEditRequestPartialSchema,
  'POST /guilds/{guild_id}/channels': published.CreateGuildChannelRequestSchema,
  'PUT /applications/{application_id}/commands': commandSet,
  'POST /applications/{application_id}/commands': published.ApplicationCommandCreateRequestSchema,
  'PATCH /applications/{application_id}/commands/{command_id}':
    published.ApplicationCommandPatchRequestPartialSchema,
  'PUT /applications/{application_id}/guilds/{guild_id}/commands': commandSet,
  'POST /applications/{application_id}/guilds/{guild_id}/commands':
    published.ApplicationCommandCreateRequestSchema,
  'PATCH /applications/{application_id}/guilds/{guild_id}/commands/{command_id}':
    published.ApplicationCommandPatchRequestPartialSchema,
  'POST /interactions/{interaction_id}/{interaction_token}/callback': callback,
  'POST /webhooks/{webhook_id}/{webhook_token}': published.IncomingWebhookRequestPartialSchema,
  'PATCH /webhooks/{webhook_id}/{webhook_token}/messages/@original': webhookEdit,
  'PATCH /webhooks/{webhook_id}/{webhook_token}/messages/{message_id}': webhookEdit,
}

/** Finds the published operation for a request; null where there is none. Paths may be percent-encoded. */
export function findOperation(method: string, path: string): Operation | null {
  const given = path.split('/').map(decodeURIComponent)
  const fits = TEMPLATES.filter((t) => t.name.startsWith(`${method} `) && matches(t.segments, given))
  // a literal such as @me or @original wins over a placeholder
  const best = fits.sort((a, b) => placeholders(a.segments) - placeholders(b.segments))[0]
  if (!best) return null
  const params = best.segments.flatMap((segment, i) => (isPlaceholder(segment) ? [given[i]!] : []))
  return { name: best.name, params }
}

/** Refuses ids in the path that are no ids, and a body that the published schema does not accept. */
export function checkRequest(operation: Operation, body: unknown): void {
  checkIds(operation)
  const schema = BODIES[operation.name]
  if (!schema || (body === undefined && !operation.name.startsWith('POST'))) return
  const result = schema.safeParse(withNumericBits(body ?? {}))
  if (!result.success) throw refuse.invalidBody(describe(result.error.issues))
}

// The schemas want permission bits as numbers; the documentation has them as strings of digits, which the
// platform takes as well and the client library sends.
const BIT_FIELDS = new Set(['default_member_permissions', 'allow', 'deny'])

function withNumericBits(body: unknown): unknown {
  const text = JSON.stringify(body)
  return JSON.parse(text, (key, value: unknown) =>
    BIT_FIELDS.has(key) && typeof value === 'string' && /^\d+$/.test(value) ? Number(value) : value,
  )
}

function checkIds(operation: Operation): void {
  const names = [...operation.name.matchAll(/\{([a-z_0-9]+)\}/g)].map((match) => match[1]!)
  for (const [i, name] of names.entries()) {
    const value = operation.params[i]!
    if (!name.endsWith('_id') || /^(0|[1-9]\d*)$/.test(value)) continue
    throw invalidField(name, 'NUMBER_TYPE_COERCE', `Value "${value}" is not snowflake.`)
  }
}

interface Issue {
  code?: string | undefined
  path: PropertyKey[]
  message: string
  errors?: Issue[][]
  maximum?: unknown
  minimum?: unknown
  expected?: unknown
  values?: unknown
}

function describe(issues: readonly Issue[], above: PropertyKey[] = []): Record<string, unknown> {
  const errors: Record<string, unknown> = {}
  for (const issue of issues) {
    const path = [...above, ...issue.path]
    const branch = likeliest(issue.errors ?? [])
    if (branch) Object.assign(errors, describe(branch, path))
    else
      errors[path.join('.') || 'body'] = {
        _errors: [{ code: issue.code ?? 'invalid', message: reason(issue) }],
      }
  }
  return errors
}

// in a union: the branch of the right `type`, and of those the one that came farthest
function likeliest(branches: readonly Issue[][]): Issue[] | undefined {
  const typed = branches.filter((issues) => !issues.some((issue) => issue.path.join() === 'type'))
  const depth = (issues: readonly Issue[]) => Math.max(0, ...issues.map((issue) => issue.path.length))
  return (typed.length > 0 ? typed : branches).toSorted((a, b) => depth(b) - depth(a))[0]
}

function reason({ message, maximum, minimum, expected, values }: Issue): string {
  const details = Object.entries({ maximum, minimum, expected, values }).filter(
    ([, value]) => value !== undefined,
  )
  const shown = details.map(([name, value]) => `${name} ${JSON.stringify(value)}`)
  return [message, ...shown].join(', ')
}

const isPlaceholder = (segment: string) => segment.startsWith('{')
const placeholders = (segments: readonly string[]) => segments.filter(isPlaceholder).length

function matches(template: readonly string[], given: readonly string[]): boolean {
  if (template.length !== given.length) return false
  return template.every((segment, i) => (isPlaceholder(segment) ? given[i] !== '' : segment === given[i]))
}
