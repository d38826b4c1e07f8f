import { setTimeout as pause } from 'node:timers/promises'
import pino from 'pino'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { Permission, type Person, Platform, type PostedEvent } from '../../src/rehearsal/platform/index.ts'
import { shardOf } from '../../src/rehearsal/platform/shards.ts'
import { type Service, startService } from '../../src/service.ts'
import { textsFor } from '../../src/text/index.ts'
import { onBothDatabases } from '../store/databases.ts'
import { buttonOf } from './service-town.ts'

/** Lines that the platform asks for; it would from 2,500 servers on. */
const LINES = 3
const BIRDS = ['heron', 'dipper', 'curlew']
const SIGN = 'numb between my legs since this morning, and I cannot feel when I pee'

interface House {
  readonly guild: string
  readonly coach: Person
  readonly client: Person
  readonly alias: string
  readonly alerts: string
}

const { client: words } = textsFor('en')

onBothDatabases(`a bot whose servers come by ${LINES} lines`, (bench) => {
  let platform: Platform
  let service: Service
  let houses: House[]
  const posted: PostedEvent[] = []

  /** A server whose events come by a line: its id decides, and that holds the millisecond in which it was made. */
  async function serverOn(line: number): Promise<House> {
    const { build } = platform
    const alias = BIRDS[line]!
    const keeper = platform.addUser(`keeper-${line}`)
    for (;;) {
      const guild = build.addGuild(`boathouse ${line}`, { ownerId: keeper.id })
      await pause(1)
      if (shardOf(guild.id, LINES) !== line) continue
      const role = build.addRole(guild.id, 'coach').id
      const [coach, client] = [platform.addUser(`coach-${line}`), platform.addUser(alias)]
      build.addMember(guild.id, coach.id, [role])
      build.addMember(guild.id, client.id)
      const sees = { id: role, type: 'role', allow: Permission.viewChannel, deny: 0n } as const
      const closed = { everyoneCanView: false, overwrites: [sees] }
      const channel = build.addChannel(guild.id, 'digests', closed).id
      const alerts = build.addChannel(guild.id, 'alerts', closed).id
      const options = {
        ...{ 'coach-role': role, 'coach-channel': channel, 'alert-channel': alerts },
        ...{ zone: 'UTC', region: 'PT', 'policy-settled': true },
      }
      setUps.push(() => keeper.slash(channel, 'set-up', options))
      return { guild: guild.id, coach, client, alias, alerts }
    }
  }
  const setUps: (() => ReturnType<Person['slash']>)[] = []

  /** Resolves when the client has taken in everything and nothing is under way. */
  async function settled(): Promise<void> {
    while (service.chat.lastSequence() < platform.sequence) await pause(5)
    await service.chat.idle()
    await service.bot.idle()
  }

  async function command(who: Person, channel: string, name: string, options: object): Promise<string> {
    const answer = await who.slash(channel, name, options as never)
    if (answer.outcome !== 'deferred') throw new Error(`/${name}: ${answer.outcome}`)
    return (await answer.completed).content
  }

  const to = (who: Person) => posted.filter(({ recipient }) => recipient === who.id)

  beforeAll(async () => {
    platform = new Platform({ shards: LINES })
    houses = [await serverOn(0), await serverOn(1), await serverOn(2)]
    await platform.start()
    platform.on('message', (event) => posted.push(event))
    const databaseUrl = await bench.address()
    const { token, apiUrl: api } = platform
    const log = pino({ level: 'silent' })
    service = await startService({ databaseUrl, token, api, perSecond: 1_000, now: () => new Date(), log })
    for (const setUp of setUps) {
      const answer = await setUp()
      if (answer.outcome === 'deferred') await answer.completed
    }
  })
  afterAll(async () => {
    await service.stop()
    await platform.stop()
  })

  describe('three practices', () => {
    it('opens as many as the platform asks for', () => {
      expect(service.client.ws.shards.size).toBe(LINES)
      expect(service.client.guilds.cache.size).toBe(platform.world.botGuilds().length)
    })

    it('takes a command of each server, and private messages by the first', async () => {
      for (const { coach, client, alias, alerts } of houses) {
        await command(coach, alerts, 'enrol', { person: client.id, alias, side: 'left', zone: 'UTC' })
        await settled()
        const invitation = to(client).findLast((event) => buttonOf(event, words.consentYes))!
        await client.press(invitation.id, buttonOf(invitation, words.consentYes)!.custom_id!)
        await settled()
      }
    })

    it('keeps practices apart: an urgent sign is told in its own server alone', async () => {
      for (const [at, { client }] of houses.entries()) {
        const before = posted.length
        client.say(SIGN)
        await settled()
        const since = posted.slice(before)
        expect(since.some(({ recipient }) => recipient === client.id)).toBe(true)
        for (const [other, { alerts, client: who }] of houses.entries()) {
          expect(since.some(({ channelId }) => channelId === alerts)).toBe(other === at)
          if (other !== at) expect(since.some(({ recipient }) => recipient === who.id)).toBe(false)
        }
      }
    })

    it('refuses a coach of one server what belongs to another', async () => {
      const [first, second] = houses as [House, House, House]
      const said = await command(first.coach, first.alerts, 'client-record', { client: second.alias })
      expect(said).not.toContain(SIGN)
      expect(said).toContain(second.alias)
    })

    it('goes on where all lines break, with what was said meanwhile', async () => {
      const [, , { client }] = houses as [House, House, House]
      const told = to(client).length
      platform.dropGateway()
      client.say('still numb between my legs')
      while (!platform.connected) await pause(20)
      await settled()
      expect(to(client).length).toBeGreaterThan(told)
    })
  })
})
