import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { loadScenario } from '../../../src/rehearsal/scenario/index.ts'
import { isShort, LEFT_OUT } from '../../long.ts'
import { playText } from './playing.ts'

const NAME = 'scenarios/review-of-forty.yaml'
const text = readFileSync(NAME, 'utf8')
const MOST_CLICKS = 100

describe("a week's review of forty clients by buttons alone", () => {
  it.skipIf(isShort)(
    `takes one click for each client with a proposal, and none for the others${LEFT_OUT}`,
    async () => {
      const script = loadScenario(NAME, text)
      const clicks = script.steps.flatMap(({ act }) =>
        act.who === 'coach' && 'press' in act ? [act.press] : [],
      )
      const play = await playText(text)
      expect(play.checks.failed).toEqual([])
      const cards = play.messages.filter(({ to, kind }) => to === 'coach' && kind === 'digest')
      const proposed = cards.filter(({ text }) => !text.includes('Proposal: none'))
      expect(cards).toHaveLength(40)
      expect(clicks.map(({ ref }) => ref).sort()).toEqual(proposed.map(({ about }) => about).sort())
      expect(clicks.length).toBeLessThan(MOST_CLICKS)
      // each click was a decision that the client has heard, and nothing had to be typed
      const heard = play.messages.filter(({ to, kind }) => to.startsWith('client:') && kind === 'decision')
      expect(heard).toHaveLength(clicks.length)
      expect(script.steps.some(({ act }) => act.who === 'coach' && 'command' in act)).toBe(false)
    },
    600_000,
  )
})
