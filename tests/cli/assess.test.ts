import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Readable } from 'node:stream'
import { describe, expect, it } from 'vitest'
import * as assess from '../../src/cli/assess.ts'
import * as replay from '../../src/cli/replay.ts'
import { addDays } from '../../src/domain/day.ts'

const dir = mkdtempSync(join(tmpdir(), 'diary-'))
let files = 0
function fileOf(text: string): string {
  files += 1
  const path = join(dir, `${files}.csv`)
  writeFileSync(path, text)
  return path
}

async function ran(verb: Pick<typeof assess, 'run'>, args: string[], stdin = '') {
  const out: string[] = []
  const err: string[] = []
  const io = {
    stdin: Readable.from([stdin]),
    out: (l: string) => void out.push(l),
    err: (l: string) => void err.push(l),
  }
  const code = await verb.run(args, io)
  return { code, out, err }
}

const HEAD = 'date,sessions,planned,reach,pain,signs,note'
const START = '2026-03-02'
/** One row a day: reach and pain; null is a day without a row. */
const diary = (days: readonly ([string, number] | null)[], facts: readonly string[] = []): string =>
  [
    ...facts,
    HEAD,
    ...days.flatMap((d, n) => (d === null ? [] : [`${addDays(START, n)},2,2,${d[0]},${d[1]},none,`])),
  ].join('\n')
const calm = Array<[string, number]>(14).fill(['thigh', 3])

describe('ebb assess', () => {
  it('prints one object with the names in their binding order', async () => {
    const { code, out, err } = await ran(assess, [fileOf(diary(calm, ['# baseline: calf 6'])), '--json'])
    expect({ code, err, lines: out.length }).toEqual({ code: 0, err: [], lines: 1 })
    const a = JSON.parse(out[0]!)
    expect(Object.keys(a).join()).toBe('on,direction,pain,reach,adherence,flags,proposal,reasons')
    expect(Object.keys(a.pain).join()).toBe(
      'median7,medianBaseline,change,percent,meaningful,slopePerWeek,ci,p,n',
    )
    expect(Object.keys(a.reach).join()).toBe('median7,baseline,change,slopePerWeek,p,path')
    expect(Object.keys(a.adherence).join()).toBe('done,planned,percent,low,high,replies,days')
    expect(a).toMatchObject({
      on: '2026-03-15',
      direction: 'centralising',
      pain: {
        median7: 3,
        medianBaseline: 6,
        change: -3,
        percent: -50,
        meaningful: true,
        slopePerWeek: 0,
        n: 14,
      },
      reach: { median7: 3, baseline: 5, change: -2, path: ['thigh', 'thigh'] },
      // Wilson interval of 14 of 14: low 1 / (1 + z^2 / n), from memory of the formula
      adherence: { done: 14, planned: 14, percent: 100, low: 78.5, high: 100, replies: 7, days: 7 },
      proposal: 'none',
      reasons: [],
    })
    expect(a.flags).toHaveLength(1)
    expect(Object.keys(a.flags[0]).join()).toBe('rule,level,day,why,source')
    expect(a.flags[0].rule).toBe('meaningful')
  })

  it('gives null where there is too little', async () => {
    const { out } = await ran(assess, ['-', '--json'], `${HEAD}\n2026-03-02,,2,,,none,`)
    expect(JSON.parse(out[0]!)).toMatchObject({
      direction: 'unclear',
      pain: {
        median7: null,
        medianBaseline: null,
        change: null,
        percent: null,
        meaningful: null,
        slopePerWeek: null,
        ci: null,
        p: null,
        n: 0,
      },
      reach: { median7: null, baseline: null, change: null, slopePerWeek: null, p: null, path: [] },
      adherence: { done: 0, planned: 0, percent: null, low: null, high: null, replies: 0, days: 1 },
      flags: [],
      proposal: 'none',
    })
  })

  it('takes the date asked for and looks at nothing after it', async () => {
    const file = fileOf(diary([...calm, ['foot', 9], ['foot', 9]]))
    const before = JSON.parse((await ran(assess, [file, '--json', '--on', '2026-03-15'])).out[0]!)
    expect(before).toMatchObject({ on: '2026-03-15', proposal: 'none', flags: [] })
    const after = JSON.parse((await ran(assess, [file, '--json'])).out[0]!)
    expect(after).toMatchObject({ proposal: 'ease-back', reasons: ['reach-spread'] })
    expect(after.flags.map((f: { rule: string; day: string }) => [f.rule, f.day])).toEqual([
      ['reach-spread', '2026-03-16'],
      ['below-knee', '2026-03-16'],
      ['pain-up', '2026-03-16'],
      ['pain-severe', '2026-03-17'],
      ['regain', '2026-03-17'],
    ])
  })

  it('names rows that cannot be right with line and mend, assesses the rest and ends in 1', async () => {
    const { code, out, err } = await ran(assess, [
      fileOf(`${diary(calm)}\n2026-03-16,2,2,calf,12,,`),
      '--json',
    ])
    expect(code).toBe(1)
    expect(err).toEqual(['line 16: pain must be a whole number from 0 to 10, got "12".'])
    expect(JSON.parse(out[0]!).on).toBe('2026-03-15')
  })

  it('ends in 2 with the mend for wrong use', async () => {
    const wrong = async (...args: string[]) => {
      const { code, out, err } = await ran(assess, args)
      expect({ code, out }).toEqual({ code: 2, out: [] })
      return err.join()
    }
    expect(await wrong()).toContain('Name one file')
    expect(await wrong('no-such-file.csv')).toContain('Check the name')
    expect(await wrong(fileOf(diary(calm)), '--on', '2026-02-30')).toContain('2026-02-30')
    expect(await wrong(fileOf('no header here'))).toContain('header')
    expect(await wrong(fileOf(HEAD))).toContain('no day')
    expect(await wrong('--nonsense')).toContain('--help')
  })

  it('says it in words without --json', async () => {
    const { out } = await ran(assess, [fileOf(diary([...calm, ['foot', 3]]))])
    expect(out[0]).toBe('2026-03-16: peripheralising. Proposal: ease-back because of reach-spread.')
    expect(out.join('\n')).toContain('Reach foot on Mon 16 Mar')
  })
})

describe('ebb replay', () => {
  it('gives every day, those without a row too, with what was raised, what closed and the proposal', async () => {
    const after = Array<[string, number]>(7).fill(['thigh', 3])
    const days: ([string, number] | null)[] = [...calm, ['calf', 3], null, ...after]
    const { code, out } = await ran(replay, [fileOf(diary(days)), '--json'])
    expect(code).toBe(0)
    const lines = out.map((line) => JSON.parse(line))
    expect(lines).toHaveLength(23)
    expect(Object.keys(lines[0]).join()).toBe('day,raised,closed,proposal')
    const told = lines.filter((l) => l.raised.length + l.closed.length > 0)
    expect(
      told.map((l) => [l.day, l.raised.map((f: { rule: string }) => f.rule), l.closed, l.proposal]),
    ).toEqual([
      ['2026-03-16', ['below-knee'], [], 'hold'],
      ['2026-03-24', [], ['below-knee'], 'none'],
    ])
  })

  it('says on each day what assess says on it', async () => {
    const path = fileOf(diary([...calm, ['calf', 8], ['calf', 8], null, null, null, ['knee', 4]]))
    const { out } = await ran(replay, [path, '--json'])
    for (const { day, proposal } of out.map((line) => JSON.parse(line))) {
      const one = await ran(assess, [path, '--json', '--on', day])
      expect(JSON.parse(one.out[0]!).proposal).toBe(proposal)
    }
  })
})
