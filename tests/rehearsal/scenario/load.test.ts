import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { loadScenario, ScenarioProblems } from '../../../src/rehearsal/scenario/index.ts'

const head = `practice: { zone: Europe/Lisbon }
start: 2026-03-02
days: 10
clients:
`
const client = (days: string) => `${head}  - ref: heron\n    prompt: "08:00"\n    days:\n${days}`

const stepsOf = (text: string) =>
  loadScenario('x.yaml', text).steps.map(({ at, act }) => {
    if (act.who !== 'client') return `${at.toISOString().slice(0, 16)} ${act.who}`
    return `${at.toISOString().slice(0, 16)} ${act.does.do}${'text' in act.does ? ` ${act.does.text}` : ''}`
  })

function problemsOf(text: string): string[] {
  try {
    loadScenario('x.yaml', text)
  } catch (error) {
    if (error instanceof ScenarioProblems) return error.message.split('\n')
    throw error
  }
  return []
}

describe('a scenario file', () => {
  it('fills in what is left out', () => {
    const script = loadScenario('x.yaml', `${head}  - ref: heron\n`)
    expect(script.practice).toEqual({
      zone: 'Europe/Lisbon',
      digest: 'Sun 18:00',
      region: null,
      window: 0,
      quote: true,
    })
    expect(script.clients[0]).toMatchObject({
      ref: 'heron',
      zone: 'Europe/Lisbon',
      region: null,
      prompt: '08:00',
      reminder: null,
      off: [],
      consent: true,
      hands: 'buttons',
      screening: { age: 40, earlier: 'no', seen: true, baseline: { reach: 'calf', pain: 5 }, signs: [] },
    })
  })

  it('puts a reply half an hour after the prompt, and counts what follows from the one before', () => {
    const days = `      1: "2 calf 6"
      2: [ "2 calf 5", { after: 5m, say: "sorry, 4" }, { after: 1m, edit: "2 calf 4" }, { after: 1h, delete: true } ]
      3: none
      4: { after: 10m, say: "early" }`
    expect(stepsOf(client(days))).toEqual([
      '2026-03-02T08:30 say 2 calf 6',
      '2026-03-03T08:30 say 2 calf 5',
      '2026-03-03T08:35 say sorry, 4',
      '2026-03-03T08:36 edit 2 calf 4',
      '2026-03-03T09:36 delete',
      '2026-03-05T08:10 say early',
    ])
  })

  it('reads times before the prompt and past midnight, spans, and a day of its own over a span', () => {
    const days = `      1: { at: "05:10", say: a }
      2: { at: "24:40", say: b }
      3-5: c
      4: none`
    expect(stepsOf(client(days))).toEqual([
      '2026-03-02T05:10 say a',
      '2026-03-04T00:40 say b',
      '2026-03-04T08:30 say c',
      '2026-03-06T08:30 say c',
    ])
  })

  it('takes bare numbers and words as what is said', () => {
    expect(stepsOf(client('      1: 4\n      2: no\n      3: yes'))).toEqual([
      '2026-03-02T08:30 say 4',
      '2026-03-03T08:30 say no',
      '2026-03-04T08:30 say yes',
    ])
  })

  it('counts the days of somebody who travels in the new zone from the next morning on', () => {
    const days = `      1: { at: "20:00", zone: America/New_York, region: US }
      2: "2 calf 4"`
    expect(stepsOf(client(days))).toEqual(['2026-03-02T20:00 travel', '2026-03-03T13:30 say 2 calf 4'])
  })

  it('moves the usual reply with a prompt that the client moves', () => {
    const days = `      1: { at: "09:00", command: "/my-times prompt:10:00" }
      2: "2 calf 4"`
    expect(stepsOf(client(days))).toEqual(['2026-03-02T09:00 command', '2026-03-03T10:30 say 2 calf 4'])
  })

  it('plays faults before clients and clients before the coach at one instant', () => {
    const text = `${client('      1: { at: "12:00", say: a }')}
coach:
  1: { pause: heron }
faults:
  1: { restart: kill }
`
    expect(stepsOf(text)).toEqual([
      '2026-03-02T12:00 world',
      '2026-03-02T12:00 say a',
      '2026-03-02T12:00 coach',
    ])
  })

  it('takes a press of the coach on a message about a client', () => {
    const text = `${client('      1: a')}
coach:
  1: { press: { client: heron, button: advance } }
`
    const acts = loadScenario('x.yaml', text).steps.flatMap(({ act }) =>
      act.who === 'coach' && 'press' in act ? [act.press] : [],
    )
    expect(acts).toMatchObject([{ ref: 'heron', button: 'advance' }])
  })

  it('turns each action of the coach into the command that is typed for it', () => {
    const text = `${client('      1: a')}
coach:
  1: [ { take-up: heron }, { clear: { client: heron, by: surgeon, on: 2026-03-02 } }, { erase: heron } ]
  2: { at: "09:00", command: "/note client:heron text:rowing: again, twice a week" }
`
    const commands = loadScenario('x.yaml', text).steps.flatMap(({ act }) =>
      act.who === 'coach' && 'command' in act ? [act.command] : [],
    )
    expect(commands).toEqual([
      { name: 'take-up', options: { client: 'heron' } },
      { name: 'clear', options: { client: 'heron', by: 'surgeon', on: '2026-03-02' } },
      { name: 'erase-client', options: { client: 'heron', sure: true } },
      { name: 'note', options: { client: 'heron', text: 'rowing: again, twice a week' } },
    ])
  })
})

describe('a scenario file that cannot be played', () => {
  it.each([
    ['    propmt: "08:00"', 'unknown key “propmt”; allowed: ref, zone,'],
    ['    prompt: "8:00"', '“8:00” is no time; allowed: "00:00" to "23:59"'],
    ['    zone: Mars/Olympus', '“Mars/Olympus” is no time zone; allowed: a name'],
    ['    off: [Sunday]', '“Sunday” is no weekday; allowed: Mon, Tue,'],
    ['    region: XX', '“XX” is no region that is known; allowed: two letters'],
    ['    plan: { rungs: { glid: 1 } }', '“glid” is no ladder; allowed: settle, extension,'],
    ['    screening: { risks: [tired] }', '“tired” is no risk; allowed: cancer,'],
    ['    screening: { baseline: { pain: 11 } }', '11 is no pain; allowed: a whole number, 0 to 10'],
    ['    answers: { comfort: maybe }', '“maybe” is no answer; allowed: yes or no'],
    ['    days: { 11: a }', 'day 11 lies outside the run; allowed: 1 to 10'],
    ['    days: { x: a }', '“x” is no day; allowed: 1 to 10'],
    ['    days: { 1: { at: "25:99", say: a } }', '“25:99” is no time; allowed:'],
    ['    days: { 1: { after: soon, say: a } }', '“soon” is no length of time; allowed:'],
    ['    days: { 1: { sya: a } }', 'unknown key “sya”; allowed: at or after, with one of say,'],
    ['    days: { 1: { say: a, press: b } }', 'say and press stand together; allowed: one of'],
    ['    days: { 1: { at: "08:00" } }', 'nothing happens here; allowed: at or after, with one of'],
    ['    days: { 1: { at: "08:00", after: 5m, say: a } }', 'at and after stand together'],
    ['    days: { 1: { edit: a } }', 'nothing has been said that could be changed'],
    ['    days: { 1-3: a, 2-4: b }', '1-3 and 2-4 share days; allowed: each day in one span'],
    ['    days: { 1: { form: { reach: toe } } }', '“toe” is no reach; allowed: none, back,'],
    ['    days: { 1: { command: "/toady" } }', 'there is no command /toady; allowed: /answer,'],
    ['    days: { 1: { command: "/my-times when:9" } }', '/my-times has no option when; allowed: options'],
    ['coach: { 1: { decide: { client: wren, do: hold } } }', 'there is no client “wren”; allowed: heron'],
    ['coach: { 1: { decide: { client: heron, do: jump } } }', '“jump” is no decision; allowed: advance,'],
    ['coach: { 1: { clear: { client: heron, by: surgeon } } }', 'date is missing; allowed: a date'],
    ['faults: { 1: { chat: sideways } }', '“sideways” is no fault of the chat; allowed: down,'],
    ['expect: [{ day: 11, to: coach }]', 'day 11 lies outside the run'],
    ['expect: [{ to: "client:wren" }]', 'there is no client “wren”; allowed: heron'],
    ['expect: [{ to: nobody }]', '“nobody” is nobody; allowed: client:ALIAS, coach, alerts'],
    ['expect: [{ to: coach, kind: letter }]', '“letter” is no kind of message; allowed: welcome,'],
    ['expect: [{ to: coach, says: "(" }]', '“(” is no regular expression'],
    ['expect: [{ end: heron, status: gone }]', '“gone” is no status; allowed: invited,'],
  ])('%s', (line, problem) => {
    const [found, ...more] = problemsOf(`${head}  - ref: heron\n${line}\n`)
    expect(found).toContain(`x.yaml:6: ${problem}`)
    expect(more).toEqual([])
  })

  it('is told of with all that is wrong, in the order of its lines', () => {
    const text = `practice: { zone: nowhere }
start: tomorrow
days: 10
clients:
  - ref: heron
    prompt: 8
    days:
      1: { sya: a }
coach:
  2: { pause: wren }
`
    expect(problemsOf(text).map((line) => line.split(': ')[0])).toEqual([
      'x.yaml:1',
      'x.yaml:2',
      'x.yaml:6',
      'x.yaml:8',
      'x.yaml:10',
    ])
  })

  it('is told of where it is no YAML at all', () => {
    expect(problemsOf('title: [a\nb: c')[0]).toMatch(/^x\.yaml:\d: .*; allowed: YAML 1\.2$/)
    expect(problemsOf('')[0]).toMatch(/^x\.yaml:1: /)
  })
})

describe('the scenarios of the house', () => {
  it.each(readdirSync('scenarios').filter((name) => name.endsWith('.yaml')))('%s can be read', (name) => {
    const script = loadScenario(name, readFileSync(`scenarios/${name}`, 'utf8'))
    expect(script.expectations.length).toBeGreaterThan(5)
  })
})
