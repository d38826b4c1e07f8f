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
import { type Difference, difference, type Outcome, wholeOutcome } from './outcome.ts'
import { type KillableStage, killableStage } from './stage.ts'

export interface LoopResult {
  /** Steps of the run that was left alone, and of its start. */
  readonly steps: number
  readonly kills: number
  readonly rows: number
  readonly messages: number
  /** Null where both runs have ended the same. */
  readonly difference: Difference | null
  readonly troubles: readonly string[]
}

// One in eight kills comes while the bot starts.
const AT_START = 1 / 8
// So that all kills are spent before the play ends.
const SHARE = 0.92

/**
 * Plays a scenario twice with the bot as a process of its own: left alone, and killed (SIGKILL) so many times, each
 * at a step of the seed's choice, and started again.
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
    say(`left alone: ${alone.steps} steps, ${alone.starting} of them at the start`)
    const nextAim = aims({ ...alone, most, seed })
    let aimed = 0
    const killed = await playOnce(script, bundle.path, async (bot, now) => {
      const aim = nextAim()
      if (aim) aimed += 1
      if (aim && aimed % 10 === 0) say(`${now.toISOString()}: kill ${aimed}`)
      await bot.ask(now, { ask: 'count', aim })
    })
    return {
      ...{ steps: alone.steps, kills: killed.kills },
      ...{ rows: alone.outcome.rows.length, messages: alone.outcome.messages.length },
      difference: difference(alone.outcome, killed.outcome),
      troubles: killed.troubles,
    }
  } finally {
    bundle.remove()
  }
}

/** After how many steps each new process is killed; null when all kills are spent. */
function aims({
  steps,
  starting,
  most,
  seed,
}: {
  steps: number
  starting: number
  most: number
  seed: number
}) {
  const random = randomOf(seed, 0)
  const between = (2 * SHARE * (steps - starting)) / (most * (1 - AT_START))
  let left = most
  return () => {
    if (left === 0) return null
    left -= 1
    const early = random.uniform() < AT_START
    const after = early ? random.uniform() * starting : starting + random.uniform() * between
    return { steps: 1 + Math.floor(after), when: random.uniform() < 0.5 ? 'before' : 'after' } as const
  }
}

interface Once {
  readonly outcome: Outcome
  readonly steps: number
  readonly starting: number
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
  const found: { stage?: KillableStage; starting?: number } = {}
  const steps = async (): Promise<number> =>
    ((await found.stage!.host.ask({ ask: 'steps' })) as unknown[]).length
  try {
    mkdirSync(join(place, 'pictures'))
    const { stage, log } = await play({
      ...{ script, clock, folder: join(place, 'pictures') },
      stage: async (hooks) => {
        found.stage = await killableStage({
          ...{ file, databaseUrl, clock, hooks, script },
          before: (bot) => before(bot, clock.host()),
        })
        found.starting = await found.stage.host.surely(steps)
        return found.stage
      },
    })
    const counted = await found.stage!.host.surely(steps)
    await stage.close()
    const { platform, host } = found.stage!
    return {
      outcome: wholeOutcome(place, platform),
      ...{ steps: counted, starting: found.starting!, kills: host.kills, troubles: log.troubles },
    }
  } finally {
    rmSync(place, { recursive: true, force: true })
  }
}
