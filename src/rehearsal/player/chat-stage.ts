import { openStore as openAny } from '../../store/open.ts'
import { Platform } from '../platform/index.ts'
import type { Script } from '../scenario/index.ts'
import { buildCast } from './cast.ts'
import { ChatFaults } from './chat-faults.ts'
import type { VirtualClock } from './clock.ts'
import { DatabaseFaults } from './database-faults.ts'
import { Host } from './host.ts'
import { overreach } from './overreach.ts'
import { People } from './people.ts'
import { createReceived } from './received.ts'
import { Shown } from './shown.ts'
import type { Hooks, LiveStage } from './stage.ts'

interface ChatParts {
  readonly url: string
  readonly clock: VirtualClock
  readonly hooks: Hooks
  readonly script: Script
  /** How the database is opened, at the beginning and after each restart. */
  readonly openStore?: typeof openAny
}

/** Through the real chat client against the stand-in of the platform on this machine. */
export async function chatStage({
  url,
  clock,
  hooks,
  script,
  openStore = openAny,
}: ChatParts): Promise<LiveStage> {
  const platform = new Platform({ now: () => clock.world().getTime() })
  const cast = buildCast(platform.build, script)
  const received = createReceived(platform, cast, hooks.onTrouble)
  await platform.start()
  const database = new DatabaseFaults(url, openStore)
  const host = new Host({ url, openStore: database.open, platform, received, clock, hooks, script })
  await host.start()
  const people = new People({
    platform,
    cast,
    received,
    onTrouble: hooks.onTrouble,
    reachable: () => !host.isCut && host.service !== null,
  })
  const shown = new Shown(platform, cast, (id) => host.store.store.transaction((tx) => tx.outbox(id)))
  const faults = new ChatFaults({ platform, clock, host, database })

  /** Acts, then waits until all is quiet and looks at what was received. */
  const then = async <T>(work: Promise<T> | T): Promise<T> => {
    const result = await work
    await host.quiet()
    received.verify()
    return result
  }

  const mend = async (): Promise<void> => {
    if (await faults.mend()) await then(null)
  }

  return {
    cast,
    platform,
    people,
    shown,
    settled: then,
    get isDatabaseAway() {
      return database.isAway
    },
    get isUnreadable() {
      return database.isUnreadable || host.service === null
    },
    release: (kind) => {
      faults.release(kind)
      return mend()
    },
    get store() {
      return host.store
    },
    say: (who, text) => then(people.person(who).say(text)),
    edit: (who, message, text) => then(people.person(who).edit(message, text)),
    takeBack: (who, message) => then(people.person(who).delete(message)),
    press: async (who, row, index) => void (await then(people.press(who, row, index))),
    choose: (who, row, values) => then(people.choose(who, row, values)),
    fill: (who, row, index, filled) => then(people.fill(who, row, index, filled)),
    command: (who, command) => then(people.command(who, command)),
    use: async (who, use) => {
      const found = await shown.find(who, use)
      if (!found) return `nothing before ${who} has a “${use.name}” to be used`
      return then(people.use(who, found, use))
    },
    // a tick that fails is tried again at the next, as in service; only a fault may make it fail
    tick: () => then(host.service?.bot.tick().catch(database.pass)),
    async nextDue() {
      if (database.isAway) return null
      const due = (await host.service?.bot.nextDue()) ?? null
      return due && clock.inWorld(due)
    },
    fault: (fault) => then(faults.strike(fault)),
    nextMend: () => faults.nextMend,
    mend,
    async close() {
      for (const { request, reason, errors } of platform.violations)
        hooks.onTrouble(`${request}: ${reason} ${JSON.stringify(errors)}`)
      for (const what of overreach(platform, cast)) hooks.onTrouble(what)
      await host.stop()
      await platform.stop()
    },
  }
}
