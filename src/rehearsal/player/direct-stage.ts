import { commands } from '../../../commands/index.ts'
import { type Bot, createBot } from '../../bot.ts'
import { createEngine } from '../../engine/engine.ts'
import type { Server } from '../../engine/event.ts'
import type { Courier } from '../../engine/ports.ts'
import { type OpenStore, openStore as openAny } from '../../store/open.ts'
import { textsFor } from '../../text/index.ts'
import { Builder } from '../platform/builder.ts'
import { World } from '../platform/world.ts'
import type { Script } from '../scenario/index.ts'
import { actorOf, buildCast, type Cast } from './cast.ts'
import type { VirtualClock } from './clock.ts'
import type { Hooks, Stage } from './stage.ts'

interface Direct {
  readonly url: string
  readonly clock: VirtualClock
  readonly hooks: Hooks
  readonly script: Script
  /** How the database is opened, at the beginning and after each restart. */
  readonly openStore?: typeof openAny
}

/** Straight into the bot: no chat client and no stand-in, a courier that only keeps count. */
export async function directStage({
  url,
  clock,
  hooks,
  script,
  openStore = openAny,
}: Direct): Promise<Stage> {
  const world = new World(() => clock.world().getTime())
  const cast = buildCast(new Builder(world, () => {}), script)
  let { store, bot } = await assemble()

  async function assemble(): Promise<{ store: OpenStore; bot: Bot }> {
    const opened = await openStore(url)
    const engine = createEngine({ store: opened.store, commands, textsFor })
    const parts = {
      engine,
      dues: opened.dues,
      outbox: opened.outbox,
      courier: courierTo(world),
      now: clock.host,
    }
    const made = createBot({ ...parts, ...hooks, onTrouble: (error) => hooks.onTrouble(String(error)) })
    return { store: opened, bot: made }
  }

  const at = () => clock.world()
  return {
    cast,
    isUnreadable: false,
    get store() {
      return store
    },
    async say(who, text) {
      const id = world.nextId()
      const actor = actorOf(cast, who, 'private')
      await bot.handle({ kind: 'words', id, actor, at: at(), text, edits: null, attached: 'none' })
      return id
    },
    async edit(who, message, text) {
      const id = `${message}:${at().getTime()}`
      const actor = actorOf(cast, who, 'private')
      await bot.handle({ kind: 'words', id, actor, at: at(), text, edits: message, attached: 'none' })
    },
    async takeBack(who, message) {
      const actor = actorOf(cast, who, 'private')
      await bot.handle({ kind: 'taken-back', id: `${message}:gone`, actor, message })
    },
    async press(who, row, index) {
      const { act, label } = row.body.buttons[index]!
      await bot.handle({ ...from(who, row), kind: 'choice', act, label, values: [] })
    },
    async choose(who, row, values) {
      const { act, options } = row.body.pick!
      const chosen = options.filter((option) => values.includes(option.value))
      const label = chosen.map((option) => option.label).join('; ')
      await bot.handle({ ...from(who, row), kind: 'choice', act, label, values: chosen.map((o) => o.value) })
    },
    async fill(who, row, index, filled) {
      await bot.handle({ ...from(who, row), kind: 'form', act: row.body.buttons[index]!.act, filled })
    },
    async command(who, { name, options }) {
      const isClients = commands.find((one) => one.name === name)?.who === 'client'
      const actor = actorOf(cast, who, isClients && who !== 'coach' ? 'private' : 'server')
      const server = serverOf(cast)
      await bot.handle({ kind: 'command', id: world.nextId(), actor, name, options, server })
    },
    tick: () => bot.tick(),
    async nextDue() {
      const due = await bot.nextDue()
      return due && clock.inWorld(due)
    },
    async fault(fault) {
      if (fault.kind === 'clock') return clock.jump(fault.ms)
      if (fault.kind !== 'restart') throw new Error(`the fault ${fault.kind} needs the stand-in`)
      await bot.idle()
      if (fault.what === 'kill') store.abandon()
      else await store.close()
      ;({ store, bot } = await assemble())
    },
    nextMend: () => null,
    mend: async () => {},
    close: () => store.close(),
  }

  function from(who: string, row: { id: string; body: { address: { to: string } } }) {
    const place = row.body.address.to === 'client' ? 'private' : 'server'
    return { id: world.nextId(), actor: actorOf(cast, who, place), outbox: row.id }
  }
}

const courierTo = (world: World): Courier => ({
  async deliver({ body: { address } }) {
    const channel = address.to === 'client' ? world.dmChannel(address.user).id : address.channel
    return { channel, platformId: world.nextId() }
  },
})

/** The server as the platform would describe it: everyone can read the hall, the bot can do what it needs, but call no role. */
const serverOf = (cast: Cast): Server => ({
  name: 'boathouse',
  owner: 'keeper',
  channel: (id) => ({ open: id === cast.hall, lacks: [], readers: [cast.role], callsRoles: false }),
  role: () => ({ mentionable: false }),
})
