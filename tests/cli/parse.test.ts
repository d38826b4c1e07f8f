import { Readable } from 'node:stream'
import { describe, expect, it } from 'vitest'
import { run } from '../../src/cli/parse.ts'

async function parse(lines: Iterable<string>, args: string[] = []) {
  const out: string[] = []
  const err: string[] = []
  const code = await run(args, {
    stdin: Readable.from([...lines].map((line) => `${line}\n`)),
    out: (line) => void out.push(line),
    err: (line) => void err.push(line),
  })
  return { code, out, err }
}

describe('ebb parse', () => {
  it('gives the fields in their order', async () => {
    const { code, out } = await parse([
      '{"id": "x1", "text": "2 calf 4", "planned": 2, "zone": "Europe/Oslo", "now": "2026-03-04T19:10:00Z", "locale": "en", "asked": null, "promptDay": "2026-03-04"}',
    ])
    expect(code).toBe(0)
    expect(out).toEqual([
      '{"id":"x1","sessions":2,"reach":"calf","pain":4,"day":"2026-03-04","side":null,"signs":[],"denied":[],"care":"none","missing":[],"unsure":[],"intent":"checkin","others":[],"echo":"2 sessions, calf, pain 4"}',
    ])
  })

  it('takes the local date of the instant where no day of a prompt is given', async () => {
    const { out } = await parse(['{"text": "2 calf 4", "zone": "Asia/Tokyo", "now": "2026-03-04T19:10:00Z"}'])
    expect(JSON.parse(out[0]!)).toMatchObject({ day: '2026-03-05' })
    expect(JSON.parse(out[0]!)).not.toHaveProperty('id')
  })

  it('answers broken lines in their place and goes on', async () => {
    const { code, out } = await parse([
      'nonsense',
      '{"id": 7, "text": 4}',
      '{"text": "calf", "zone": "Moon/Base"}',
      '{"text": "calf", "now": "soon"}',
      '[]',
      '{"text": "foot 5"}',
    ])
    expect(code).toBe(0)
    const answers = out.map((line) => JSON.parse(line) as Record<string, unknown>)
    expect(answers.map((a) => 'error' in a)).toEqual([true, true, true, true, true, false])
    expect(answers[1]).toMatchObject({ id: 7 })
    expect(answers[5]).toMatchObject({ reach: 'foot', pain: 5 })
  })

  it('keeps the order of many lines', async () => {
    const lines = Array.from({ length: 3000 }, (_, id) => JSON.stringify({ id, text: '2 calf 4' }))
    const { out } = await parse(lines)
    expect(out.map((line) => (JSON.parse(line) as { id: number }).id)).toEqual(lines.map((_, id) => id))
  })

  it('waits for a slow reader', async () => {
    let waiting = 0
    let most = 0
    const stdin = Readable.from(Array.from({ length: 200 }, () => '{"text": "2 calf 4"}\n'))
    const out = async (): Promise<void> => {
      most = Math.max(most, ++waiting)
      await new Promise(setImmediate)
      waiting -= 1
    }
    expect(await run([], { stdin, out, err: () => {} })).toBe(0)
    expect(most).toBe(1)
  })

  it('scores a corpus', async () => {
    const file = new URL('../domain/reply/corpus/en.jsonl', import.meta.url).pathname
    const { code, out } = await parse([], ['--score', file])
    expect(code).toBe(0)
    expect(out.map((line) => (JSON.parse(line) as { part: string }).part).sort()).toEqual(['all', 'kept'])
  })

  it('names the mend on wrong use, and fails on a file that is not there', async () => {
    expect((await parse([], ['--what'])).code).toBe(2)
    const { code, err } = await parse([], ['--score', '/nowhere/at-all.jsonl'])
    expect(code).toBe(2)
    expect(err).toContain('The file /nowhere/at-all.jsonl cannot be read (ENOENT): check its name.')
  })
})
