import type { Platform } from '../../../src/rehearsal/platform/index.ts'
import { lock } from '../lock.ts'
import { Died } from './bot-process.ts'
import type { KillEvent, Scene } from './events.ts'
import type { Home, Homes } from './home.ts'
import { Host } from './host.ts'
import { type Outcome, outcomeOf, spooled } from './outcome.ts'
import { whileUnanswered } from './people-again.ts'
import type { Aim, AimBehind, Ask } from './protocol.ts'
import { platformAt, type Snapshot } from './snapshot.ts'

/** The child at one of its steps, or as soon as the platform has stored the so-maniest message and not answered yet. */
export type KillAt = Aim | AimBehind | { readonly stored: number }

export interface Tried {
  readonly outcome: Outcome
  /** What the process did from the event on, in order, where it was not killed. */
  readonly steps: readonly string[]
  /** How many messages the platform stored or changed meanwhile. */
  readonly stored: number
  readonly kills: number
}

const MINUTE = 60_000
// the platform gives 3 s, a busy machine takes its time
const SHORT_WAY_MS = 20_000

/** Runs trials one after another; a process that has survived one serves in the next. */
export function createTrials(file: string, homes: Homes) {
  let now = new Date(0)
  let watch: ReturnType<typeof watchStored> | null = null
  let ahead: KillAt[] = []
  const host = new Host({ file, now: () => now, before: (bot) => takeAim((ask) => bot.ask(now, ask)) })

  const takeAim = async (ask: (ask: Ask) => Promise<unknown>): Promise<void> => {
    const at = ahead.shift() ?? null
    const isStored = at !== null && 'stored' in at
    watch?.aim(isStored ? at.stored : null)
    await ask({ ask: 'count', aim: isStored ? null : at })
  }

  /** @param at where it is killed; of several, the first process at the first, the one that follows at the next. */
  async function trial(snapshot: Snapshot, event: KillEvent, at: readonly KillAt[]): Promise<Tried> {
    now = snapshot.at
    const home = await homes.at(snapshot)
    const platform = platformAt(snapshot, () => now.getTime())
    await platform.start()
    const { kills } = host
    await host.start({ ...home, platform })
    await host.quiet()
    watch = watchStored(platform, host)
    ahead = [...at]
    await takeAim((ask) => host.ask(ask))
    now = new Date(event.at ?? now)
    const steps = await happen({ platform, cast: snapshot.cast }, event, home)
    const killed = host.kills - kills
    // what comes of the event at its leisure is not aimed at
    ahead = []
    await host.surely(() => host.ask({ ask: 'count', aim: null }))
    for (const minutes of [0, 1]) {
      now = new Date(now.getTime() + minutes * MINUTE)
      await host.surely(() => host.ask({ ask: 'tick' }))
      await host.surely(() => host.quiet())
    }
    await host.ask({ ask: 'stop' })
    const left = spooled(home.folder)
    if (left !== '') throw new Error(`left in the spool: ${left}`)
    const outcome = outcomeOf(await home.rows(), platform, event.interaction === true)
    await platform.stop()
    await home.remove()
    return { outcome, steps, stored: watch.count(), kills: killed }
  }

  /** The event and all that it leads to; killed meanwhile, the bot starts again. */
  async function happen(scene: Scene, event: KillEvent, home: Home): Promise<readonly string[]> {
    let steps: readonly string[] = []
    const unlock = event.locked ? await lock(home.databaseUrl) : async () => {}
    const whole = async (): Promise<void> => {
      if (event.act === null) await host.ask({ ask: 'tick' })
      if (event.locked) await shortWayGone(home.folder, host)
      await unlock()
      await host.quiet()
      await host.ask({ ask: 'tick' })
      await host.quiet()
      steps = (await host.ask({ ask: 'steps' })) as string[]
    }
    const settled = async (): Promise<void> => {
      try {
        await whole()
      } catch (error) {
        if (!(error instanceof Died)) throw error
        await unlock()
        await host.revive()
      }
    }
    const act = async (): Promise<unknown> => event.act?.(scene)
    if (event.interaction) await whileUnanswered({ platform: scene.platform, host, settled }, act)
    else await act().then(settled)
    return steps
  }

  return { trial, close: () => host.close() }
}

/** Reply and alert are out, and written down; or the bot is no more. */
async function shortWayGone(folder: string, host: Host): Promise<void> {
  const late = performance.now() + SHORT_WAY_MS
  while (host.isAlive && (spooled(folder).match(/"sent"/g) ?? []).length < 2) {
    if (performance.now() > late) throw new Error('the short way was not taken')
    await new Promise((resolve) => setTimeout(resolve, 10))
  }
}

/** Kills as soon as a message is stored, which is before the platform's answer leaves. */
function watchStored(platform: Platform, host: Host) {
  let count = 0
  let at: number | null = null
  platform.on('message', () => {
    if (count === at) host.kill()
    count += 1
  })
  return {
    aim: (stored: number | null) => {
      at = stored
    },
    count: () => count,
  }
}
