import type { RESTPostAPIChannelMessageJSONBody } from 'discord.js'
import type { Message } from '../engine/message.ts'
import { chunks, type Row, rowsOf } from './components.ts'
import { splitText } from './cut.ts'
import { attachmentsOf, type Sendable } from './files.ts'

// Limits of the platform (its documentation, "Create Message" and "Component Reference").
export const CONTENT_MOST = 2000
const ROWS_A_MESSAGE = 5
const NONCE_MOST = 25

export type Body = RESTPostAPIChannelMessageJSONBody

/** One request: its body and the files that go with it. */
export interface Part {
  readonly body: Body
  readonly files: readonly Sendable[]
}

/**
 * A message as one or more requests to the platform: nothing is cut off, what does not fit goes on in the next one.
 * The components stand on the last words, the files (in groups as one message holds them) there and after.
 * @param id of the outbox row, at most 22 characters: nonce and root of the custom ids
 */
export function renderMessage(id: string, message: Message, files: readonly Sendable[][] = []): Part[] {
  const { mentions } = message
  const calls = [
    ...mentions.roles.map((role) => `<@&${role}>`),
    ...mentions.users.map((user) => `<@${user}>`),
  ]
  const texts = splitText([...calls, message.text].join(' '), CONTENT_MOST)
  const groups = chunks(rowsOf(id, message), ROWS_A_MESSAGE)
  return spread(texts, groups, files).map(({ content, components, files }, n) => ({
    body: {
      content,
      components,
      nonce: nonceOf(id, n),
      enforce_nonce: true,
      allowed_mentions: { parse: [], roles: [...mentions.roles], users: [...mentions.users] },
      ...(files.length > 0 ? { attachments: attachmentsOf(files) } : {}),
    },
    files,
  }))
}

interface Share {
  readonly content: string
  readonly components: Row[]
  readonly files: readonly Sendable[]
}

/** Texts in order, the first rows and files with the last of them; more than a message holds follow by themselves. */
function spread(texts: readonly string[], rows: readonly Row[][], files: readonly Sendable[][]): Share[] {
  const last = texts.length - 1
  const more = Math.max(rows.length, files.length) - 1
  const contents = [...texts, ...Array.from({ length: Math.max(0, more) }, () => '')]
  return contents.map((content, n) => ({
    content,
    components: rows[n - last] ?? [],
    files: files[n - last] ?? [],
  }))
}

/** The same part of the same message always has the same nonce: sent again, it stays one message. */
function nonceOf(id: string, part: number): string {
  const nonce = part === 0 ? id : `${id}+${part}`
  if (nonce.length > NONCE_MOST) throw new RangeError(`an outbox id of ${id.length} characters is too long`)
  return nonce
}
