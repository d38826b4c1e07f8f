import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { addDays } from '../../src/domain/day.ts'
import { DRILLS } from '../../src/text/en/drills.ts'
import { textsFor } from '../../src/text/index.ts'
import { COACH, openPractice, type Practice } from './practice.ts'
import { namesOf, pressShown } from './shown.ts'

const { client, coach, commands, decided, decisions } = textsFor('en')
const WREN = { ...COACH, user: 'coach-2' }
let practice: Practice
beforeEach(async () => {
  practice = await openPractice('2026-03-02')
  await practice.enrol('heron')
})
afterEach(() => practice.close())

const namesDrill = (text: string): boolean =>
  Object.values(DRILLS).some(({ name }) => text.toLowerCase().includes(name.toLowerCase()))

/** Days of good replies, so that the first rung's gate is met and an advance proposed on the sixth. */
async function readyToAdvance(): Promise<void> {
  for (let n = 0; n < 6; n++) {
    await practice.until(addDays('2026-03-02', n), '08:30')
    await practice.say('heron', '2 calf 4, no signs')
    const last = practice.to('heron').at(-1)
    if (last?.asks === 'comfort') await practice.press('heron', 'comfort-yes')
  }
}

describe('a decision with a reason', () => {
  beforeEach(async () => {
    await practice.until('2026-03-08', '18:01')
  })
  const form = (filled: Record<string, string>) => practice.coachFill('heron', 'with-reason', filled)

  it('is told to the client in plain words, without the reason where it is not to be shown', async () => {
    const answer = await form({ decision: 'hold', reason: 'races on Sunday', show: 'no' })
    expect(answer?.text).toContain('Reason: races on Sunday (not shown to the client)')
    expect(practice.to('heron').at(-1)).toMatchObject({ kind: 'decision', text: client.held })
    expect((await practice.file('heron')).decisions.at(-1)).toMatchObject({
      decision: 'hold',
      reason: 'races on Sunday',
      by: '<@coach-1>',
    })
  })

  it('keeps the reason to itself where nothing was chosen', async () => {
    await form({ decision: 'hold', reason: 'races on Sunday' })
    expect(practice.to('heron').at(-1)?.text).toBe(client.held)
  })

  it('tells the reason word for word where the coach shows it', async () => {
    const answer = await form({ decision: 'refer', reason: 'to be on the safe path', show: 'yes' })
    expect(answer?.text).toContain('told, with the reason')
    expect(practice.to('heron').at(-1)?.text).toBe(
      `${client.referred}\n${decided.reason('to be on the safe path')}`,
    )
  })

  it('is taken by command as well', async () => {
    await practice.command('decide', {
      client: 'heron',
      do: 'hold',
      reason: 'busy week',
      'show-reason': true,
    })
    expect(practice.to('heron').at(-1)?.text).toContain(decided.reason('busy week'))
  })
})

describe('a stop by the coach', () => {
  it('rests every ladder until the coach decides again, and names no exercise meanwhile', async () => {
    await practice.until('2026-03-02', '09:00')
    await practice.say('heron', '2 calf 4, no signs')
    const answer = await practice.command('decide', { client: 'heron', do: 'stop', reason: 'a fall' })
    expect(answer?.text).toContain('stop all drills')
    expect(practice.to('heron').at(-1)?.text).toBe(decided.stopped)
    expect(await practice.status('heron')).toBe('active')
    const since = practice.to('heron').length
    for (let n = 1; n <= 8; n++) {
      await practice.until(addDays('2026-03-02', n), '08:30')
      await practice.say('heron', `0 ${n < 5 ? 'calf' : 'foot'} 4, no signs`)
    }
    const meanwhile = practice.to('heron').slice(since)
    expect(meanwhile.some((message) => message.kind === 'prompt')).toBe(true)
    expect(meanwhile.filter((m) => m.drills.length > 0 || namesDrill(m.text))).toEqual([])
    expect(meanwhile.find((m) => m.kind === 'prompt')?.text).toContain(decided.stoppedWork)
    expect((await practice.command('today', {}, 'heron'))?.text).toBe(decided.stoppedWork)
    // no session was planned, so none was missed
    expect((await practice.file('heron')).flags.some((flag) => flag.rule === 'adherence')).toBe(false)
  })

  it('ends with a hold, which starts the drills again where they were', async () => {
    await practice.command('decide', { client: 'heron', do: 'stop' })
    await practice.until('2026-03-03', '07:00')
    const answer = await practice.command('decide', { client: 'heron', do: 'hold' })
    expect(answer?.text).toContain('The drills start again.')
    expect(practice.to('heron').at(-1)?.text).toBe(decided.startedAgain)
    await practice.until('2026-03-03', '08:01')
    expect(practice.to('heron').at(-1)).toMatchObject({ kind: 'prompt', drills: ['extension:1', 'glide:1'] })
  })

  it('goes on through a referral, which offers no drills either', async () => {
    await practice.command('decide', { client: 'heron', do: 'stop' })
    await practice.command('decide', { client: 'heron', do: 'refer' })
    expect(practice.to('heron').at(-1)?.text).toBe(decided.referredStopped)
    expect((await practice.command('today', {}, 'heron'))?.drills).toEqual([])
  })

  it('is not taken twice, and its button then says how to start again', async () => {
    await practice.command('decide', { client: 'heron', do: 'stop' })
    const again = await practice.command('decide', { client: 'heron', do: 'stop' })
    expect(again?.text).toBe(decisions.stoppedAlready('heron'))
    await practice.until('2026-03-08', '18:01')
    const card = practice.toCoach().findLast((message) => message.kind === 'digest')!
    expect(card.buttons.find((button) => button.name === 'hold')?.label).toBe(decisions.startAgain)
    expect(card.buttons.some((button) => button.name === 'stop')).toBe(false)
  })

  it('ends with a new plan', async () => {
    await practice.command('decide', { client: 'heron', do: 'stop' })
    await practice.command('plan', { client: 'heron', sessions: 2, ladders: 'extension:1' })
    await practice.until('2026-03-03', '08:01')
    expect(practice.to('heron').findLast((m) => m.kind === 'prompt')?.drills).toEqual(['extension:1'])
  })
})

describe('a decision on facts that are no longer the latest', () => {
  it.each(['hold', 'ease-back', 'refer', 'stop'])('says so before it acts: %s', async (name) => {
    await practice.command('plan', { client: 'heron', sessions: 2, ladders: 'extension:2 glide:1' })
    await practice.until('2026-03-08', '18:01')
    await practice.say('heron', '2 knee 3, no signs')
    const before = practice.to('heron').length
    const answer = await practice.coachPress('heron', name)
    expect(answer?.text).toContain(
      'A newer reply of **heron** has come since (Sun 8 Mar: 2 sessions, knee, pain 3)',
    )
    expect(answer?.text).toContain('Nothing was changed yet')
    expect(practice.to('heron')).toHaveLength(before)
    expect((await practice.file('heron')).decisions).toEqual([])
    const done = await pressShown(practice, answer, 'all-the-same', { by: WREN })
    expect(done?.text).toContain('by <@coach-2>')
    expect((await practice.file('heron')).decisions).toMatchObject([{ decision: name, by: '<@coach-2>' }])
  })

  it('says so again where yet another reply has come', async () => {
    await practice.until('2026-03-08', '18:01')
    await practice.say('heron', '2 knee 3, no signs')
    const first = await practice.coachPress('heron', 'hold')
    await practice.wait(1)
    await practice.say('heron', '2 foot 6, no signs')
    const second = await pressShown(practice, first, 'all-the-same')
    expect(second?.text).toContain('foot, pain 6')
    expect((await practice.file('heron')).decisions).toEqual([])
    expect(namesOf(second)[0]).toBe('all-the-same')
  })

  it('keeps the reason given before', async () => {
    await practice.until('2026-03-08', '18:01')
    await practice.say('heron', '2 knee 3, no signs')
    const answer = await practice.coachFill('heron', 'with-reason', {
      decision: 'hold',
      reason: 'busy week',
      show: 'yes',
    })
    await pressShown(practice, answer, 'all-the-same')
    expect(practice.to('heron').at(-1)?.text).toContain(decided.reason('busy week'))
  })

  it('acts at once where nothing new has come', async () => {
    await readyToAdvance()
    await practice.until('2026-03-08', '18:01')
    const answer = await practice.coachPress('heron', 'advance')
    expect(answer?.text).toContain('Decided for **heron**: advance on')
    expect(answer?.choices).toBeUndefined()
  })
})

describe('two coaches at once', () => {
  it('by button: one wins, the other is told by name and nothing is changed twice', async () => {
    await practice.until('2026-03-08', '18:01')
    await practice.coachPress('heron', 'hold')
    const told = practice.to('heron').length
    const second = await practice.coachPress('heron', 'refer', WREN)
    expect(second).toMatchObject({ privately: true })
    expect(second?.text).toContain('<@coach-1> has decided for **heron** already, Sun 8 Mar 18:01: hold')
    expect(practice.to('heron')).toHaveLength(told)
    expect((await practice.file('heron')).decisions).toHaveLength(1)
    await pressShown(practice, second, 'all-the-same', { by: WREN })
    expect((await practice.file('heron')).decisions.at(-1)).toMatchObject({
      decision: 'refer',
      by: '<@coach-2>',
    })
  })

  it('by command too: the same step is not taken twice', async () => {
    const step = { client: 'heron', do: 'advance', ladder: 'extension' }
    await practice.command('decide', step)
    const second = await practice.command('decide', step, WREN)
    expect(second?.text).toContain('<@coach-1> has decided for **heron** already')
    expect((await practice.rungs('heron', '2026-03-03')).extension).toBe(2)
  })
})

describe('a clearance', () => {
  it('is recorded from a form under the message, with a reason, or refused with the mend', async () => {
    await practice.until('2026-03-08', '09:00')
    await practice.say('heron', 'numb between my legs since this morning')
    await practice.until('2026-03-08', '18:01')
    const wrong = await practice.coachFill('heron', 'clear', { by: 'surgeon', on: 'today' })
    expect(wrong).toMatchObject({ privately: true, text: commands.badDay('today') })
    expect(await practice.status('heron')).toBe('locked')
    const early = await practice.coachFill('heron', 'clear', { by: 'surgeon', on: '2026-03-01' })
    expect(early?.text).toBe(coach.clearDate('2026-03-08', '2026-03-08'))
    const done = await practice.coachFill('heron', 'clear', {
      by: 'surgeon',
      on: '2026-03-08',
      reason: 'letter seen',
    })
    expect(done?.text).toContain(commands.cleared('heron', false))
    expect(await practice.status('heron')).toBe('active')
    expect((await practice.file('heron')).decisions.at(-1)).toMatchObject({
      decision: 'clear',
      reason: 'surgeon, 2026-03-08: letter seen',
    })
  })

  it('does not start drills that the coach had stopped for a reason of their own', async () => {
    await practice.command('decide', { client: 'heron', do: 'stop' })
    await practice.until('2026-03-02', '09:00')
    await practice.say('heron', 'numb between my legs since this morning')
    const done = await practice.command('clear', { client: 'heron', by: 'surgeon', on: '2026-03-02' })
    expect(done?.text).toContain(decisions.stoppedAlready('heron'))
    expect((await practice.command('today', {}, 'heron'))?.drills).toEqual([])
  })
})
