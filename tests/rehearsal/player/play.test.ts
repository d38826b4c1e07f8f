import { describe, expect, it } from 'vitest'
import { brief, playText, toClient } from './playing.ts'

const scenario = (client: string, rest = '', days = 4) => `practice: { zone: Europe/Lisbon, region: PT }
start: 2026-03-02
days: ${days}
clients:
  - ref: heron
    prompt: "08:00"
    side: left
${client}
${rest}`

const PLAN = '    plan: { sessions: 2, rungs: { extension: 1 } }'

describe('the opening', () => {
  it('is over before the first prompt, and the plan begins on day 1', async () => {
    const play = await playText(scenario(PLAN))
    const first = brief(play).findIndex((line) => line.endsWith('prompt'))
    expect(brief(play)[first]).toBe('2026-03-02T08:00 client:heron prompt')
    const kinds = play.messages.slice(0, first).map(({ to, kind }) => `${to} ${kind}`)
    expect(kinds[0]).toBe('coach notice')
    expect(kinds).toContain('client:heron welcome')
    expect(kinds).toContain('client:heron plan')
    expect(play.clients[0]).toMatchObject({
      status: 'active',
      plan: { sessions: 2, rungs: { extension: 1 } },
    })
  })

  it('ends with a no where consent is refused', async () => {
    const play = await playText(scenario(`${PLAN}\n    consent: no`))
    expect(play.clients[0]).toMatchObject({ status: 'left', plan: null })
    expect(toClient(play, 'heron', 'prompt')).toEqual([])
  })

  it('sends the plan after the clearance where an urgent sign was ticked', async () => {
    const coach = 'coach: { 2: { clear: { client: heron, by: surgeon, on: 2026-03-03 } } }'
    const play = await playText(scenario(`${PLAN}\n    screening: { signs: [bladder-change] }`, coach))
    expect(toClient(play, 'heron', 'urgent')).toHaveLength(1)
    expect(toClient(play, 'heron', 'prompt').map(({ day }) => day)).toEqual(['2026-03-04', '2026-03-05'])
  })

  it('leaves a client parked until the coach releases them', async () => {
    const coach = 'coach: { 2: { release: { client: heron, by: surgeon, on: 2026-03-03 } } }'
    const play = await playText(scenario(`${PLAN}\n    screening: { risks: [osteoporosis] }`, coach))
    expect(toClient(play, 'heron', 'prompt').map(({ day }) => day)).toEqual(['2026-03-04', '2026-03-05'])
  })
})

describe('a play', () => {
  it('keeps what was said in the records, with the words', async () => {
    const play = await playText(
      scenario(
        `${PLAN}\n    days: { 1: "2 calf 6, no signs", 2: [ "2 calf 5", { after: 5m, edit: "2 calf 4" } ] }`,
      ),
    )
    expect(play.clients[0]!.records).toEqual([
      {
        day: '2026-03-02',
        sessions: 2,
        reach: 'calf',
        pain: 6,
        signs: [],
        denied: ['all'],
        care: 'none',
        filled: '2026-03-02',
        words: ['2 calf 6, no signs'],
      },
      expect.objectContaining({ day: '2026-03-03', pain: 4, words: ['2 calf 5', '2 calf 4'] }),
    ])
  })

  it('presses the scripted answer a minute after the question', async () => {
    const days = '    days: { 1-3: "2 calf 4" }\n    answers: { signs: none }'
    const play = await playText(scenario(`${PLAN}\n${days}`))
    const [asked] = toClient(play, 'heron').filter(({ asks }) => asks === 'signs')
    expect(asked?.local).toBe('2026-03-04T08:30')
    expect(play.clients[0]!.records.at(-1)).toMatchObject({ day: '2026-03-04', denied: ['all'] })
  })

  it('waits for the prompt where prompts are spread over a window', async () => {
    const text = scenario(`${PLAN}\n    days: { 1-4: "2 calf 4, no signs" }`).replace(
      'region: PT',
      'window: 60',
    )
    const play = await playText(text)
    const prompts = toClient(play, 'heron', 'prompt').map(({ at }) => Date.parse(at))
    const receipts = toClient(play, 'heron', 'receipt').map(({ at }) => Date.parse(at))
    expect(prompts).toHaveLength(4)
    expect(receipts.map((at, n) => (at - prompts[n]!) / 60_000)).toEqual([30, 30, 30, 30])
  })

  it('names what it was told to press and cannot find, with its line', async () => {
    const play = await playText(scenario(`${PLAN}\n    days: { 1: { press: fly } }`))
    expect(play.checks.failed).toEqual(['scenario.yaml:9: heron has no message with a button “fly”'])
  })

  it('holds what is expected against what came, each failure with its line', async () => {
    const expectations = `expect:
  - { day: 1, to: "client:heron", kind: prompt, count: 1 }
  - { day: 1-4, to: "client:heron", kind: prompt, count: 5 }
  - { to: alerts }
  - { day: 1, to: "client:heron", says: "HOW DID IT GO" }
  - { day: 1, to: "client:heron", kind: receipt, within: 1s, count: 1 }
  - { day: 1, to: "client:heron", kind: receipt, says: "foot" }
  - { end: heron, status: locked, direction: unclear }
`
    const play = await playText(scenario(`${PLAN}\n    days: { 1: "2 calf 4" }`, expectations))
    expect(play.checks).toEqual({
      passed: 3,
      failed: [
        'scenario.yaml:12: expected 5 prompt to client:heron on day 1 (2026-03-02) to 4 (2026-03-05), found 4',
        'scenario.yaml:13: expected at least one message to alerts, found 0',
        'scenario.yaml:16: expected at least one receipt to client:heron on day 1 (2026-03-02) that says /foot/, found 0',
        'scenario.yaml:17: expected of heron at the end status locked, found active',
      ],
    })
  })
})

describe('a restart', () => {
  it.each(['kill', 'stop'])('by %s changes nothing of what is delivered', async (how) => {
    const days = `${PLAN}\n    days: { 1-4: "2 calf 4, no signs" }`
    const faults = `faults: { 2: [ { at: "08:00", restart: ${how} }, { at: "08:30", restart: ${how} } ] }`
    const plain = await playText(scenario(days))
    const restarted = await playText(scenario(days, faults))
    expect(brief(restarted)).toEqual(brief(plain))
  })
})

describe('a jump of the clock', () => {
  it('still gives one prompt a day', async () => {
    const faults = 'faults: { 2: { at: "03:00", clock: "+2h" }, 3: { at: "12:00", clock: "-2h" } }'
    const play = await playText(scenario(PLAN, faults))
    expect(toClient(play, 'heron', 'prompt').map(({ local }) => local)).toEqual([
      '2026-03-02T08:00',
      '2026-03-03T06:00',
      '2026-03-04T06:00',
      '2026-03-05T08:00',
    ])
  })
})
