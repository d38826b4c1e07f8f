import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Readable } from 'node:stream'
import { describe, expect, it } from 'vitest'
import { help, run } from '../src/cli/ladder.ts'
import { SettingsError } from '../src/config.ts'
import { readOwnLadders } from '../src/own-ladders.ts'
import { BALANCE } from './domain/ladder/balance.ts'

const folder = mkdtempSync(join(tmpdir(), 'ebbline-ladders-'))
const fileWith = (name: string, text: string): string => {
  const path = join(folder, name)
  writeFileSync(path, text)
  return path
}
const good = fileWith('good.yaml', BALANCE)
const faulty = fileWith(
  'faulty.yaml',
  BALANCE.replace(/^ *cautions: Stand.*\n/m, '').replace('reps: 8', 'reps: 0'),
)

const problemOf = (path: string): string => {
  try {
    readOwnLadders(path)
  } catch (error) {
    expect(error).toBeInstanceOf(SettingsError)
    return (error as Error).message
  }
  throw new Error('nothing was refused')
}

async function checked(...args: string[]) {
  const out: string[] = []
  const err: string[] = []
  const code = await run(args, {
    stdin: Readable.from([]),
    out: (line) => void out.push(line),
    err: (line) => void err.push(line),
  })
  return { code, out: out.join('\n'), err: err.join('\n') }
}

describe('the ladder file that the environment names', () => {
  it('may be left out, and is read where it can be used', () => {
    expect(readOwnLadders(null)).toEqual([])
    expect(readOwnLadders(good).map(({ ladder }) => ladder.id)).toEqual(['balance'])
  })

  it('is refused with file, line and what is allowed', () => {
    const lines = problemOf(faulty).split('\n')
    expect(lines[0]).toMatch(/EBBLINE_LADDERS/)
    expect(lines[1]).toBe(`${faulty}:5: rungs.1.cautions: missing: words are needed`)
    expect(lines[2]).toBe(`${faulty}:13: rungs.2.dose.reps: a whole number from 1 to 50 is needed`)
  })

  it('is refused where it cannot be read', () => {
    expect(problemOf(join(folder, 'nowhere.yaml'))).toMatch(/cannot be read \(ENOENT\): check its name/)
  })
})

describe('ebb ladder', () => {
  it('prints every drill as a client reads it, with cautions and when to stop', async () => {
    const { code, out } = await checked(good)
    expect(code).toBe(0)
    expect(out).toContain('Stand steady (balance, number 9)')
    expect(out).toMatch(
      /2\. Banded step\n2 sets: 8 slow reps\. Once a day\.\nYou need a loop band\.\nCheck first/,
    )
    expect(out).toMatch(/Small steps first\.\nStop if your back hurts more\.\n\nStop at once if/)
  })

  it('names each fault with its line', async () => {
    const { code, err } = await checked(faulty)
    expect(code).toBe(1)
    expect(err.split('\n')).toHaveLength(2)
    expect(err).toContain(`${faulty}:5: rungs.1.cautions`)
  })

  it('says what it wants', async () => {
    expect((await checked()).code).toBe(2)
    expect(await checked(join(folder, 'nowhere.yaml'))).toMatchObject({
      code: 2,
      err: expect.stringMatching(/ENOENT/),
    })
  })

  it('shows a file in its help that can be used', () => {
    const sample = help.slice(help.indexOf('  id: '), help.indexOf('\n\nExit')).replace(/^ {2}/gm, '')
    const path = fileWith('help.yaml', sample)
    expect(readOwnLadders(path)[0]?.name).toBe('Stand steady')
  })
})
