import { describe, expect, it, type TestContext } from 'vitest'
import type { Command } from '../../src/engine/event.ts'
import type { Button } from '../../src/engine/message.ts'
import type { Modal } from '../../src/rehearsal/platform/index.ts'
import { chat as texts } from '../../src/text/en/chat.ts'
import { message, row } from '../chat/outbox.ts'
import { answer, type Stage, setStage } from './chat-stage.ts'

const SECRET = 'numb down there since Monday'

const yes: Button = { name: 'yes', label: 'Yes', act: { do: 'answer', ask: 'signs', value: 'some' } }
const no: Button = { name: 'no', label: 'None of these', act: { do: 'answer', ask: 'signs', value: 'none' } }
const rest: Button = { name: 'take-a-break', label: 'Take a break', act: { do: 'pause' } }
const form: Button = {
  name: 'check-in',
  label: 'Check in',
  act: { do: 'check-in', day: '2026-03-08' },
  form: {
    name: 'check-in',
    title: 'Sunday, 8 March',
    fields: [
      {
        name: 'pain',
        label: 'Worst pain',
        kind: 'one',
        options: [{ value: '4', label: '4' }],
        required: false,
      },
      {
        name: 'signs',
        label: 'Is any of these new?',
        kind: 'many',
        options: [
          { value: 'none', label: 'None of these' },
          { value: 'a', label: 'A' },
          { value: 'b', label: 'B' },
        ],
        required: false,
      },
      { name: 'note', label: 'Anything else', kind: 'lines', required: false },
      { name: 'left-out', label: 'A line', kind: 'line', required: false },
    ],
  },
}

/** A stage whose every request must be one that the platform allows, and whose logs hold nothing that was said. */
async function stageOf(context: TestContext): Promise<Stage> {
  const stage = await setStage(context)
  context.onTestFinished(() => {
    expect(stage.platform.violations).toEqual([])
    expect(stage.logs.join('')).not.toContain(SECRET)
  })
  return stage
}
const toHeron = (stage: Stage, more: Parameters<typeof message>[0] = {}) =>
  row({ body: message({ address: { to: 'client', user: stage.heron.id }, ...more }) })
const private_ = (stage: Stage) => ({ user: stage.heron.id, guild: null, roles: [], keeper: false })

describe('words in private', () => {
  it('reach the engine with their kind and time, their edits and their end', async (context) => {
    const stage = await stageOf(context)
    const { heron } = stage
    const id = heron.say(SECRET)
    await stage.settled()
    heron.edit(id, '2 calf 4')
    heron.delete(id)
    heron.say('', {
      attachments: [{ filename: 'back.png', contentType: 'image/png', data: Buffer.from('x') }],
    })
    heron.say('', {
      voice: true,
      attachments: [{ filename: 'v.ogg', contentType: 'audio/ogg', data: Buffer.from('x') }],
    })
    heron.say('', { stickers: ['wave'] })
    await stage.settled()
    const actor = private_(stage)
    expect(stage.heard).toMatchObject([
      { kind: 'words', id, actor, text: SECRET, edits: null, attached: 'none' },
      { kind: 'words', actor, text: '2 calf 4', edits: id },
      { kind: 'taken-back', actor, message: id },
      { kind: 'words', attached: 'file' },
      { kind: 'words', attached: 'voice' },
      { kind: 'words', attached: 'sticker' },
    ])
    expect(new Set(stage.heard.map((event) => 'id' in event && event.id)).size).toBe(6)
  })

  it('that cannot be handled are answered kindly, and logged without what they say', async (context) => {
    const stage = await stageOf(context)
    const seen: string[] = []
    stage.platform.on('message', (event) => seen.push(event.content))
    stage.respond = () => {
      throw new Error(`cannot store: ${SECRET}`)
    }
    stage.heron.say(SECRET)
    await stage.settled()
    expect(seen).toEqual([texts.failed])
    expect(stage.logs.join('')).toContain('an event could not be handled')
  })

  it('written while the bot was away are applied, oldest first, before newer ones', async (context) => {
    const stage = await stageOf(context)
    const first = stage.heron.say('before')
    await stage.settled()
    const channel = stage.platform.message(first)!.channelId
    stage.knownDms.push({ channel, user: stage.heron.id, after: first })
    const missed: string[] = []
    await stage.restart(() => {
      for (let n = 0; n < 130; n += 1) missed.push(stage.heron.say(`missed ${n}`))
    })
    const live = stage.heron.say('live')
    await stage.settled()
    const order = [...new Set(stage.heard.map((event) => ('id' in event ? event.id : '')))]
    expect(order).toEqual([first, ...missed, live])
    expect(stage.heard.at(1)).toMatchObject({ at: new Date(stage.platform.message(missed[0]!)!.at) })
  })

  it('changed while the bot was away are heard as they are now, with the edit behind them', async (context) => {
    const stage = await stageOf(context)
    const first = stage.heron.say('2 calf 4')
    await stage.settled()
    const channel = stage.platform.message(first)!.channelId
    stage.knownDms.push({ channel, user: stage.heron.id, after: String(BigInt(first) - 1n) })
    stage.heard.length = 0
    let later = ''
    await stage.restart(() => {
      stage.heron.edit(first, '2 calf 5')
      later = stage.heron.say('thanks')
    })
    const edit = `${first}:${stage.platform.message(first)!.editedAt}`
    expect(stage.heard).toMatchObject([
      // applied before: the engine knows its id
      { id: first, text: '2 calf 5', edits: null, appliesToo: edit },
      { id: edit, text: '2 calf 5', edits: first },
      { id: later, text: 'thanks' },
    ])
  })

  it('edited or taken back after a restart are still known', async (context) => {
    const stage = await stageOf(context)
    const id = stage.heron.say('2 calf 4')
    await stage.settled()
    await stage.restart(() => {})
    stage.heard.length = 0
    stage.heron.edit(id, '2 calf 5')
    await stage.settled()
    await stage.restart(() => {})
    stage.heron.delete(id)
    await stage.settled()
    expect(stage.heard).toMatchObject([
      { kind: 'words', edits: id },
      { kind: 'taken-back', message: id, actor: { user: stage.heron.id } },
    ])
  })
})

describe('a press', () => {
  it('changes its own message and takes away what it settles', async (context) => {
    const stage = await stageOf(context)
    stage.respond = () => answer('Good morning.\n\n**None of these** noted')
    const sent = toHeron(stage, { buttons: [yes, no, rest] })
    const shown = await stage.post(sent)
    await stage.heron.press(shown.id, `${sent.id}.1`)
    await stage.settled()
    expect(stage.heard).toMatchObject([
      { kind: 'choice', actor: private_(stage), outbox: sent.id, act: no.act, label: no.label, values: [] },
    ])
    const now = stage.platform.message(shown.id)!
    expect(now.content).toContain('noted')
    expect(now.components.flatMap((c) => c.components?.map((b) => b.custom_id))).toEqual([`${sent.id}.2`])
  })

  it('answered privately leaves the message as it is; answered with nothing too', async (context) => {
    const stage = await stageOf(context)
    const channel = stage.platform.build.addChannel(stage.guildId, 'coaches')
    const sent = row({ body: message({ address: { to: 'coach', channel: channel.id }, buttons: [yes, no] }) })
    const shown = await stage.post(sent)
    const seen: { ephemeral: boolean; content: string }[] = []
    stage.platform.on('message', ({ ephemeral, content }) => seen.push({ ephemeral, content }))
    stage.respond = () => answer('Because …', { privately: true })
    await stage.coach.press(shown.id, `${sent.id}.0`)
    await stage.settled()
    stage.respond = () => null
    await stage.coach.press(shown.id, `${sent.id}.0`)
    await stage.settled()
    expect(stage.heard[0]).toMatchObject({
      actor: { user: stage.coach.id, guild: stage.guildId, roles: [stage.coachRole], keeper: false },
    })
    expect(seen).toEqual([{ ephemeral: true, content: 'Because …' }])
    expect(stage.platform.message(shown.id)!.components).toHaveLength(1)
  })

  it('on what is no longer known, or somebody else’s, leads nowhere', async (context) => {
    const stage = await stageOf(context)
    const sent = toHeron(stage, { buttons: [yes] })
    const shown = await stage.post(sent)
    const seen: string[] = []
    stage.platform.on('message', ({ content }) => seen.push(content))
    stage.lookUp = async () => null
    await stage.heron.press(shown.id, `${sent.id}.0`)
    stage.lookUp = async () =>
      row({ body: message({ address: { to: 'client', user: '1' }, buttons: [yes] }) })
    await stage.heron.press(shown.id, `${sent.id}.0`)
    await stage.settled()
    expect(stage.heard).toEqual([])
    expect(seen).toEqual([texts.expired, texts.expired])
  })

  it('is acknowledged in time though the store is slow, and handled when it is back', async (context) => {
    const stage = await stageOf(context)
    const sent = toHeron(stage, { buttons: [yes, form] })
    const shown = await stage.post(sent)
    const seen: string[] = []
    stage.platform.on('message', ({ content }) => seen.push(content))
    stage.lookUp = async () => new Promise((resolve) => setTimeout(() => resolve(sent), 3_500))
    const answers = await Promise.all([0, 1].map((n) => stage.heron.press(shown.id, `${sent.id}.${n}`)))
    expect(answers.map((a) => a.outcome)).toEqual(['deferred', 'deferred'])
    await stage.settled()
    expect(stage.heard).toMatchObject([{ kind: 'choice', act: yes.act }])
    expect(seen).toEqual([texts.pressAgain])
  })

  it('that cannot be handled says so kindly', async (context) => {
    const stage = await stageOf(context)
    const sent = toHeron(stage, { buttons: [yes] })
    const shown = await stage.post(sent)
    const seen: string[] = []
    stage.platform.on('message', ({ content }) => seen.push(content))
    stage.respond = () => {
      throw new Error(SECRET)
    }
    await stage.heron.press(shown.id, `${sent.id}.0`)
    await stage.settled()
    expect(seen).toEqual([texts.failedPress])
  })

  it('from a list brings its values', async (context) => {
    const stage = await stageOf(context)
    const options = ['a', 'b', 'c'].map((value) => ({ value, label: value.toUpperCase() }))
    const pick = { name: 'which', label: 'Which?', options, most: 3, act: { do: 'answer', ask: 'signs' } }
    const sent = toHeron(stage, { pick })
    const shown = await stage.post(sent)
    stage.respond = () => answer('Noted')
    await stage.heron.choose(shown.id, `${sent.id}.p`, ['a', 'c'])
    await stage.settled()
    expect(stage.heard).toMatchObject([{ kind: 'choice', act: pick.act, values: ['a', 'c'], label: 'A; C' }])
    expect(stage.platform.message(shown.id)!.components).toEqual([])
  })
})

describe('a form', () => {
  it('opens at once and brings what was filled in', async (context) => {
    const stage = await stageOf(context)
    const sent = toHeron(stage, { buttons: [form] })
    const shown = await stage.post(sent)
    const opened = await stage.heron.press(shown.id, `${sent.id}.0`)
    expect(opened.outcome).toBe('modal')
    const { modal } = opened as { modal: Modal }
    const sentIn = await stage.heron.submit(modal, { pain: ['4'], signs: ['a', 'b'], note: 'two\nlines' })
    expect(sentIn.outcome).toBe('deferred')
    await stage.settled()
    expect(stage.heard).toMatchObject([
      {
        kind: 'form',
        actor: private_(stage),
        outbox: sent.id,
        act: form.act,
        filled: { pain: '4', signs: ['a', 'b'], note: 'two\nlines' },
      },
    ])
    expect(stage.platform.message(shown.id)!.components).toHaveLength(1)
  })

  it('left empty brings nothing', async (context) => {
    const stage = await stageOf(context)
    const sent = toHeron(stage, { buttons: [form] })
    const shown = await stage.post(sent)
    const { modal } = (await stage.heron.press(shown.id, `${sent.id}.0`)) as { modal: Modal }
    await stage.heron.submit(modal, {})
    await stage.settled()
    expect(stage.heard).toMatchObject([{ kind: 'form', filled: {} }])
    expect(Object.keys((stage.heard[0] as { filled: object }).filled)).toEqual([])
  })
})

describe('a command', () => {
  it('is answered to whoever typed it alone, with the picture and its words', async (context) => {
    const stage = await stageOf(context)
    const long = `${'word '.repeat(450)}end`
    stage.respond = () => answer(long, { picture: { name: 'weeks', alt: 'pain fell', facts: {} } })
    const seen: string[] = []
    stage.platform.on('message', ({ content, ephemeral }) => seen.push(`${ephemeral} ${content}`))
    const place = await stage.heron.slash('dm', 'today')
    expect(place.outcome).toBe('deferred')
    const first = await (place as { completed: Promise<{ attachments: { description: string | null }[] }> })
      .completed
    await stage.settled()
    expect(first.attachments).toMatchObject([{ description: 'pain fell', filename: 'weeks.png' }])
    expect(seen.every((line) => line.startsWith('true '))).toBe(true)
    expect(seen.map((line) => line.slice(5)).join(' ')).toBe(long)
    expect(stage.heard).toMatchObject([
      { kind: 'command', name: 'today', options: {}, actor: private_(stage) },
    ])
  })

  it('brings its options, and offers aliases to coaches alone', async (context) => {
    const stage = await stageOf(context)
    const channel = stage.platform.build.addChannel(stage.guildId, 'coaches')
    const offered = await stage.coach.complete(channel.id, 'plan', 'client', 'he')
    expect(offered).toMatchObject({ choices: [{ value: 'heron' }, { value: 'sheron' }] })
    expect(await stage.heron.complete(channel.id, 'plan', 'client', '')).toMatchObject({ choices: [] })
    stage.respond = () => answer('Saved')
    await stage.coach.slash(channel.id, 'plan', { client: 'heron', sessions: 2 })
    await stage.settled()
    expect(stage.heard).toMatchObject([
      { kind: 'command', name: 'plan', options: { client: 'heron', sessions: 2 } },
    ])
    await expect(stage.coach.slash('dm', 'plan', { client: 'heron' })).rejects.toThrow('cannot be used here')
  })

  it('tells set-up whether a channel is open to everyone and what the bot lacks there', async (context) => {
    const stage = await stageOf(context)
    const { build } = stage.platform
    const keeper = stage.platform.addUser('keeper')
    build.addMember(stage.guildId, keeper.id, [build.addRole(stage.guildId, 'keeper', 32n).id])
    const open = build.addChannel(stage.guildId, 'open')
    const shut = build.addChannel(stage.guildId, 'shut', { everyoneCanView: false })
    const blind = build.addChannel(stage.guildId, 'blind', { botCanView: false })
    await stage.settled()
    stage.respond = () => answer('Set up')
    await keeper.slash(open.id, 'set-up', { 'coach-channel': open.id })
    await stage.settled()
    const event = stage.heard[0] as Command
    const seen = (id: string) => event.server?.channel(id)
    expect(seen(open.id)).toMatchObject({ open: true, lacks: [], callsRoles: false })
    expect(seen(shut.id)).toMatchObject({ open: false, lacks: [], readers: [] })
    // of a channel that is hidden from the bot the platform tells it all the same, but lets it do nothing there
    expect(seen(blind.id)).toMatchObject({ lacks: expect.arrayContaining(['View Channel']) })
    expect(seen('1')).toBeNull()
    expect(event.server?.role(stage.coachRole)).toEqual({ mentionable: false })
    expect(stage.heard[0]).toMatchObject({ actor: { keeper: true } })
  })

  it('that fails says so in its place', async (context) => {
    const stage = await stageOf(context)
    stage.respond = () => {
      throw new Error(SECRET)
    }
    const place = await stage.heron.slash('dm', 'today')
    const shown = await (place as { completed: Promise<{ content: string }> }).completed
    expect(shown.content).toBe(texts.failed)
  })
})
