import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import type { Message } from '../../src/engine/message.ts'
import { SIGN_WORDS } from '../../src/text/en/signs.ts'
import { textsFor } from '../../src/text/index.ts'
import { openPractice, type Practice } from './practice.ts'

const { client } = textsFor('en')

let practice: Practice
beforeEach(async () => {
  practice = await openPractice('2026-03-02')
  await practice.enrol('heron')
  await practice.until('2026-03-02', '08:30')
})
afterEach(() => practice.close())

const kinds = (messages: readonly Message[]): string[] =>
  messages.filter((message) => message.address.to === 'client').map((message) => message.kind)
const NAMES_A_DRILL = /press-up|forearms|slider|belly breath|lying|rock-back|hip lift|extension|glide/i

describe('a sign that is there', () => {
  it('gives one urgent message, stops the drills, locks the plan and alerts the coach with the words', async () => {
    const told = await practice.say('heron', "2 calf 6, can't pee since this morning")
    expect(kinds(told)).toEqual(['urgent', 'receipt'])
    expect(told[0]!.text).toContain('112')
    expect(told[0]!.text).toContain('possible cauda equina')
    expect(told[0]!.care).toBe('emergency')
    expect(await practice.status('heron')).toBe('locked')
    expect(practice.toAlerts()).toHaveLength(1)
    expect(practice.toAlerts()[0]!.text).toContain("can't pee since this morning")
    expect(practice.toAlerts()[0]!.buttons.map((button) => button.name)).toEqual(['take-up'])
    const file = await practice.file('heron')
    expect(file.checkIns.at(-1)).toMatchObject({
      reach: 'calf',
      pain: 6,
      sessions: 2,
      signs: ['bladder-change'],
    })
  })

  it('alone gives the urgent message and nothing beside it', async () => {
    expect(kinds(await practice.say('heron', "can't pee since this morning"))).toEqual(['urgent'])
  })

  it.each(['sorry 4', '1 or 2 sessions?', '2 calf 12'])(
    'is still spoken of where the next words (%s) are unclear',
    async (words) => {
      await practice.say('heron', "2 calf 6, can't pee since this morning")
      const told = (await practice.say('heron', words)).filter((message) => message.address.to === 'client')
      expect(told).toHaveLength(1)
      expect(told[0]!.text).toContain('stay stopped')
    },
  )

  it('said again while it is open is answered, but is no new event', async () => {
    await practice.say('heron', "can't pee since this morning")
    const again = await practice.say('heron', "still can't pee")
    expect(kinds(again)).toEqual(['receipt'])
    expect(again[0]!.text).toContain('stopped')
    expect(practice.toAlerts()).toHaveLength(1)
  })

  it('is a new event where another one comes while locked, and the advice does not get milder', async () => {
    await practice.say('heron', "can't pee since this morning")
    const more = await practice.say('heron', 'and I have a fever with chills now')
    expect(kinds(more)).toEqual(['urgent'])
    expect(more[0]!.care).toBe('emergency')
    expect(practice.toAlerts()).toHaveLength(2)
  })

  it('is one event where several are said at once, sure and unsure together', async () => {
    const told = await practice.say('heron', "I can't pee. My leg feels weak, not sure. And I have a fever")
    expect(kinds(told).filter((kind) => kind === 'urgent')).toHaveLength(1)
    await practice.wait(20)
    expect(practice.to('heron').filter((message) => message.kind === 'urgent')).toHaveLength(1)
  })

  it('is never corrected away, neither by an edit nor by a later reply', async () => {
    await practice.say('heron', "can't pee since this morning", { id: 'm1' })
    await practice.say('heron', '2 calf 4, no signs', { edits: 'm1' })
    await practice.takeBack('heron')
    expect(await practice.status('heron')).toBe('locked')
    expect((await practice.file('heron')).checkIns.at(-1)?.signs).toEqual(['bladder-change'])
  })

  it('is taken where it was denied before', async () => {
    await practice.say('heron', '2 calf 4 no signs')
    const later = await practice.say('heron', 'now numb between my legs')
    expect(kinds(later)).toEqual(['urgent'])
  })

  it('keeps every later message of the day free of drills', async () => {
    await practice.say('heron', "can't pee since this morning")
    const before = practice.to('heron').length
    await practice.say('heron', 'today')
    await practice.say('heron', '2 calf 4')
    await practice.say('heron', 'can I row?')
    await practice.command('today', {}, 'heron')
    await practice.until('2026-03-05', '12:00')
    for (const message of practice.to('heron').slice(before)) {
      expect(message.drills).toEqual([])
      expect(message.text).not.toMatch(NAMES_A_DRILL)
    }
    expect(kinds(practice.to('heron').slice(before))).not.toContain('prompt')
  })

  it('of level soon gives a word once, a note to the coach, and no lock', async () => {
    const told = await practice.say('heron', 'losing weight without trying')
    expect(kinds(told)).toEqual(['notice'])
    expect(told[0]!.care).toBe('soon')
    expect(await practice.status('heron')).toBe('active')
    expect(practice.toCoach().filter((message) => message.care === 'soon')).toHaveLength(1)
    expect(kinds(await practice.say('heron', 'still losing weight without trying'))).toEqual(['receipt'])
  })

  it('of level soon twice within two weeks is seen the same day, over messages and after a note', async () => {
    await practice.say('heron', 'losing weight without trying')
    await practice.coachPress('heron', 'noted-weight-loss')
    await practice.until('2026-03-12', '08:30')
    const told = await practice.say('heron', 'night sweats that soak my sheets')
    expect(kinds(told)).toEqual(['urgent'])
    expect(told[0]!.care).toBe('same-day')
    const file = await practice.file('heron')
    expect(file.signs.find((row) => row.sign === 'night-sweats')?.care).toBe('same-day')
    expect((await practice.command('noted', { client: 'heron' }))?.text).toContain('nothing')
  })

  it('of level soon twice within two weeks names both to the coach', async () => {
    await practice.say('heron', 'losing weight without trying')
    await practice.say('heron', 'night sweats that soak my sheets')
    const alert = practice.sent.findLast((one) => one.message.kind === 'alert')!.message.text
    expect(alert).toContain(SIGN_WORDS['weight-loss'].short)
    expect(alert).toContain(SIGN_WORDS['night-sweats'].short)
  })

  it('of self-harm gives the crisis words, and ends by the coach having spoken', async () => {
    await practice.say('heron', 'I do not want to live any more')
    await practice.press('heron', 'yes')
    const told = practice.to('heron').filter((message) => message.kind === 'urgent')
    expect(told).toHaveLength(1)
    expect(told[0]!.text).toContain('glad that you wrote')
    expect(
      (await practice.command('clear', { client: 'heron', by: 'general practitioner', on: '2026-03-02' }))
        ?.text,
    ).toContain('/spoken-with')
    await practice.command('spoken-with', { client: 'heron' })
    expect(await practice.status('heron')).toBe('active')
  })
})

describe('an emergency that goes on', () => {
  it('is answered by what to do each time it is told', async () => {
    await practice.say('heron', "can't pee since this morning")
    await practice.until('2026-03-03', '12:00')
    const told = await practice.say('heron', "still can't pee")
    const text = told.find(({ address }) => address.to === 'client')!.text
    expect(text).toContain('112')
    expect(text).toContain('possible cauda equina')
  })
})

describe('a clearance', () => {
  it.each(['me', 'The Coach', 'nobody', 'heron', '<@100>'])('by “%s” is none', async (by) => {
    await practice.say('heron', "can't pee since this morning")
    const answer = await practice.command('clear', { client: 'heron', by, on: '2026-03-02' })
    expect(answer?.text).toBe(textsFor('en').coach.whoCleared)
    expect(await practice.status('heron')).toBe('locked')
  })
})

describe('thoughts of self-harm that are told again', () => {
  it('bring the crisis words and alert the coach each time, also by a hint and after a coach has had them', async () => {
    await practice.say('heron', 'I want to kill myself')
    await practice.until('2026-03-02', '09:00')
    const told = await practice.say('heron', 'I am going to kill myself tonight')
    expect(kinds(told)).toEqual(['urgent'])
    expect(told[0]!.text).toContain('glad that you wrote')
    const alert = practice.toAlerts().at(-1)!
    expect(alert.kind).toBe('alert')
    expect(alert.text).toContain('I am going to kill myself tonight')
    const hinted = await practice.say('heron', 'I have the pills here')
    expect(kinds(hinted)).toEqual(['urgent'])
    await practice.command('take-up', { client: 'heron', outcome: 'reached' })
    await practice.until('2026-03-03', '12:00')
    const later = await practice.say('heron', '2 calf 3, I will kill myself today')
    expect(kinds(later)).toEqual(['urgent'])
    expect(practice.toAlerts().filter(({ kind }) => kind === 'alert')).toHaveLength(4)
  })
})

describe('a sign that is only hinted at', () => {
  it('is asked back, drills wait, and a yes raises it', async () => {
    const told = await practice.say('heron', 'worried about my bladder, not sure if it is weak')
    expect(kinds(told)).toEqual(['ask'])
    expect(told[0]!.buttons.map((button) => button.name)).toEqual(['yes', 'no'])
    expect((await practice.command('today', {}, 'heron'))?.drills).toEqual([])
    await practice.press('heron', 'yes')
    expect(practice.to('heron').at(-1)?.kind).toBe('urgent')
    expect(await practice.status('heron')).toBe('locked')
  })

  it('goes with a no, which promises nothing', async () => {
    await practice.say('heron', 'worried about my bladder, not sure if it is weak')
    const answer = await practice.press('heron', 'no')
    expect(answer?.text).toContain('If it does come')
    expect((await practice.command('today', {}, 'heron'))?.drills).not.toEqual([])
    await practice.wait(30)
    expect(await practice.status('heron')).toBe('active')
  })

  it.each(['no', 'nope', 'no it is not', 'No.'])(
    'is denied by “%s” in words, once and for that sign only',
    async (words) => {
      await practice.say('heron', 'worried about my bladder, not sure if it is weak')
      const told = await practice.say('heron', words)
      expect(kinds(told)).toEqual(['receipt'])
      expect(told[0]!.text).toContain('If it does come')
      expect((await practice.file('heron')).checkIns.at(-1)?.denied).toEqual(['bladder-change'])
      await practice.wait(30)
      expect(await practice.status('heron')).toBe('active')
    },
  )

  it.each(['yes', 'yeah', 'yes it is'])(
    'is raised by “%s” in words: one urgent message, one receipt',
    async (words) => {
      await practice.say('heron', 'worried about my bladder, not sure if it is weak')
      expect(kinds(await practice.say('heron', words))).toEqual(['urgent', 'receipt'])
      await practice.wait(20)
      expect(practice.to('heron').filter((message) => message.kind === 'urgent')).toHaveLength(1)
    },
  )

  it('is one event with a further sign that comes with the yes', async () => {
    await practice.say('heron', 'worried about my bladder, not sure if it is weak')
    const told = await practice.say('heron', 'yes and a fever')
    expect(kinds(told).filter((kind) => kind === 'urgent')).toHaveLength(1)
    const open = (await practice.file('heron')).signs.filter((row) => row.state === 'open')
    expect(open.map((row) => row.sign).sort()).toEqual(['bladder-change', 'fever-unwell'])
  })

  it('counts as yes after ten minutes, not before, with the words that hinted at it', async () => {
    await practice.say('heron', 'worried about my bladder, not sure if it is weak')
    await practice.wait(9)
    expect(await practice.status('heron')).toBe('active')
    await practice.wait(2)
    expect(await practice.status('heron')).toBe('locked')
    expect(practice.toAlerts()[0]!.text).toContain('worried about my bladder')
  })

  it('is not put off by other words meanwhile', async () => {
    await practice.say('heron', 'worried about my bladder, not sure if it is weak')
    await practice.wait(6)
    const told = await practice.say('heron', '2 calf 4')
    expect(kinds(told)).toEqual(['receipt'])
    expect(told[0]!.asks).toBe('signs')
    await practice.wait(5)
    expect(await practice.status('heron')).toBe('locked')
  })

  it('is denied by “no signs” beside a check-in, and nothing is left to be taken as urgent', async () => {
    await practice.say('heron', 'something is off down there')
    const told = await practice.say('heron', '2 calf 4, no signs')
    expect(told.map(({ text }) => text).join()).not.toContain(client.whichSign)
    const { asked, dues } = await practice.file('heron')
    expect([
      asked.filter(({ pressing }) => pressing),
      dues.filter(({ kind }) => kind === 'deadline'),
    ]).toEqual([[], []])
  })

  it('of one message is asked in one order, also when the message is changed', async () => {
    const asked = async (text: string, more = {}) =>
      (await practice.say('heron', text, more))
        .find(({ asks }) => asks === 'signs')
        ?.text.split('\n')
        .slice(-2)
    const first = await asked('2 calf 4, cannot feel my bum', { id: '900' })
    expect(first?.join()).toContain(SIGN_WORDS['saddle-numbness'].question)
    expect(await asked('2 calf 4', { id: '900:1', edits: '900' })).toEqual(first)
  })

  it('is asked one at a time, the gravest first, each with its own ten minutes', async () => {
    const told = await practice.say('heron', 'maybe fever? and maybe my bladder is weak, not sure')
    const asked = (await practice.file('heron')).signs.filter((row) => row.state === 'asked')
    expect(asked).toHaveLength(2)
    expect(told[0]!.text).toContain('pee')
    await practice.wait(9)
    await practice.press('heron', 'no')
    expect(practice.to('heron').at(-1)?.text).toContain('fever')
    await practice.wait(9)
    expect(await practice.status('heron')).toBe('active')
    await practice.wait(2)
    expect(await practice.status('heron')).toBe('locked')
    expect(practice.to('heron').filter((message) => message.kind === 'urgent')).toHaveLength(1)
  })

  it('is asked first where the day is unclear too, and the day after it', async () => {
    const told = await practice.say('heron', '20 Feb 2 calf 4, not sure about my bladder today')
    expect(told.at(-1)?.asks).toBe('signs')
    await practice.press('heron', 'no')
    expect(practice.to('heron').at(-1)?.asks).toBe('day')
  })

  it('keeps a decision of the coach back until it is answered', async () => {
    await practice.say('heron', 'worried about my bladder, not sure if it is weak')
    const answer = await practice.command('decide', { client: 'heron', do: 'advance', ladder: 'extension' })
    expect(answer?.text).toContain('warning sign')
    expect((await practice.rungs('heron', '2026-03-03')).extension).toBe(1)
  })
})

describe('“one of these”', () => {
  it('asks which, holds drills back, and counts as yes after ten minutes', async () => {
    await practice.press('heron', 'one-of-these')
    const asked = practice.to('heron').at(-1)!
    expect(asked.kind).toBe('ask')
    expect(asked.pick?.name).toBe('which-sign')
    expect((await practice.command('today', {}, 'heron'))?.drills).toEqual([])
    await practice.wait(11)
    expect(await practice.status('heron')).toBe('locked')
    expect(practice.toAlerts()[0]!.text).toContain('The client said “one of these” and did not say which.')
    expect(practice.to('heron').filter((message) => message.kind === 'urgent')).toHaveLength(1)
  })

  it('is taken back by “none” to “which of these?”, as by the button', async () => {
    await practice.say('heron', '2 calf 4')
    await practice.press('heron', 'one-of-these')
    await practice.say('heron', 'none of these')
    const { asked, dues, checkIns } = await practice.file('heron')
    expect(asked.filter(({ pressing }) => pressing)).toEqual([])
    expect(dues.filter(({ kind }) => kind === 'deadline')).toEqual([])
    expect(checkIns.at(-1)?.denied).toBe('all')
  })

  it('is said by “yes” to the prompt as well, and by the routine “no” everything is denied', async () => {
    const told = await practice.say('heron', 'yes')
    expect(kinds(told)).toEqual(['receipt'])
    expect(told[0]!.pick?.name).toBe('which-sign')
    await practice.press('heron', 'which-sign', ['calf-swelling'])
    expect(practice.to('heron').at(-1)?.care).toBe('same-day')
  })

  it.each(['👍', '👍🏽 👍'])(
    'is not said by %s, which may mean that it went well: asked again, with no clock',
    async (thumb) => {
      const [told] = await practice.say('heron', thumb)
      expect(told).toMatchObject({ kind: 'ask', asks: 'signs', pick: null })
      expect(told!.buttons.map((button) => button.name)).toEqual(['none-of-these', 'one-of-these'])
      await practice.wait(30)
      expect(await practice.status('heron')).toBe('active')
      await practice.press('heron', 'none-of-these')
      expect((await practice.file('heron')).checkIns.at(-1)?.denied).toBe('all')
    },
  )

  it.each(['no', 'no signs', 'none of these'])('is denied by “%s” to the prompt', async (words) => {
    const told = await practice.say('heron', words)
    expect(kinds(told)).toEqual(['receipt'])
    expect((await practice.file('heron')).checkIns.at(-1)?.denied).toBe('all')
    expect(told[0]!.text).not.toMatch(/safe|fine|all clear/i)
  })

  it('does not take “no sessions” for a denial of the signs', async () => {
    await practice.say('heron', 'no sessions today, calf 4')
    expect((await practice.file('heron')).checkIns.at(-1)).toMatchObject({ denied: null, sessions: 0 })
  })

  it('takes several signs chosen at once as one event', async () => {
    await practice.press('heron', 'one-of-these')
    await practice.press('heron', 'which-sign', ['calf-swelling', 'leg-weakness'])
    expect(practice.to('heron').filter((message) => message.kind === 'urgent')).toHaveLength(1)
    expect(practice.toAlerts()).toHaveLength(1)
  })
})

describe('pain of 9 or 10', () => {
  it.each(['2 calf 9', '2 calf 10'])('asks whether a position eases it: “%s”', async (words) => {
    const told = await practice.say('heron', words)
    expect(kinds(told)).toEqual(['receipt'])
    expect(told[0]!.text).toContain('position')
    await practice.wait(11)
    expect(practice.to('heron').at(-1)?.care).toBe('same-day')
  })

  it('asks the same of a form and of a press, and after a no the routine question comes', async () => {
    await practice.fill('heron', 'check-in', { sessions: '2', reach: 'calf', pain: '9' })
    expect(practice.to('heron').at(-1)?.text).toContain('position')
    await practice.press('heron', 'no')
    expect(
      practice
        .to('heron')
        .at(-1)
        ?.buttons.map((button) => button.name),
    ).toEqual(['none-of-these', 'one-of-these'])
    await practice.say('heron', '2 calf 9')
    await practice.wait(11)
    expect(await practice.status('heron')).toBe('active')
  })
})
