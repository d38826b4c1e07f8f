import { describe, expect, it } from 'vitest'
import { assess } from '../../../src/domain/rules/assess.ts'
import { day, history, times } from './build.ts'

const proposals = (h: ReturnType<typeof history>, last = h.days.length) =>
  Array.from({ length: last }, (_, n) => assess(h, day(n + 1)).proposal)

describe('sign', () => {
  it('stops from the day it is said until a clinician has cleared it', () => {
    const h = history([{}, { signs: ['saddle-numbness'] }, {}, { cleared: ['saddle-numbness'] }, {}])
    expect(proposals(h)).toEqual(['none', 'stop', 'stop', 'none', 'none'])
    expect(assess(h, day(3)).flags[0]).toMatchObject({ rule: 'sign', level: 'emergency', day: day(2) })
    expect(assess(h, day(3)).openSigns).toEqual([{ sign: 'saddle-numbness', care: 'emergency', day: day(2) }])
  })

  it('is not ended by a note, by a later denial or by time', () => {
    const h = history([{ signs: ['fever-unwell'] }, { noted: ['fever-unwell'] }, { denied: 'all' }])
    expect(assess(h, day(400))).toMatchObject({ proposal: 'stop', reasons: ['sign'] })
  })

  it('holds for a soon sign, and refers when it is older than 7 days', () => {
    const h = history([{ signs: ['night-pain'] }, ...times(9)])
    expect(proposals(h)).toEqual([...Array(8).fill('hold'), 'refer', 'refer'])
    const noted = history([{ signs: ['night-pain'] }, { noted: ['night-pain'] }, {}])
    expect(proposals(noted)).toEqual(['hold', 'none', 'none'])
  })

  it('counts two new soon signs within 14 days as same-day, ended only by clearance', () => {
    const near = history([{ signs: ['weight-loss'] }, ...times(10), { signs: ['night-sweats'] }, {}])
    expect(assess(near, day(11)).proposal).toBe('refer')
    expect(assess(near, day(13))).toMatchObject({ proposal: 'stop' })
    expect(assess(near, day(13)).flags.map((flag) => flag.level)).toEqual(['same-day', 'same-day'])
    const noted = history([
      { signs: ['weight-loss', 'night-sweats'], noted: ['weight-loss', 'night-sweats'] },
    ])
    expect(assess(noted, day(2)).proposal).toBe('stop')
    const far = history([{ signs: ['weight-loss'] }, ...times(15), { signs: ['night-sweats'] }])
    expect(assess(far, day(17)).proposal).toBe('refer')
    const same = history([{ signs: ['night-pain'] }, { signs: ['night-pain'] }])
    expect(assess(same, day(2)).proposal).toBe('hold')
  })

  it('leaves what is on the known list alone', () => {
    const h = history([{ signs: ['bladder-change'] }], { known: ['bladder-change'] })
    expect(assess(h, day(1))).toMatchObject({ proposal: 'none', openSigns: [] })
  })

  it('takes one-sided symptoms that turn two-sided for both legs, though nobody says so', () => {
    const h = history([{ side: 'left' }, { side: 'both' }], { side: null })
    expect(assess(h, day(1)).proposal).toBe('none')
    expect(assess(h, day(2)).openSigns[0]).toMatchObject({ sign: 'both-legs', care: 'emergency' })
    expect(assess(history([{ side: 'both' }], { side: 'both' }), day(1)).openSigns).toEqual([])
  })

  it('knows of signs from before the days that were loaded', () => {
    const openBefore = [{ sign: 'leg-weakness', care: 'emergency', day: '2025-11-01' }] as const
    const h = history([{}, { cleared: ['leg-weakness'] }], { openBefore })
    expect(proposals(h)).toEqual(['stop', 'none'])
  })

  it('names the most urgent first and asks nothing about rungs meanwhile', () => {
    const h = history([{ signs: ['night-pain'] }, { signs: ['chest-breath'] }])
    const now = assess(h, day(2))
    expect(now.flags.map((flag) => [flag.figures.sign, flag.level])).toEqual([
      ['chest-breath', 'emergency'],
      ['night-pain', 'hold'],
    ])
    expect(now).toMatchObject({ askComfort: false, askSettled: false })
  })
})
