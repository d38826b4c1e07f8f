import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openingOf } from '../../../src/rehearsal/page/offers.ts'
import { type Living, liveIn } from './living.ts'

const SCENARIO = `title: Two at the oars
practice: { zone: Europe/Lisbon, region: PT }
start: 2026-03-02
days: 4
clients:
  - ref: heron
    prompt: "08:00"
    plan: { sessions: 2, rungs: { extension: 1 } }
    answers: { signs: none, comfort: yes, settled: yes, side: same }
    days: { 1-4: "2 calf 4" }
  - ref: wren
    prompt: "09:00"
    plan: { sessions: 2, rungs: { extension: 1 } }
    answers: { signs: none, comfort: yes, settled: yes, side: same }
    days: { 1-4: "1 knee 3" }
`
const SENTENCE = /^[A-Z].*[a-z].*[.)]$/
const PLACE_AND_SENTENCE = /^mine\.yaml:\d+: .{10,}/

describe('acts that the page asks for', () => {
  let living: Living
  beforeAll(async () => {
    living = await liveIn(openingOf('two.yaml', SCENARIO))
  })
  afterAll(() => living.server.close())
  const dayNow = async () => (await living.snapshot()).now.day
  const refusedAll = async (actions: readonly unknown[], says = SENTENCE) => {
    for (const action of actions) {
      const refused = await living.refused(action)
      expect(refused, JSON.stringify(action)).toMatchObject({
        ok: false,
        problem: expect.stringMatching(says),
      })
    }
  }

  it('let time run and stand still', async () => {
    await living.act({ do: 'play', speed: 86_400 })
    await expect.poll(async () => (await living.snapshot()).now.day).toBeGreaterThanOrEqual(1)
    expect((await living.snapshot()).playing).toBe(86_400)
    await living.act({ do: 'play', speed: 3_600 })
    expect((await living.snapshot()).playing).toBe(3_600)
    await living.act({ do: 'pause' })
    const { now, playing } = await living.snapshot()
    expect(playing).toBeNull()
    await new Promise((resolve) => setTimeout(resolve, 400))
    expect((await living.snapshot()).now.at).toBe(now.at)
    await living.act({ do: 'pause' })
  })

  it('stop the time that runs by any other act', async () => {
    await living.act({ do: 'play', speed: 60 })
    await living.act({ do: 'time', to: 'event' })
    expect((await living.snapshot()).playing).toBeNull()
  })

  it('let no time run at a speed that is none', () =>
    refusedAll([0, 59, -3600, 604_801, 'fast', null].map((speed) => ({ do: 'play', speed }))))

  it('jump to a day that is to come, and to no other', async () => {
    const day = (await dayNow()) + 1
    await living.act({ do: 'time', to: 'date', day })
    expect((await living.snapshot()).now).toMatchObject({ day, local: expect.stringMatching(/T00:00$/) })
    await refusedAll([day, 1, 0, -4, 1.5, 'tomorrow'].map((one) => ({ do: 'time', to: 'date', day: one })))
    await refusedAll([{ do: 'time', to: 'yesterday' }, { do: 'time' }])
    expect(await dayNow()).toBe(day)
  })

  it('choose from a list, only what it offers', async () => {
    await living.act({ do: 'command', as: 'coach', line: '/roster' })
    const { card, control } = await living.latest('coach', /./)
    if (control.type !== 'list') throw new Error('the roster has no list')
    const choice = { do: 'choose', as: 'coach', card: card.id, control: control.id } as const
    await refusedAll([
      { ...choice, values: ['nobody'] },
      { ...choice, values: [] },
      { ...choice, values: 'heron' },
      { ...choice, values: control.options.map(({ value }) => value) },
      { ...choice, as: 'heron', values: [control.options[0]!.value] },
      { ...choice, control: 'other', values: [control.options[0]!.value] },
    ])
    const done = await living.act({ ...choice, values: [control.options[0]!.value] })
    const { cards } = await living.snapshot()
    const came = cards.filter(({ id }) => done.cards.includes(id))
    expect(came.find(({ kind }) => kind === 'act')?.text).toContain(control.options[0]!.label)
    expect(came.some(({ from }) => from === 'bot')).toBe(true)
  })

  it('take back what was written, once', async () => {
    const { cards } = await living.act({ do: 'say', as: 'wren', text: '2 knee 4, no signs' })
    const card = cards[0]!
    await refusedAll([
      { do: 'take-back', as: 'heron', card },
      { do: 'take-back', as: 'wren', card: 'none' },
      { do: 'edit', as: 'wren', card, text: '' },
      { do: 'edit', as: 'wren', card, text: 'x'.repeat(4001) },
    ])
    await living.act({ do: 'take-back', as: 'wren', card })
    expect((await living.snapshot('wren')).cards.some(({ id }) => id === card)).toBe(false)
    await refusedAll([{ do: 'take-back', as: 'wren', card }])
  })

  it('bring somebody new, under an alias of their own', async () => {
    await living.act({ do: 'add-client', ref: 'água-2' })
    const { clients } = await living.snapshot('água-2')
    expect(clients.find(({ ref }) => ref === 'água-2')).toMatchObject({ status: null, zone: 'Europe/Lisbon' })
    await refusedAll(
      ['heron', 'água-2', 'coach', '', ' ', 'two words', '<b>', 'x'.repeat(31), '__proto__', 7].map(
        (ref) => ({ do: 'add-client', ref }),
      ),
    )
    await refusedAll([{ do: 'say', as: '__proto__', text: '2 calf 4' }])
  })

  it('are as the page sends them, or nothing', () =>
    refusedAll([
      null,
      [],
      'say',
      {},
      { do: 'say', as: 'heron' },
      { do: 'say', as: 'heron', text: '2 calf 4', more: 1 },
      { do: 'submit', as: 'heron', form: 'form-99', fields: {} },
      { do: 'submit', as: 'heron', form: 'form-99', fields: { pain: 4 } },
      { do: 'break', what: 'disk', on: true },
      { do: 'break', what: 'clock', hours: 0 },
      { do: 'break', what: 'clock', hours: 13 },
      { do: 'say', as: 'coach', text: 'hello' },
      { do: 'command', as: 'coach', line: '/clear' },
      { do: 'command', as: 'coach', line: 'roster' },
      { do: 'command', as: 'heron', line: '/set-up zone:Europe/Lisbon' },
    ]))

  it('begin again with a scenario of the list, with nothing, or with a file', async () => {
    const { session, scenarios, now } = await living.snapshot()
    await refusedAll([
      { do: 'start', scenario: 'no-such' },
      { do: 'start', scenario: '../package' },
      { do: 'start' },
      { do: 'open', name: 'mine.yaml', yaml: SCENARIO, at: 'middle' },
    ])
    const faulty = ['title: [', '', SCENARIO.replace('days: 4', 'days: many')]
    await refusedAll(
      faulty.map((yaml) => ({ do: 'open', name: 'mine.yaml', yaml, at: 'end' })),
      PLACE_AND_SENTENCE,
    )
    // what was refused has changed nothing
    expect(await living.snapshot()).toMatchObject({ session, now: { at: now.at } })
    expect(scenarios.map(({ name }) => name)).toContain('demo')
    await living.act({ do: 'start', scenario: null })
    expect(await living.snapshot()).toMatchObject({ session: session + 1, who: null, clients: [] })
    await living.act({ do: 'start', scenario: 'urgent-second-week' })
    expect((await living.snapshot()).clients.length).toBeGreaterThan(0)
    await living.act({ do: 'open', name: 'mine.yaml', yaml: SCENARIO, at: 'end' })
    expect(await living.snapshot()).toMatchObject({
      session: session + 3,
      title: 'Two at the oars',
      hasScript: false,
    })
  })
})
