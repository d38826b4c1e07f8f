import type { RESTPostAPIChannelMessageJSONBody } from 'discord.js'
import type { Message, Picture } from '../engine/message.ts'
import { chunks, type Row, rowsOf } from './components.ts'
import { cut, splitText } from './cut.ts'

// Limits of the platform (its documentation, "Create Message" and "Component Reference").
export const CONTENT_MOST = 2000
const ROWS_A_MESSAGE = 5
const ALT_MOST = 1024
const NONCE_MOST = 25

export type Body = RESTPostAPIChannelMessageJSONBody

/**
 * A message as one or more bodies for the platform: nothing is cut off, what does not fit goes on in the next one.
 * The picture and the components stand on the last.
 * @param id of the outbox row, at most 22 characters: nonce and root of the custom ids
 */
export function renderMessage(id: string, message: Message): Body[] {
  const { mentions } = message
  const calls = [
    ...mentions.roles.map((role) => `<@&${role}>`),
    ...mentions.users.map((user) => `<@${user}>`),
  ]
  const texts = splitText([...calls, message.text].join(' '), CONTENT_MOST)
  const groups = chunks(rowsOf(id, message), ROWS_A_MESSAGE)
  const parts = spread(texts, groups)
  return parts.map(({ content, components }, n) => ({
    content,
    components,
    nonce: nonceOf(id, n),
    enforce_nonce: true,
    allowed_mentions: { parse: [], roles: [...mentions.roles], users: [...mentions.users] },
    ...(message.picture && n === parts.length - 1 ? { attachments: [attachmentOf(message.picture)] } : {}),
  }))
}

/** Texts in order, the first rows under the last of them; more rows than a message holds follow by themselves. */
function spread(
  texts: readonly string[],
  groups: readonly Row[][],
): { content: string; components: Row[] }[] {
  const last = texts.length - 1
  const parts = texts.map((content, n) => ({ content, components: n === last ? (groups[0] ?? []) : [] }))
  return [...parts, ...groups.slice(1).map((components) => ({ content: '', components }))]
}

/** The same part of the same message always has the same nonce: sent again, it stays one message. */
function nonceOf(id: string, part: number): string {
  const nonce = part === 0 ? id : `${id}+${part}`
  if (nonce.length > NONCE_MOST) throw new RangeError(`an outbox id of ${id.length} characters is too long`)
  return nonce
}

/** The picture's place among the files, and its facts for whoever cannot see it. */
export const attachmentOf = (picture: Picture): { id: string; filename: string; description: string } => ({
  // the published schema wants the place as text, as it does ids
  id: '0',
  filename: fileName(picture),
  description: cut(picture.alt, ALT_MOST),
})

export const fileName = (picture: Picture): string => `${picture.name}.png`
