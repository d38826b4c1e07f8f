import { describe, expect, it } from 'vitest'
import { openingOf } from '../../../src/rehearsal/page/offers.ts'
import { type Recorded, scenarioText } from '../../../src/rehearsal/page/recording.ts'
import { loadScenario } from '../../../src/rehearsal/scenario/index.ts'

const SCENARIO = `title: Small
practice: { zone: Europe/Lisbon, region: PT }
start: 2026-03-27
days: 5
clients:
  - ref: heron
    zone: America/New_York
    plan: { sessions: 2, rungs: { extension: 1 } }
    days:
      1-4: "2 calf 4"
      5: [ "2 knee 3", { after: 5m, edit: "2 knee 4" } ]
`
const now = new Date('2026-04-01T12:00:00Z')
const { script, doc } = openingOf('small.yaml', SCENARIO)
const save = (acts: Recorded[]) =>
  loadScenario('saved.yaml', scenarioText(doc, acts, { steps: script.steps, now }))
const said = (at: string, text: string): Recorded => ({ at: new Date(at), who: 'heron', item: { say: text } })
const instants = (of: typeof script) =>
  of.steps.map(({ at, act }) => `${at.toISOString()} ${'does' in act ? JSON.stringify(act.does) : ''}`)

describe('what was improvised, as a scenario', () => {
  it('stands at its instant inside a span of days, which stays as it is', () => {
    const saved = save([said('2026-03-28T15:07:00Z', 'and a walk'), said('2026-03-30T03:30:00Z', 'late')])
    const extra = instants(saved).filter((one) => !instants(script).includes(one))
    expect(extra.map((one) => one.slice(0, 16))).toEqual(['2026-03-28T15:07', '2026-03-30T03:30'])
    expect(instants(saved)).toEqual(expect.arrayContaining(instants(script)))
    expect(saved.days).toBe(6)
  })

  it('keeps the times of the days where somebody moves to another zone', () => {
    const item = { command: '/my-times zone:Europe/Madrid prompt:09:00' }
    const saved = save([{ at: new Date('2026-03-28T15:07:00Z'), who: 'heron', item }])
    expect(instants(saved).filter((one) => !one.includes('my-times'))).toEqual(instants(script))
  })

  it('holds what the world did in the practice’s own time, over a change of the clocks', () => {
    const at = new Date('2026-03-29T01:30:00Z')
    const saved = save([{ at, who: 'world', item: { chat: 'down', for: '7m' } }])
    expect(saved.steps.find(({ act }) => act.who === 'world')).toMatchObject({
      at,
      act: { fault: { kind: 'chat', what: 'down', forMs: 420_000 } },
    })
  })
})
