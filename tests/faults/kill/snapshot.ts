import { cpSync, mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Platform } from '../../../src/rehearsal/platform/index.ts'
import type { Cast } from '../../../src/rehearsal/player/cast.ts'
import { createClock } from '../../../src/rehearsal/player/clock.ts'
import { openingAt } from '../../../src/rehearsal/player/opening.ts'
import { play } from '../../../src/rehearsal/player/play.ts'
import { loadScenario } from '../../../src/rehearsal/scenario/index.ts'
import { type KillableStage, killableStage } from './stage.ts'

/** Where a trial may begin: after the first prompt, after its answer, after the answer on the Sunday. */
export type Moment = 'prompted' | 'replied' | 'sunday'

/** A practice at a moment: the bot's files, the platform and the time, from which any number of trials begin. */
export interface Snapshot {
  /** Holds the file of the database, and the small files beside it. */
  readonly folder: string
  readonly at: Date
  readonly cast: Cast
  readonly world: object
}

/** Name of the file of the database. */
export const DATABASE = 'bot.db'

const SCENARIO = `
title: One client at the boathouse over a weekend
practice: { zone: Europe/Lisbon, region: PT, digest: "Sun 18:00" }
start: 2026-03-07
days: 2
clients:
  - ref: heron
    prompt: "08:00"
    side: left
    screening: { baseline: { reach: calf, pain: 6 } }
    plan: { sessions: 2, rungs: { extension: 1, glide: 1 } }
    days: { 1: "2 calf 6", 2: "2 calf 5" }
`
const MOMENTS: readonly { moment: Moment; at: string }[] = [
  { moment: 'prompted', at: '2026-03-07T08:00:00Z' },
  { moment: 'replied', at: '2026-03-07T08:30:00Z' },
  { moment: 'sunday', at: '2026-03-08T08:30:00Z' },
]

/** Plays the weekend once, or its first day only, and keeps it as it stood at each moment. */
export async function takeSnapshots(
  file: string,
  days: 1 | 2 = 2,
): Promise<Record<Moment, Snapshot> & { remove(): void }> {
  const script = { ...loadScenario('weekend', SCENARIO), days }
  const root = mkdtempSync(join(tmpdir(), 'ebbline-kill-'))
  const playing = join(root, 'playing')
  mkdirSync(playing)
  const clock = createClock(openingAt(script))
  const kept: Partial<Record<Moment, Snapshot>> = {}
  const found: { stage?: KillableStage } = {}
  const { stage, log } = await play({
    ...{ script, clock, folder: join(root, 'pictures') },
    stage: async (hooks) => {
      const databaseUrl = `file:${join(playing, DATABASE)}`
      found.stage = await killableStage({ file, databaseUrl, clock, hooks, script })
      return found.stage
    },
    watch: (_, now) => {
      const moment = MOMENTS.find(({ at }) => Date.parse(at) === now.getTime())?.moment
      if (!moment) return
      const folder = join(root, moment)
      copyFiles(playing, folder)
      kept[moment] = { folder, at: now, cast: found.stage!.cast, world: copyOf(found.stage!.platform) }
    },
  })
  await stage.close()
  if (log.troubles.length > 0) throw new Error(log.troubles.join('\n'))
  return {
    ...(kept as Record<Moment, Snapshot>),
    remove: () => rmSync(root, { recursive: true, force: true }),
  }
}

/** The platform as it was, for one trial. */
export function platformAt({ world }: Snapshot, now: () => number): Platform {
  const platform = new Platform({ now })
  Object.assign(platform.world, structuredClone(world))
  return platform
}

/** The index of the WAL belongs to the process that has it open; it is made anew. */
export function copyFiles(from: string, to: string): void {
  mkdirSync(to, { recursive: true })
  for (const name of readdirSync(from)) if (!name.endsWith('-shm')) cpSync(join(from, name), join(to, name))
}

/** All that the platform holds, in one go: messages stand in their channel and in the list of all. */
const copyOf = ({ world }: Platform): object =>
  structuredClone(
    Object.fromEntries(Object.entries(world).filter(([key, value]) => key === 'bot' || value instanceof Map)),
  )
