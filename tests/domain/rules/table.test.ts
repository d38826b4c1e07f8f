import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { REACHES } from '../../../src/domain/reach.ts'
import { assess } from '../../../src/domain/rules/assess.ts'
import { RULE_IDS } from '../../../src/domain/rules/assessment.ts'
import { RULES } from '../../../src/domain/rules/table.ts'
import { LOOK_BACK_DAYS } from '../../../src/domain/rules/view.ts'
import { SIGN_IDS } from '../../../src/domain/signs/catalogue.ts'
import { ruleTexts } from '../../../src/text/en/rules.ts'
import { day, history } from './build.ts'

describe('the table of rules', () => {
  it('holds every rule once, with title, condition and source', () => {
    expect(RULES.map((rule) => rule.id).sort()).toEqual([...RULE_IDS].sort())
    for (const rule of RULES)
      for (const words of [rule.title, rule.looksAt, rule.condition, rule.source]) expect(words).not.toBe('')
  })

  it('looks back no further than 60 days, open signs aside', () => {
    for (const rule of RULES)
      if (rule.id !== 'sign') expect(rule.looksBack).toBeLessThanOrEqual(LOOK_BACK_DAYS)
  })

  it('has a line for the coach on each, and never promises that nothing is wrong', () => {
    for (const id of RULE_IDS) {
      expect(ruleTexts.coach[id]).toMatch(/\.$/)
      for (const words of [ruleTexts.coach[id], ruleTexts.client[id] ?? ''])
        expect(words).not.toMatch(/\b(safe|fine|all clear|diagnos)/i)
    }
  })

  it('makes a whole sentence of the figures of every flag', () => {
    const entry = fc.record({
      sessions: fc.integer({ min: 0, max: 2 }),
      reach: fc.constantFrom(...REACHES),
      pain: fc.integer({ min: 0, max: 10 }),
      signs: fc.oneof(
        { weight: 9, arbitrary: fc.constant([]) },
        { weight: 1, arbitrary: fc.subarray(SIGN_IDS, { maxLength: 1 }) },
      ),
      settled: fc.constantFrom(null, false),
      rungs: fc.constant({ extension: 1, lift: 0 }),
      comfort: fc.constant(true),
    })
    const seen = new Set<string>()
    fc.assert(
      fc.property(fc.array(fc.option(entry, { freq: 8 }), { minLength: 5, maxLength: 70 }), (list) => {
        const start = day(1)
        for (const n of [list.length - 3, list.length, list.length + 4]) {
          for (const flag of assess(history(list, { start }), day(n)).flags) {
            seen.add(flag.rule)
            expect(ruleTexts.why(flag)).toMatch(/^[A-Z0-9].*\.$/)
            expect(ruleTexts.why(flag)).not.toMatch(/NaN|undefined|null|not known/)
          }
        }
      }),
      { numRuns: 120 },
    )
    expect(seen.size).toBeGreaterThan(8)
  })
})
