import pino from 'pino'
import { describe, expect, it, type TestContext } from 'vitest'
import { ChatProblem, connect, createClient } from '../../src/chat/client.ts'
import { Platform } from '../../src/rehearsal/platform/index.ts'
import { chat as texts } from '../../src/text/en/chat.ts'
import { row } from '../chat/outbox.ts'
import { answer, setStage } from './chat-stage.ts'

/** Logs in with nothing behind it; gives the problem that stops it, if any. */
async function logIn(token: string, api: string): Promise<string | null> {
  const client = createClient(token, api)
  const parts = {
    client,
    token,
    bot: { handle: async () => ({ answer: null }) },
    outbox: async () => null,
    aliases: async () => [],
    knownDms: { all: async function* () {}, of: async () => null },
    draw: async () => ({ png: new Uint8Array() }),
    drawFile: async () => new Uint8Array(),
    texts,
    log: pino({ enabled: false }),
  }
  return connect(parts).then(
    async (chat) => {
      await chat.close()
      return null
    },
    (error) => {
      expect(error).toBeInstanceOf(ChatProblem)
      return (error as Error).message
    },
  )
}

async function platformOf(context: TestContext) {
  const platform = new Platform()
  platform.build.addGuild('boathouse')
  await platform.start()
  context.onTestFinished(() => platform.stop())
  return platform
}

describe('logging in', () => {
  it('works, and asks for no privileged intent', async (context) => {
    const platform = await platformOf(context)
    expect(await logIn(platform.token, platform.apiUrl)).toBeNull()
  })

  it('names the mend where the token is wrong', async (context) => {
    const platform = await platformOf(context)
    expect(await logIn('wrong.token.here', platform.apiUrl)).toBe(texts.problem.token)
  })

  it('names the mend where there is nobody', async () => {
    expect(await logIn('some.token.here', 'http://127.0.0.1:9/api')).toBe(
      texts.problem.unreachable('127.0.0.1:9'),
    )
  })
})

describe('leaving', () => {
  it('lets what is under way end, and takes less than 5 s where it does not', async (context) => {
    const stage = await setStage(context)
    const slow = new Promise<never>(() => {})
    stage.lookUp = () => slow
    const sent = row({
      body: {
        ...row().body,
        address: { to: 'client', user: stage.heron.id },
        buttons: [{ name: 'yes', label: 'Yes', act: { do: 'answer' } }],
      },
    })
    const shown = await stage.post(sent)
    await stage.heron.press(shown.id, `${sent.id}.0`)
    const begun = performance.now()
    await stage.chat.close()
    expect(performance.now() - begun).toBeLessThan(5_000)
  })
})

describe('a line that breaks', () => {
  it('is taken up again, and nothing said meanwhile is lost or applied twice', async (context) => {
    const stage = await setStage(context)
    const before = stage.heron.say('before')
    await stage.settled()
    stage.platform.dropGateway()
    const meanwhile = stage.heron.say('meanwhile')
    while (stage.platform.sessions.resumed < 1) await new Promise((resolve) => setTimeout(resolve, 20))
    await stage.settled()
    expect(stage.heard.map((event) => 'id' in event && event.id)).toEqual([before, meanwhile])
  })

  it('with the session lost is caught up with', async (context) => {
    const stage = await setStage(context)
    const before = stage.heron.say('before')
    await stage.settled()
    const { channelId } = stage.platform.message(before)!
    stage.knownDms.push({ channel: channelId, user: stage.heron.id, after: before })
    stage.platform.refuseResume()
    stage.platform.dropGateway()
    const meanwhile = stage.heron.say('meanwhile')
    while (stage.platform.sessions.identified < 2) await new Promise((resolve) => setTimeout(resolve, 20))
    await stage.settled()
    expect(stage.heard.map((event) => 'id' in event && event.id)).toEqual([before, meanwhile])
  })

  it('lets a message go out once though its answer was lost', async (context) => {
    const stage = await setStage(context)
    stage.respond = () => answer('x')
    stage.platform.fault({ match: /POST .*\/messages$/, times: 1, afterApply: true, drop: true })
    const seen: string[] = []
    stage.platform.on('message', ({ id }) => seen.push(id))
    const sent = row({ body: { ...row().body, address: { to: 'client', user: stage.heron.id } } })
    await stage.post(sent)
    sent.notBefore = new Date(0)
    await stage.bot.tick()
    expect(seen).toHaveLength(1)
    expect(stage.rows[0]).toMatchObject({ state: 'sent', platformId: seen[0] })
  })

  it('tells who cannot be reached', async (context) => {
    const stage = await setStage(context)
    stage.platform.closeDms(stage.heron.id)
    const sent = row({ body: { ...row().body, address: { to: 'client', user: stage.heron.id } } })
    stage.rows.push(sent)
    await stage.bot.tick()
    expect(sent).toMatchObject({ state: 'failed', reason: 'closed' })
    expect(stage.heard).toEqual([{ kind: 'undelivered', outbox: sent.id, reason: 'closed' }])
  })
})
