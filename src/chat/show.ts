import {
  type ButtonInteraction,
  type ChatInputCommandInteraction,
  type InteractionEditReplyOptions,
  MessageFlags,
  type ModalSubmitInteraction,
  type StringSelectMenuInteraction,
} from 'discord.js'
import type { Answer } from '../engine/message.ts'
import { type Row, rowsOf, rowsWithout } from './components.ts'
import { filesOf } from './courier.ts'
import { splitText } from './cut.ts'
import type { ChatParts } from './parts.ts'
import { attachmentOf, CONTENT_MOST } from './render.ts'
import { safeError } from './safe-error.ts'

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
  const shown = { ...(await pictureOf(answer, parts)), ...choicesOf(answer) }
  if (rest.length === 0) return void (await interaction.editReply({ content: first ?? '', ...shown }))
  await interaction.editReply({ content: first ?? '', allowedMentions: CALL_NOBODY })
  await more(interaction, rest, shown)
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
  const picture = await pictureOf(answer, parts)
  const attachments = 'files' in picture ? { attachments: [] } : {}
  await interaction.editReply({ content: first ?? '', components, ...attachments, ...picture })
  await more(interaction, rest)
}

/** Tells whoever acted, alone. */
export async function showBeside(interaction: Answerable, answer: Answer, parts: ChatParts): Promise<void> {
  await more(interaction, splitText(answer.text, CONTENT_MOST), {
    ...(await pictureOf(answer, parts)),
    ...choicesOf(answer),
  })
}

/** A sentence of the chat's own, wherever there is still room for it; a failure is only logged. */
export async function tell(interaction: Answerable, content: string, { log }: ChatParts): Promise<void> {
  try {
    if (!interaction.deferred && !interaction.replied)
      await interaction.reply({ content, flags: ONLY_FOR_THEM })
    else if (interaction.isChatInputCommand()) await interaction.editReply({ content })
    else await interaction.followUp({ content, flags: ONLY_FOR_THEM })
  } catch (error) {
    log.warn({ error: safeError(error) }, 'an answer could not be shown')
  }
}

/** Goes on below, for whoever acted alone; picture and choices stand on the last part. */
async function more(interaction: Answerable, texts: readonly string[], last: object = {}): Promise<void> {
  for (const [n, content] of texts.entries()) {
    const rest = n === texts.length - 1 ? last : {}
    await interaction.followUp({
      content,
      flags: ONLY_FOR_THEM,
      allowedMentions: CALL_NOBODY,
      ...rest,
    })
  }
}

type Shown = Pick<InteractionEditReplyOptions, 'allowedMentions' | 'files'>

async function pictureOf(
  { picture }: Answer,
  { draw, log }: ChatParts,
): Promise<Shown & { files?: never[] }> {
  const files = picture ? await filesOf(picture, draw, log) : []
  if (!picture || files.length === 0) return { allowedMentions: CALL_NOBODY }
  const { filename: name, description } = attachmentOf(picture)
  const attached = files.map(({ data }) => ({ attachment: data as Buffer, name, description }))
  return { allowedMentions: CALL_NOBODY, files: attached as never[] }
}
