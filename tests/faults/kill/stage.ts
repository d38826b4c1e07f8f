import { Platform } from '../../../src/rehearsal/platform/index.ts'
import { buildCast } from '../../../src/rehearsal/player/cast.ts'
import type { VirtualClock } from '../../../src/rehearsal/player/clock.ts'
import { People } from '../../../src/rehearsal/player/people.ts'
import { createReceived } from '../../../src/rehearsal/player/received.ts'
import type { Hooks, Stage } from '../../../src/rehearsal/player/stage.ts'
import type { Script } from '../../../src/rehearsal/scenario/index.ts'
import { openStore } from '../../../src/store/open.ts'
import { Host, type HostParts } from './host.ts'
import { whileUnanswered } from './people-again.ts'

export interface KillableParts {
  readonly file: string
  readonly databaseUrl: string
  readonly clock: VirtualClock
  readonly hooks: Hooks
  readonly script: Script
  readonly before?: NonNullable<HostParts['before']>
}

export interface KillableStage extends Stage {
  readonly platform: Platform
  readonly host: Host
}

/**
 * A scenario's stage whose bot is a process of its own and may be killed at any time: it is started again at once, and
 * people whose press or command was not answered try again, as people do.
 */
export async function killableStage(parts: KillableParts): Promise<KillableStage> {
  const { databaseUrl, clock, hooks, script } = parts
  const platform = new Platform({ now: () => clock.world().getTime() })
  const cast = buildCast(platform.build, script)
  const received = createReceived(platform, cast, hooks.onTrouble)
  await platform.start()
  const told = new Set<string>()
  const host = new Host({
    file: parts.file,
    now: clock.host,
    ...(parts.before ? { before: parts.before } : {}),
    onSent: ({ row, sent }) => {
      // a bot killed before it could mark a message as sent sends it again under its nonce, and tells of it again
      if (told.has(row.id)) return
      told.add(row.id)
      hooks.onSent(row, sent)
    },
    onHandled: ({ event, handled }) => hooks.onHandled(event, handled),
  })
  const people = new People({ platform, cast, received, reachable: () => true, onTrouble: () => {} })

  const settled = (): Promise<void> => host.surely(() => host.quiet())
  const acted = async <T>(work: () => Promise<T>): Promise<void> => {
    await whileUnanswered({ platform, host, settled }, work)
  }

  await host.surely(() => host.start({ databaseUrl, folder: null, platform }))
  await settled()
  const store = await openStore(databaseUrl)
  const said = async (does: () => unknown): Promise<string> => {
    const id = does()
    await settled()
    return String(id)
  }
  return {
    ...{ cast, store, platform, host, isUnreadable: false },
    say: (who, text) => said(() => people.person(who).say(text)),
    edit: async (who, message, text) => void (await said(() => people.person(who).edit(message, text))),
    takeBack: async (who, message) => void (await said(() => people.person(who).delete(message))),
    press: (who, row, index) => acted(() => people.press(who, row, index)),
    choose: (who, row, values) => acted(() => people.choose(who, row, values)),
    fill: (who, row, index, filled) => acted(() => people.fill(who, row, index, filled)),
    command: (who, command) => acted(() => people.command(who, command)),
    tick: () => host.surely(async () => void (await host.ask({ ask: 'tick' }))).then(settled),
    nextDue: () => host.surely(async () => (await host.ask({ ask: 'next-due' })) as Date | null),
    fault: () => Promise.reject(new Error('no other faults beside the kills')),
    nextMend: () => null,
    mend: async () => {},
    async close() {
      for (const { request, reason, errors } of platform.violations)
        hooks.onTrouble(`${request}: ${reason} ${JSON.stringify(errors)}`)
      await host.surely(async () => void (await host.ask({ ask: 'stop' })))
      host.close()
      await store.close()
      await platform.stop()
    },
  }
}
