import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openingOf } from '../../../src/rehearsal/page/offers.ts'
import { playText } from '../player/playing.ts'
import { type Living, liveIn } from './living.ts'

const SCENARIO = `title: One who always answers
practice: { zone: Europe/Lisbon, region: PT }
start: 2026-03-02
days: 3
clients:
  - ref: heron
    prompt: "08:00"
    side: left
    plan: { sessions: 2, rungs: { extension: 1 } }
    answers: { signs: none, comfort: yes, settled: yes, side: same }
    days: { 1-3: "2 calf 4" }
`

describe('a client of a scenario whom the reader is', () => {
  let living: Living
  beforeAll(async () => {
    living = await liveIn(openingOf('one.yaml', SCENARIO))
    await living.act({ do: 'time', to: 'end' })
    await living.act({ do: 'time', to: 'day' })
  })
  afterAll(() => living.server.close())

  it('is asked and not answered for', async () => {
    await living.act({ do: 'say', as: 'heron', text: '0 calf 5' })
    await living.press('heron', /^One of these$/)
    await living.act({ do: 'time', to: 'event' })
    const { cards, hasScript } = await living.snapshot('heron')
    expect(cards.findLast(({ kind }) => kind === 'act')?.text).toContain('One of these')
    expect(hasScript).toBe(false)
  })

  it('is saved with the answers of the days before', async () => {
    const text = await (await fetch(`${living.server.url}scenario`)).text()
    const { lines } = living.hub.session.programme.log
    const until = living.hub.session.now.toISOString()
    const played = await playText(text, 'chat')
    const short = ({ at, to, kind, text: said }: (typeof played.messages)[number]) =>
      `${at} ${to} ${kind} ${said}`
    expect(played.messages.filter(({ at }) => at <= until).map(short)).toEqual(
      lines.map(({ message }) => short(message)),
    )
    expect(played.checks.failed).toEqual([])
  })
})
