import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { openPractice, type Practice } from './practice.ts'

let practice: Practice
beforeEach(async () => {
  practice = await openPractice('2026-03-02')
})
afterEach(() => practice.close())

describe('the leg', () => {
  beforeEach(async () => {
    await practice.enrol('heron')
    await practice.until('2026-03-02', '08:30')
  })
  const open = async (): Promise<string[]> =>
    (await practice.file('heron')).signs.filter((row) => row.state === 'open').map((row) => row.sign)

  it('on record, named again, is no matter', async () => {
    const told = await practice.say('heron', 'left leg calf 4, 2 sessions')
    expect(told.map((message) => [message.kind, message.asks])).toEqual([['receipt', null]])
    expect((await practice.file('heron')).checkIns.at(-1)?.side).toBe('left')
  })

  it('other than the one on record is asked about, drills wait, and the same leg ends it', async () => {
    const told = await practice.say('heron', 'right leg calf 4, 2 sessions')
    expect(told.map((message) => [message.kind, message.asks])).toEqual([['receipt', 'side']])
    expect((await practice.command('today', {}, 'heron'))?.drills).toEqual([])
    await practice.press('heron', 'side-same')
    await practice.wait(30)
    expect(await open()).toEqual([])
    expect((await practice.command('today', {}, 'heron'))?.drills).not.toEqual([])
  })

  it('other alone is new symptoms elsewhere, told to the coach, and then the leg on record', async () => {
    await practice.say('heron', 'right leg calf 4, 2 sessions')
    await practice.press('heron', 'side-other')
    expect(await open()).toEqual(['new-symptoms-elsewhere'])
    expect(practice.toCoach().at(-1)?.care).toBe('soon')
    expect((await practice.file('heron')).client.side).toBe('right')
    await practice.wait(30)
    expect(await practice.status('heron')).toBe('active')
  })

  it.each(['both', 'both legs'])('said to be “%s” is both legs', async (words) => {
    await practice.say('heron', 'right leg calf 4, 2 sessions')
    const told = await practice.say('heron', words)
    expect(told.filter((message) => message.kind === 'urgent')).toHaveLength(1)
    expect(await open()).toEqual(['both-legs'])
  })

  it.each([
    ['left', []],
    ['right', ['new-symptoms-elsewhere']],
    ['the other one', ['new-symptoms-elsewhere']],
    ['same', []],
  ])('is understood in words: “%s”', async (words, signs) => {
    await practice.say('heron', 'right leg calf 4, 2 sessions')
    const told = await practice.say('heron', words)
    expect(told.filter((m) => m.kind === 'receipt')).toHaveLength(1)
    expect(await open()).toEqual(signs)
    await practice.wait(30)
    expect(await open()).toEqual(signs)
  })

  it('other named and then silence is both legs after ten minutes', async () => {
    await practice.say('heron', 'right leg calf 4, 2 sessions')
    await practice.wait(9)
    expect(await practice.status('heron')).toBe('active')
    await practice.wait(2)
    expect(await open()).toEqual(['both-legs'])
    expect(practice.to('heron').filter((message) => message.kind === 'urgent')).toHaveLength(1)
  })

  it('other in the form is asked about, and both in the form is raised at once', async () => {
    await practice.fill('heron', 'check-in', {
      sessions: '2',
      reach: 'calf',
      pain: '4',
      side: 'right',
      signs: ['none'],
    })
    expect(practice.to('heron').at(-1)).toMatchObject({ kind: 'receipt', asks: 'side' })
    await practice.fill('heron', 'check-in', { sessions: '2', reach: 'calf', pain: '4', side: 'both' })
    expect(practice.to('heron').filter((message) => message.kind === 'urgent')).toHaveLength(1)
    await practice.wait(30)
    expect(practice.to('heron').filter((message) => message.kind === 'urgent')).toHaveLength(1)
  })

  it('both, said plainly with words for it, is one event', async () => {
    const told = await practice.say('heron', 'both legs tingling now, calf 5')
    expect(told.filter((message) => message.kind === 'urgent')).toHaveLength(1)
    expect(practice.toAlerts()).toHaveLength(1)
  })

  it('named with nothing else is not lost', async () => {
    const told = await practice.say('heron', 'it is in my right leg')
    expect(told.at(-1)?.asks).toBe('side')
  })
})

describe('known trouble', () => {
  beforeEach(async () => {
    await practice.enrol('heron', {}, { known: ['bladder-change'] })
    await practice.until('2026-03-02', '08:30')
  })

  it('is told to the coach at the start', () => {
    expect(practice.toCoach().some((message) => message.text.includes('Old, unchanged'))).toBe(true)
  })

  it.each(['leaking as usual', '2 calf 4. Slow to start to pee as always.', 'bladder trouble same as ever'])(
    'mentioned unchanged is noted, not flagged, and answered: “%s”',
    async (words) => {
      const told = await practice.say('heron', words)
      expect(told.map((message) => message.kind)).toEqual(['receipt'])
      await practice.wait(20)
      expect(await practice.status('heron')).toBe('active')
    },
  )

  it.each(['bladder worse today', 'leaking more than usual', 'now I cannot pee at all'])(
    'with a word of change is asked about: “%s”',
    async (words) => {
      const told = await practice.say('heron', words)
      expect(told.at(-1)?.asks).toBe('signs')
      expect(told.at(-1)?.text).toContain('pee')
      await practice.wait(11)
      expect(await practice.status('heron')).toBe('locked')
      const { historyOf } = await import('../../src/engine/history.ts')
      expect(historyOf(await practice.file('heron')).known).toEqual([])
    },
  )

  it('ticked in a form of what is new or changed is asked about', async () => {
    await practice.fill('heron', 'check-in', { pain: '4', signs: ['bladder-change'] })
    expect(practice.to('heron').at(-1)?.asks).toBe('signs')
    expect(practice.to('heron').some((message) => message.kind === 'urgent')).toBe(false)
  })

  it('does not hide another sign', async () => {
    const told = await practice.say(
      'heron',
      'numb between my legs since today. Slow to start to pee as always.',
    )
    expect(told.some((message) => message.kind === 'urgent')).toBe(true)
  })
})

describe('signs are asked, not awaited', () => {
  const reply = async (day: string, words: string) => {
    await practice.until(day, '08:30')
    return practice.say('heron', words)
  }
  const asks = (told: readonly { asks: unknown }[]) => told.map((message) => message.asks).filter(Boolean)
  beforeEach(() => practice.enrol('heron'))

  it('records what said nothing as not said, and asks after three in a row', async () => {
    expect(asks(await reply('2026-03-02', '2 calf 4'))).toEqual([])
    expect(asks(await reply('2026-03-03', '2 calf 4'))).toEqual([])
    expect(asks(await reply('2026-03-04', '2 calf 4'))).toEqual(['signs'])
    expect((await practice.file('heron')).checkIns.map((row) => row.denied)).toEqual([null, null, null])
  })

  it('leaves an unanswered one not said, without alarm, and asks again at the next check-in', async () => {
    expect(asks(await reply('2026-03-02', '2 calf 8'))).toEqual(['signs'])
    await practice.wait(60)
    expect(await practice.status('heron')).toBe('active')
    expect(asks(await reply('2026-03-03', '2 calf 4'))).toEqual(['signs'])
    await practice.press('heron', 'none-of-these')
    expect(asks(await reply('2026-03-04', '2 calf 4'))).toEqual([])
  })

  it('does not ask where the reply itself denies them', async () => {
    expect(asks(await reply('2026-03-02', '2 calf 8 no signs'))).toEqual([])
  })

  it('asks about the graver ones where new numbness is named', async () => {
    const told = await reply('2026-03-02', '2 foot 5, my foot is newly numb')
    expect(told.filter((message) => message.kind === 'urgent').map((message) => message.care)).toEqual([
      'same-day',
    ])
    expect(told.at(-1)?.asks).toBe('signs')
    await practice.press('heron', 'one-of-these')
    await practice.press('heron', 'which-sign', ['saddle-numbness'])
    expect(practice.to('heron').findLast((message) => message.kind === 'urgent')?.care).toBe('emergency')
  })
})
