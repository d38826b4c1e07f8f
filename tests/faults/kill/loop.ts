import { mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { randomOf } from '../../../src/domain/diaries/random.ts'
import { createClock } from '../../../src/rehearsal/player/clock.ts'
import { openingAt } from '../../../src/rehearsal/player/opening.ts'
import { play } from '../../../src/rehearsal/player/play.ts'
import type { Script } from '../../../src/rehearsal/scenario/index.ts'
import type { BotProcess } from './bot-process.ts'
import { bundleChild } from './bundle.ts'
import { rowsOfFile } from './home.ts'
import { type Difference, difference, type Outcome, wholeOutcome, withoutUnshown } from './outcome.ts'
import { type KillableStage, killableStage } from './stage.ts'

export interface LoopResult {
  /** Steps of the run that was left alone, and at how many instants they were. */
  readonly steps: number
  readonly instants: number
  readonly kills: number
  readonly rows: number
  readonly messages: number
  /** Answers in place to a press that went with a process; each press counted. */
  readonly unshown: number
  /** Null where both runs have ended the same. */
  readonly difference: Difference | null
  readonly troubles: readonly string[]
}

/**
 * Plays a scenario twice with the bot as a process of its own: left alone, and killed (SIGKILL) so many times, each
 * at an instant and a step of the seed's choice, and started again.
 */
export async function runLoop(
  script: Script,
  most: number,
  seed: number,
  say: (line: string) => void = () => {},
): Promise<LoopResult> {
  const bundle = await bundleChild()
  try {
    const alone = await playOnce(script, bundle.path, async (bot, now) => {
      await bot.ask(now, { ask: 'count', aim: null })
    })
    const steps = alone.instants.reduce((sum, [, count]) => sum + count, 0)
    say(`left alone: ${steps} steps at ${alone.instants.length} instants`)
    const left = aims(alone.instants, most, seed)
    let kills = 0
    let begun = false
    const killed = await playOnce(script, bundle.path, async (bot, now) => {
      // the one that has just struck, where this process is not the first
      const struck = left.findIndex(({ at }) => at === now.getTime())
      if (begun) {
        left.splice(struck, struck < 0 ? 0 : 1)
        kills += 1
        if (kills % 10 === 0) say(`${now.toISOString()}: kill ${kills}`)
      }
      begun = true
      await bot.ask(now, { ask: 'count', aim: { instants: left, when: 'before' } })
    })
    return {
      ...{ steps, instants: alone.instants.length, kills: killed.kills },
      ...{ rows: alone.outcome.rows.length, messages: alone.outcome.messages.length },
      ...withoutUnshown(difference(alone.outcome, killed.outcome) ?? { lost: [], twice: [] }),
      troubles: killed.troubles,
    }
  } finally {
    bundle.remove()
  }
}

type Instants = readonly (readonly [at: number, steps: number])[]

/** Kills at instants of the seed's choice, each before one of the steps of that instant, in order. */
function aims(instants: Instants, most: number, seed: number): { at: number; step: number }[] {
  const random = randomOf(seed, 0)
  const drawn = Array.from({ length: most }, () => {
    const [at, steps] = instants[Math.floor(random.uniform() * instants.length)]!
    return { at, step: 1 + Math.floor(random.uniform() * steps) }
  })
  return drawn.sort((a, b) => a.at - b.at || a.step - b.step)
}

interface Once {
  readonly outcome: Outcome
  readonly instants: Instants
  readonly kills: number
  readonly troubles: readonly string[]
}

async function playOnce(
  script: Script,
  file: string,
  before: (bot: BotProcess, now: Date) => Promise<void>,
): Promise<Once> {
  const place = mkdtempSync(join(tmpdir(), 'ebbline-loop-'))
  const clock = createClock(openingAt(script))
  const databaseUrl = `file:${join(place, 'bot.db')}`
  const found: { stage?: KillableStage } = {}
  try {
    mkdirSync(join(place, 'pictures'))
    const { stage, log } = await play({
      ...{ script, clock, folder: join(place, 'pictures') },
      stage: async (hooks) => {
        found.stage = await killableStage({
          ...{ file, databaseUrl, clock, hooks, script },
          before: (bot) => before(bot, clock.host()),
        })
        return found.stage
      },
    })
    const { host } = found.stage!
    const instants = (await host.surely(() => host.ask({ ask: 'instants' }))) as Instants
    await stage.close()
    return {
      outcome: wholeOutcome(rowsOfFile(join(place, 'bot.db')), found.stage!.platform),
      ...{ instants, kills: host.kills, troubles: log.troubles },
    }
  } finally {
    rmSync(place, { recursive: true, force: true })
  }
}
