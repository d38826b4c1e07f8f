import {
  ActionRowBuilder,
  type AutocompleteInteraction,
  ButtonBuilder,
  type ButtonInteraction,
  ButtonStyle,
  type ChatInputCommandInteraction,
  LabelBuilder,
  MessageFlags,
  ModalBuilder,
  type ModalSubmitInteraction,
  SlashCommandBuilder,
  StringSelectMenuBuilder,
  type StringSelectMenuInteraction,
  TextInputBuilder,
  TextInputStyle,
} from 'discord.js'
import { expect, test } from 'vitest'
import type { PostedEvent } from '../../../src/rehearsal/platform/index.ts'
import { declare, nextInteraction, nextMessage, setStage, until } from './harness.ts'

const COUNT = new SlashCommandBuilder()
  .setName('count')
  .setDescription('Counts strokes')
  .addIntegerOption((o) => o.setName('strokes').setDescription('How many').setRequired(true).setMaxValue(40))
  .addStringOption((o) => o.setName('boat').setDescription('Which boat').setAutocomplete(true))

const row = (...parts: ButtonBuilder[]) => new ActionRowBuilder<ButtonBuilder>().addComponents(...parts)
const button = (id: string) => new ButtonBuilder().setCustomId(id).setLabel(id).setStyle(ButtonStyle.Primary)

test('words go in and out in direct messages', async (t) => {
  const { platform, client, heron, heard } = await setStage(t)
  const posted: PostedEvent[] = []
  platform.on('message', (event) => posted.push(event))
  const came = nextMessage(client)
  heron.say('two lengths done')
  const message = await came
  expect(message.content).toBe('two lengths done')
  expect(message.channel.isDMBased()).toBe(true)
  await message.author.send('noted')
  expect(posted).toMatchObject([{ change: 'created', content: 'noted', recipient: heron.id, guildId: null }])
  await until(() => heard() === platform.sequence)
  expect(platform.violations).toEqual([])
})

test('a command is declared, used and answered in private', async (t) => {
  const { platform, client, heron, channelId } = await setStage(t)
  await declare(client, [COUNT])
  expect(platform.registrations()).toBe(1)
  const came = nextInteraction(client)
  const answered = heron.slash(channelId, 'count', { strokes: 12 })
  const interaction = (await came) as ChatInputCommandInteraction
  expect(interaction.inGuild()).toBe(true)
  const strokes = interaction.options.getInteger('strokes', true)
  await interaction.reply({ content: `${strokes} strokes`, flags: MessageFlags.Ephemeral })
  const answer = await answered
  expect(answer).toMatchObject({
    outcome: 'message',
    message: { content: '12 strokes', recipient: heron.id },
  })
  expect(platform.violations).toEqual([])
})

test('a button is pressed and its message changes', async (t) => {
  const { platform, client, heron } = await setStage(t)
  const user = await client.users.fetch(heron.id)
  const sent = await user.send({ content: 'ready?', components: [row(button('go'), button('wait'))] })
  const came = nextInteraction(client)
  const answered = heron.press(sent.id, 'go')
  const pressed = (await came) as ButtonInteraction
  expect(pressed.customId).toBe('go')
  await pressed.update({ content: 'off you go', components: [] })
  expect(await answered).toMatchObject({
    outcome: 'updated',
    message: { content: 'off you go', components: [] },
  })
  await expect(heron.press(sent.id, 'go')).rejects.toThrow('no such component')
  expect(platform.violations).toEqual([])
})

test('a select is chosen from, its work deferred, its message edited later', async (t) => {
  const { platform, client, heron } = await setStage(t)
  const boats = [1, 2, 4].map((n) => ({ label: `${n} seats`, value: String(n) }))
  const select = new StringSelectMenuBuilder().setCustomId('boat').addOptions(boats)
  const menu = new ActionRowBuilder<StringSelectMenuBuilder>().addComponents(select)
  const sent = await (await client.users.fetch(heron.id)).send({ content: 'boat?', components: [menu] })
  const came = nextInteraction(client)
  const answered = heron.choose(sent.id, 'boat', ['4'])
  const chosen = (await came) as StringSelectMenuInteraction
  expect(chosen.values).toEqual(['4'])
  await chosen.deferUpdate()
  await chosen.editReply({ content: 'the four', components: [] })
  const answer = await answered
  if (answer.outcome !== 'deferred') throw new Error(answer.outcome)
  expect(await answer.completed).toMatchObject({ id: sent.id, content: 'the four' })
  await expect(heron.choose(sent.id, 'boat', ['9'])).rejects.toThrow('no such component')
  expect(platform.violations).toEqual([])
})

const form = () =>
  new ModalBuilder()
    .setCustomId('outing')
    .setTitle('Outing')
    .addLabelComponents(
      new LabelBuilder()
        .setLabel('Which boat?')
        .setStringSelectMenuComponent(
          new StringSelectMenuBuilder()
            .setCustomId('boat')
            .addOptions({ label: 'Single', value: 'one' }, { label: 'Double', value: 'two' }),
        ),
      new LabelBuilder().setLabel('What did you bring?').setStringSelectMenuComponent(
        new StringSelectMenuBuilder()
          .setCustomId('kit')
          .setRequired(false)
          .setMinValues(0)
          .setMaxValues(3)
          .addOptions(['oars', 'seat', 'flag'].map((kit) => ({ label: kit, value: kit }))),
      ),
      new LabelBuilder()
        .setLabel('Anything else?')
        .setTextInputComponent(
          new TextInputBuilder().setCustomId('note').setStyle(TextInputStyle.Paragraph).setRequired(false),
        ),
    )

test('a form with labels is opened by a button, filled in and sent', async (t) => {
  const { platform, client, heron } = await setStage(t)
  const sent = await (await client.users.fetch(heron.id)).send({
    content: 'log',
    components: [row(button('open'))],
  })
  const pressed = nextInteraction(client)
  const opened = heron.press(sent.id, 'open')
  await ((await pressed) as ButtonInteraction).showModal(form())
  const answer = await opened
  if (answer.outcome !== 'modal') throw new Error(answer.outcome)
  expect(answer.modal.title).toBe('Outing')
  await expect(heron.submit(answer.modal, { note: 'x' })).rejects.toThrow('boat needs at least 1')
  await expect(heron.submit(answer.modal, { boat: 'nine' })).rejects.toThrow('does not offer')

  const came = nextInteraction(client)
  const submitted = heron.submit(answer.modal, { boat: 'two', kit: ['oars', 'flag'], note: 'windy' })
  const filled = (await came) as ModalSubmitInteraction
  expect(filled.fields.getStringSelectValues('boat')).toEqual(['two'])
  expect(filled.fields.getStringSelectValues('kit')).toEqual(['oars', 'flag'])
  expect(filled.fields.getTextInputValue('note')).toBe('windy')
  if (!filled.isFromMessage()) throw new Error('the form was opened from a message')
  await filled.update({ content: 'logged', components: [] })
  expect(await submitted).toMatchObject({ outcome: 'updated', message: { id: sent.id, content: 'logged' } })
  expect(platform.violations).toEqual([])
})

test('a deferred reply is filled later, followed up and taken back', async (t) => {
  const { platform, client, heron } = await setStage(t)
  const posted: PostedEvent[] = []
  platform.on('message', (event) => posted.push(event))
  await declare(client, [COUNT])
  const came = nextInteraction(client)
  const answered = heron.slash('dm', 'count', { strokes: 3 })
  const interaction = (await came) as ChatInputCommandInteraction
  await interaction.deferReply({ flags: MessageFlags.Ephemeral })
  const answer = await answered
  if (answer.outcome !== 'deferred') throw new Error(answer.outcome)
  expect(posted).toEqual([])
  await interaction.editReply('three')
  expect(await answer.completed).toMatchObject({ content: 'three', ephemeral: true })
  await interaction.followUp({ content: 'and rest', flags: MessageFlags.Ephemeral })
  expect((await interaction.fetchReply()).content).toBe('three')
  await interaction.deleteReply()
  expect(posted.map((p) => [p.change, p.content])).toEqual([
    ['created', 'three'],
    ['created', 'and rest'],
    ['deleted', 'three'],
  ])
  expect(platform.violations).toEqual([])
})

test('an option offers suggestions while it is typed', async (t) => {
  const { platform, client, heron } = await setStage(t)
  await declare(client, [COUNT])
  const came = nextInteraction(client)
  const answered = heron.complete('dm', 'count', 'boat', 'do')
  const typing = (await came) as AutocompleteInteraction
  expect(typing.options.getFocused()).toBe('do')
  await typing.respond([{ name: 'Double', value: 'double' }])
  expect(await answered).toMatchObject({ outcome: 'choices', choices: [{ value: 'double' }] })
  expect(platform.violations).toEqual([])
})

test('a person’s app refuses what a command does not allow', async (t) => {
  const { client, heron } = await setStage(t)
  await declare(client, [COUNT])
  await expect(heron.slash('dm', 'count')).rejects.toThrow('needs strokes')
  await expect(heron.slash('dm', 'count', { strokes: 41 })).rejects.toThrow('at most 40')
  await expect(heron.slash('dm', 'count', { strokes: 1.5 })).rejects.toThrow('whole number')
  await expect(heron.slash('dm', 'row')).rejects.toThrow('no command /row')
})

test('edits and deletions of a person’s words reach the bot', async (t) => {
  const { platform, client, heron, heard } = await setStage(t)
  const events: string[] = []
  client.on('messageUpdate', (_old, message) => events.push(`edited: ${message.content}`))
  client.on('messageDelete', (message) => events.push(`deleted ${message.id}`))
  const id = heron.say('four')
  heron.edit(id, 'five')
  heron.delete(id)
  await until(() => heard() === platform.sequence)
  expect(events).toEqual(['edited: five', `deleted ${id}`])
})

test('pictures, stickers and voice messages of a person are seen as such', async (t) => {
  const { client, heron } = await setStage(t)
  const first = nextMessage(client)
  heron.say('', {
    attachments: [{ filename: 'oar.png', contentType: 'image/png', data: Buffer.from('png') }],
  })
  const picture = (await first).attachments.first()!
  expect(picture.name).toBe('oar.png')
  expect(await (await fetch(picture.url)).text()).toBe('png')
  const second = nextMessage(client)
  heron.say('', { stickers: ['wave'] })
  expect((await second).stickers.first()!.name).toBe('wave')
  const third = nextMessage(client)
  heron.say('', {
    voice: true,
    attachments: [{ filename: 'v.ogg', contentType: 'audio/ogg', data: Buffer.from('o') }],
  })
  expect((await third).flags.has(MessageFlags.IsVoiceMessage)).toBe(true)
})
