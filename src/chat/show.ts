import {
  type ButtonInteraction,
  type ChatInputCommandInteraction,
  MessageFlags,
  type ModalSubmitInteraction,
  type StringSelectMenuInteraction,
} from 'discord.js'
import type { Answer } from '../engine/message.ts'
import { safeError } from '../safe-error.ts'
import { type Row, rowsOf, rowsWithout } from './components.ts'
import { splitText } from './cut.ts'
import { filesOf, type Sendable } from './files.ts'
import type { ChatParts } from './parts.ts'
import { CONTENT_MOST } from './render.ts'

export type Press = ButtonInteraction | StringSelectMenuInteraction | ModalSubmitInteraction
export type Answerable = Press | ChatInputCommandInteraction

const ONLY_FOR_THEM = MessageFlags.Ephemeral
// nothing shown in place may call anybody
const CALL_NOBODY = { parse: [] }

/** Puts an answer in the place kept for it: privately, after a command. */
export async function showAnswer(
  interaction: ChatInputCommandInteraction,
  answer: Answer,
  parts: ChatParts,
): Promise<void> {
  const [first, ...rest] = splitText(answer.text, CONTENT_MOST)
  const [files, ...moreFiles] = await filesShown(answer, parts)
  const own = rest.length === 0 ? choicesOf(answer) : {}
  await interaction.editReply({ content: first ?? '', allowedMentions: CALL_NOBODY, ...files, ...own })
  await more(interaction, [...inLine(rest, choicesOf(answer)), ...moreFiles])
}

const choicesOf = ({ choices }: Answer): { components?: Row[] } =>
  choices?.outbox ? { components: rowsOf(choices.outbox, choices) } : {}

/**
 * Changes the message that was pressed: the words of the answer, with its own choices, or else without those that
 * are settled. A new picture takes the place of the old one.
 */
export async function showInPlace(
  interaction: Press,
  answer: Answer,
  settled: (customId: string) => boolean,
  parts: ChatParts,
): Promise<void> {
  const [first, ...rest] = splitText(answer.text, CONTENT_MOST)
  const before = (interaction.message?.components ?? []).map((row) => row.toJSON() as Row)
  const components = choicesOf(answer).components ?? rowsWithout(before, settled)
  const [files, ...moreFiles] = await filesShown(answer, parts)
  const place = files ? { attachments: [], ...files } : {}
  await interaction.editReply({ content: first ?? '', components, allowedMentions: CALL_NOBODY, ...place })
  await more(interaction, [...inLine(rest), ...moreFiles])
}

/** Tells whoever acted, alone. */
export async function showBeside(interaction: Answerable, answer: Answer, parts: ChatParts): Promise<void> {
  const [files, ...moreFiles] = await filesShown(answer, parts)
  const texts = splitText(answer.text, CONTENT_MOST)
  await more(interaction, [...inLine(texts, { ...files, ...choicesOf(answer) }), ...moreFiles])
}

/** A sentence of the chat's own, wherever there is still room for it; a failure is only logged. */
export async function tell(interaction: Answerable, content: string, { log }: ChatParts): Promise<void> {
  try {
    const said = { content, allowedMentions: CALL_NOBODY }
    if (!interaction.deferred && !interaction.replied)
      await interaction.reply({ ...said, flags: ONLY_FOR_THEM })
    else if (interaction.isChatInputCommand()) await interaction.editReply(said)
    else await interaction.followUp({ ...said, flags: ONLY_FOR_THEM })
  } catch (error) {
    log.warn({ error: safeError(error) }, 'an answer could not be shown')
  }
}

/** One message of an answer. */
interface Share {
  readonly content?: string
  readonly components?: Row[]
  readonly files?: { attachment: Buffer; name: string; description?: string }[]
}

/** Texts one below the other; files and choices stand on the last. */
const inLine = (texts: readonly string[], last: Share = {}): Share[] =>
  texts.map((content, n) => ({ content, ...(n === texts.length - 1 ? last : {}) }))

/** Goes on below, for whoever acted alone. */
async function more(interaction: Answerable, shares: readonly Share[]): Promise<void> {
  for (const share of shares)
    await interaction.followUp({ ...share, flags: ONLY_FOR_THEM, allowedMentions: CALL_NOBODY })
}

/** Picture and files in the groups in which messages can carry them. */
async function filesShown(answer: Answer, parts: ChatParts): Promise<Share[]> {
  return (await filesOf(answer, parts)).map((group) => ({ files: group.map(shownFile) }))
}

const shownFile = ({ name, data, description }: Sendable) => ({
  attachment: data,
  name,
  ...(description === null ? {} : { description }),
})
