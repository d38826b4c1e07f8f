import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { commands as all } from '../../commands/index.ts'
import type { Actor } from '../../src/engine/event.ts'
import { textsFor } from '../../src/text/index.ts'
import { COACH, openPractice, type Practice, person } from './practice.ts'

const { access, client, coach, decisions } = textsFor('en')
const PLOVER: Actor = { ...COACH, user: 'user-plover', roles: [] }
const ELSEWHERE: Actor = { ...COACH, user: 'coach-9', guild: 'guild-2' }
const OPTIONS = {
  client: 'heron',
  do: 'hold',
  by: 'surgeon',
  on: '2026-03-02',
  to: 'coach-2',
  text: 'a word',
  sessions: 2,
  ladders: 'extension:1',
  sure: true,
  from: '2026-03-02',
  until: '2026-03-03',
}
const PATHS = [
  'roster',
  'client-record',
  'digest',
  'decide',
  'why',
  'note',
  'noted',
  'take-up',
  'hand-over',
  'clear',
  'spoken-with',
  'resume-client',
]
const ABOUT_A_CLIENT = PATHS.filter((name) => all.find((one) => one.name === name)?.who === 'coach')

let practice: Practice
beforeEach(async () => {
  practice = await openPractice('2026-03-02')
  await practice.enrol('heron')
  await practice.until('2026-03-02', '09:00')
})
afterEach(() => practice.close())

/** All that is kept of the client, and how much was sent: the same before and after a refusal. */
async function everything(): Promise<string> {
  return practice.store.store.transaction(async (tx) => {
    const { client: row } = (await tx.clientByRef('guild-1', 'heron'))!
    const kept = [await tx.wholeClient(row.id), await tx.told(row.id), await tx.notes(row.id)]
    return JSON.stringify([kept, practice.sent.length, await tx.practiceOfGuild('guild-2')])
  })
}

async function untouched(act: () => Promise<unknown>): Promise<void> {
  const before = await everything()
  await act()
  expect(await everything()).toBe(before)
}

describe('/help', () => {
  it('names every command of the coach’s side to a coach, in the server and before there is a client', async () => {
    const { text } = (await practice.command('help', {}, COACH))!
    for (const { name } of all.filter(({ who }) => who !== 'client')) expect(text).toContain(`/${name}`)
    for (const elsewhere of [PLOVER, ELSEWHERE, { ...COACH, guild: null }])
      expect((await practice.command('help', {}, elsewhere))?.text).toBe(client.stranger)
  })
})

describe('a command of the coach’s side', () => {
  it.each(PATHS)(
    '/%s is refused without the coach role, in private, and in a server not set up',
    async (name) => {
      await untouched(async () => {
        expect((await practice.command(name, OPTIONS, PLOVER))?.text).toBe(access.onlyCoach)
        expect((await practice.command(name, OPTIONS, person('heron')))?.text).toBe(access.onlyInServer)
        expect((await practice.command(name, OPTIONS, ELSEWHERE))?.text).toBe(access.setUpFirst)
      })
    },
  )

  it.each(ABOUT_A_CLIENT)('/%s does not reach a client of another practice', async (name) => {
    await practice.command('set-up', { 'coach-role': 'role-coach', zone: 'UTC' }, ELSEWHERE)
    await untouched(async () => {
      const answer = await practice.command(name, OPTIONS, ELSEWHERE)
      expect(answer?.text).toBe(coach.unknownClient('heron', []))
    })
  })

  it.each(ABOUT_A_CLIENT)('/%s says which aliases there are where one is not known', async (name) => {
    await untouched(async () => {
      const answer = await practice.command(name, { ...OPTIONS, client: 'osprey' })
      expect(answer?.text).toBe(coach.unknownClient('osprey', ['heron']))
    })
  })
})

describe('a button of the coach’s side', () => {
  it.each(['hold', 'why', 'record'])(
    '“%s” is nothing to somebody without the role or of another practice',
    async (name) => {
      await practice.until('2026-03-08', '18:01')
      await practice.command('set-up', { 'coach-role': 'role-coach', zone: 'UTC' }, ELSEWHERE)
      await untouched(async () => {
        for (const by of [PLOVER, ELSEWHERE, person('heron')])
          expect(await practice.coachPress('heron', name, by)).toMatchObject({
            text: client.notYours,
            privately: true,
          })
      })
    },
  )

  it('“take up” and its outcomes are nothing to them either', async () => {
    await practice.say('heron', 'numb between my legs since this morning')
    await untouched(async () => {
      for (const by of [PLOVER, ELSEWHERE])
        expect((await practice.coachPress('heron', 'take-up', by))?.text).toBe(client.notYours)
    })
    await practice.coachPress('heron', 'take-up')
    await untouched(async () => {
      expect((await practice.coachPress('heron', 'outcome-reached', PLOVER))?.text).toBe(client.notYours)
    })
  })

  it('a form with a reason is nothing to them, nor is a form without a decision', async () => {
    await practice.until('2026-03-08', '18:01')
    await untouched(async () => {
      const filled = { decision: 'stop', reason: 'because' }
      for (const by of [PLOVER, ELSEWHERE])
        expect((await practice.coachFill('heron', 'with-reason', filled, by))?.text).toBe(client.notYours)
      const none = await practice.coachFill('heron', 'with-reason', { reason: 'because' })
      expect(none?.text).toBe(decisions.noReason)
    })
  })

  it('a client’s own button is nothing to the coach or another client', async () => {
    await untouched(async () => {
      for (const by of [COACH, person('dipper')])
        expect((await practice.press('heron', 'none-of-these', [], by))?.text).toBe(client.notYours)
    })
  })

  it('of a message that is gone does nothing, and says so', async () => {
    await untouched(async () => {
      const press = {
        kind: 'choice',
        outbox: 'gone',
        act: { do: 'decide' },
        label: 'Hold',
        values: [],
      } as const
      const { answer } = await practice.bot.handle({ ...press, id: 'press-gone', actor: COACH })
      expect(answer?.text).toBe(client.notYours)
    })
  })

  it('heard twice counts once; pressed again it says that it is decided', async () => {
    await practice.until('2026-03-08', '18:01')
    const card = practice.sent.findLast((one) => one.message.kind === 'digest')!
    const { act, label } = card.message.buttons.find(({ name }) => name === 'hold')!
    const press = { kind: 'choice', outbox: card.id, act, label, values: [], actor: COACH } as const
    await practice.bot.handle({ ...press, id: 'press-1' })
    await untouched(async () => {
      expect((await practice.bot.handle({ ...press, id: 'press-1' })).answer).toBeNull()
      const again = await practice.bot.handle({ ...press, id: 'press-2' })
      expect(again.answer?.text).toContain('has decided for **heron** already')
    })
  })
})
