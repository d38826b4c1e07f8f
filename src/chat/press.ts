import type { ButtonInteraction, ModalSubmitInteraction, StringSelectMenuInteraction } from 'discord.js'
import type { Choice } from '../engine/event.ts'
import type { Act, Answer, Button } from '../engine/message.ts'
import type { OutboxRow } from '../engine/rows.ts'
import { acknowledge, LOOK_UP_MS } from './acknowledge.ts'
import { actorOf } from './actor.ts'
import { chosenOf, listsOf } from './components.ts'
import { type ComponentRef, customId, readCustomId } from './custom-id.ts'
import { readForm, renderForm } from './form.ts'
import { within } from './in-flight.ts'
import { textsIn } from './locale.ts'
import type { ChatParts } from './parts.ts'
import { type Press, showBeside, showInPlace, tell } from './show.ts'

const LATE = Symbol('late')

/** A button pressed, or a choice made from a list. */
export async function onPress(
  interaction: ButtonInteraction | StringSelectMenuInteraction,
  parts: ChatParts,
): Promise<void> {
  const ref = readCustomId(interaction.customId)
  const look = ref ? parts.outbox(ref.outbox) : Promise.resolve(null)
  // whether it opens a form must be known before it is acknowledged: a form cannot be shown afterwards
  const early = await within(look, LOOK_UP_MS, LATE)
  const form = early !== LATE && early && mayPress(early, interaction) ? formBehind(early, ref) : undefined
  if (ref && form) {
    await interaction.showModal(renderForm(customId({ ...ref, part: 'form' }), form))
    return
  }
  await acknowledge(() => interaction.deferUpdate(), parts.log)
  const row = await look
  if (!ref || !row || !mayPress(row, interaction))
    return tell(interaction, textsIn(parts, interaction.locale).expired, parts)
  if (formBehind(row, ref)) return tell(interaction, textsIn(parts, interaction.locale).pressAgain, parts)
  const choice = choiceOf(interaction, row, ref)
  if (!choice) return tell(interaction, textsIn(parts, interaction.locale).expired, parts)
  const { answer } = await parts.bot.handle(choice)
  await show(interaction, answer, row, choice.act, parts)
}

/** A form filled in and sent. */
export async function onForm(interaction: ModalSubmitInteraction, parts: ChatParts): Promise<void> {
  const ref = readCustomId(interaction.customId)
  await acknowledge(() => interaction.deferUpdate(), parts.log)
  const row = ref && (await parts.outbox(ref.outbox))
  const button = ref?.part === 'form' ? row?.body.buttons[ref.index] : undefined
  const filled = button?.form ? readForm(button.form, interaction.fields) : null
  if (!row || !button || !filled || !mayPress(row, interaction))
    return tell(interaction, textsIn(parts, interaction.locale).expired, parts)
  const { answer } = await parts.bot.handle({
    kind: 'form',
    id: interaction.id,
    actor: actorOf(interaction),
    outbox: row.id,
    act: button.act,
    filled,
  })
  await show(interaction, answer, row, button.act, parts)
}

const formBehind = (row: OutboxRow | null, ref: ComponentRef | null): Button['form'] =>
  ref?.part === 'button' ? row?.body.buttons[ref.index]?.form : undefined

/** What one person was told is theirs alone; the rest counts in its own channel, where the engine looks at roles. */
function mayPress({ body: { address } }: OutboxRow, { user, channelId }: Press): boolean {
  if (address.to === 'client') return address.user === user.id
  return address.only === undefined ? address.channel === channelId : address.only === user.id
}

/** Null where there is no such button or list, or what was chosen was not offered there. */
function choiceOf(
  interaction: ButtonInteraction | StringSelectMenuInteraction,
  { id: outbox, body }: OutboxRow,
  ref: ComponentRef,
): Choice | null {
  const from = { kind: 'choice', id: interaction.id, actor: actorOf(interaction), outbox } as const
  if (interaction.isButton()) {
    const button = ref.part === 'button' ? body.buttons[ref.index] : undefined
    return button ? { ...from, act: button.act, label: button.label, values: [] } : null
  }
  const { pick } = body
  const offered = ref.part === 'pick' && pick ? listsOf(pick)[ref.index] : undefined
  const chosen = pick && offered && chosenOf(offered, interaction.values, pick.most)
  if (!chosen || chosen.length === 0) return null
  const values = chosen.map((option) => option.value)
  return { ...from, act: pick.act, label: chosen.map((option) => option.label).join('; '), values }
}

async function show(
  interaction: Press,
  answer: Answer | null,
  row: OutboxRow,
  act: Act,
  parts: ChatParts,
): Promise<void> {
  if (!answer) return
  if (answer.privately) return showBeside(interaction, answer, parts)
  await showInPlace(interaction, answer, settledBy(act, row), parts)
}

/** What a press settles: every choice that answers the same, so that it cannot be answered twice. */
function settledBy(
  act: Act,
  { id: outbox, body: { buttons, pick } }: OutboxRow,
): (customId: string) => boolean {
  const same = (other: Act): boolean => other.do === act.do && other.ask === act.ask
  const settled = buttons.flatMap(({ act }, index) =>
    same(act) ? [customId({ outbox, part: 'button', index })] : [],
  )
  return (id) =>
    settled.includes(id) || (pick !== null && same(pick.act) && readCustomId(id)?.part === 'pick')
}
