import { describe, expect, it } from 'vitest'
import { assess } from '../../../src/domain/rules/assess.ts'
import { day, flagOn, history, openDays, pains, reaches, span, times } from './build.ts'

describe('reach-spread', () => {
  const calm = reaches(...Array(14).fill(2))

  it('fires on the second day of a lasting step by two zones: 2 - 0.5 = 1.5 does not pass 1.5, twice does', () => {
    const h = history([...calm, ...reaches(4, 4, 4)])
    expect(openDays(h, 'reach-spread')).toEqual([16, 17])
    expect(flagOn(h, 16, 'reach-spread')).toMatchObject({ level: 'ease-back', day: day(16) })
  })

  it('fires on the first day of a step by three zones', () => {
    expect(openDays(history([...calm, ...reaches(5)]), 'reach-spread')).toEqual([15])
  })

  it('needs four days for a step by one zone (0.5 a day)', () => {
    expect(openDays(history([...calm, ...reaches(3, 3, 3)]), 'reach-spread')).toEqual([])
    expect(openDays(history([...calm, ...reaches(3, 3, 3, 3)]), 'reach-spread')).toEqual([18])
  })

  it('does not fire on one day by two zones, nor with fewer than 6 values behind it', () => {
    expect(openDays(history([...calm, ...reaches(4, 2, 2)]), 'reach-spread')).toEqual([])
    expect(openDays(history(reaches(2, 2, 2, 2, 2, 5, 5, 5)), 'reach-spread')).toEqual([])
  })

  it('closes on the 7th answered day in a row without it; days without reply do not count', () => {
    const after = [{}, null, null, ...times(6)].map((entry) => entry && { reach: 'buttock' as const })
    const h = history([...calm, ...reaches(5), ...after])
    expect(openDays(h, 'reach-spread')).toEqual(span(15, 23))
    const unsaid = history([...calm, ...reaches(5), ...times(9, { reach: null })])
    expect(openDays(unsaid, 'reach-spread')).toEqual(span(15, 24))
  })

  it('proposes to ease back and reads as peripheralising', () => {
    const now = assess(history([...calm, ...reaches(5)]), day(15))
    expect(now).toMatchObject({
      proposal: 'ease-back',
      reasons: ['reach-spread'],
      direction: 'peripheralising',
    })
  })
})

describe('below-knee', () => {
  it('fires on the first day below the knee, without waiting for the sum', () => {
    const h = history(reaches(3, 3, 3, 3, 3, 3, 3, 3, 5))
    expect(openDays(h, 'below-knee')).toEqual([9])
    expect(flagOn(h, 9, 'below-knee')).toMatchObject({ level: 'hold', day: day(9) })
    expect(assess(h, day(9)).proposal).toBe('hold')
  })

  it('does not fire at the knee, nor where the usual level is knee or further, nor with 5 values', () => {
    expect(openDays(history(reaches(...Array(9).fill(3), 4)), 'below-knee')).toEqual([])
    expect(openDays(history(reaches(...Array(9).fill(4), 5)), 'below-knee')).toEqual([])
    expect(openDays(history(reaches(3, 3, 3, 3, 3, 3, 3, 5)), 'below-knee')).toEqual([])
  })
})

describe('pain-up', () => {
  const calm = pains(...Array(14).fill(3))

  it('fires on the fourth day of a lasting rise by two points (sum 1, 2, 3, 4 over 3.25)', () => {
    const h = history([...calm, ...pains(5, 5, 5, 5)])
    expect(openDays(h, 'pain-up')).toEqual([18])
    expect(flagOn(h, 18, 'pain-up')).toMatchObject({ level: 'hold', day: day(18) })
  })

  it('does not fire on three such days, nor with 9 values behind it', () => {
    expect(openDays(history([...calm, ...pains(5, 5, 5, 3)]), 'pain-up')).toEqual([])
    expect(openDays(history(pains(...Array(13).fill(3), 9)), 'pain-up')).toEqual([])
    expect(openDays(history(pains(...Array(14).fill(3), 9)), 'pain-up')).toEqual([15])
  })

  it('is a note, told why, while the reach draws in and the weekly median rose by less than 2', () => {
    const ranks = [...Array(7).fill(5), ...Array(7).fill(4), ...Array(6).fill(3)]
    const pain = [...Array(17).fill(3), 4, 6, 6]
    const h = history(ranks.map((rank, n) => ({ ...reaches(rank)[0], ...pains(pain[n]!)[0] })))
    const now = assess(h, day(20))
    expect(now.direction).toBe('centralising')
    const flag = now.flags.find((f) => f.rule === 'pain-up')
    expect(flag).toMatchObject({ level: 'note', figures: { centralising: true } })
    expect(now.proposal).toBe('none')
  })

  it('is a hold again where the rise is 2 or more although the reach draws in', () => {
    const ranks = [...Array(7).fill(5), ...Array(7).fill(4), ...Array(7).fill(3)]
    const pain = [...Array(18).fill(3), 6, 6, 6]
    const h = history(ranks.map((rank, n) => ({ ...reaches(rank)[0], ...pains(pain[n]!)[0] })))
    expect(assess(h, day(20)).direction).toBe('centralising')
    expect(flagOn(h, 20, 'pain-up')?.level).toBe('note')
    const steep = history(ranks.map((rank, n) => ({ ...reaches(rank)[0], pain: n < 16 ? 3 : 6 })))
    expect(flagOn(steep, 20, 'pain-up')).toMatchObject({ level: 'hold' })
  })
})

describe('pain-severe', () => {
  it('fires on the second check-in in a row with 8 or more, whatever the days between', () => {
    const h = history([...pains(8), null, null, ...pains(9, 3)])
    expect(openDays(h, 'pain-severe')).toEqual([4, 5])
    expect(flagOn(h, 4, 'pain-severe')).toMatchObject({ level: 'hold', day: day(4) })
  })

  it('does not fire on one, nor on two with a lower one between', () => {
    expect(openDays(history(pains(8, 7, 8)), 'pain-severe')).toEqual([])
  })
})

describe('flare', () => {
  const calm = pains(...Array(14).fill(2))

  it('fires on the day of the "no", about the day before', () => {
    const h = history([...calm, { pain: 5 }, { pain: 3, settled: false }])
    expect(openDays(h, 'flare')).toEqual([16])
    expect(flagOn(h, 16, 'flare')).toMatchObject({ level: 'hold', figures: { flareDay: day(15), pain: 5 } })
  })

  it('does nothing on "yes", without an answer, without sessions, or below 2 over the usual level', () => {
    expect(openDays(history([...calm, { pain: 5 }, { settled: true }]), 'flare')).toEqual([])
    expect(openDays(history([...calm, { pain: 5 }, {}]), 'flare')).toEqual([])
    expect(openDays(history([...calm, { pain: 5, sessions: 0 }, { settled: false }]), 'flare')).toEqual([])
    expect(
      openDays(history([...pains(...Array(14).fill(4)), { pain: 5 }, { settled: false }]), 'flare'),
    ).toEqual([])
  })

  it('asks at the next prompt, once', () => {
    const h = history([...calm, { pain: 5 }])
    expect(assess(h, day(15)).askSettled).toBe(true)
    expect(assess(h, day(16)).askSettled).toBe(true)
    expect(assess(h, day(17)).askSettled).toBe(false)
    expect(assess(history([...calm, { pain: 5 }, { settled: true }]), day(16)).askSettled).toBe(false)
    expect(assess(history(calm), day(14)).askSettled).toBe(false)
  })

  it('holds the ladder last advanced, else the one of the highest number', () => {
    const rungs = { settle: 1, extension: 2, glide: 1 }
    const calmOn = calm.map((entry) => ({ ...entry, rungs }))
    const entries = [...calmOn, { pain: 5, rungs }, { pain: 3, settled: false, rungs }]
    expect(assess(history(entries), day(16))).toMatchObject({ proposal: 'hold', ladder: 'glide' })
    const decisions = [{ day: day(3), ladder: 'extension', decision: 'advance' }] as const
    expect(assess(history(entries, { decisions }), day(16)).ladder).toBe('extension')
  })
})

describe('regain', () => {
  it('fires on the second answered day below the knee after 14 days above', () => {
    const h = history([...reaches(5), ...reaches(...Array(15).fill(3)), ...reaches(5, 3, 5)])
    expect(openDays(h, 'regain')).toEqual([19])
    expect(flagOn(h, 19, 'regain')).toMatchObject({ level: 'hold', figures: { firstDay: day(17) } })
  })

  it('does not fire after 13 days above, with 6 answers in them, or on the first day', () => {
    expect(openDays(history(reaches(...Array(13).fill(3), 5, 5)), 'regain')).toEqual([])
    expect(openDays(history(reaches(...Array(14).fill(3), 5)), 'regain')).toEqual([])
    const sparse = history([...reaches(3, 3, 3, 3, 3), ...times(9, null), ...reaches(3, 5, 5)])
    expect(openDays(sparse, 'regain')).toEqual([])
    const enough = history([...reaches(3, 3, 3, 3, 3, 3), ...times(9, null), ...reaches(3, 5, 5)])
    expect(openDays(enough, 'regain')).toEqual([18])
  })
})
