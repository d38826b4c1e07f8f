import type { RawFile } from 'discord.js'
import type { Logger } from 'pino'
import type { Attached, Drawn, Message, Picture } from '../engine/message.ts'
import { safeError } from '../safe-error.ts'
import { cut } from './cut.ts'

// Limits of the platform (its documentation, "Uploading Files" and "Create Message"; the figures from memory).
const FILES_A_MESSAGE = 10
const BYTES_A_FILE = 10 * 2 ** 20
// 25 MiB a request are allowed; the rest is room for words and form borders
const BYTES_A_MESSAGE = 24 * 2 ** 20
const ALT_MOST = 1024

export type Draw = (picture: Picture) => Promise<{ png: Uint8Array }>
export type DrawFile = (file: Drawn) => Promise<Uint8Array>

/** A file with its bytes, ready to be sent. */
export interface Sendable {
  readonly name: string
  readonly data: Buffer
  readonly contentType: string
  /** What it shows, for whoever cannot see it. */
  readonly description: string | null
}

export interface FileParts {
  readonly draw: Draw
  readonly drawFile: DrawFile
  readonly log: Logger
}

const CONTENT_TYPES: Readonly<Record<string, string>> = {
  csv: 'text/csv',
  json: 'application/json',
  pdf: 'application/pdf',
  png: 'image/png',
}

/**
 * The picture and the files of a message, in the groups in which messages can carry them; no group where there are
 * none.
 * @throws RangeError where a file is too big for the platform
 */
export async function filesOf(
  { picture, files }: Pick<Message, 'picture' | 'files'>,
  parts: FileParts,
): Promise<Sendable[][]> {
  const sendables = picture ? await drawnOf(picture, parts) : []
  for (const file of files) sendables.push(...(await made(file, parts)))
  return groupsOf(sendables)
}

/** The drawn picture; none where it cannot be drawn, as the words of the message hold the same facts. */
async function drawnOf(picture: Picture, { draw, log }: FileParts): Promise<Sendable[]> {
  try {
    const { png } = await draw(picture)
    return [sendable(`${picture.name}.png`, Buffer.from(png), cut(picture.alt, ALT_MOST))]
  } catch (error) {
    log.error({ error: safeError(error) }, 'a picture could not be drawn; its message goes without it')
    return []
  }
}

/** The file with its bytes; none where it cannot be drawn, so that the words arrive and tell what was meant. */
async function made(file: Attached, { drawFile, log }: FileParts): Promise<Sendable[]> {
  if ('text' in file) return [sendable(file.name, Buffer.from(file.text, 'utf8'), null)]
  try {
    return [sendable(file.name, Buffer.from(await drawFile(file)), null)]
  } catch (error) {
    log.error({ error: safeError(error) }, 'a file could not be drawn; its message goes without it')
    return []
  }
}

function sendable(name: string, data: Buffer, description: string | null): Sendable {
  if (data.length > BYTES_A_FILE)
    throw new RangeError(`a file of ${data.length} bytes is too big for the platform`)
  const contentType = CONTENT_TYPES[name.split('.').at(-1)!] ?? 'text/plain'
  return { name, data, contentType, description }
}

function groupsOf(files: readonly Sendable[]): Sendable[][] {
  const groups: Sendable[][] = []
  let bytes = 0
  for (const file of files) {
    const last = groups.at(-1)
    bytes += file.data.length
    if (last && last.length < FILES_A_MESSAGE && bytes <= BYTES_A_MESSAGE) last.push(file)
    else {
      groups.push([file])
      bytes = file.data.length
    }
  }
  return groups
}

/** The files' places in a request, as its body describes them and as its form carries them. */
export const attachmentsOf = (files: readonly Sendable[]) =>
  files.map(({ name, description }, n) => ({
    // the published schema wants the place as text, as it does ids
    id: String(n),
    filename: name,
    ...(description === null ? {} : { description }),
  }))

export const rawOf = (files: readonly Sendable[]): RawFile[] =>
  files.map(({ name, data, contentType }, n) => ({ key: `files[${n}]`, name, data, contentType }))
