import { Client, Events, GatewayIntentBits } from 'discord.js'
import { describe, expect, test } from 'vitest'
import { Intent, Platform } from '../../../src/rehearsal/platform/index.ts'
import { codeOf, logIn, makeClient, setStage, until } from './harness.ts'

// the client waits between sessions of its own accord, so these run side by side
describe.concurrent('the line between client and gateway', () => {
  test('after a broken line the session resumes and what was missed is replayed', async (t) => {
    const { platform, client, heron } = await setStage(t)
    const heard: string[] = []
    client.on(Events.MessageCreate, (message) => heard.push(message.content))
    platform.dropGateway()
    await until(() => !platform.connected)
    heron.say('while you were out')
    heron.say('and again')
    await until(() => heard.length === 2)
    heron.say('back')
    await until(() => heard.length === 3)
    expect(heard).toEqual(['while you were out', 'and again', 'back'])
    expect(platform.sessions).toEqual({ identified: 1, resumed: 1 })
  })

  test('a session that cannot be resumed is begun anew, and what was missed can be fetched', async (t) => {
    const { platform, client, heron } = await setStage(t)
    platform.refuseResume()
    platform.dropGateway()
    await until(() => !platform.connected)
    heron.say('unheard')
    await until(() => platform.sessions.identified === 2 && platform.connected)
    expect(platform.sessions).toEqual({ identified: 2, resumed: 0 })
    const dm = await (await client.users.fetch(heron.id)).createDM()
    expect((await dm.messages.fetch()).map((m) => m.content)).toEqual(['unheard'])
  })

  test('an invalid session is begun anew', async (t) => {
    const { platform } = await setStage(t)
    platform.invalidSession()
    await until(() => platform.sessions.identified === 2)
    expect(platform.sessions.resumed).toBe(0)
  })

  test('the client comes back when it is asked to, and after a close that allows it', async (t) => {
    const { platform } = await setStage(t)
    platform.reconnect()
    await until(() => platform.sessions.resumed === 1)
    platform.closeWith(4000)
    await until(() => platform.sessions.resumed === 2)
    expect(platform.sessions.identified).toBe(1)
  })

  test('while the platform is down nothing is answered; then all comes back', async (t) => {
    const { platform, client, heron } = await setStage(t)
    const heard: string[] = []
    client.on(Events.MessageCreate, (message) => heard.push(message.content))
    const user = await client.users.fetch(heron.id)
    platform.chatDown(true)
    heron.say('hello?')
    expect(await codeOf(user.send('no way'))).toContain('undefined/')
    await until(() => !platform.connected)
    platform.chatDown(false)
    await until(() => heard.length === 1)
    expect(await codeOf(user.send('here again'))).toBe('accepted')
  })

  test('a token that is revoked ends the session and every request', async (t) => {
    const { platform, client, heron } = await setStage(t)
    const gone = new Promise((resolve) => client.once(Events.ShardDisconnect, (event) => resolve(event.code)))
    platform.revokeToken()
    expect(await gone).toBe(4004)
    expect(await codeOf(client.users.fetch(heron.id))).toBe('401/0')
    const fresh = makeClient(platform)
    expect(await codeOf(fresh.login(platform.token))).toContain('TokenInvalid')
    await fresh.destroy()
  })

  test('an intent that is not switched on closes the line', async (t) => {
    const platform = new Platform()
    await platform.start()
    t.onTestFinished(() => platform.stop())
    const client = new Client({ intents: [GatewayIntentBits.MessageContent], rest: { api: platform.apiUrl } })
    const code = new Promise((resolve) => client.once(Events.ShardDisconnect, (event) => resolve(event.code)))
    await expect(client.login(platform.token)).rejects.toThrow('disallowed intents')
    expect(await code).toBe(4014)
    await client.destroy()
  })

  test('heartbeats are answered', async (t) => {
    const { platform, client } = await setStage(t, { heartbeatMs: 300 })
    await until(() => client.ws.ping >= 0)
    await new Promise((resolve) => setTimeout(resolve, 800))
    expect(platform.sessions).toEqual({ identified: 1, resumed: 0 })
  })

  test('a slow platform answers late; errors of the server are tried again at once', async (t) => {
    const { platform, client, heron } = await setStage(t)
    const user = await client.users.fetch(heron.id)
    await user.createDM()
    platform.slow(150)
    const from = performance.now()
    await user.send('slow')
    expect(performance.now() - from).toBeGreaterThan(149)
    platform.slow(0)
    platform.fault({ match: /messages$/, status: 503, times: 3 })
    expect(await codeOf(user.send('third time lucky'))).toBe('accepted')
    platform.fault({ match: /messages$/, status: 503, times: 9 })
    expect(await codeOf(user.send('no'))).toBe('503/undefined')
    platform.clearFaults()
    expect(await codeOf(user.send('yes'))).toBe('accepted')
  })

  test('members are told of only where that intent is switched on', async (t) => {
    const { platform, guildId } = await setStage(t, { privilegedIntents: Intent.guildMembers })
    const client = new Client({
      intents: [GatewayIntentBits.Guilds, GatewayIntentBits.GuildMembers],
      rest: { api: platform.apiUrl },
    })
    await logIn(client, platform.token)
    t.onTestFinished(() => client.destroy())
    const joined = new Promise((resolve) =>
      client.once(Events.GuildMemberAdd, (m) => resolve(m.user.username)),
    )
    const dipper = platform.addUser('dipper')
    platform.build.addMember(guildId, dipper.id)
    expect(await joined).toBe('dipper')
    const all = await client.guilds.cache.get(guildId)!.members.fetch()
    expect(all.map((m) => m.user.username).sort()).toEqual(['boathouse-owner', 'dipper', 'ebbline', 'heron'])
  })
})
