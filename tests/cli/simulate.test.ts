import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Readable } from 'node:stream'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { run } from '../../src/cli/simulate.ts'
import { progressBar } from '../../src/progress.ts'

async function ebb(...args: string[]) {
  const out: string[] = []
  const err: string[] = []
  const code = await run(args, {
    stdin: Readable.from([]),
    out: (line) => void out.push(line),
    err: (line) => void err.push(line),
  })
  return { code, out, err: err.join('\n') }
}

const FEW = ['--clients', '3', '--weeks', '8', '--seed', '7']
const folder = mkdtempSync(join(tmpdir(), 'ebbline-simulate-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))
function file(name: string, text: string): string {
  const path = join(folder, name)
  writeFileSync(path, text)
  return path
}

describe('ebb simulate', () => {
  let first: Awaited<ReturnType<typeof ebb>>
  beforeAll(async () => {
    first = await ebb(...FEW, '--json')
  })

  it('writes one object a line: the alarms, each rule, the weekly word and the coach', () => {
    expect(first.code).toBe(0)
    expect(first.err).toBe('')
    const rows = first.out.map((line) => JSON.parse(line))
    expect(rows.map(({ rule }) => rule)).toEqual([
      'alarms',
      'reach-spread',
      'below-knee',
      'pain-up',
      'pain-severe',
      'regain',
      'trend-pain',
      'trend-reach',
      'meaningful',
      'quiet',
      'plateau',
      'weekly-word',
      'coach',
    ])
    for (const { falseAlarms, detect } of rows.slice(0, -2)) {
      expect(Object.keys(falseAlarms)).toEqual(['stable', 'improving'])
      expect(Object.keys(detect)).toEqual(['pain+2', 'reach+1', 'reach+2', 'both'])
      for (const seen of Object.values(detect))
        expect(Object.keys(seen as object)).toEqual(['days', 'within7'])
    }
    expect(Object.keys(rows.at(-2).wrong)).toEqual(['pain', 'reach'])
    const { messages, about } = rows.at(-1)
    const sum = (Object.values(about) as number[]).reduce((a, b) => a + b, 0)
    expect(Math.abs(messages.stable - sum)).toBeLessThan(0.006)
  })

  it('gives the same bytes for the same seed, others for another', async () => {
    expect((await ebb(...FEW, '--json')).out).toEqual(first.out)
    expect((await ebb('--clients', '3', '--weeks', '8', '--seed', '8', '--json')).out).not.toEqual(first.out)
  })

  it('without --json a table in words', async () => {
    const { code, out } = await ebb('--clients', '2', '--weeks', '8', '--seed', '7')
    expect(code).toBe(0)
    expect(out[0]).toBe('2 people a course, 8 weeks, seed 7')
    expect(out.at(-2)).toMatch(/^The weekly word is wrong in \d+\.\d % \(pain\)/)
    expect(out.at(-1)).toMatch(/^The coach gets \d+\.\d\d messages per stable client-month/)
  })
})

describe('ebb simulate --rules', () => {
  it('measures the two alarms with other parameters; what is left out is as in the rules', async () => {
    const alarms = async (text: string) => {
      const { out } = await ebb(...FEW, '--json', '--rules', file('rules.json', text))
      return out.map((line) => JSON.parse(line))
    }
    const same = await alarms('{}')
    const calm = await alarms('{"pain": {"h": 30}, "reach": {"h": 30}}')
    expect(same.map(({ rule }) => rule)).toEqual(['alarms', 'reach-spread', 'pain-up'])
    expect(same[0].falseAlarms.stable).toBeGreaterThan(0)
    expect(calm[0].falseAlarms.stable).toBe(0)
    expect(
      await alarms('{"pain": {"k": 1, "h": 3.25, "need": 10}, "usual": {"days": 21, "gap": 5}}'),
    ).toEqual(same)
  })

  it.each([
    ['not JSON', '{pain', /is not JSON/],
    ['an unknown key', '{"pian": {}}', /pian/],
    ['a value out of range', '{"usual": {"gap": 0}}', /usual\.gap/],
  ])('%s: exit 2, named', async (_, text, says) => {
    const { code, out, err } = await ebb(...FEW, '--rules', file('bad.json', text))
    expect(code).toBe(2)
    expect(out).toEqual([])
    expect(err).toMatch(says)
  })

  it('a file that is not there: exit 2', async () => {
    const { code, err } = await ebb('--rules', join(folder, 'nowhere.json'))
    expect(code).toBe(2)
    expect(err).toMatch(/name a file that exists/)
  })
})

describe('wrong use', () => {
  it.each([
    [['--clients', '0'], /--clients takes a whole number, 1 or more, not "0"/],
    [['--weeks', '7'], /--weeks takes a whole number, 8 or more/],
    [['--seed', 'x'], /--seed takes a whole number/],
    [['--seed=-1'], /--seed takes a whole number/],
    [['--speed', '3'], /--speed/],
    [['more'], /more/],
  ])('%j: exit 2 with the mend', async (args, says) => {
    const { code, out, err } = await ebb(...args)
    expect(code).toBe(2)
    expect(out).toEqual([])
    expect(err).toMatch(says)
    expect(err).toMatch(/Usage: ebb simulate/)
  })
})

describe('the progress bar', () => {
  const draw = (isTTY: boolean): string[] => {
    const written: string[] = []
    const stream = { isTTY, write: (text: string) => written.push(text) > 0 } as unknown as NodeJS.WriteStream
    const bar = progressBar(stream)
    for (let done = 0; done <= 1000; done += 1) bar(done, 1000)
    return written
  }

  it('is drawn once a percent on a terminal and leaves nothing behind', () => {
    const written = draw(true)
    expect(written).toHaveLength(101)
    expect(written[50]).toMatch(/^\r\[#{15}\.{15}\] {2}50 %$/)
    expect(written.at(-1)).toMatch(/^\r +\r$/)
  })

  it('is silent elsewhere', () => {
    expect(draw(false)).toEqual([])
  })
})
