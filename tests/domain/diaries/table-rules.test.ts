import { describe, expect, it } from 'vitest'
import { COURSES, diaryOf } from '../../../src/domain/diaries/diary.ts'
import { perMonth } from '../../../src/domain/diaries/measure.ts'
import { listen } from '../../../src/domain/diaries/simulate.ts'
import { ALARMS, alarmRules, SIMULATED, tableRule } from '../../../src/domain/diaries/table-rules.ts'
import { RULES } from '../../../src/domain/rules/table.ts'

// Within the 60 days that a rule looks back, the sum by itself and the sum of the full assessment are one.
const LENGTH = 60
const whole = { from: 0, to: LENGTH - 1, worse: false }

describe('rules read from full assessments', () => {
  const people = Array.from({ length: 12 }, (_, n) => diaryOf(5, n, COURSES.both, LENGTH))

  it.each(['reach-spread', 'pain-up'] as const)('%s speaks on the days of its sum', (id) => {
    const sum = alarmRules(ALARMS)[id]
    const days = people.map((diary) => [...tableRule(id)(diary, whole)])
    expect(days).toEqual(people.map((diary) => [...sum(diary, whole)]))
    expect(days.flat().length).toBeGreaterThan(5)
  })

  it('a word of getting better is left out where only a worsening is asked for', () => {
    const better = Array.from({ length: 8 }, (_, n) => diaryOf(5, n, COURSES.improving, LENGTH))
    for (const id of ['meaningful', 'trend-pain'] as const) {
      const rule = tableRule(id)
      expect(better.flatMap((diary) => rule(diary, whole)).length).toBeGreaterThan(10)
      expect(better.flatMap((diary) => rule(diary, { ...whole, worse: true }))).toEqual([])
    }
  })

  it('every rule of the table is measured or needs what the diaries do not hold', () => {
    const held = RULES.map(({ id }) => id).filter((id) => !SIMULATED.includes(id))
    expect(held).toEqual(['sign', 'flare', 'adherence', 'gate'])
    for (const { id, falseAlarms } of RULES)
      expect([id, falseAlarms === null]).toEqual([id, held.includes(id)])
  })

  it('the rates in the table are those of the model', () => {
    const settings = { clients: 60, weeks: 13, seed: 7 }
    const heard = listen(settings, 'stable', Object.fromEntries(SIMULATED.map((id) => [id, tableRule(id)])))
    const months = (settings.clients * settings.weeks * 7) / 30.4
    for (const { id, falseAlarms } of RULES) {
      if (falseAlarms === null) continue
      // episodes are counted: four times the spread of a count, and what rounding hides
      const chance = 4 * Math.sqrt(falseAlarms / months) + 0.005
      expect(Math.abs(perMonth(heard[id]!) - falseAlarms), id).toBeLessThan(chance)
    }
  }, 60_000)
})
