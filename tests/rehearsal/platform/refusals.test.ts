import { type ChatInputCommandInteraction, SlashCommandBuilder } from 'discord.js'
import { describe, expect, test } from 'vitest'
import { Permission } from '../../../src/rehearsal/platform/index.ts'
import { codeOf, declare, nextInteraction, setStage } from './harness.ts'

// Codes: Discord developer documentation, "JSON error codes" (API v10).

const PING = new SlashCommandBuilder().setName('ping').setDescription('Answers')

describe.concurrent('what the platform refuses', () => {
  test('direct messages that are closed, or without a common server, are refused', async (t) => {
    const { platform, client, heron, guildId } = await setStage(t)
    const user = await client.users.fetch(heron.id)
    platform.closeDms(heron.id)
    expect(await codeOf(user.send('hello'))).toBe('403/50007')
    platform.closeDms(heron.id, false)
    expect(await codeOf(user.send('hello'))).toBe('accepted')
    platform.build.removeMember(guildId, heron.id)
    expect(await codeOf(user.send('hello'))).toBe('403/50278')
  })

  test('a channel that the bot cannot view or write in is refused', async (t) => {
    const { platform, client, guildId } = await setStage(t)
    const post = (id: string) => client.rest.post(`/channels/${id}/messages`, { body: { content: 'x' } })
    const hidden = platform.build.addChannel(guildId, 'hidden', { everyoneCanView: false, botCanView: false })
    expect(await codeOf(post(hidden.id))).toBe('403/50001')
    const silent = { id: platform.appId, type: 'member', allow: 0n, deny: Permission.sendMessages } as const
    const readOnly = platform.build.addChannel(guildId, 'read-only', { overwrites: [silent] })
    expect(await codeOf(post(readOnly.id))).toBe('403/50013')
    const open = platform.build.addChannel(guildId, 'shut-but-for-us', { everyoneCanView: false })
    expect(await codeOf(post(open.id))).toBe('accepted')
    platform.build.removeBot(guildId)
    expect(await codeOf(post(open.id))).toBe('403/50001')
    expect(await codeOf(client.rest.get(`/guilds/${guildId}`))).toBe('403/50001')
    expect(await codeOf(post('1'))).toBe('404/10003')
  })

  test('messages that are empty, too long, malformed, gone or somebody else’s are refused', async (t) => {
    const { platform, client, heron, channelId } = await setStage(t)
    const path = `/channels/${channelId}/messages` as const
    const post = (body: unknown) => codeOf(client.rest.post(path, { body }))
    expect(await post({ content: '   ' })).toBe('400/50006')
    expect(await post({ content: 'x'.repeat(2001) })).toBe('400/50035')
    expect(await post({ content: 7 })).toBe('400/50035')
    expect(await post({ content: 'x', nonce: 'n'.repeat(26) })).toBe('400/50035')
    expect(await post({ content: 'x', components: [{ type: 1, components: [] }] })).toBe('400/50035')
    const twice = { type: 2, style: 1, label: 'a', custom_id: 'a' }
    expect(await post({ content: 'x', components: [{ type: 1, components: [twice, twice] }] })).toBe(
      '400/50035',
    )
    expect(platform.violations).toHaveLength(6)
    expect(await codeOf(client.rest.get(`${path}/1`))).toBe('404/10008')
    const said = heron.say('mine', { channelId })
    expect(await codeOf(client.rest.patch(`${path}/${said}`, { body: { content: 'x' } }))).toBe('403/50005')
    expect(await codeOf(client.rest.delete(`${path}/${said}`))).toBe('403/50013')
    const dm = heron.say('mine')
    const dmChannel = platform.message(dm)!.channelId
    expect(await codeOf(client.rest.delete(`/channels/${dmChannel}/messages/${dm}`))).toBe('403/50003')
  })

  test('a request outside the published API is recorded', async (t) => {
    const { platform, client } = await setStage(t)
    expect(await codeOf(client.rest.get('/strokes'))).toBe('404/0')
    expect(await codeOf(client.rest.get('/channels/not-an-id'))).toBe('400/50035')
    expect(platform.violations.map((v) => v.reason)).toEqual([
      'not in the published API',
      'Invalid Form Body',
    ])
  })

  test('an answer after three seconds of real time is refused', async (t) => {
    const { client, heron } = await setStage(t)
    await declare(client, [PING])
    const late = nextInteraction(client)
    const from = performance.now()
    expect(await heron.slash('dm', 'ping')).toEqual({ outcome: 'expired' })
    expect(performance.now() - from).toBeGreaterThan(2950)
    expect(await codeOf(((await late) as ChatInputCommandInteraction).reply('late'))).toBe('404/10062')
  })

  test('a second answer is refused', async (t) => {
    const { client, heron } = await setStage(t)
    await declare(client, [PING])
    const came = nextInteraction(client)
    const answered = heron.slash('dm', 'ping')
    const interaction = (await came) as ChatInputCommandInteraction
    await interaction.reply('once')
    interaction.replied = false // the client itself would not try again
    expect(await codeOf(interaction.reply('twice'))).toBe('400/40060')
    expect(await answered).toMatchObject({ outcome: 'message', message: { content: 'once' } })
  })

  test('an answer of the wrong kind is refused', async (t) => {
    const { client, heron } = await setStage(t)
    await declare(client, [PING])
    const came = nextInteraction(client)
    const answered = heron.slash('dm', 'ping')
    const { id, token } = await came
    const answer = (type: number) =>
      codeOf(client.rest.post(`/interactions/${id}/${token}/callback`, { body: { type } }))
    expect(await answer(6)).toBe('400/50035')
    expect(await answer(5)).toBe('accepted')
    expect(await answered).toMatchObject({ outcome: 'deferred' })
  })

  test('an interaction token serves fifteen minutes of the platform’s clock, and only after a first answer', async (t) => {
    let now = Date.UTC(2026, 2, 2, 8)
    const { client, heron } = await setStage(t, { now: () => now })
    await declare(client, [PING])
    const came = nextInteraction(client)
    void heron.slash('dm', 'ping')
    const interaction = (await came) as ChatInputCommandInteraction
    expect(await codeOf(interaction.webhook.send('too soon'))).toBe('404/10015')
    await interaction.deferReply()
    now += 15 * 60_000
    expect(await codeOf(interaction.editReply('in time'))).toBe('accepted')
    now += 1
    expect(await codeOf(interaction.editReply('too late'))).toBe('401/50027')
  })

  test('a private reply is seen by one person only', async (t) => {
    const { platform, client, heron, guildId, channelId } = await setStage(t)
    const dipper = platform.addUser('dipper')
    platform.build.addMember(guildId, dipper.id)
    await declare(client, [PING])
    const came = nextInteraction(client)
    const answered = heron.slash(channelId, 'ping')
    const button = { type: 2, style: 1, label: 'a', custom_id: 'a' }
    const components = [{ type: 1, components: [button] }]
    const { id, token } = await came
    const body = { type: 4, data: { content: 'hush', flags: 64, components } }
    await client.rest.post(`/interactions/${id}/${token}/callback`, { body })
    const answer = await answered
    if (answer.outcome !== 'message') throw new Error(answer.outcome)
    await expect(dipper.press(answer.message.id, 'a')).rejects.toThrow('somebody else')
    expect(await client.rest.get(`/channels/${channelId}/messages`)).toEqual([])
    expect(await codeOf(client.rest.get(`/channels/${channelId}/messages/${answer.message.id}`))).toBe(
      '404/10008',
    )
  })
})
