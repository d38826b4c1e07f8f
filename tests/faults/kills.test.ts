import { expect, it } from 'vitest'
import { isShort } from '../long.ts'
import { POSTGRES, SKIPPED } from '../store/databases.ts'
import { bundleChild } from './kill/bundle.ts'
import { EVENTS } from './kill/events.ts'
import { type Homes, homesOnFiles, homesOnServer } from './kill/home.ts'
import { difference } from './kill/outcome.ts'
import { takeSnapshots } from './kill/snapshot.ts'
import { createTrials, type KillAt } from './kill/trial.ts'

const KILLS: readonly { readonly event: string; readonly at: Readonly<Record<string, KillAt>> }[] = [
  {
    // one event, and five processes that are ended over it
    event: 'urgent reply',
    at: {
      'before the commit': { first: 'commit', behind: 'insert Outbox', when: 'before' },
      'after the commit, before the send': { first: 'commit', behind: 'insert Outbox', when: 'after' },
      // reply and alert leave side by side
      'between the post of one and the other': { step: 'POST /channels/messages 2', when: 'before' },
      'between the posts and the marks': { stored: 1 },
      'while marking': { first: 'update Outbox', behind: 'POST /channels/messages', when: 'after' },
    },
  },
  {
    event: 'urgent reply, locked',
    at: { 'at a write to the spool': { first: 'spool: datasync', behind: 'spool: write', when: 'before' } },
  },
]

// On a busy machine reply and alert may have left by the way without the store before a kill could strike.
const TRIES = 4

/** All kills of these, each event's one after another; so many of each event's must strike. */
async function killAll(events: typeof KILLS, homes: Homes, least = Number.POSITIVE_INFINITY): Promise<void> {
  const bundle = await bundleChild()
  const snapshots = await takeSnapshots(bundle.path, 1)
  const trials = createTrials(bundle.path, homes)
  const sum = { tried: 0, survived: 0, lost: 0, twice: 0 }
  const once = async ({ event: name, at }: (typeof KILLS)[number]): Promise<boolean> => {
    const event = EVENTS.find((one) => one.name === name)!
    const alone = await trials.trial(snapshots[event.from], event, [])
    const killed = await trials.trial(snapshots[event.from], event, Object.values(at))
    const found = difference(alone.outcome, killed.outcome)
    sum.tried += killed.kills
    if (!found) sum.survived += killed.kills
    sum.lost += found?.lost.length ?? 0
    sum.twice += found?.twice.length ?? 0
    expect(found).toBeNull()
    return killed.kills >= Math.min(least, Object.keys(at).length)
  }
  try {
    for (const kills of events) {
      let struck = false
      for (let tries = 0; tries < TRIES && !struck; tries += 1) struck = await once(kills)
      expect(struck, `enough kills of ${kills.event} struck`).toBe(true)
    }
  } finally {
    trials.close()
    await homes.remove()
    snapshots.remove()
    bundle.remove()
    console.info(`kills tried ${sum.tried}, survived ${sum.survived}; ${sum.lost} lost, ${sum.twice} twice`)
  }
}

it(
  'loses nothing and sends nothing twice, wherever the bot is killed',
  () => killAll(KILLS, homesOnFiles()),
  300_000,
)

// a slow server may let the way without the store be first, so that a later kill finds nothing left to strike at; the
// locked one is tried with its own faults, and here with EBBLINE_LONG=all
it.skipIf(!POSTGRES)(
  `the same on PostgreSQL${POSTGRES ? '' : ` (${SKIPPED})`}`,
  () => killAll(isShort ? KILLS.slice(0, 1) : KILLS, homesOnServer(POSTGRES!), 1),
  300_000,
)
