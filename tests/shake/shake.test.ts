import { describe, expect, it } from 'vitest'
import { practiceOf } from './practice.ts'
import { shake } from './shake.ts'

/** One of a few seconds; `npm run shake` plays as many as there is time for. */
const SEEDS = [22]

describe('whole practices from a seed, under random replies, decisions and faults', () => {
  it('are the same for the same seed', () => {
    expect(practiceOf(5)).toBe(practiceOf(5))
    expect(practiceOf(5)).not.toBe(practiceOf(6))
  })

  it.each(SEEDS)(
    'seed %i breaks none of the invariants',
    async (seed) => {
      const { breaches, steps, faults, messages } = await shake(seed)
      console.info(`seed ${seed}: ${steps} steps, ${faults} faults, ${messages} messages`)
      expect(breaches).toEqual([])
    },
    300_000,
  )
})
