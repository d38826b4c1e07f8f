import { type ChatInputCommandInteraction, SlashCommandBuilder } from 'discord.js'
import * as published from 'discord-api-spec/zod'
import { expect, test } from 'vitest'
import { array, type ZodMiniType } from 'zod/mini'
import { declare, nextInteraction, setStage } from './harness.ts'

// What the stand-in answers, held against the platform's published schemas (discord-api-spec, generated from
// Discord's own API document, version 10).

function fits(schema: ZodMiniType, value: unknown): void {
  const result = schema.safeParse(value)
  expect(result.success ? [] : result.error.issues).toEqual([])
}

test('answers fit the published schemas', async (t) => {
  const { client, platform, guildId, channelId, heron } = await setStage(t)
  await declare(client, [new SlashCommandBuilder().setName('ping').setDescription('Answers')])
  const get = (path: `/${string}`) => client.rest.get(path)
  fits(published.GatewayBotResponseSchema, await get('/gateway/bot'))
  fits(published.UserPIIResponseSchema, await get('/users/@me'))
  fits(published.UserResponseSchema, await get(`/users/${heron.id}`))
  fits(published.PrivateApplicationResponseSchema, await get('/applications/@me'))
  fits(published.GuildWithCountsResponseSchema, await get(`/guilds/${guildId}?with_counts=true`))
  fits(published.GuildMemberResponseSchema, await get(`/guilds/${guildId}/members/${heron.id}`))
  fits(array(published.GuildRoleResponseSchema), await get(`/guilds/${guildId}/roles`))
  fits(array(published.GuildChannelResponseSchema), await get(`/guilds/${guildId}/channels`))
  fits(published.GuildChannelResponseSchema, await get(`/channels/${channelId}`))
  fits(
    array(published.ApplicationCommandResponseSchema),
    await get(`/applications/${platform.appId}/commands`),
  )
  const dm = await client.rest.post('/users/@me/channels', { body: { recipient_id: heron.id } })
  fits(published.PrivateChannelResponseSchema, dm)
  heron.say('with a picture', {
    attachments: [{ filename: 'a.txt', contentType: 'text/plain', data: Buffer.from('a') }],
  })
  fits(array(published.MessageResponseSchema), await get(`/channels/${(dm as { id: string }).id}/messages`))
})

test('messages and answers to interactions fit the published schemas', async (t) => {
  const { client, platform, channelId, heron } = await setStage(t)
  await declare(client, [new SlashCommandBuilder().setName('ping').setDescription('Answers')])
  const button = { type: 2, style: 1, label: 'Go', custom_id: 'go' }
  const select = { type: 3, custom_id: 'boat', options: [{ label: 'Single', value: '1' }] }
  const rows = [button, select].map((part) => ({ type: 1, components: [part] }))
  const body = { content: 'hello', components: rows, embeds: [{ title: 'week' }], nonce: '1' }
  fits(published.MessageResponseSchema, await client.rest.post(`/channels/${channelId}/messages`, { body }))

  const came = nextInteraction(client)
  const answered = heron.slash(channelId, 'ping')
  const interaction = (await came) as ChatInputCommandInteraction
  const path = `/interactions/${interaction.id}/${interaction.token}/callback` as const
  const query = new URLSearchParams({ with_response: 'true' })
  const reply = await client.rest.post(path, {
    body: { type: 4, data: { content: 'pong' } },
    query,
    auth: false,
  })
  fits(published.InteractionCallbackResponseSchema, reply)
  expect(await answered).toMatchObject({ outcome: 'message', message: { content: 'pong' } })
  const original = `/webhooks/${platform.appId}/${interaction.token}/messages/@original` as const
  fits(
    published.MessageResponseSchema,
    await client.rest.patch(original, { body: { content: 'pong!' }, auth: false }),
  )
})
