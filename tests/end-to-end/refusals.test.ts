import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import {
  type Channel,
  Permission,
  type Person,
  type PostedEvent,
} from '../../src/rehearsal/platform/index.ts'
import { textsFor } from '../../src/text/index.ts'
import { onBothDatabases } from '../store/databases.ts'
import { everyRow } from '../store/every-row.ts'
import type { ServiceProcess } from './service-process.ts'
import { openTown, type Town } from './service-town.ts'

/**
 * What the bot in service refuses: each time one clear sentence, and no row is other than before. Then what happens
 * when places are lost: a channel, a right, a role, the server itself. The tests tell one story, in order.
 */
const texts = textsFor('en')
const { access, client, coach, setUp, chat } = texts
const START = '2026-03-10T09:00:00Z'
const SIGN = 'numb between my legs since this morning, and I cannot feel when I pee'

onBothDatabases('what the bot refuses', (bench) => {
  let town: Town
  /** Address of the bot's database. */
  let url: string
  let service: ServiceProcess
  /** A second practice and a server without one, with the same coach of theirs. */
  let quay: { guild: string; coach: Person; channel: Channel }
  let shed: { coach: Person; channel: Channel }

  async function slash(who: Person, where: string, name: string, options = {}): Promise<string> {
    const answer = await who.slash(where, name, options)
    if (answer.outcome !== 'deferred') throw new Error(`/${name}: ${answer.outcome}`)
    return (await answer.completed).content
  }

  function otherServer(name: string): { guild: string; coach: Person; channel: Channel; role: string } {
    const { build } = town.platform
    const person = town.platform.addUser(`${name}-coach`)
    const guild = build.addGuild(name, { ownerId: person.id }).id
    const role = build.addRole(guild, 'coach').id
    build.addMember(guild, person.id, [role])
    const channel = build.addChannel(guild, 'coaches', {
      everyoneCanView: false,
      overwrites: [{ id: role, type: 'role', allow: Permission.viewChannel, deny: 0n }],
    })
    return { guild, coach: person, channel, role }
  }

  beforeAll(async () => {
    url = await bench.address()
    town = await openTown(url)
    const other = otherServer('quay')
    quay = other
    shed = otherServer('shed')
    service = await town.start(START)
    const ready = { zone: 'UTC', region: 'PT', 'policy-settled': true }
    await slash(town.keeper, town.coachChannel.id, 'set-up', {
      ...ready,
      'coach-role': town.coachRole,
      'coach-channel': town.coachChannel.id,
      'alert-channel': town.alertChannel.id,
    })
    await slash(quay.coach, quay.channel.id, 'set-up', {
      ...ready,
      'coach-role': other.role,
      'coach-channel': quay.channel.id,
    })
    for (const alias of ['heron', 'dipper', 'wren'] as const) {
      await town.command(town.coach, 'enrol', { person: town[alias].id, alias, side: 'left' })
      await town.press(town[alias], client.consentYes)
    }
    town.heron.say(SIGN)
    await town.next((event) => event.channelId === town.alertChannel.id)
    // what has arrived is marked a moment later
    while ((await waiting()) !== 0) await new Promise((resolve) => setTimeout(resolve, 50))
  }, 90_000)
  afterAll(() => town.close())

  async function waiting(): Promise<number> {
    const all = await everyRow(url)
    return all.filter(({ table, row }) => table === 'Outbox' && row.state === 'waiting').length
  }

  /** Every row but those that say that an event was applied, and what was last told to the platform. */
  async function rows(without: readonly string[] = []): Promise<Awaited<ReturnType<typeof everyRow>>> {
    const but = new Set(['Inbound', 'Lease', 'Setting', ...without])
    const left = (await everyRow(url)).filter(({ table }) => !but.has(table))
    return left.sort((a, b) => (a.text < b.text ? -1 : 1))
  }

  const to = (who: Person) => (event: PostedEvent) => event.recipient === who.id
  const inChannel = (channel: Channel) => (event: PostedEvent) => event.channelId === channel.id

  /** What is done, and where the sentence is to be read. */
  interface Refusal {
    readonly what: string
    readonly act: () => Promise<string>
    readonly says: () => string
    /** Tables in which a message to somebody else is kept. */
    readonly but?: readonly string[]
  }

  const REFUSALS: readonly Refusal[] = [
    {
      what: 'the wrong role',
      act: () => slash(town.plover, town.alertChannel.id, 'roster'),
      says: () => access.onlyCoach,
    },
    {
      what: 'a coach’s command in private',
      act: () => town.command(town.plover, 'today'),
      says: () => client.stranger,
    },
    {
      what: 'a server that is not set up',
      act: () => slash(shed.coach, shed.channel.id, 'roster'),
      says: () => access.setUpFirst,
    },
    {
      what: 'a client of another practice',
      act: () => slash(quay.coach, quay.channel.id, 'client-record', { client: 'heron' }),
      says: () => coach.unknownClient('heron', []),
    },
    {
      what: 'an alias that nobody has',
      act: () => town.command(town.coach, 'note', { client: 'osprey', text: 'a word' }),
      says: () => coach.unknownClient('osprey', ['dipper', 'heron', 'wren']),
    },
    {
      what: 'a button that is the coach’s',
      act: async () => {
        const since = town.posted.length
        await town.press(town.plover, coach.takeUp, town.alertChannel)
        return (await town.next(to(town.plover), since)).content
      },
      says: () => client.notYours,
    },
    {
      what: 'a form of a message that is gone',
      act: async () => {
        const since = town.posted.length
        const { id: messageId, channelId } = town.posted.findLast(to(town.dipper))!
        const { dipper } = town
        await dipper.submit(
          { customId: 'gone.0.f', title: '', components: [], userId: dipper.id, channelId, messageId },
          {},
        )
        return (await town.next(to(dipper), since)).content
      },
      says: () => chat.expired,
    },
    {
      what: 'private messages that are closed',
      act: async () => {
        const since = town.posted.length
        town.platform.closeDms(town.dipper.id)
        await town.command(town.coach, 'answer', { client: 'dipper', text: 'a word' })
        const told = await town.next(
          (event) => inChannel(town.coachChannel)(event) && !event.ephemeral,
          since,
        )
        town.platform.closeDms(town.dipper.id, false)
        return told.content
      },
      says: () => coach.unreachable('dipper', 'closed', false),
      but: ['Outbox'],
    },
  ]

  describe('a refusal is one clear sentence and leaves no trace', () => {
    it.each(REFUSALS)('$what', async ({ act, says, but = [] }) => {
      const before = await rows(but)
      expect(await act()).toBe(says())
      expect(await rows(but)).toEqual(before)
    })
  })

  describe('a place that is lost', () => {
    it('a channel opened to everyone: said where it still can be, and nothing is posted there any more', async () => {
      const { platform, coachChannel, alertChannel, posted } = town
      const kept = await rows(['Outbox'])
      const { overwrites } = coachChannel
      const since = posted.length
      platform.build.setOverwrites(coachChannel.id, [])
      const told = await town.next(inChannel(alertChannel), since)
      expect(told.content).toContain(setUp.channelOpen('coach-channel'))
      await slash(town.coach, coachChannel.id, 'digest')
      const again = await town.next((event) => inChannel(alertChannel)(event) && event.id !== told.id, since)
      expect(again.content).toContain(setUp.cannotPost('coach', 'open'))
      expect(
        posted.slice(since).filter((event) => inChannel(coachChannel)(event) && !event.ephemeral),
      ).toEqual([])
      platform.build.setOverwrites(coachChannel.id, overwrites)
      expect(await rows(['Outbox'])).toEqual(kept)
    }, 30_000)

    it('an alert channel that is gone: the alert comes to the coach channel', async () => {
      const { platform, coachChannel, alertChannel, posted } = town
      const since = posted.length
      platform.build.removeChannel(alertChannel.id)
      const told = await town.next(inChannel(coachChannel), since)
      expect(told.content).toContain(setUp.channelGone('alert-channel'))
      town.dipper.say(SIGN)
      const alert = await town.next(
        (event) => inChannel(coachChannel)(event) && event.content.includes(SIGN),
        since,
      )
      expect(alert.content).toContain(setUp.cannotPost('alert', 'gone'))
      const before = posted.length
      await town.press(town.coach, coach.takeUp, coachChannel)
      await town.next((event) => to(town.dipper)(event) && event.content === client.takenUp, before)
    }, 30_000)

    it('both channels gone: the alert comes to the coach in private, and the keeper hears of it', async () => {
      const { platform, coachChannel, posted } = town
      const since = posted.length
      platform.build.removeChannel(coachChannel.id)
      const told = await town.next(to(town.keeper), since)
      expect(told.content).toContain(setUp.channelGone('coach-channel'))
      town.wren.say(SIGN)
      const alert = await town.next(
        (event) => to(town.coach)(event) && event.content.includes(setUp.alertInPrivate('wren')),
        since,
      )
      expect(alert.components).toEqual([])
    }, 30_000)

    it('the bot removed and invited again: others are served meanwhile, and the practice is still there', async () => {
      const { platform, guild, keeper, coachRole } = town
      platform.build.removeBot(guild.id)
      expect(await slash(quay.coach, quay.channel.id, 'roster')).toBe(texts.commands.noClients)
      platform.build.inviteBot(
        guild,
        Permission.viewChannel | Permission.sendMessages | Permission.attachFiles,
      )
      const room = platform.build.addChannel(guild.id, 'new', {
        everyoneCanView: false,
        overwrites: [{ id: coachRole, type: 'role', allow: Permission.viewChannel, deny: 0n }],
      })
      const both = { 'coach-channel': room.id, 'alert-channel': room.id }
      await expect
        .poll(() => slash(keeper, room.id, 'set-up', both), { timeout: 10_000 })
        .toContain(setUp.done)
      expect(await slash(town.coach, room.id, 'roster')).toMatch(/heron[\s\S]*dipper|dipper[\s\S]*heron/)
    }, 30_000)

    it('a right taken away and the coach role deleted: each is said in the channel that still serves', async () => {
      const { platform, guild, coachRole, posted, alertChannel } = town
      const spare = platform.build.addChannel(guild.id, 'spare', { everyoneCanView: false })
      await expect
        .poll(() => slash(town.keeper, spare.id, 'set-up', { 'alert-channel': spare.id }), {
          timeout: 10_000,
        })
        .toContain(setUp.done)
      expect(spare.id).not.toBe(alertChannel.id)
      let since = posted.length
      const dumb = spare.overwrites.map((one) =>
        one.id === platform.appId ? { ...one, deny: Permission.sendMessages } : one,
      )
      platform.build.setOverwrites(spare.id, dumb)
      const lost = await town.next((event) => event.change === 'created' && !event.ephemeral, since)
      expect(lost.content).toContain(setUp.channelLacks('alert-channel', [chat.permissions.SendMessages]))
      expect(lost.channelId).not.toBe(spare.id)
      since = posted.length
      platform.build.removeRole(guild.id, coachRole)
      const gone = await town.next((event) => event.change === 'created' && !event.ephemeral, since)
      expect(gone.content).toContain(setUp.roleGone)
      expect(await slash(town.coach, 'dm', 'today')).toBe(client.stranger)
      expect(await slash(quay.coach, quay.channel.id, 'roster')).toBe(texts.commands.noClients)
    }, 30_000)

    it('left words for the operator in the log, and nothing of anybody’s health', async () => {
      const { out, err } = await service.stop()
      expect(err).toBe('')
      for (const said of [
        'a message did not arrive',
        'cannot work as it should',
        'removed from a server',
        'again',
      ])
        expect(out).toContain(said)
      for (const secret of ['heron', 'dipper', SIGN, 'numb', 'pee', town.heron.id, town.dipper.id])
        expect(out).not.toContain(secret)
      expect(town.platform.violations).toEqual([])
    })
  })
})
