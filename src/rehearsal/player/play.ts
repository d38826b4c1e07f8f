import type { Script } from '../scenario/index.ts'
import { Agenda } from './agenda.ts'
import { Board } from './board.ts'
import type { VirtualClock } from './clock.ts'
import { endOfRun } from './ends.ts'
import { Log } from './log.ts'
import { type Programme, planAll } from './programme.ts'
import type { Hooks, Stage } from './stage.ts'

interface Beginning<S extends Stage> {
  readonly script: Script
  readonly clock: VirtualClock
  /** Folder for the pictures. */
  readonly folder: string
  readonly stage: (hooks: Hooks) => Promise<S>
}
export interface PlayParts extends Beginning<Stage> {
  /** Called after every step: what was due, what people did, and all that it led to. The play waits for it. */
  readonly watch?: Watch
}
export type Watch = (played: Played, now: Date) => void | Promise<void>

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
export async function play({ watch, ...parts }: PlayParts): Promise<Played> {
  const programme = await begin(parts)
  const { script, stage, clock, log } = programme
  try {
    let ticks = 0
    for (let next = await nextOf(programme); next; next = await nextOf(programme)) {
      // who has travelled ends their last day elsewhere
      if (next >= endOfRun(script, (ref) => log.zoneOf(ref))) break
      ticks = next > clock.world() ? 0 : ticks + 1
      if (ticks > TICKS_AN_INSTANT) throw new Error(`the bot finds no end at ${clock.world().toISOString()}`)
      if (await stepTo(programme, next)) ticks = 0
      await watch?.({ stage, log }, clock.world())
    }
    // the closing facts are read from the store: a fault that outlasts the play ends with it
    for (let end = stage.nextMend(); end && stage.isUnreadable; end = stage.nextMend())
      await stepTo(programme, end)
  } catch (error) {
    await stage.close()
    throw error
  }
  return { stage, log }
}

/** Opens the stage and writes down all that people will do; nothing has happened yet. */
export async function begin<S extends Stage>({
  script,
  clock,
  folder,
  stage: make,
}: Beginning<S>): Promise<Programme<S>> {
  const board = new Board()
  const log = new Log({ script, clock, board, folder })
  const stage = await make(log.hooks)
  log.begin(stage)
  if (await stage.store.store.transaction((tx) => tx.practiceOfGuild(stage.cast.guild))) {
    await stage.close()
    throw new PlayRefused('This database holds a play already: name a new one, or leave it out.')
  }
  const programme = { script, clock, board, stage, agenda: new Agenda(), log }
  planAll(programme)
  return programme
}

/** The next instant at which somebody acts, something is due or a fault ends; null where nothing more comes. */
export async function nextOf({ agenda, stage }: Programme): Promise<Date | null> {
  return earliest(agenda.next, await stage.nextDue(), stage.nextMend())
}

/** Goes on to an instant: what is due then, what people do then, and all that it leads to. True where people acted. */
export async function stepTo({ clock, stage, agenda, log }: Programme, at: Date): Promise<boolean> {
  clock.set(at)
  await stage.mend()
  await stage.tick()
  let acted = false
  for (let entry = agenda.take(clock.world()); entry; entry = agenda.take(clock.world())) {
    acted = true
    await entry.run()
    log.settle()
  }
  log.settle()
  await log.written()
  return acted
}

const earliest = (...dates: (Date | null)[]): Date | null => {
  const known = dates.filter((date) => date !== null).map((date) => date.getTime())
  return known.length > 0 ? new Date(Math.min(...known)) : null
}
