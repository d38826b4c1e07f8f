import type { BuildFile } from './attachments.ts'
import { refuse } from './refusal.ts'

/** The JSON of a request, and its files where it came as a form. */
export interface RequestBody {
  body: unknown
  files: BuildFile[]
}

/** Reads a request body: JSON, or a form with `payload_json` and `files[n]`. */
export async function readBody(contentType: string, raw: Buffer): Promise<RequestBody> {
  if (contentType.startsWith('multipart/form-data')) return readForm(contentType, raw)
  if (raw.length === 0) return { body: undefined, files: [] }
  return { body: parseJson(raw.toString('utf8')), files: [] }
}

async function readForm(contentType: string, raw: Buffer): Promise<RequestBody> {
  const form = await new Response(new Uint8Array(raw), {
    headers: { 'content-type': contentType },
  }).formData()
  const read: RequestBody = { body: {}, files: [] }
  for (const [field, value] of form) {
    if (field === 'payload_json') {
      read.body = parseJson(typeof value === 'string' ? value : await value.text())
      continue
    }
    const slot = /^files\[(\d+)\]$/.exec(field)?.[1]
    if (slot === undefined || typeof value === 'string') continue
    const data = Buffer.from(await value.arrayBuffer())
    read.files.push({ slot, name: value.name, contentType: value.type || 'application/octet-stream', data })
  }
  return read
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    throw refuse.invalidBody({ _errors: [{ code: 'JSON_INVALID', message: 'The body is not JSON.' }] })
  }
}
