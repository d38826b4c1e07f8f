import fc from 'fast-check'
import { expect, it } from 'vitest'
import { changeAgainst, meaningfulPain, substantialPain } from '../../../src/domain/trend/change.ts'

const pain = fc.integer({ min: 0, max: 10 })

it('change in points and percent; no percent of 0; nothing known, nothing said', () => {
  expect(changeAgainst(6, 4.5)).toEqual({ change: -1.5, percent: -25 })
  expect(changeAgainst(0, 3)).toEqual({ change: 3, percent: null })
  expect(changeAgainst(null, 3)).toBeNull()
  expect(changeAgainst(3, null)).toBeNull()
})

it('asks for 2 points and 30 % both', () => {
  expect(meaningfulPain(6, 4)).toBe(true)
  expect(meaningfulPain(2, 1)).toBe(false)
  expect(meaningfulPain(10, 8)).toBe(false)
  expect(meaningfulPain(10, 7)).toBe(true)
  expect(meaningfulPain(0, 0)).toBe(false)
  expect(meaningfulPain(null, 0)).toBe(false)
})

it('half is substantial where it is meaningful', () => {
  expect(substantialPain(6, 3)).toBe(true)
  expect(substantialPain(6, 4)).toBe(false)
  expect(substantialPain(2, 1)).toBe(false)
})

it('no worsening counts, and less pain never counts less', () => {
  fc.assert(
    fc.property(pain, pain, (baseline, now) => {
      if (now >= baseline) expect(meaningfulPain(baseline, now)).toBe(false)
      if (now > 0 && meaningfulPain(baseline, now)) expect(meaningfulPain(baseline, now - 1)).toBe(true)
      if (substantialPain(baseline, now)) expect(meaningfulPain(baseline, now)).toBe(true)
    }),
  )
})
