import { monitorEventLoopDelay } from 'node:perf_hooks'
import { setTimeout as pause } from 'node:timers/promises'
import type { Person } from '../../src/rehearsal/platform/index.ts'
import { type Bench, figureOf, type Measured, once, rank } from './measure.ts'
import { openPractices, type Practices } from './urgent-practice.ts'

const PROMPTS = 5_000
const LOCK_MS = 10_000
/** Told one after another while the prompts go out, and while the database is locked. */
const TOLD = { queued: 200, locked: 40 } as const
/** Between two of them: not in step with the limit's second. */
const EVERY_MS = 230
const EVERY_LOCKED_MS = 240
/** The platform shows an answer late after 3 s; a frightened person should not wait at all. */
const GOAL_S = 0.5

/** Seconds of those who were told in a row; who never was counts as endless. */
async function askAll(practices: Practices, people: readonly Person[], every: number): Promise<number[]> {
  const asked: Promise<number>[] = []
  for (const person of people) {
    asked.push(practices.latencyOf(person))
    await pause(every)
  }
  return (await Promise.all(asked)).map((ms) => (Number.isNaN(ms) ? Number.POSITIVE_INFINITY : ms / 1_000))
}

async function run(): Promise<Measured> {
  const practices = await openPractices(PROMPTS, TOLD.queued + TOLD.locked)
  try {
    const held = monitorEventLoopDelay({ resolution: 5 })
    held.enable()
    practices.begin()
    const begun = performance.now()
    const queued = await askAll(practices, practices.urgent.slice(0, TOLD.queued), EVERY_MS)
    const seconds = (performance.now() - begun) / 1_000
    const { prompts, refused } = practices.counts()
    const locking = practices.lock(LOCK_MS)
    const locked = await askAll(practices, practices.urgent.slice(TOLD.queued), EVERY_LOCKED_MS)
    await locking
    held.disable()
    const all = { queued, locked }
    const figures = Object.entries(all).flatMap(([name, values]) => [
      [`${name}: reply after`, { ...figureOf(values), unit: 's' }] as const,
      [`${name}: p99`, { ...once(rank(values, 0.99)), unit: 's' }] as const,
    ])
    const goals = Object.entries(all).map(([name, values]) => {
      const ratio = rank(values, 0.99) / 3
      return [
        `p99 ${name} / the platform's 3 s`,
        { ...once(ratio), goal: `< ${(GOAL_S / 3).toFixed(3)}`, met: ratio < GOAL_S / 3 },
      ] as const
    })
    return {
      figures: {
        ...Object.fromEntries(figures),
        'prompts meanwhile': { ...once(prompts / seconds), unit: 'a second' },
        'still queued then': { ...once(PROMPTS - prompts), unit: 'prompts' },
        'process held up, p99': {
          ...once(held.percentile(99) / 1e9),
          unit: 's (a busy machine, not the bot)',
        },
        'refused by the limits': { ...once(refused.length), unit: 'requests' },
      },
      ratios: Object.fromEntries(goals),
    }
  } finally {
    await practices.stop()
  }
}

export const urgent: Bench = {
  id: 'urgent',
  what: 'urgent replies while 5,000 prompts are sent at the platform’s pace, and while the database is locked for 10 s',
  run,
}
