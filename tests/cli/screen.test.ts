import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Readable } from 'node:stream'
import { describe, expect, it } from 'vitest'
import { run } from '../../src/cli/screen.ts'

async function screened(args: string[], input: string) {
  const out: string[] = []
  const err: string[] = []
  const code = await run(args, {
    stdin: Readable.from([input]),
    out: (line) => void out.push(line),
    err: (line) => void err.push(line),
  })
  return { code, lines: out.map((line) => JSON.parse(line)), err: err.join('\n') }
}

describe('ebb screen', () => {
  it('answers every line in its place, broken ones too', async () => {
    const input = [
      '{"id": "x1", "text": "numb when I wipe"}',
      'no JSON',
      '{"id": 7}',
      '{"text": "bladder fine", "locale": "en-GB"}',
    ].join('\n')
    const { code, lines } = await screened([], input)
    expect(code).toBe(0)
    expect(lines).toHaveLength(4)
    expect(lines[0]).toEqual({
      id: 'x1',
      signs: ['saddle-numbness'],
      denied: [],
      care: 'emergency',
      unsure: [],
      evidence: [{ sign: 'saddle-numbness', words: 'numb when I wipe', negated: false }],
    })
    expect(lines[1].error).toContain('not JSON')
    expect(lines[2].error).toContain('text')
    expect(lines[3]).toMatchObject({ signs: [], denied: ['bladder-change'], care: 'none' })
  })

  it('scores a file by part', async () => {
    const file = join(mkdtempSync(join(tmpdir(), 'ebbline-')), 'texts.jsonl')
    writeFileSync(
      file,
      '{"text": "can\'t pee", "signs": ["bladder-change"], "part": "kept"}\n{"text": "2 calf 4", "signs": [], "part": "kept"}\n',
    )
    const { code, lines } = await screened(['--score', file], '')
    expect(code).toBe(0)
    expect(lines).toHaveLength(1)
    expect(lines[0]).toMatchObject({ part: 'kept', texts: 2, wrong: 0 })
  })

  it('reads each line in its own language, the others in the one that is named', async () => {
    const input = '{"text": "no siento la entrepierna"}\n{"text": "numb when I wipe", "locale": "en"}\n'
    const { lines } = await screened(['--locale', 'es'], input)
    expect(lines.map(({ signs }) => signs)).toEqual([['saddle-numbness'], ['saddle-numbness']])
    const file = join(mkdtempSync(join(tmpdir(), 'ebbline-')), 'texts.jsonl')
    const scored = input.replaceAll('}', ', "signs": ["saddle-numbness"]}')
    writeFileSync(file, scored)
    const { lines: parts } = await screened(['--score', file, '--locale', 'es'], '')
    expect(parts).toMatchObject([{ part: 'all', texts: 2, wrong: 0 }])
  })

  it('names the line of a broken file', async () => {
    const file = join(mkdtempSync(join(tmpdir(), 'ebbline-')), 'texts.jsonl')
    writeFileSync(file, '{"text": "a", "signs": []}\n{"text": "b", "signs": ["hiccups"]}\n')
    const { code, err } = await screened(['--score', file], '')
    expect(code).toBe(1)
    expect(err).toContain('line 2')
  })

  it('refuses what it does not know', async () => {
    expect((await screened(['--loud'], '')).code).toBe(2)
  })
})
