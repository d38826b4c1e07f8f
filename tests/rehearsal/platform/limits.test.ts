import type { TextChannel } from 'discord.js'
import { describe, expect, test } from 'vitest'
import { Platform } from '../../../src/rehearsal/platform/index.ts'
import { setStage } from './harness.ts'

// Header names and the body of a 429: Discord developer documentation, "Rate Limits".

async function rawStage(t: { onTestFinished: (work: () => Promise<void>) => void }, global = 50) {
  const platform = new Platform({ limits: { global, perChannel: 5 } })
  const guild = platform.build.addGuild('boathouse')
  const channel = platform.build.addChannel(guild.id, 'coaches')
  await platform.start()
  t.onTestFinished(() => platform.stop())
  const headers = { authorization: `Bot ${platform.token}`, 'content-type': 'application/json' }
  const post = () =>
    fetch(`${platform.apiUrl}/v10/channels/${channel.id}/messages`, {
      method: 'POST',
      headers,
      body: '{"content":"x"}',
    })
  const get = () => fetch(`${platform.apiUrl}/v10/users/@me`, { headers })
  return { platform, post, get }
}

describe.concurrent('rate limits', () => {
  test('a channel takes five messages in five seconds, and says so', async (t) => {
    const { post } = await rawStage(t)
    const first = await post()
    expect(first.headers.get('x-ratelimit-limit')).toBe('5')
    expect(first.headers.get('x-ratelimit-remaining')).toBe('4')
    expect(Number(first.headers.get('x-ratelimit-reset-after'))).toBeCloseTo(5, 0)
    expect(first.headers.get('x-ratelimit-bucket')).toMatch(/^[0-9a-f]{32}$/)
    for (let i = 0; i < 4; i += 1) expect((await post()).status).toBe(200)
    const refused = await post()
    expect(refused.status).toBe(429)
    expect(refused.headers.get('x-ratelimit-scope')).toBe('user')
    expect(refused.headers.get('x-ratelimit-global')).toBeNull()
    expect(refused.headers.get('retry-after')).toBe('5')
    const body = (await refused.json()) as { retry_after: number; global: boolean; message: string }
    expect(body).toMatchObject({ global: false, message: 'You are being rate limited.' })
    expect(body.retry_after).toBeGreaterThan(4)
  })

  test('over all routes there is a limit a second', async (t) => {
    const { get, post } = await rawStage(t, 3)
    for (let i = 0; i < 3; i += 1) expect((await get()).status).toBe(200)
    const refused = await post()
    expect(refused.status).toBe(429)
    expect(refused.headers.get('x-ratelimit-global')).toBe('true')
    expect(refused.headers.get('x-ratelimit-scope')).toBe('global')
    expect(await refused.json()).toMatchObject({ global: true })
    await new Promise((resolve) => setTimeout(resolve, 1010))
    expect((await post()).status).toBe(200)
  })

  test('without limits no headers are sent', async (t) => {
    const platform = new Platform()
    await platform.start()
    t.onTestFinished(() => platform.stop())
    const headers = { authorization: `Bot ${platform.token}` }
    const answer = await fetch(`${platform.apiUrl}/v10/users/@me`, { headers })
    expect([...answer.headers.keys()].filter((name) => name.startsWith('x-ratelimit'))).toEqual([])
  })

  test('the real client keeps to the limits and delivers every message once', async (t) => {
    const { platform, client, channelId } = await setStage(t, { limits: 'platform' })
    const contents: string[] = []
    platform.on('message', (event) => contents.push(event.content))
    const channel = (await client.channels.fetch(channelId)) as TextChannel
    const from = performance.now()
    await Promise.all(['1', '2', '3', '4', '5', '6'].map((text) => channel.send(text)))
    expect(contents).toEqual(['1', '2', '3', '4', '5', '6'])
    expect(performance.now() - from).toBeGreaterThan(4500)
    expect(platform.requests.filter((r) => r.status === 429)).toEqual([])
  })

  test('a refusal for too many requests that comes anyway is waited out', async (t) => {
    const { platform, client, channelId } = await setStage(t)
    const body = { message: 'You are being rate limited.', retry_after: 0.4, global: true }
    const headers = { 'retry-after': '0.4', 'x-ratelimit-global': 'true', 'x-ratelimit-scope': 'global' }
    const channel = (await client.channels.fetch(channelId)) as TextChannel
    platform.fault({ match: /^POST .*messages$/, status: 429, headers, body })
    const from = performance.now()
    await channel.send('patience')
    expect(performance.now() - from).toBeGreaterThan(390)
    expect(platform.requests.slice(-2).map((r) => r.status)).toEqual([429, 200])
  })
})
