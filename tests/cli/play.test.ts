import { mkdtempSync, readdirSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { run } from '../../src/cli/play.ts'

const SCENARIO = `title: Two quiet days
practice: { zone: Europe/Lisbon, region: PT, digest: "Tue 18:00" }
start: 2026-03-02
days: 3
clients:
  - ref: heron
    prompt: "08:00"
    side: left
    plan: { sessions: 1, rungs: { extension: 1 } }
    days: { 1: "1 calf 4, no signs" }
expect:
  - { day: 1, to: "client:heron", kind: receipt, count: 1 }
  - { day: 3, to: "client:heron", kind: prompt, count: 2 }
`
const folder = mkdtempSync(join(tmpdir(), 'ebbline-cli-'))
const file = (name: string, text: string): string => {
  writeFileSync(join(folder, name), text)
  return join(folder, name)
}

async function ebb(...args: string[]) {
  const out: string[] = []
  const err: string[] = []
  const io = {
    stdin: process.stdin,
    out: (line: string) => out.push(line),
    err: (line: string) => err.push(line),
  }
  const code = await run(args, io as never)
  return { code, out, err: err.join('\n') }
}

describe('ebb play', () => {
  it('prints a message a line and the end, and names what did not come', async () => {
    const { code, out, err } = await ebb(file('a.yaml', SCENARIO), '--json', '--direct', '--out', folder)
    expect(code).toBe(1)
    expect(err).toMatch(/a\.yaml:13: expected 2 prompt to client:heron on day 3 \(2026-03-04\), found 1/)
    const lines = out.map((line) => JSON.parse(line))
    expect(lines.slice(0, -1).every((line) => typeof line.kind === 'string')).toBe(true)
    expect(lines.at(-1)).toMatchObject({ end: true, checks: { passed: 1 }, clients: [{ ref: 'heron' }] })
    const picture = lines.find((line) => line.kind === 'digest').picture
    expect(readdirSync(folder)).toContain(picture)
  }, 60_000)

  it('stops after a day, by number or date, and looks only at what is expected until then', async () => {
    const name = file('b.yaml', SCENARIO)
    for (const until of ['2', '2026-03-03']) {
      const { code, out } = await ebb(name, '--json', '--direct', '--until', until)
      expect(code).toBe(0)
      const days = out.slice(0, -1).map((line) => JSON.parse(line).day)
      expect(days.at(-1)).toBe('2026-03-03')
    }
  }, 60_000)

  it('tells the play in words, with the digests at the end', async () => {
    const { out } = await ebb(file('c.yaml', SCENARIO), '--direct')
    const text = out.join('\n')
    expect(text).toContain('== Day 1, Mon 2 Mar')
    expect(text).toContain('08:30  heron: “1 calf 4, no signs”')
    expect(text.indexOf('== Digests')).toBeGreaterThan(text.indexOf('== Day 3'))
    expect(text).toMatch(/heron: active; 1 day on record/)
    expect(text).toContain('1 of 2 expectations met')
  }, 60_000)

  it.each([
    [[], 'Name a scenario file'],
    [['a.yaml', 'b.yaml'], 'One scenario at a time'],
    [['nowhere.yaml'], 'nowhere.yaml cannot be read (ENOENT)'],
    [['a.yaml', '--loud'], '--loud'],
  ])('%j is wrong use', async (args, words) => {
    const { code, err } = await ebb(...args)
    expect(code).toBe(2)
    expect(err).toContain(words)
  })

  it('refuses a file with a mistake, by name and line', async () => {
    const { code, err } = await ebb(file('d.yaml', SCENARIO.replace('prompt:', 'promt:')))
    expect(code).toBe(2)
    expect(err).toContain('d.yaml:7: unknown key “promt”; allowed: ref,')
  })

  it('refuses a day outside the run', async () => {
    const { code, err } = await ebb(file('e.yaml', SCENARIO), '--until', '9')
    expect(code).toBe(2)
    expect(err).toContain('a day from 1 to 3')
  })

  it('says that a fault of the chat needs the stand-in', async () => {
    const { code, err } = await ebb(file('g.yaml', `${SCENARIO}faults: { 2: { chat: down } }\n`), '--direct')
    expect(code).toBe(2)
    expect(err).toContain('leave out --direct')
  })

  it('refuses a database that cannot be used', async () => {
    const { code, err } = await ebb(file('h.yaml', SCENARIO), '--direct', '--database', 'mysql://x/y')
    expect(code).toBe(2)
    expect(err).toMatch(/file:|postgresql/)
  })

  it('refuses a database that holds a play already', async () => {
    const args = [
      file('i.yaml', SCENARIO),
      '--direct',
      '--until',
      '2',
      '--database',
      `file:${join(folder, 'i.db')}`,
    ]
    expect((await ebb(...args)).code).toBe(0)
    expect(await ebb(...args)).toMatchObject({
      code: 2,
      err: expect.stringContaining('holds a play already'),
    })
  }, 60_000)
})
