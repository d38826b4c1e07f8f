import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { addDays, daysFrom } from '../../src/domain/day.ts'
import { openPractice, type Practice } from './practice.ts'

let practice: Practice
beforeEach(async () => {
  practice = await openPractice('2026-03-02')
})
afterEach(() => practice.close())

const START = '2026-03-02'
const dayNo = (n: number): string => addDays(START, n - 1)
/** The same reply at half past eight on every day from one to another, all signs denied. */
async function reply(first: number, last: number, words: string, client = 'heron'): Promise<void> {
  for (const day of daysFrom(dayNo(first), dayNo(last))) {
    await practice.until(day, '08:30')
    await practice.say(client, `${words}, no signs`)
  }
}
const kinds = (client = 'heron') => practice.to(client).map((message) => message.kind)
const count = (kind: string, client = 'heron') => kinds(client).filter((one) => one === kind).length
const coach = (kind: string) => practice.toCoach().filter((message) => message.kind === kind)

describe('silence', () => {
  beforeEach(() => practice.enrol('heron', { off: 'Wed' }))

  it('brings a nudge after 3 days, the coach’s notice after 5, a pause after 14; any check-in ends it a rung lower', async () => {
    await practice.command('plan', {
      client: 'heron',
      sessions: 2,
      ladders: 'extension:3 glide:1',
      anyway: true,
    })
    await reply(1, 1, '2 calf 4')
    await practice.until(dayNo(4), '09:00')
    expect(count('nudge')).toBe(0)
    await practice.until(dayNo(5), '09:00')
    expect(count('nudge')).toBe(1)
    await practice.until(dayNo(6), '09:00')
    expect(practice.toCoach().some((message) => message.text.includes('has not checked in'))).toBe(false)
    await practice.until(dayNo(7), '09:00')
    expect(practice.toCoach().some((message) => message.text.includes('has not checked in for 5 days'))).toBe(
      true,
    )
    await practice.until(dayNo(15), '09:00')
    expect(await practice.status('heron')).toBe('active')
    await practice.until(dayNo(16), '09:00')
    expect(await practice.status('heron')).toBe('paused')
    expect([count('nudge'), count('lapse'), coach('lapse').length]).toEqual([1, 1, 1])
    const prompts = count('prompt')
    await practice.until(dayNo(20), '09:00')
    expect(count('prompt')).toBe(prompts)
    const told = await practice.say('heron', '2 calf 4')
    expect(await practice.status('heron')).toBe('active')
    expect(await practice.rungs('heron')).toEqual({ extension: 2, glide: 1 })
    expect(told.map((message) => message.kind)).toEqual(['decision', 'notice', 'receipt'].sort())
    expect(told.some((message) => message.text.includes('easier'))).toBe(true)
    await practice.coachPress('heron', 'undo')
    expect(await practice.rungs('heron')).toEqual({ extension: 3, glide: 1 })
  })

  it('does not pause again on the morning after somebody came back from a long break', async () => {
    await practice.command('plan', { client: 'heron', sessions: 2, ladders: 'extension:3', anyway: true })
    await reply(1, 1, '2 calf 4')
    await practice.say('heron', 'take a break')
    expect(await practice.status('heron')).toBe('paused')
    await practice.until(dayNo(25), '10:00')
    expect(count('prompt')).toBe(1)
    await practice.say('heron', 'I am back')
    expect(await practice.rungs('heron')).toEqual({ extension: 2 })
    await practice.until(dayNo(26), '09:00')
    expect(practice.to('heron').at(-1)).toMatchObject({ kind: 'prompt', drills: ['extension:2'] })
    await practice.say('heron', '2 calf 4')
    expect(await practice.rungs('heron')).toEqual({ extension: 2 })
  })

  it('of six days lowers nothing', async () => {
    await practice.command('plan', { client: 'heron', sessions: 2, ladders: 'extension:3', anyway: true })
    await reply(1, 1, '2 calf 4')
    await reply(8, 8, '2 calf 4')
    expect(await practice.rungs('heron')).toEqual({ extension: 3 })
  })

  it('of seven days lowers once', async () => {
    await practice.command('plan', { client: 'heron', sessions: 2, ladders: 'extension:3', anyway: true })
    await reply(1, 1, '2 calf 4')
    await reply(9, 10, '2 calf 4')
    expect(await practice.rungs('heron')).toEqual({ extension: 2 })
  })

  it('is made up for where the bot was away on the morning of the notice', async () => {
    await reply(1, 1, '2 calf 4')
    practice.away(dayNo(8), '20:00')
    await practice.until(dayNo(9), '09:00')
    expect(practice.toCoach().filter((message) => message.text.includes('has not checked in'))).toHaveLength(
      1,
    )
  })

  it('has one reminder, and none where the day has its answer', async () => {
    await practice.enrol('dipper', { reminder: '19:00' })
    await practice.until(dayNo(1), '20:00')
    expect(count('reminder', 'dipper')).toBe(1)
    await reply(2, 2, '2 calf 4', 'dipper')
    await practice.until(dayNo(2), '20:00')
    expect(count('reminder', 'dipper')).toBe(1)
  })

  it('is no matter during a pause by the coach, which the coach ends', async () => {
    await practice.command('pause-client', { client: 'heron' })
    expect((await practice.command('pause-client', { client: 'heron' }))?.text).toContain('already')
    await practice.until(dayNo(20), '09:00')
    expect([count('prompt'), count('nudge'), count('lapse')]).toEqual([0, 0, 0])
    await practice.command('resume-client', { client: 'heron' })
    await practice.until(dayNo(21), '09:00')
    expect(practice.to('heron').at(-1)?.kind).toBe('prompt')
  })
})

describe('a rung whose gate is met', () => {
  beforeEach(() => practice.enrol('heron', {}, {}, 'extension:1'))

  it('asks for comfort when the rest holds, then proposes, and the coach’s yes is in force tomorrow', async () => {
    await reply(1, 4, '2 calf 4')
    expect(practice.to('heron').some((message) => message.asks === 'comfort')).toBe(false)
    await reply(5, 5, '2 calf 4')
    expect(practice.to('heron').at(-1)).toMatchObject({ kind: 'receipt', asks: 'comfort' })
    expect(coach('proposal')).toHaveLength(0)
    await practice.press('heron', 'comfort-yes')
    // a met gate waits for the weekly look, and the client hears nothing before the decision
    await practice.until(dayNo(7), '18:05')
    expect(coach('proposal')).toHaveLength(0)
    expect(count('decision')).toBe(0)
    expect(coach('digest')[0]!.text).toContain('Proposal: advance')
    expect(coach('digest')[0]!.buttons.map((button) => button.name)).toEqual([
      'advance',
      'hold',
      'ease-back',
      'refer',
      'stop',
      'with-reason',
      'why',
      'record',
    ])
    expect((await practice.coachPress('heron', 'why'))?.privately).toBe(true)
    await practice.coachPress('heron', 'advance')
    expect((await practice.rungs('heron')).extension).toBe(1)
    expect((await practice.rungs('heron', dayNo(8))).extension).toBe(2)
    expect(practice.to('heron').at(-1)).toMatchObject({ kind: 'decision', drills: ['extension:2'] })
    expect(practice.to('heron').at(-1)?.text).toContain('tomorrow')
    await practice.until(dayNo(8), '08:10')
    expect(practice.to('heron').at(-1)?.drills).toEqual(['extension:2'])
    expect((await practice.coachPress('heron', 'advance'))?.text).toContain('already')
    expect((await practice.rungs('heron', dayNo(10))).extension).toBe(2)
  })

  it('does not advance by a button whose facts are stale', async () => {
    await reply(1, 5, '2 calf 4')
    await practice.press('heron', 'comfort-yes')
    await practice.until(dayNo(7), '18:05')
    await reply(8, 9, '0 calf 8')
    const answer = await practice.coachPress('heron', 'advance')
    expect(answer?.text).toContain('newer reply')
    expect((await practice.rungs('heron', dayNo(11))).extension).toBe(1)
  })

  it('stays where comfort is denied', async () => {
    await reply(1, 5, '2 calf 4')
    await practice.say('heron', 'no')
    expect(coach('proposal')).toHaveLength(0)
    expect((await practice.file('heron')).checkIns.at(-1)?.comfort).toBe(false)
  })

  it('tells in plain words of each decision, and refuses what cannot be', async () => {
    await reply(1, 1, '2 calf 4')
    const decide = (what: string, ladder?: string) =>
      practice.command('decide', { client: 'heron', do: what, ...(ladder ? { ladder } : {}) })
    expect((await decide('ease-back', 'extension'))?.text).toContain('first rung')
    expect((await decide('advance', 'glide'))?.text).toContain('not in the plan')
    expect((await decide('advance', 'nonsense'))?.text).toContain('Name the ladder')
    await decide('hold')
    expect(practice.to('heron').at(-1)?.kind).toBe('decision')
    await decide('refer')
    expect(practice.to('heron').at(-1)?.text).toContain('clinician')
    const { decisions } = await practice.file('heron')
    expect(decisions.map((row) => row.decision)).toEqual(['hold', 'refer'])
  })
})

describe('symptoms that move out', () => {
  it('ease the ladder last advanced at once, tell both, and can be undone', async () => {
    await practice.enrol('heron', {}, {}, 'extension:2 glide:1')
    await reply(1, 14, '2 buttock 3')
    await practice.command('decide', { client: 'heron', do: 'advance', ladder: 'glide', anyway: true })
    await reply(15, 16, '2 buttock 3')
    expect((await practice.rungs('heron')).glide).toBe(2)
    await reply(17, 18, '2 foot 4')
    expect((await practice.rungs('heron')).glide).toBe(1)
    const eased = practice
      .to('heron')
      .filter((message) => message.text.includes('further down than is usual'))
    expect(eased).toHaveLength(1)
    expect(eased[0]!.drills).toEqual(['glide:1'])
    expect(coach('proposal').some((message) => message.text.includes('safer move'))).toBe(true)
    await practice.coachPress('heron', 'undo')
    expect((await practice.rungs('heron')).glide).toBe(2)
    expect((await practice.coachPress('heron', 'undo'))?.text).toContain('nothing left')
  })

  it('rest a ladder that stands on its first rung, undone by the coach, and all but settle where it is no nearer after 3 answers', async () => {
    await practice.enrol('heron', {}, {}, 'settle:1 extension:1 glide:1')
    await reply(1, 14, '2 buttock 3')
    await reply(15, 16, '2 foot 3')
    const resting = async () =>
      (await practice.file('heron')).holds
        .filter((hold) => hold.kind === 'rest' && hold.endedAt === null)
        .map((hold) => hold.ladder)
        .sort()
    expect(await resting()).toEqual(['glide'])
    await practice.until(dayNo(17), '08:10')
    expect(practice.to('heron').at(-1)?.drills).toEqual(['settle:1', 'extension:1'])
    await reply(17, 19, '2 foot 3')
    expect(await resting()).toEqual(['extension', 'glide'])
    await practice.until(dayNo(20), '08:10')
    expect(practice.to('heron').at(-1)?.drills).toEqual(['settle:1'])
    await practice.coachPress('heron', 'undo')
    expect(await resting()).toEqual(['glide'])
  })

  it('name no exercise where a sign is being asked about at the same time', async () => {
    await practice.enrol('heron', {}, {}, 'extension:2 glide:2')
    await reply(1, 15, '2 buttock 3')
    await practice.until(dayNo(16), '08:30')
    await practice.say('heron', '2 foot 3')
    const before = practice.to('heron').length
    await practice.until(dayNo(17), '08:30')
    await practice.say('heron', '2 foot 3, worried about my bladder, not sure if it is weak')
    for (const message of practice
      .to('heron')
      .slice(before)
      .filter((one) => one.kind !== 'prompt')) {
      expect(message.drills).toEqual([])
      expect(message.text).not.toMatch(/slider|press-up|forearms/i)
    }
  })

  it('bring the question on signs at once', async () => {
    await practice.enrol('heron')
    await reply(1, 14, '2 buttock 3')
    await practice.until(dayNo(15), '08:30')
    await practice.say('heron', '2 foot 3')
    expect(practice.to('heron').at(-1)?.asks).toBe('signs')
  })
})

describe('what is asked beside', () => {
  it('what gets in the way: once an episode, told to the coach', async () => {
    await practice.enrol('heron')
    await reply(1, 4, '0 calf 4')
    expect(practice.to('heron').at(-1)?.asks).toBe('barrier')
    await practice.say('heron', 'time')
    expect(practice.toCoach().at(-1)?.text).toContain('time')
    await reply(5, 8, '0 calf 4')
    expect(practice.to('heron').filter((message) => message.asks === 'barrier')).toHaveLength(1)
    await practice.until('2026-03-15', '19:00')
    expect(practice.toCoach().find((message) => message.kind === 'digest')?.text).toContain('Time')
  })

  it('whether a flare has settled: with the next prompt, and a no holds', async () => {
    await practice.enrol('heron')
    await reply(1, 13, '2 calf 2')
    await reply(14, 14, '2 calf 6')
    await practice.until(dayNo(15), '08:10')
    const prompt = practice.to('heron').at(-1)!
    expect(prompt).toMatchObject({ kind: 'prompt', asks: 'settled' })
    await practice.press('heron', 'settled-no')
    expect((await practice.file('heron')).checkIns.find((row) => row.day === dayNo(15))?.settled).toBe(false)
    expect(practice.toCoach().at(-1)?.kind).toBe('proposal')
    expect(practice.toCoach().at(-1)?.text).toContain('hold')
  })

  it('is answered in the words of the check-in too', async () => {
    await practice.enrol('heron')
    await reply(1, 13, '2 calf 2')
    await reply(14, 14, '2 calf 6')
    await practice.until(dayNo(15), '08:30')
    const told = await practice.say('heron', 'yes, 2 calf 3')
    expect(told.map((message) => message.kind)).toEqual(['receipt'])
    expect((await practice.file('heron')).checkIns.at(-1)).toMatchObject({
      settled: true,
      sessions: 2,
      pain: 3,
    })
  })

  it('says when to seek care where pain is 8 or more twice, and tells the coach', async () => {
    await practice.enrol('heron')
    await reply(1, 2, '2 calf 8')
    expect(practice.to('heron').some((message) => message.text.includes('two check-ins in a row'))).toBe(true)
    expect(coach('proposal')).toHaveLength(1)
  })
})

describe('the digest', () => {
  it('comes once a week, roll-call first, those who need the coach before the others', async () => {
    for (const client of ['avocet', 'heron', 'wren']) await practice.enrol(client)
    await reply(1, 1, '2 calf 4', 'avocet')
    for (const day of daysFrom(dayNo(1), dayNo(7)))
      for (const client of ['heron', 'wren']) {
        await practice.until(day, '08:30')
        await practice.say(client, `2 calf ${client === 'wren' ? 8 : 4}, no signs`)
      }
    await practice.until('2026-03-08', '18:30')
    const sent = practice.toCoach().filter((message) => ['digest', 'roll-call'].includes(message.kind))
    expect(sent.map((message) => message.about)).toEqual([null, 'wren', 'avocet', 'heron'])
    await practice.until('2026-03-15', '17:00')
    expect(coach('roll-call')).toHaveLength(1)
    await practice.until('2026-03-15', '18:30')
    expect(coach('roll-call')).toHaveLength(2)
  })

  it('is sent once where the bot was away for weeks', async () => {
    await practice.enrol('heron')
    practice.away('2026-04-01', '12:00')
    await practice.until('2026-04-01', '13:00')
    expect(coach('roll-call')).toHaveLength(1)
  })

  it('shows a client without a plan whose sign is open', async () => {
    await practice.enrol('heron', {}, { signs: ['bladder-change'] })
    await practice.until('2026-03-08', '18:30')
    expect(coach('roll-call')[0]?.text).toContain('heron')
  })

  it('proposes to refer after six weeks without a change that matters', async () => {
    await practice.enrol('heron', {}, { pain: ['4'] })
    await reply(1, 49, '2 calf 4')
    await practice.until('2026-04-19', '18:30')
    const card = coach('digest').at(-1)!
    expect(card.buttons[0]?.name).toBe('refer')
    await practice.coachPress('heron', 'refer')
    expect(practice.to('heron').at(-1)?.text).toContain('clinician')
  }, 60_000)
})

describe('two practices', () => {
  it('do not see each other', async () => {
    await practice.enrol('heron')
    const other = { user: 'coach-9', guild: 'guild-9', roles: ['role-9'], keeper: true }
    const send = (name: string, options: Record<string, string | boolean>) =>
      practice.bot.handle({
        kind: 'command',
        id: `other-${name}-${Object.values(options)[0] ?? ''}`,
        actor: other,
        name,
        options,
      })
    await send('set-up', { 'coach-role': 'role-9', 'coach-channel': 'channel-9' })
    expect((await send('client-record', { client: 'heron' })).answer?.text).toContain('no client')
    expect((await send('roster', {})).answer?.text).toContain('No clients')
    await practice.until('2026-03-02', '08:30')
    await practice.say('heron', "can't pee since this morning")
    expect(
      practice.sent.every(
        (one) => one.message.address.to === 'client' || one.message.address.channel !== 'channel-9',
      ),
    ).toBe(true)
    expect((await practice.coachPress('heron', 'take-up', other))?.text).toContain('not for you')
  })

  it('refuses to invite before there is a channel for the coach', async () => {
    const other = { user: 'coach-9', guild: 'guild-9', roles: ['role-9'], keeper: true }
    const send = (name: string, options: Record<string, string | boolean>) =>
      practice.bot.handle({ kind: 'command', id: `other-${name}`, actor: other, name, options })
    await send('set-up', { 'coach-role': 'role-9' })
    expect((await send('enrol', { person: 'user-x', alias: 'plover' })).answer?.text).toContain(
      'coach-channel',
    )
  })
})
