import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import type { Actor, ChannelFacts, Server } from '../../src/engine/event.ts'
import type { PracticeRow } from '../../src/engine/rows.ts'
import { textsFor } from '../../src/text/index.ts'
import { COACH, openPractice, type Practice } from './practice.ts'

const { setUp, commands } = textsFor('en')
const ELSEWHERE: Actor = { ...COACH, user: 'keeper-2', guild: 'guild-2', roles: ['role-coach'] }
const FINE: ChannelFacts = { open: false, lacks: [], readers: ['role-coach'], callsRoles: true }

const server = (
  channels: Record<string, Partial<ChannelFacts> | null> = {},
  roles = ['role-coach'],
): Server => ({
  name: 'boathouse',
  owner: 'keeper-1',
  channel: (id) => (channels[id] === null ? null : { ...FINE, ...channels[id] }),
  role: (id) => (roles.includes(id) ? { mentionable: false } : null),
})

let practice: Practice
let count = 0
beforeEach(async () => {
  practice = await openPractice('2026-03-02')
})
afterEach(() => practice.close())

const row = (guild = 'guild-1'): Promise<PracticeRow | null> =>
  practice.store.store.transaction((tx) => tx.practiceOfGuild(guild))

async function typed(
  options: Record<string, string | number | boolean>,
  seen: Server = server(),
  actor: Actor = COACH,
): Promise<string> {
  const event = {
    kind: 'command' as const,
    id: `set-up-${++count}`,
    actor,
    name: 'set-up',
    options,
    server: seen,
  }
  return (await practice.bot.handle(event)).answer?.text ?? ''
}

describe('/set-up', () => {
  it.each([
    [{ 'coach-role': 'role-2' }, { coachRole: 'role-2' }],
    [{ 'coach-channel': 'channel-2' }, { coachChannel: 'channel-2' }],
    [{ 'alert-channel': 'channel-2' }, { alertChannel: 'channel-2' }],
    [{ deputy: 'coach-3' }, { deputy: 'coach-3' }],
    [{ zone: 'Europe/Oslo' }, { zone: 'Europe/Oslo' }],
    [{ digest: 'Fri 07:30' }, { digest: 'Fri 07:30' }],
    [{ region: 'no' }, { region: 'NO' }],
    [{ regions: 'PT es' }, { regions: ['PT', 'ES'] }],
    [{ retention: 90 }, { retentionDays: 90 }],
    [{ name: '  Boathouse   gym ' }, { name: 'Boathouse gym' }],
    [{ window: 20 }, { window: 20 }],
    [{ quote: false }, { quote: false }],
    [{ 'policy-settled': false }, { policyConfirmed: null }],
  ])('changes one setting and leaves the rest: %j', async (options, changed) => {
    await typed({ deputy: 'coach-2', regions: 'NO', retention: 200, window: 5, quote: true })
    const before = (await row())!
    await typed(options, server({}, ['role-coach', 'role-2']))
    expect(await row()).toEqual({ ...before, ...changed })
  })

  it('shows every setting, changes nothing without an option, and says when nothing is missing', async () => {
    const before = await row()
    const text = await typed({})
    expect(text.split('\n')).toEqual([setUp.done, ...setUp.settings({ ...before!, emergency: '112' })])
    expect(text).toContain('policy-settled: confirmed on 2026-03-02')
    expect(await row()).toEqual(before)
  })

  it('says what is missing in a new practice, and keeps none before something is set', async () => {
    const text = await typed({}, server(), ELSEWHERE)
    for (const lack of [setUp.lacksRole, setUp.lacksChannel, setUp.policyOpen, setUp.noRegion])
      expect(text).toContain(lack)
    expect(await row('guild-2')).toBeNull()
  })

  it.each(['coach-channel', 'alert-channel'])(
    'refuses a %s that everyone can see, or where it lacks a right',
    async (option) => {
      const before = await row()
      expect(await typed({ [option]: 'hall', window: 9 }, server({ hall: { open: true } }))).toBe(
        `${setUp.channelOpen(option)} ${setUp.unchanged}`,
      )
      expect(await typed({ [option]: 'attic' }, server({ attic: { lacks: ['Attach Files'] } }))).toBe(
        `${setUp.channelLacks(option, ['Attach Files'])} ${setUp.unchanged}`,
      )
      expect(await typed({ [option]: 'gone' }, server({ gone: null }))).toBe(
        `${setUp.channelGone(option)} ${setUp.unchanged}`,
      )
      expect(await row()).toEqual(before)
    },
  )

  it('refuses everyone as coaches', async () => {
    const before = await row()
    expect(await typed({ 'coach-role': 'guild-1' })).toContain(setUp.everyoneNoCoach)
    expect(await row()).toEqual(before)
  })

  it('names what has gone wrong since: an open channel, a lost right, a channel or role that is gone', async () => {
    const seen = server({ 'channel-coach': { open: true }, 'channel-alerts': null }, [])
    const text = await typed({}, seen)
    expect(text).toContain(setUp.channelOpen('coach-channel'))
    expect(text).toContain(setUp.channelGone('alert-channel'))
    expect(text).toContain(setUp.roleGone)
  })

  it('names other roles that can read along, and that it cannot call the coaches', async () => {
    const seen = server({ 'channel-alerts': { readers: ['role-coach', 'role-rowers'], callsRoles: false } })
    const text = await typed({}, seen)
    expect(text).toContain(setUp.readers('alert-channel', ['role-rowers']))
    expect(text).toContain(setUp.cannotCall)
    expect(text).toContain(setUp.done)
  })

  it.each([
    [{ zone: 'Lisbon' }, commands.badZone('Lisbon')],
    [{ digest: 'Sunday 18' }, commands.badDigest('Sunday 18')],
    [{ region: 'ZZ' }, commands.badRegion('ZZ')],
    [{ regions: 'PT ZZ' }, commands.badRegions('ZZ')],
  ])('refuses %j and keeps what was', async (options, text) => {
    const before = await row()
    expect(await typed({ ...options, window: 9 })).toBe(text)
    expect(await row()).toEqual(before)
  })
})

describe('the platform’s policy on health information', () => {
  it('must be confirmed before anybody is invited, and can be taken back', async () => {
    await typed({ 'policy-settled': false })
    expect((await practice.invite('heron'))?.text).toBe(setUp.enrolNeedsPolicy)
    await expect(practice.file('heron')).rejects.toThrow()
    expect(practice.to('heron')).toEqual([])
    await typed({ 'policy-settled': true })
    expect((await practice.invite('heron'))?.text).toContain(commands.invited('heron'))
  })
})
