import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { COACH, openPractice, type Practice, person } from './practice.ts'

let practice: Practice
const open = async (settings = {}): Promise<void> => {
  practice = await openPractice('2026-03-02', settings)
  await practice.enrol('heron')
  await practice.until('2026-03-02', '09:00')
}
beforeEach(() => open())
afterEach(() => practice.close())

const last = () => practice.to('heron').at(-1)!
const answerForm = async (text: string, by = COACH) => {
  const asked = practice.sent.findLast((one) => one.message.buttons.some(({ name }) => name === 'answer'))!
  const { act } = asked.message.buttons.find(({ name }) => name === 'answer')!
  const event = {
    kind: 'form',
    id: `form-${text}-${by.user}`,
    actor: by,
    outbox: asked.id,
    act,
    filled: { text },
  }
  return (await practice.bot.handle(event as never)).answer
}

describe('a question of a client', () => {
  it('goes to the coach’s channel, and the answer comes back by the form; the first counts', async () => {
    await practice.say('heron', 'should I use two pillows for the first drill?')
    expect(practice.toCoach().at(-1)?.text).toContain('two pillows')
    expect((await answerForm('not for heron', person('dipper')))?.text).toContain('not for you')
    expect((await answerForm('One is enough.'))?.text).toMatch(/two pillows[\s\S]*Answered by <@coach-1>/)
    expect(last().text).toMatch(/You asked: “should I use two[\s\S]*Your coach answers: One is enough\./)
    const count = practice.to('heron').length
    expect((await answerForm('Two.', { ...COACH, user: 'coach-2' }))?.text).toContain('coach-1> has answered')
    expect(practice.to('heron')).toHaveLength(count)
    expect((await practice.file('heron')).questions).toMatchObject([
      { answer: 'One is enough.', answeredBy: '<@coach-1>' },
    ])
  })

  it('changed before it is answered stays one question; after that it is a new one', async () => {
    await practice.say('heron', 'should I use two pillows for the first drill?', { id: '100' })
    await practice.say('heron', 'should I use three pillows for the first drill?', {
      id: '100:1',
      edits: '100',
    })
    expect(practice.toCoach().at(-1)?.text).toMatch(/puts the question differently.*three pillows/)
    expect((await practice.file('heron')).questions.map(({ words }) => words)).toEqual([
      'should I use three pillows for the first drill?',
    ])
    await answerForm('One is enough.')
    await practice.say('heron', 'should I use four pillows for the first drill?', {
      id: '100:2',
      edits: '100',
    })
    expect((await practice.file('heron')).questions).toHaveLength(2)
  })

  it('is listed until it is answered, by the command too', async () => {
    expect((await practice.command('questions'))?.text).toContain('No question')
    await practice.say('heron', 'should I use two pillows for the first drill?')
    await practice.say('heron', 'and may I swim?')
    expect((await practice.command('questions'))?.text).toMatch(/two pillows[\s\S]*swim/)
    expect((await practice.command('answer', { client: 'heron', text: 'One.' }))?.text).toContain('Answered')
    expect(last().text).toContain('two pillows')
    expect((await practice.command('questions'))?.text).not.toContain('pillows')
    await practice.command('answer', { client: 'heron', text: 'Yes, gently.' })
    await practice.command('answer', { client: 'heron', text: 'See you on Sunday.' })
    expect(last().text).toBe('Your coach writes: See you on Sunday.')
  })

  it('is answered with care first while an urgent sign is open, and the coach is told so', async () => {
    await practice.say('heron', 'how much may I lift?')
    await practice.say('heron', 'numb between my legs since this morning')
    for (const text of ['You can lift 20 kg', 'and take it slowly']) {
      expect((await practice.command('answer', { client: 'heron', text }))?.text).toContain(
        'urgent sign is open',
      )
      expect(last().text).toMatch(new RegExp(`${text}[\\s\\S]*still stopped. Please get care`))
    }
  })

  it('is named in the roll-call once it has waited two days', async () => {
    const waits = () =>
      practice.toCoach().some((one) => one.kind === 'roll-call' && one.text.includes('without an answer'))
    await practice.until('2026-03-07', '12:00')
    await practice.say('heron', 'may I swim?')
    await practice.until('2026-03-08', '18:30')
    expect(waits()).toBe(false)
    await practice.until('2026-03-15', '18:30')
    expect(waits()).toBe(true)
  })

  it('stays out of the channel where the practice does not quote', async () => {
    await practice.close()
    await open({ quote: false })
    await practice.say('heron', 'may I swim?')
    expect(practice.toCoach().some((message) => message.text.includes('swim'))).toBe(false)
    expect((await practice.command('questions'))?.text).toContain('swim')
  })
})

describe('cover and moves', () => {
  const SIGN = "can't pee since this morning"

  it('alerts call the cover first in those days, and the coach again after them', async () => {
    const wish = { from: '2026-03-02', until: '2026-03-09', by: 'coach-2' }
    expect((await practice.command('cover', wish))?.text).toContain('<@coach-2> covers for <@coach-1>')
    await practice.say('heron', SIGN)
    expect(practice.toAlerts().at(-1)?.mentions).toEqual({ roles: [], users: ['coach-2'] })
    await practice.enrol('dipper')
    await practice.until('2026-03-10', '09:00')
    await practice.say('dipper', SIGN)
    expect(practice.toAlerts().findLast((one) => one.kind === 'alert')?.mentions.users).toEqual(['coach-1'])
  })

  it('refuses days that cannot be; oneself ends it', async () => {
    const cover = async (wish: Record<string, string>) => (await practice.command('cover', wish))?.text
    expect(await cover({ from: 'Monday', until: '2026-03-09', by: 'coach-2' })).toContain('no date')
    expect(await cover({ from: '2026-03-09', until: '2026-03-08', by: 'coach-2' })).toContain('last day')
    expect(await cover({ from: '2026-02-01', until: '2026-02-08', by: 'coach-2' })).toContain('past')
    expect(await cover({ from: '2026-03-02', until: '2026-03-08', by: 'coach-1' })).toContain('You are back')
    expect(await cover({ from: '2026-03-02', by: 'coach-2' })).toContain('needs all three')
  })

  it('are listed, those of today and later', async () => {
    const listed = async () => (await practice.command('cover'))?.text
    expect(await listed()).toContain('Nobody stands in')
    await practice.command('cover', { from: '2026-03-02', until: '2026-03-09', by: 'coach-2' })
    expect(await listed()).toContain('• <@coach-2> for <@coach-1>, Mon 2 Mar to Mon 9 Mar')
    await practice.until('2026-03-10', '09:00')
    expect(await listed()).toContain('Nobody stands in')
  })

  it('a client moved to another coach is told, and alerts call the new one', async () => {
    const answer = await practice.command('move-client', { client: 'heron', to: 'coach-2' })
    expect(answer?.text).toContain('with <@coach-2> from now on')
    expect(last().text).toContain('another coach')
    expect(practice.toCoach().at(-1)?.mentions.users).toEqual(['coach-2'])
    await practice.say('heron', SIGN)
    expect(practice.toAlerts().at(-1)?.mentions.users).toEqual(['coach-2'])
    expect((await practice.command('move-client', { client: 'heron', to: 'coach-2' }))?.text).toContain(
      'already',
    )
  })
})
