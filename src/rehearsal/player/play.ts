import type { Script } from '../scenario/index.ts'
import { Agenda } from './agenda.ts'
import { Board } from './board.ts'
import type { VirtualClock } from './clock.ts'
import { endOfRun } from './ends.ts'
import { Log } from './log.ts'
import { type Programme, planAll } from './programme.ts'
import type { Hooks, Stage } from './stage.ts'

export interface PlayParts {
  readonly script: Script
  readonly clock: VirtualClock
  /** Folder for the pictures. */
  readonly folder: string
  readonly stage: (hooks: Hooks) => Promise<Stage>
  /** Called after every step: what was due, what people did, and all that it led to. */
  readonly watch?: Watch
}
export type Watch = (played: Played, now: Date) => void

/** What came of a play. The stage is still open: the closing facts are read from its store. */
export interface Played {
  readonly stage: Stage
  readonly log: Log
}

/** The play cannot begin; one sentence with the mend. */
export class PlayRefused extends Error {}

// An instant at which the bot finds ever more to do is a fault of the program, not a long scenario.
const TICKS_AN_INSTANT = 50

/** Plays a scenario from the set-up to the end of the last client's last local day. */
export async function play({ script, clock, folder, stage: make, watch }: PlayParts): Promise<Played> {
  const board = new Board()
  const log = new Log({ script, clock, board, folder })
  const stage = await make(log.hooks)
  log.begin(stage)
  if (await stage.store.store.transaction((tx) => tx.practiceOfGuild(stage.cast.guild))) {
    await stage.close()
    throw new PlayRefused('This database holds a play already: name a new one, or leave it out.')
  }
  try {
    await run({ script, clock, board, stage, agenda: new Agenda(), log }, watch)
  } catch (error) {
    await stage.close()
    throw error
  }
  return { stage, log }
}

async function run(parts: Programme, watch?: Watch): Promise<void> {
  const { script, clock, stage, agenda, log } = parts
  planAll(parts)
  let ticks = 0
  for (;;) {
    const next = earliest(agenda.next, await stage.nextDue(), stage.nextMend())
    // who has travelled ends their last day elsewhere
    if (!next || next >= endOfRun(script, (ref) => log.zoneOf(ref))) break
    ticks = next > clock.world() ? 0 : ticks + 1
    if (ticks > TICKS_AN_INSTANT) throw new Error(`the bot finds no end at ${clock.world().toISOString()}`)
    clock.set(next)
    await stage.mend()
    await stage.tick()
    for (let entry = agenda.take(clock.world()); entry; entry = agenda.take(clock.world())) {
      ticks = 0
      await entry.run()
      log.settle()
    }
    log.settle()
    await log.written()
    watch?.({ stage, log }, clock.world())
  }
}

const earliest = (...dates: (Date | null)[]): Date | null => {
  const known = dates.filter((date) => date !== null).map((date) => date.getTime())
  return known.length > 0 ? new Date(Math.min(...known)) : null
}
