import { beforeAll, describe, expect, it } from 'vitest'
import type { PlayResult } from '../../../src/rehearsal/player/index.ts'
import { brief, playText, toClient } from './playing.ts'

const scenario = (faults: string) => `practice: { zone: Europe/Lisbon, region: PT }
start: 2026-03-02
days: 3
clients:
  - ref: heron
    prompt: "08:00"
    side: left
    plan: { sessions: 2, rungs: { extension: 1 } }
    days: { 1-3: "2 calf 4, no signs" }
faults:
  ${faults}
`

/** Without the instants, which a fault may move. */
const days = (lines: string[]): string[] => lines.map((line) => line.replace(/T\d\d:\d\d/, '')).sort()

describe('faults of the chat', () => {
  let plain: PlayResult
  beforeAll(async () => {
    plain = await playText(scenario('{}'))
  })

  /** The play with a fault, which is to be the same as without but for the instants. */
  const survived = async (fault: string): Promise<PlayResult> => {
    const play = await playText(scenario(fault), 'chat')
    expect(play.checks.failed).toEqual([])
    expect(days(brief(play))).toEqual(days(brief(plain)))
    expect(toClient(play, 'heron', 'prompt')).toHaveLength(3)
    return play
  }

  it.concurrent.each([
    '2: { at: "08:25", chat: down, for: 20m }',
    '2: { at: "08:25", chat: slow, for: 10m }',
    '2: { at: "07:59", chat: "500", for: 5m }',
    '2: { at: "07:59", chat: 429 }',
    '2: { at: "07:59", chat: lost-answer }',
    '2: { at: "07:59", chat: lost-answer, for: 3m }',
    '2: { at: "08:10", chat: gateway-drop }',
    '2: { at: "08:10", chat: no-resume }',
    '2: { at: "08:25", chat: revoked, for: 30m }',
    '2: { at: "08:10", restart: kill }',
    '2: { at: "08:10", restart: stop }',
  ])('%s: nothing is lost and nothing comes twice', (fault) => survived(fault).then(() => undefined), 120_000)

  it('chat: down as a prompt is due: nothing is lost nor twice, and it goes out once the chat is back', async () => {
    const play = await survived('2: { at: "07:59", chat: down, for: 20m }')
    const [, second] = toClient(play, 'heron', 'prompt')
    expect(second!.local >= '2026-03-03T08:19').toBe(true)
    expect(second!.local < '2026-03-03T08:30').toBe(true)
  }, 120_000)
})
