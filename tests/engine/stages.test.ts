import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { textsFor } from '../../src/text/index.ts'
import { COACH, openPractice, type Practice, person } from './practice.ts'

const { client } = textsFor('en')

let practice: Practice
beforeEach(async () => {
  practice = await openPractice('2026-03-02')
})
afterEach(() => practice.close())

const SIGN = "can't pee since this morning"
const outboxOf = (user: string) =>
  practice.store.store.transaction(async () => practice.sent.filter((one) => one.to === user))

describe('a sign written before the first yes', () => {
  it('gives the urgent message; the coach hears that it happened, not the words; the form asks again', async () => {
    await practice.invite('heron')
    const told = await practice.say('heron', SIGN)
    expect(told.map((message) => message.kind)).toEqual(['urgent', 'alert'])
    const alert = practice.toAlerts()[0]!
    expect(alert.text).not.toContain('pee')
    expect(alert.text).not.toContain('bladder')
    expect(await practice.status('heron')).toBe('invited')
    const file = await practice.file('heron')
    expect([file.checkIns, file.signs]).toEqual([[], []])
    expect(file.alerts).toHaveLength(1)
    await practice.press('heron', 'consent-yes')
    await practice.press('heron', 'sexual-yes')
    const form = practice.to('heron').at(-1)!.buttons[0]!.form!
    expect(form.fields[0]?.name).toBe('signs')
  })

  it('keeps nothing of words that were no answer', async () => {
    await practice.invite('heron')
    const told = await practice.say('heron', 'what is this?')
    expect(told.map((message) => message.asks)).toEqual(['consent'])
    const versions = await practice.store.store
      .transaction(async (tx) => (await tx.told((await practice.file('heron')).client.id)).versions)
      .catch(() => [])
    expect(versions).toEqual([])
  })

  it('takes yes and no in words too, and a no ends it', async () => {
    for (const [name, words] of Object.entries({
      heron: 'No, thank you',
      wren: 'no thanks',
      dipper: 'leave',
    })) {
      await practice.invite(name)
      await practice.say(name, words)
      expect(await practice.status(name)).toBe('left')
      expect(practice.toCoach().at(-1)?.text).toContain('said no')
    }
    await practice.invite('plover')
    expect((await practice.say('plover', 'no problem'))[0]?.text).toBe(client.consentUnclear)
  })
})

describe('a sign during the first questions', () => {
  beforeEach(async () => {
    await practice.invite('heron')
    await practice.press('heron', 'consent-yes')
    await practice.press('heron', 'sexual-yes')
  })

  it('in words locks and alerts, and no further question comes before the clearance', async () => {
    const told = await practice.say('heron', SIGN)
    expect(told.filter((m) => m.address.to === 'client').map((message) => message.kind)).toEqual(['urgent'])
    expect(await practice.status('heron')).toBe('locked')
    await practice.until('2026-03-03', '08:30')
    expect(practice.to('heron').at(-1)?.kind).toBe('follow-up')
    await practice.command('clear', { client: 'heron', by: 'surgeon', on: '2026-03-03' })
    expect(await practice.status('heron')).toBe('screening')
    expect(practice.to('heron').at(-1)?.kind).toBe('screening')
  })

  it('in the form locks and alerts, and no further part comes before the clearance', async () => {
    await practice.fill('heron', 'fill-in', {
      signs: ['bladder-change'],
      age: '41',
      onset: 'May',
      earlier: ['no'],
      seen: ['no'],
    })
    expect(practice.to('heron').at(-1)?.kind).toBe('urgent')
    expect(await practice.status('heron')).toBe('locked')
  })

  it('only hinted at is asked at once, and the questions go on after a no', async () => {
    const told = await practice.say('heron', 'worried about my bladder, not sure if it is weak')
    expect(told.map((message) => message.asks)).toEqual(['signs'])
    await practice.press('heron', 'no')
    await practice.fill('heron', 'fill-in', {
      signs: ['none'],
      age: '41',
      onset: 'May',
      earlier: ['no'],
      seen: ['no'],
    })
    expect(practice.to('heron').at(-1)).toMatchObject({ kind: 'screening', asks: 'screening:risks' })
  })

  it('end with “leave”, and a question or “help” is no answer to them', async () => {
    expect((await practice.say('heron', 'do I have to answer that?')).map(({ text }) => text)).toEqual([
      expect.stringContaining('do I have to answer that?'),
      client.questionPassedOn,
    ])
    expect((await practice.say('heron', 'help')).map(({ text }) => text)).toEqual([client.help])
    expect((await practice.say('heron', 'leave'))[0]?.text).toBe(client.left(30, false))
    expect(await practice.status('heron')).toBe('left')
  })

  it('refuses somebody under age, politely', async () => {
    await practice.fill('heron', 'fill-in', {
      signs: ['none'],
      age: '16',
      onset: 'May',
      earlier: ['no'],
      seen: ['no'],
    })
    expect(practice.to('heron').at(-1)?.text).toContain('18')
    expect(await practice.status('heron')).toBe('left')
  })

  it('tells somebody under age who ticks a sign to get care, and alerts', async () => {
    const answers = { age: '16', onset: 'May', earlier: ['no'], seen: ['no'] }
    const told = await practice.fill('heron', 'fill-in', { ...answers, signs: ['bladder-change'] })
    expect(told.map(({ kind }) => kind)).toEqual(['urgent', 'alert', 'notice', 'notice'])
    expect(await practice.status('heron')).toBe('left')
    expect((await practice.file('heron')).dues.filter(({ kind }) => kind === 'prompt')).toEqual([])
  })

  it('in a line of the form is no answer to that line: it is raised or asked back, and the line comes again', async () => {
    const answers = { signs: ['none'], age: '41', earlier: ['no'], seen: ['no'] }
    const told = await practice.fill('heron', 'fill-in', {
      ...answers,
      onset: 'May, something is off down there',
    })
    expect(told.map(({ asks }) => asks)).toEqual(['signs'])
    await practice.press('heron', 'no')
    const again = practice.to('heron').at(-1)!.buttons[0]!.form!
    expect(again.fields.map(({ name }) => name)).toEqual(['onset'])
    const urgent = await practice.fill('heron', 'fill-in', {
      onset: 'in May, and I cannot pee since this morning',
    })
    expect(urgent.map(({ kind }) => kind)).toEqual(['urgent', 'alert'])
  })

  it('does not read an empty choice as none of these', async () => {
    await practice.fill('heron', 'fill-in', {
      signs: [],
      age: '41',
      onset: 'May',
      earlier: ['no'],
      seen: ['no'],
    })
    expect(practice.to('heron').at(-1)?.asks).toBe('screening:signs')
  })
})

describe('the first questions in words', () => {
  const answer = (text: string) => practice.say('heron', text)
  beforeEach(async () => {
    await practice.invite('heron', { 'in-words': true })
    await answer('1')
    await answer('yes')
  })

  it('are asked one at a time and take numbers, labels and words', async () => {
    for (const text of [
      'none of these',
      '41',
      'about three weeks ago',
      '1',
      'yes',
      'no',
      'none',
      'calf',
      '6',
      'left',
      '2',
      'rowing 7, sitting 5',
      'deadlift',
    ])
      await answer(text)
    const file = await practice.file('heron')
    expect(file.client).toMatchObject({ stage: 'enrolled', side: 'left' })
    expect(file.screening?.answers).toMatchObject({
      age: 41,
      signs: [],
      reach: 'calf',
      pain: '6',
      eases: 'extension',
      activities: { rowing: 7, sitting: 5 },
    })
    for (const message of practice.to('heron')) expect([message.buttons, message.pick]).toEqual([[], null])
  })

  it('take a sign said in words where the list is asked', async () => {
    const told = await answer(SIGN)
    expect(told.map((message) => message.kind)).toContain('urgent')
  })

  it('take a new sign said in words where old trouble is asked', async () => {
    for (const text of ['none', '41', 'may', '1', 'yes', 'none']) await answer(text)
    const told = await answer('numb between my legs since yesterday')
    expect(told.map((message) => message.kind)).toContain('urgent')
  })

  it('take several numbers of a list', async () => {
    await answer('3 and 7')
    expect(await practice.status('heron')).toBe('locked')
    expect((await practice.file('heron')).signs).toHaveLength(2)
  })
})

describe('parked, paused, discharged, left, unknown', () => {
  it('parks on a risk answer until a clinician’s word is recorded, and then tells the plan', async () => {
    await practice.enrol('heron', {}, { risks: ['osteoporosis'] })
    expect(await practice.status('heron')).toBe('parked')
    expect(practice.to('heron').some((message) => message.drills.length > 0)).toBe(false)
    await practice.until('2026-03-04', '09:00')
    expect(practice.to('heron').some((message) => message.kind === 'prompt')).toBe(false)
    expect((await practice.command('today', {}, 'heron'))?.text).toContain('agree')
    expect(
      (await practice.command('decide', { client: 'heron', do: 'advance', ladder: 'glide' }))?.text,
    ).toContain('/release')
    const wish = { client: 'heron', sessions: 2, ladders: 'extension:1 glide:1' }
    expect((await practice.command('plan', wish))?.text).toMatch(/No plan .*\n.*parked.*\/release/)
    await practice.command('release', { client: 'heron', by: 'general practitioner', on: '2026-03-04' })
    expect(await practice.status('heron')).toBe('active')
    await practice.command('plan', wish)
    expect(practice.to('heron').at(-1)).toMatchObject({ kind: 'plan', drills: ['extension:1', 'glide:1'] })
    await practice.until('2026-03-05', '08:30')
    expect(practice.to('heron').at(-1)?.kind).toBe('prompt')
  })

  it('keeps lock, parking and pause apart: each ends by its own way', async () => {
    await practice.enrol('heron', {}, { risks: ['cancer'] })
    await practice.command('pause', {}, 'heron')
    await practice.say('heron', SIGN)
    expect(await practice.status('heron')).toBe('locked')
    await practice.command('clear', { client: 'heron', by: 'surgeon', on: '2026-03-02' })
    expect(await practice.status('heron')).toBe('parked')
    await practice.command('release', { client: 'heron', by: 'surgeon', on: '2026-03-02' })
    expect(await practice.status('heron')).toBe('paused')
    await practice.say('heron', 'I am back')
    expect(await practice.status('heron')).toBe('active')
  })

  it('answers, alerts and keeps a sign of somebody discharged, with its question and its follow-up', async () => {
    await practice.enrol('heron')
    await practice.command('discharge', { client: 'heron' })
    expect((await practice.say('heron', '2 calf 4'))[0]?.text).toContain('not in a plan')
    await practice.say('heron', 'worried about my bladder, not sure if it is weak')
    const told = await practice.say('heron', 'yes')
    expect(told.map((message) => message.kind)).toContain('urgent')
    expect(practice.toAlerts()).toHaveLength(1)
    expect((await practice.file('heron')).signs[0]?.state).toBe('open')
    await practice.until('2026-03-03', '08:30')
    expect(practice.to('heron').at(-1)?.kind).toBe('follow-up')
    await practice.command('clear', { client: 'heron', by: 'surgeon', on: '2026-03-03' })
    expect(await practice.status('heron')).toBe('discharged')
    const count = practice.to('heron').length
    await practice.until('2026-03-08', '08:30')
    expect(practice.to('heron')).toHaveLength(count)
  })

  it('names no exercise in the farewell while a sign is open', async () => {
    await practice.enrol('heron')
    await practice.say('heron', SIGN)
    await practice.command('discharge', { client: 'heron' })
    expect(practice.to('heron').at(-1)?.text).not.toMatch(/breathing/)
  })

  it('answers a sign of somebody who left, and neither keeps nor tells it', async () => {
    await practice.enrol('heron')
    await practice.say('heron', 'leave')
    const before = [practice.toCoach().length, practice.toAlerts().length]
    const told = await practice.say('heron', SIGN)
    expect(told.map((message) => message.kind)).toEqual(['urgent'])
    expect(told[0]!.text).not.toContain('does not know you')
    expect([practice.toCoach().length, practice.toAlerts().length]).toEqual(before)
    expect((await practice.file('heron')).signs).toEqual([])
  })

  it('tells the coach who is left with an open sign that it is open, and goes on alerting', async () => {
    await practice.enrol('heron')
    await practice.say('heron', SIGN)
    await practice.say('heron', 'leave')
    expect(practice.toCoach().at(-1)?.text).toContain('still open')
    await practice.wait(12)
    expect(practice.toAlerts().at(-1)?.kind).toBe('alert-repeat')
  })

  it('asks no more of who left while a sign was asked about: they hear what its silence sets off, and that nobody came', async () => {
    await practice.enrol('heron')
    await practice.say('heron', 'something is off down there')
    await practice.command('leave', {}, 'heron')
    expect(practice.to('heron').at(-1)?.text).toBe(client.left(365, true))
    expect(practice.toCoach().at(-1)?.text).toContain('no answer yet')
    const count = practice.to('heron').length
    await practice.wait(12)
    expect(
      practice
        .to('heron')
        .slice(count)
        .map(({ kind }) => kind),
    ).toEqual(['urgent'])
    expect(practice.toAlerts().at(-1)).toMatchObject({ kind: 'alert', about: 'heron' })
    await practice.wait(3 * 24 * 60)
    expect(
      practice
        .to('heron')
        .slice(count + 1)
        .map(({ text }) => text),
    ).toEqual([client.untaken])
    const dues = (await practice.file('heron')).dues.map(({ kind }) => kind)
    expect(dues).not.toContain('prompt')
  })

  it('answers a sign of somebody who left in another language than theirs, in that one', async () => {
    await practice.enrol('heron')
    await practice.say('heron', 'leave')
    const told = await practice.say('heron', 'todavía no puedo orinar')
    expect(told.map(({ text }) => text)).toEqual([textsFor('es').client.leftUrgent])
  })

  it('answers a sign in a form that was open when its client left, or was erased', async () => {
    await practice.invite('heron')
    await practice.press('heron', 'consent-yes')
    await practice.press('heron', 'sexual-yes')
    const open = practice.sent.findLast((one) => one.message.buttons.some(({ name }) => name === 'fill-in'))!
    await practice.say('heron', 'leave')
    const told = await practice.fill('heron', 'fill-in', { signs: ['bladder-change'] })
    expect(told.map(({ text }) => text)).toEqual([client.leftUrgent])
    expect((await practice.file('heron')).signs).toEqual([])
    await practice.command('erase-me', { sure: true }, 'heron')
    const sent = async (sign: string) => {
      const from = { id: `form-${sign}`, actor: person('heron'), outbox: open.id }
      const event = { kind: 'form', ...from, act: { do: 'screening' }, filled: { signs: [sign] } } as const
      return (await practice.bot.handle(event)).answer?.text
    }
    expect(await sent('bladder-change')).toBe(client.strangerUrgent)
    expect(await sent('weight-loss')).toBe(`${client.soonBefore}\n${client.notYours}`)
    expect(await sent('none')).toBe(client.notYours)
  })

  it('takes a sign in a form of first questions that are answered already', async () => {
    await practice.enrol('heron')
    const told = await practice.fill('heron', 'fill-in', { signs: ['bladder-change'] })
    expect(told.map(({ kind }) => kind)).toEqual(['urgent', 'alert', 'receipt'])
    const calm = await practice.fill('heron', 'fill-in', { age: '41' })
    expect(calm.map(({ text }) => text)).toEqual([client.alreadyAnswered])
  })

  it('answers a stranger’s sign without digits, tells nobody and keeps nothing', async () => {
    const told = await practice.say('gannet', SIGN)
    expect(told.map((message) => message.kind)).toEqual(['urgent'])
    expect(told[0]!.text).not.toMatch(/\d/)
    expect(told[0]!.text).toContain('does not know you')
    expect([practice.toCoach(), practice.toAlerts()]).toEqual([[], []])
    const [sent] = await outboxOf('user-gannet')
    const row = await practice.store.store.transaction((tx) => tx.outbox(sent!.id))
    expect(row).toBeNull()
  })

  it('greets a stranger who writes anything else', async () => {
    const told = await practice.say('gannet', 'hello')
    expect(told.map((message) => message.kind)).toEqual(['notice'])
  })
})

describe('who may', () => {
  beforeEach(async () => {
    await practice.enrol('heron')
    await practice.enrol('dipper')
    await practice.until('2026-03-02', '08:30')
  })

  it('refuses another client’s press without a trace', async () => {
    const before = await practice.file('heron')
    const count = practice.sent.length
    const answer = await practice.press('heron', 'one-of-these', [], person('dipper'))
    expect(answer?.text).toContain('not for you')
    expect(await practice.file('heron')).toEqual(before)
    expect(practice.sent).toHaveLength(count)
  })

  it('refuses a coach’s press by somebody without the role, or from another server', async () => {
    await practice.say('heron', SIGN)
    const before = await practice.file('heron')
    for (const by of [{ ...COACH, roles: [] }, { ...COACH, guild: 'guild-2' }, person('dipper')])
      expect((await practice.coachPress('heron', 'take-up', by))?.text).toContain('not for you')
    expect(await practice.file('heron')).toEqual(before)
  })

  it('refuses a coach’s command to everybody else', async () => {
    for (const name of [
      'client-record',
      'clear',
      'decide',
      'roster',
      'enrol',
      'erase-client',
      'digest',
      'note',
    ])
      expect((await practice.command(name, { client: 'heron', sure: true }, 'dipper'))?.text).toMatch(/coach/)
    expect(await practice.status('heron')).toBe('active')
  })

  it('says which aliases there are where one is unknown', async () => {
    const answer = await practice.command('client-record', { client: 'hern' })
    expect(answer?.text).toContain('heron')
  })

  it('applies the same event once', async () => {
    await practice.say('heron', '2 calf 4', { id: 'same' })
    const count = practice.sent.length
    await practice.say('heron', '2 calf 4', { id: 'same' })
    expect(practice.sent).toHaveLength(count)
  })

  it('leaves no row of somebody erased, and tells the coach where a sign was open', async () => {
    await practice.say('heron', SIGN)
    await practice.say('heron', '2 calf 4')
    expect((await practice.command('erase-client', { client: 'heron' }))?.text).toContain('sure')
    const id = (await practice.file('heron')).client.id
    const answer = await practice.command('erase-client', { client: 'heron', sure: true })
    expect(answer?.text).toContain('urgent sign')
    const left = await practice.store.store.transaction((tx) => tx.client(id))
    expect(left).toBeNull()
    expect(practice.to('heron').at(-1)?.text).toMatch(/get care[\s\S]*your coach has erased everything/)
    expect(practice.toAlerts().at(-1)?.text).toContain('erased while an urgent sign was open')
    expect((await practice.say('heron', 'hello'))[0]?.text).toContain('does not know you')
  })

  it('warns before an erasure while a sign is asked about, and tells the coach', async () => {
    await practice.say('heron', 'something is off down there')
    expect((await practice.command('erase-me', {}, 'heron'))?.text).toContain('get care')
    await practice.command('erase-me', { sure: true }, 'heron')
    expect(practice.toAlerts().at(-1)?.text).toContain('erased while an urgent sign was open')
  })

  it('lets a client erase everything, asked twice', async () => {
    expect((await practice.command('erase-me', {}, 'heron'))?.text).toContain('for good')
    await practice.command('erase-me', { sure: true }, 'heron')
    await expect(practice.file('heron')).rejects.toThrow('no client')
  })

  it('does not hand the drills to somebody who has ended', async () => {
    await practice.command('discharge', { client: 'heron' })
    expect((await practice.command('today', {}, 'heron'))?.drills).toEqual([])
  })
})
