import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { InteractionType } from '../../src/rehearsal/platform/index.ts'
import { answer } from '../end-to-end/chat-stage.ts'
import { type Forging, openForging } from './forging.ts'

let on: Forging
beforeAll(async () => {
  on = await openForging()
}, 30_000)
afterAll(() => on.close())
beforeEach(() => on.begin())
afterEach(() => expect(on.stage.platform.violations).toEqual([]))

describe('a choice', () => {
  it.each([
    ['was never offered', '.p', ['osprey']],
    ['is offered beside one that never was', '.p', ['alias-1', 'osprey']],
    ['is more than may be chosen', '.p', ['alias-1', 'alias-2', 'alias-3']],
    ['comes twice', '.p', ['alias-1', 'alias-1']],
    ['is none at all', '.p', []],
    ['stands in the next list', '.p', ['alias-27']],
    ['stands in a list that is not there', '.p7', ['alias-1']],
    ['is of a button', '.0', ['alias-1']],
    ['is of a form', '.f1', ['alias-1']],
    ['is of nothing of ours', '.x', ['alias-1']],
  ])('that %s is not taken', async (_, part, chosen) => {
    await on.refused(on.choose(on.toHeron.id + part, chosen))
  })

  it('is taken from each of the lists', async () => {
    await on.forge(on.choose(`${on.toHeron.id}.p`, ['alias-1', 'alias-2']))
    await on.forge(on.choose(`${on.toHeron.id}.p1`, ['alias-27']))
    expect(on.stage.heard).toMatchObject([{ values: ['alias-1', 'alias-2'] }, { values: ['alias-27'] }])
  })
})

describe('a press', () => {
  it.each([
    ['of a list', '.p'],
    ['of a form', '.f1'],
    ['of a button that the message does not have', '.7'],
    ['of nothing of ours', ''],
    ['with something behind the id', '.0\n'],
  ])('%s is not taken', async (_, part) => {
    await on.refused(on.press(on.toHeron.id + part))
  })

  it('of a message that was never written is not taken', async () => {
    await on.refused(on.press('never-written.0'))
  })

  it.each([0, 1])('on a message to somebody else opens and does nothing (button %i)', async (button) => {
    const { id: user } = on.stage.coach
    await on.refused({ ...on.press(`${on.toHeron.id}.${button}`), user })
  })

  it.each([0, 1])('in another channel than that of the message does nothing (button %i)', async (button) => {
    await on.refused(on.press(`${on.toCoaches.id}.${button}`, { ...on.coaches, channelId: on.elsewhere }))
    on.posted.length = 0
    await on.refused(on.press(`${on.toCoaches.id}.${button}`, on.direct))
  })

  it('by somebody who is in the channel and not in the server counts without any role', async () => {
    const { id: user } = on.stage.platform.addUser('osprey')
    await on.forge({ ...on.press(`${on.toCoaches.id}.0`, on.coaches), user })
    expect(on.stage.heard).toMatchObject([
      { actor: { user, roles: [], keeper: false, guild: on.stage.guildId } },
    ])
  })
})

describe('what is sent once more under its id', () => {
  it('changes nothing of what was answered', async () => {
    on.stage.respond = () => answer('Noted')
    await on.forge(on.press(`${on.toCoaches.id}.0`, on.coaches))
    on.stage.respond = () => null
    on.stage.platform.forger.again((on.stage.heard[0] as { id: string }).id)
    await on.stage.settled()
    expect(on.stage.heard).toHaveLength(2)
    expect(on.posted.map(({ content }) => content)).toEqual(['Noted'])
    on.posted.length = 0
    on.stage.respond = () => answer('Your drills')
    await on.stage.heron.slash('dm', 'today')
    await on.stage.settled()
    on.stage.respond = () => null
    on.stage.platform.forger.again((on.stage.heard.at(-1) as { id: string }).id)
    await on.stage.settled()
    expect(on.stage.heard).toHaveLength(4)
    expect(on.posted.map(({ content }) => content)).toEqual(['Your drills'])
  })
})

describe('what is no person', () => {
  const command = { id: '1', name: 'today', type: 1, options: [] }

  it.each([
    ['a bot', () => on.stage.platform.appId],
    ['a webhook', () => '1477900763136000003'],
  ])('%s is not heard, whatever it sends', async (_, user) => {
    for (const sent of [
      on.press(`${on.toCoaches.id}.0`, on.coaches),
      on.press(`${on.toCoaches.id}.1`, on.coaches),
      on.choose(`${on.toHeron.id}.p`, ['alias-1']),
      on.send(`${on.toCoaches.id}.f1`, [], on.coaches),
      { type: InteractionType.command, channelId: on.coaches.channelId, data: command },
      { type: InteractionType.autocomplete, channelId: on.coaches.channelId, data: command },
    ])
      await on.forge({ ...sent, user: user() })
    expect([on.stage.heard, on.posted]).toEqual([[], []])
  })
})
