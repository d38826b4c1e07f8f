import type { Script } from '../scenario/index.ts'
import { chatStage } from './chat-stage.ts'
import { createClock } from './clock.ts'
import { type ClientEnd, clientEnds } from './closing.ts'
import { directStage } from './direct-stage.ts'
import { type Checks, check } from './expected.ts'
import type { Deed } from './log.ts'
import { leaksIn } from './log-leaks.ts'
import { openingAt } from './opening.ts'
import { play, type Watch } from './play.ts'
import type { Delivered, Shown } from './transcript.ts'

export interface PlayResult {
  /** Every message delivered, in order. */
  readonly messages: readonly Delivered[]
  /** The same with what people did in between. */
  readonly story: readonly (Deed | Shown)[]
  readonly clients: readonly ClientEnd[]
  readonly checks: Checks
}

interface Wish {
  readonly script: Script
  /** Address of the database: `file:PATH` or `postgresql://…`. */
  readonly database: string
  /** Folder for pictures and files. */
  readonly folder: string
  /** Straight into the bot, without chat client and stand-in. */
  readonly direct: boolean
  /** Sees the play after every step. */
  readonly watch?: Watch
}

/** Plays a scenario, reads what stands at the end and checks what it expects. @throws StoreProblem */
export async function playScenario({
  script,
  database: url,
  folder,
  direct,
  watch,
}: Wish): Promise<PlayResult> {
  const clock = createClock(openingAt(script))
  const { stage, log } = await play({
    script,
    clock,
    folder,
    ...(watch ? { watch } : {}),
    stage: (hooks) => (direct ? directStage : chatStage)({ url, clock, hooks, script }),
  })
  // what only shows at the end (a request that the platform does not allow) fails the play as well
  const clients = await clientEnds(script, stage).finally(() => stage.close())
  for (const leak of leaksIn(log.logged, script, stage.cast)) log.trouble(leak)
  const checks = check(script, log.lines, clients, log.troubles)
  return { messages: log.lines.map((line) => line.message), story: log.story, clients, checks }
}
