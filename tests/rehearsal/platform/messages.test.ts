import { AttachmentBuilder, EmbedBuilder, type TextChannel } from 'discord.js'
import { expect, test } from 'vitest'
import type { PostedEvent } from '../../../src/rehearsal/platform/index.ts'
import { codeOf, setStage, until } from './harness.ts'

const START = Date.UTC(2026, 2, 2, 8)

test('the same nonce in the same channel within minutes gives the same message', async (t) => {
  let now = START
  const { client, heron, channelId } = await setStage(t, { now: () => now })
  const user = await client.users.fetch(heron.id)
  const once = { content: 'prompt', nonce: 'heron 2026-03-02', enforceNonce: true }
  const first = await user.send(once)
  now += 4 * 60_000
  expect((await user.send(once)).id).toBe(first.id)
  expect((await user.send({ ...once, nonce: 'heron 2026-03-03' })).id).not.toBe(first.id)
  const channel = (await client.channels.fetch(channelId)) as TextChannel
  expect((await channel.send(once)).id).not.toBe(first.id)
  expect((await user.send({ ...once, enforceNonce: false })).id).not.toBe(first.id)
  now += 10 * 60_000
  expect((await user.send(once)).id).not.toBe(first.id)
})

test('a lost answer is posted again; only an enforced nonce keeps it one message', async (t) => {
  const { platform, client, heron } = await setStage(t)
  const contents: string[] = []
  platform.on('message', (event) => contents.push(event.content))
  const user = await client.users.fetch(heron.id)
  await user.createDM()
  const lost = { match: /^POST .*\/messages$/, drop: true, afterApply: true }
  platform.fault(lost)
  expect(await codeOf(user.send({ content: 'once', nonce: '1', enforceNonce: true }))).toBe(
    'undefined/UND_ERR_SOCKET',
  )
  await user.send({ content: 'once', nonce: '1', enforceNonce: true })
  platform.fault(lost)
  await user.send('plain').catch(() => user.send('plain'))
  expect(contents).toEqual(['once', 'plain', 'plain'])
})

test('a picture keeps its alt text and can be fetched; an embed shows it', async (t) => {
  const { platform, client, channelId } = await setStage(t)
  const posted: PostedEvent[] = []
  platform.on('message', (event) => posted.push(event))
  const data = Buffer.from('89504e470d0a1a0a', 'hex')
  const channel = (await client.channels.fetch(channelId)) as TextChannel
  const message = await channel.send({
    embeds: [new EmbedBuilder().setTitle('week').setImage('attachment://week.png')],
    files: [new AttachmentBuilder(data, { name: 'week.png', description: 'strokes rise' })],
  })
  const file = message.attachments.first()!
  expect(file.description).toBe('strokes rise')
  expect(file.contentType).toBe('image/png')
  expect(message.embeds[0]!.image!.url).toBe(file.url)
  expect(Buffer.from(await (await fetch(file.url)).arrayBuffer())).toEqual(data)
  expect(posted[0]!.attachments).toMatchObject([{ filename: 'week.png', description: 'strokes rise', data }])
  const kept = await message.edit({ content: 'with words', attachments: [file] })
  expect(kept.attachments.size).toBe(1)
  const bare = await message.edit({ attachments: [] })
  expect(bare.attachments.size).toBe(0)
  expect(platform.violations).toEqual([])
})

test('messages of a channel are listed newest first, by before, after and limit', async (t) => {
  const { client, heron } = await setStage(t)
  const ids = ['1', '2', '3', '4', '5'].map((text) => heron.say(text))
  const dm = await (await client.users.fetch(heron.id)).createDM()
  const list = async (options: object) =>
    [...(await dm.messages.fetch(options)).values()].map((m) => m.content)
  expect(await list({})).toEqual(['5', '4', '3', '2', '1'])
  expect(await list({ limit: 2 })).toEqual(['5', '4'])
  expect(await list({ after: ids[1], limit: 2 })).toEqual(['4', '3'])
  expect(await list({ before: ids[2] })).toEqual(['2', '1'])
  expect(await list({ around: ids[2], limit: 3 })).toEqual(['4', '3', '2'])
  expect(await codeOf(list({ limit: 101 }))).toBe('400/50035')
})

test('an edit and a deletion by the bot are told to listeners and to the gateway', async (t) => {
  const { platform, client, channelId, heard } = await setStage(t)
  const changes: string[] = []
  platform.on('message', (event) => changes.push(`${event.change} ${event.content}`))
  const channel = (await client.channels.fetch(channelId)) as TextChannel
  const message = await channel.send('one')
  await message.edit('two')
  await message.delete()
  expect(changes).toEqual(['created one', 'edited two', 'deleted two'])
  await until(() => heard() === platform.sequence)
  expect(await codeOf(message.edit('three'))).toBe('404/10008')
})

test('timestamps and ids follow the given clock', async (t) => {
  const { client, heron } = await setStage(t, { now: () => START })
  const user = await client.users.fetch(heron.id)
  const messages = [await user.send('a'), await user.send('b')]
  expect(messages.map((m) => m.createdTimestamp)).toEqual([START, START])
  expect(BigInt(messages[1]!.id)).toBeGreaterThan(BigInt(messages[0]!.id))
})

test('words in a server’s channel are hidden from a bot without that intent, unless it is mentioned', async (t) => {
  const { platform, client, heron, guildId, channelId, heard } = await setStage(t)
  const seen: string[] = []
  client.on('messageCreate', (message) => seen.push(message.content))
  heron.say('hello all', { channelId })
  heron.say(`hello <@${platform.appId}>`, { channelId })
  const hidden = platform.build.addChannel(guildId, 'hidden', { botCanView: false })
  heron.say('unheard', { channelId: hidden.id })
  await until(() => heard() === platform.sequence)
  expect(seen).toEqual(['', `hello <@${platform.appId}>`])
})

test('a reply points at the message it answers', async (t) => {
  const { platform, client, heron } = await setStage(t)
  const dm = await (await client.users.fetch(heron.id)).createDM()
  const said = heron.say('which boat?')
  const reply = await dm.send({ content: 'the four', reply: { messageReference: said } })
  expect(reply.reference?.messageId).toBe(said)
  heron.delete(said)
  expect(await codeOf(dm.send({ content: 'gone', reply: { messageReference: said } }))).toBe('400/50035')
  const loose = { messageReference: said, failIfNotExists: false }
  expect(await codeOf(dm.send({ content: 'gone', reply: loose }))).toBe('accepted')
  expect(platform.violations).toHaveLength(1)
})
