import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { ADVICE_IDS, type AdviceId } from '../../../src/domain/ladder/advice.ts'
import { conflictsOf, liftOpens, type PlanFacts } from '../../../src/domain/ladder/conflicts.ts'
import { readLadderFile } from '../../../src/domain/ladder/ladder-file.ts'
import { LADDERS, ladderOf, lastRung } from '../../../src/domain/ladder/ladders.ts'
import { isMoreThan, readLoad } from '../../../src/domain/ladder/load.ts'
import { LADDER_IDS, type Rungs } from '../../../src/domain/ladder/plan.ts'
import type { SignId } from '../../../src/domain/signs/catalogue.ts'
import { day, historyDay } from '../rules/build.ts'
import { BALANCE } from './balance.ts'

const own = readLadderFile(BALANCE)
if (!own.ok) throw new Error('the ladder of the tests cannot be read')
const ladders = [...LADDERS, ...own.ladders.map(({ ladder }) => ladder)]

const NOTHING = { eases: 'extension', risks: [] as string[], surgery: false, known: [] as SignId[] }
const found = (
  rungs: Rungs,
  more: Partial<PlanFacts> = {},
  screened: Partial<typeof NOTHING> = {},
): string[] =>
  conflictsOf({
    ladders,
    rungs,
    before: {},
    loadsBefore: {},
    loads: {},
    planIsYoung: false,
    checked: [],
    liftOpens: false,
    alarm: false,
    ...more,
    screened: { ...NOTHING, ...screened },
  }).map(({ id, ladder, rung }) => `${id} ${ladder}:${rung}`)

describe('what a plan itself brings up', () => {
  it('nothing where each ladder begins at its first rung, needs no band and the screening says nothing', () => {
    expect(found({ settle: 1, extension: 1, glide: 1, open: 1, rotator: 1, 'extend-hip': 1 })).toEqual([])
  })

  it('a rung above the next one, be the ladder new or known', () => {
    expect(found({ extension: 2 })).toEqual(['rung-before extension:2'])
    expect(found({ extension: 3 }, { before: { extension: 1 } })).toEqual(['rung-before extension:3'])
    expect(found({ extension: 3 }, { before: { extension: 2 } })).toEqual([])
    expect(found({ extension: 1 }, { before: { extension: 3 } })).toEqual([])
  })

  it('lifting before its own conditions hold, said once', () => {
    expect(found({ lift: 1 })).toEqual(['lift-opening lift:1'])
    expect(found({ lift: 1 }, { liftOpens: true })).toEqual([])
    expect(found({ lift: 1 }, { before: { lift: 1 } })).toEqual([])
  })

  it('a step up under an alarm, and none of what stays or goes down', () => {
    expect(found({ extension: 2 }, { alarm: true, before: { extension: 1 } })).toEqual([
      'open-alarm extension:2',
    ])
    expect(found({ extension: 1, glide: 1 }, { alarm: true, before: { extension: 2, glide: 1 } })).toEqual([])
  })

  it('a band whose anchor nobody has checked', () => {
    expect(found({ unload: 1 })).toEqual(['anchor-check unload:1'])
    expect(found({ unload: 1 }, { before: { unload: 1 } })).toEqual(['anchor-check unload:1'])
    expect(found({ unload: 1 }, { checked: ['unload'] })).toEqual([])
    expect(found({ balance: 2 }, { before: { balance: 1 } })).toEqual(['anchor-check balance:2'])
  })

  it('a weight without a load, and one that grows twice in a week', () => {
    const before = { lift: 2 }
    expect(found({ lift: 2 }, { before })).toEqual(['no-load lift:2'])
    expect(found({ lift: 2 }, { before, loads: { 'lift:2': '5 kg' } })).toEqual([])
    const loads = { before, loadsBefore: { 'lift:2': '5 kg' }, loads: { 'lift:2': '7.5 kg' } }
    expect(found({ lift: 2 }, { ...loads, planIsYoung: true })).toEqual(['load-step lift:2'])
    expect(found({ lift: 2 }, loads)).toEqual([])
    expect(found({ lift: 2 }, { ...loads, loads: { 'lift:2': '4 kg' }, planIsYoung: true })).toEqual([])
  })
})

describe('what the screening brings up', () => {
  const cases: [AdviceId, Rungs, Partial<typeof NOTHING>, Rungs][] = [
    ['eases-forward', { extension: 1 }, { eases: 'flexion' }, { settle: 1, glide: 1, open: 1 }],
    ['pregnancy-prone', { settle: 1 }, { risks: ['pregnancy'] }, { open: 1 }],
    ['pregnancy-supine', { glide: 1 }, { risks: ['pregnancy'] }, { open: 1 }],
    ['pregnancy-load', { lift: 2 }, { risks: ['pregnancy'] }, { lift: 1 }],
    ['bone', { open: 1 }, { risks: ['osteoporosis'] }, { settle: 1, extension: 1, glide: 1 }],
    ['bone', { lift: 1 }, { risks: ['long-steroids'] }, { 'extend-hip': 1 }],
    ['cancer-load', { lift: 3 }, { risks: ['cancer'] }, { lift: 1 }],
    ['fall-load', { lift: 3 }, { risks: ['recent-fall'] }, { extension: 1 }],
    ['surgery', { extension: 3 }, { surgery: true }, { extension: 1, glide: 1 }],
    ['blood-band', { unload: 1 }, { risks: ['anticoagulants'] }, { glide: 1 }],
    ['numb-band', { unload: 1 }, { known: ['new-numbness'] }, { glide: 1 }],
    ['weak-leg', { lift: 1 }, { known: ['leg-weakness'] }, { glide: 1 }],
    ['own-ladder', { balance: 1 }, { risks: ['immune'] }, { settle: 1, lift: 1 }],
  ]

  it.each(cases)('%s at %j for %j, not at %j', (id, at, screened, notAt) => {
    const [ladder] = Object.keys(at)
    expect(found(at, {}, screened)).toContain(`${id} ${ladder}:${at[ladder!]}`)
    expect(found(notAt, {}, screened).filter((one) => one.startsWith(`${id} `))).toEqual([])
    expect(found(at).filter((one) => one.startsWith(`${id} `))).toEqual([])
  })

  it('has a case for every reason', () => {
    expect([...new Set(cases.map(([id]) => id))].sort()).toEqual([...ADVICE_IDS].sort())
  })

  it('does not come again where a ladder stays or goes down', () => {
    expect(found({ extension: 1 }, { before: { extension: 2 } }, { eases: 'flexion' })).toEqual([])
  })
})

it('is never less for a client of more risks, and never about a ladder that is not asked for', () => {
  const rungs = fc.dictionary(fc.constantFrom(...LADDER_IDS), fc.integer({ min: 1, max: 2 }))
  const risks = fc.subarray(['cancer', 'osteoporosis', 'pregnancy', 'recent-fall', 'anticoagulants'])
  fc.assert(
    fc.property(rungs, risks, risks, (wanted, some, more) => {
      const few = found(wanted, {}, { risks: some })
      expect(found(wanted, {}, { risks: [...some, ...more] })).toEqual(expect.arrayContaining(few))
      for (const one of few) expect(Object.keys(wanted)).toContain(one.split(' ')[1]!.split(':')[0])
    }),
  )
})

describe('lifting opens', () => {
  const rungs = { extension: 3, 'extend-hip': lastRung(ladderOf('extend-hip')!) }
  const calm = (pain: number, count = 7) =>
    Array.from({ length: count }, (_, n) => historyDay(n + 1, { reach: 'back', pain, rungs }))

  it('after 7 calm answered days, with bend back and hip lift at their last', () => {
    expect(liftOpens(calm(3), rungs, day(7), LADDERS)).toBe(true)
    expect(liftOpens(calm(4), rungs, day(7), LADDERS)).toBe(false)
    expect(liftOpens(calm(3, 6), rungs, day(6), LADDERS)).toBe(false)
    expect(liftOpens(calm(3), { ...rungs, extension: 2 }, day(7), LADDERS)).toBe(false)
    expect(liftOpens([], rungs, day(7), LADDERS)).toBe(false)
  })
})

describe('a load', () => {
  it.each([
    ['5 kg', '5 kg'],
    ['5kg', '5 kg'],
    ['7,5 Kilos bell', '7.5 kg bell'],
    ['10 lbs', '10 lb'],
    ['0 kg', null],
    ['500 kg', null],
    ['5', null],
    ['light', null],
    ['kg', null],
  ])('%j is %j', (text, load) => {
    expect(readLoad(text)).toBe(load)
  })

  it('is heavier than another of the same unit alone', () => {
    expect(isMoreThan('7.5 kg bell', '5 kg')).toBe(true)
    expect(isMoreThan('5 kg', '5 kg')).toBe(false)
    expect(isMoreThan('10 lb', '5 kg')).toBe(false)
    expect(isMoreThan('heavy band', 'light band')).toBe(false)
  })
})
