import { invalidField } from './refusal.ts'
import type { AttachmentBody, MessageBody, WireAttachment } from './wire.ts'
import type { Channel, World } from './world.ts'

/** A file as it came in a request; `slot` is the n of its field `files[n]`. */
export interface BuildFile {
  slot: string
  name: string
  contentType: string
  data: Buffer
}

interface Build {
  channel: Channel
  body: MessageBody
  files: BuildFile[]
  baseUrl: string
  ephemeral: boolean
}

/** Keeps the files of a request and describes them; alt text and name come from the entry with the same slot. */
export function buildAttachments(world: World, build: Build): WireAttachment[] {
  const entries = build.body.attachments ?? []
  const unmatched = entries.find((e) => isSlot(e.id) && !build.files.some((f) => f.slot === String(e.id)))
  if (unmatched && !world.files.has(String(unmatched.id))) {
    throw invalidField(
      'attachments',
      'ATTACHMENT_NOT_FOUND',
      `No file was sent for attachment ${unmatched.id}`,
    )
  }
  return build.files.map((file) => {
    const entry = entries.find((e) => String(e.id) === file.slot)
    return keepFile(world, build, file, entry)
  })
}

/** On an edit: the attachments that the body lists by id stay, the others go. */
export function keptAttachments(current: readonly WireAttachment[], body: MessageBody): WireAttachment[] {
  if (body.attachments == null) return body.attachments === null ? [] : [...current]
  const listed = new Set(body.attachments.map((entry) => String(entry.id)))
  return current.filter((attachment) => listed.has(attachment.id))
}

// a slot is the number of a file in this request; anything longer is the id of an attachment already kept
const isSlot = (id: string | number) => String(id).length < 15

function keepFile(world: World, build: Build, file: BuildFile, entry?: AttachmentBody): WireAttachment {
  const id = world.nextId()
  const filename = entry?.filename ?? file.name
  const url = `${build.baseUrl}/attachments/${build.channel.id}/${id}/${encodeURIComponent(filename)}`
  world.files.set(id, { name: filename, contentType: file.contentType, data: file.data })
  return {
    id,
    filename,
    size: file.data.length,
    url,
    proxy_url: url,
    content_type: file.contentType,
    ...(entry?.description ? { description: entry.description } : {}),
    ...(entry?.title ? { title: entry.title } : {}),
    ...(entry?.duration_secs ? { duration_secs: entry.duration_secs } : {}),
    ...(entry?.waveform ? { waveform: entry.waveform } : {}),
    ...(build.ephemeral ? { ephemeral: true } : {}),
  }
}
