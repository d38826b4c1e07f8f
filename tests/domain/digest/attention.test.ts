import { describe, expect, it } from 'vitest'
import { attention, rollCall } from '../../../src/domain/digest/attention.ts'
import type { Flag, Level, RuleId } from '../../../src/domain/rules/assessment.ts'
import { week } from './week-facts.ts'

const flag = (rule: RuleId, level: Level = 'note', day = '2026-03-10'): Flag => ({
  rule,
  level,
  day,
  figures: {},
  source: '',
})
const reasons = (given: Parameters<typeof week>[0]): string[] =>
  attention(week(given)).reasons.map(({ reason }) => reason)

describe('who needs the coach', () => {
  it.each([
    [{ alertOpen: true, urgentOpen: true, standing: 'locked' }, ['alert-open', 'urgent']],
    [{ flags: [flag('reach-spread', 'ease-back')], proposal: 'ease-back' }, ['spreading']],
    [{ flags: [flag('below-knee', 'hold'), flag('regain', 'hold')] }, ['spreading']],
    [{ flags: [flag('pain-severe', 'hold')] }, ['severe-pain']],
    [{ proposal: 'refer', flags: [flag('plateau')] }, ['refer']],
    [{ standing: 'parked' }, ['parked']],
    [{ signs: [{ sign: 'night-pain', care: 'soon', day: '2026-03-09' }] }, ['soon-sign']],
    [{ flags: [flag('quiet')] }, ['quiet']],
    [{ flags: [flag('pain-up', 'hold')] }, ['worsening']],
  ] as const)('%j', (given, expected) => {
    expect(attention(week(given)).group).toBe('needs')
    expect(reasons(given)).toEqual(expected)
  })

  it('is not somebody silent on a pause, nor one whose flags are notes', () => {
    expect(attention(week({ standing: 'paused', flags: [flag('quiet')] })).group).toBe('rest')
    expect(attention(week({ flags: [flag('pain-up'), flag('meaningful'), flag('adherence')] })).group).toBe(
      'rest',
    )
  })

  it('is not somebody discharged for what the rules found, but for a sign still open', () => {
    const flags = [flag('reach-spread', 'ease-back'), flag('quiet')]
    expect(attention(week({ standing: 'discharged', flags })).group).toBe('rest')
    expect(attention(week({ standing: 'discharged', urgentOpen: true })).group).toBe('needs')
  })

  it('says since when', () => {
    const flags = [flag('regain', 'hold', '2026-03-12'), flag('reach-spread', 'ease-back', '2026-03-11')]
    expect(attention(week({ flags })).reasons).toEqual([{ reason: 'spreading', since: '2026-03-11' }])
  })
})

describe('the roll-call', () => {
  it('ranks by how pressing, then for how long, then by alias, and lists everybody once', () => {
    const all = [
      week({ ref: 'wren', proposal: 'advance', ladder: 'glide' }),
      week({ ref: 'teal' }),
      week({ ref: 'dipper', flags: [flag('quiet')] }),
      week({ ref: 'plover', flags: [flag('reach-spread', 'ease-back', '2026-03-12')] }),
      week({ ref: 'siskin', flags: [flag('reach-spread', 'ease-back', '2026-03-08')] }),
      week({ ref: 'curlew', urgentOpen: true, standing: 'locked' }),
      week({ ref: 'avocet', standing: 'paused' }),
      week({ ref: 'heron', alertOpen: true, urgentOpen: true, standing: 'locked' }),
    ]
    const { needs, move, rest } = rollCall(all)
    expect(needs.map(({ facts }) => facts.ref)).toEqual(['heron', 'curlew', 'siskin', 'plover', 'dipper'])
    expect(move.map(({ facts }) => facts.ref)).toEqual(['wren'])
    expect(rest.map(({ facts }) => facts.ref)).toEqual(['avocet', 'teal'])
  })

  it('lets nobody move on who is paused or needs the coach', () => {
    const { move } = rollCall([
      week({ proposal: 'advance', standing: 'paused' }),
      week({ proposal: 'advance', alertOpen: true }),
    ])
    expect(move).toEqual([])
  })
})
