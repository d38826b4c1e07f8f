import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type LadderFileError, readLadderFile } from '../../../src/domain/ladder/ladder-file.ts'
import { LADDERS } from '../../../src/domain/ladder/ladders.ts'
import { drillText } from '../../../src/text/en/drills.ts'
import { BALANCE } from './balance.ts'

const errorsOf = (text: string): readonly LadderFileError[] => {
  const read = readLadderFile(text)
  return read.ok ? [] : read.errors
}
const changed = (from: string, to: string): string => {
  expect(BALANCE).toContain(from)
  return BALANCE.replace(from, to)
}

describe('a good file', () => {
  const file = readLadderFile(BALANCE)
  if (!file.ok) throw new Error(JSON.stringify(file.errors))
  const read = file.ladders[0]!

  it('gives the ladder as the eight of the house are given', () => {
    expect(read.name).toBe('Stand steady')
    expect(read.ladder).toMatchObject({ id: 'balance', number: 9 })
    expect(read.ladder.rungs[0]).toEqual({
      id: 'balance:1',
      dose: { reps: 3, holdSeconds: 20, easeSeconds: 10, sets: 1, timesADay: 2 },
      kit: ['a firm chair'],
      needs: [],
      side: 'each',
      loadPercent: null,
      leastDays: null,
    })
    expect(Object.keys(read.ladder.rungs[1]!).sort()).toEqual(Object.keys(LADDERS[0]!.rungs[0]!).sort())
  })

  it('gives words for every drill, which the drill text shows', () => {
    expect(Object.keys(read.prose)).toEqual(read.ladder.rungs.map((drill) => drill.id))
    const text = drillText(read.ladder.rungs[1]!, 2, null, read.prose['balance:2'])
    expect(text).toContain('2 sets: 8 slow reps. Once a day.')
    expect(text).toContain('You need a loop band.')
    expect(text).toContain('Check first')
    expect(text).toMatch(/Stop if your back hurts more\.$/)
  })

  it('may be JSON as well', () => {
    const rung = {
      name: 'Stand',
      how: 'Stand tall.',
      dose: { reps: 1, hold: 30, times: 1 },
      cautions: 'Near a wall.',
      'stop-if': 'Stop if you sway.',
    }
    const json = JSON.stringify({ id: 'balance', number: 9, name: 'Steady', rungs: [rung] }, null, 2)
    expect(readLadderFile(json).ok).toBe(true)
  })
})

describe('several ladders in one file', () => {
  const indented = BALANCE.trimEnd()
    .split('\n')
    .map((line) => `    ${line}`)
    .join('\n')
    .replace('    id', '  - id')
  const two = (change: (second: string) => string) => `ladders:\n${indented}\n${change(indented)}\n`

  it('stand under one key', () => {
    const file = readLadderFile(two((s) => s.replace('id: balance', 'id: steps').replace('9', '10')))
    if (!file.ok) throw new Error(JSON.stringify(file.errors))
    expect(file.ladders.map(({ ladder }) => [ladder.id, ladder.number])).toEqual([
      ['balance', 9],
      ['steps', 10],
    ])
  })

  it('need an id and a number each', () => {
    expect(errorsOf(two((s) => s))).toEqual([
      { line: 21, where: 'ladders.2.id', message: expect.stringMatching(/balance is taken/) },
      { line: 22, where: 'ladders.2.number', message: expect.stringMatching(/9 is taken/) },
    ])
  })

  it.each(['ladders: []', 'ladders: {}', 'ladders:', 'ladders: 3'])('refuses %j', (text) => {
    expect(errorsOf(text)[0]).toMatchObject({ line: 1, where: 'ladders' })
  })
})

describe('a faulty file is refused with line, place and mend', () => {
  it.each([
    ['an id of the house', 'id: balance', 'id: glide', 1, 'id', /eight of the house/],
    ['an id with a space', 'id: balance', 'id: my balance', 1, 'id', /small letters/],
    ['a number of the house', 'number: 9', 'number: 2', 2, 'number', /from 9 to 99/],
    [
      'an unknown word',
      'name: Stand steady',
      'name: Stand steady\ncolour: red',
      4,
      'colour',
      /known are id, number/,
    ],
    [
      'a dose that is no number',
      'reps: 3',
      'reps: three',
      7,
      'rungs.1.dose.reps',
      /whole number from 1 to 50/,
    ],
    ['a hold past its range', 'hold: 20', 'hold: 6000', 7, 'rungs.1.dose.hold', /from 0 to 600/],
    ['a misspelt dose', 'sets: 2', 'set: 2', 14, 'rungs.2.dose.set', /known are reps, hold/],
    [
      'a band without its check',
      '    needs: [anchor-check]\n',
      '',
      12,
      'rungs.2.needs',
      /needs anchor-check/,
    ],
    ['an unknown side', 'side: each', 'side: left', 9, 'rungs.1.side', /one of none, sore, each/],
    ['a promise', 'Small steps first.', 'This is safe.', 18, 'rungs.2.cautions', /promise nothing/],
    ['a missing stop rule', '    stop-if: Stop if the leg gives way.\n', '', 5, 'rungs.1.stop-if', /missing/],
    ['a text too long', 'Small steps first.', 'x'.repeat(151), 18, 'rungs.2.cautions', /at most 150/],
    ['a key given twice', 'number: 9', 'number: 9\nnumber: 10', 3, 'file', /unique/],
    ['a second document', 'number: 9', 'number: 9\n---', 3, 'file', /one document a file/],
    ['a reference', 'number: 9', 'number: *nine', 2, 'file', /write the value out/],
  ])('%s', (_, from, to, line, where, message) => {
    const errors = errorsOf(changed(from, to))
    expect(errors).toContainEqual({ line, where, message: expect.stringMatching(message) })
  })

  it('names all faults at once, by line', () => {
    const errors = errorsOf(
      BALANCE.replace('number: 9', 'number: 900').replace('reps: 8', 'reps: 0').replace('each', 'x'),
    )
    expect(errors.map((error) => error.line)).toEqual([2, 9, 14])
  })

  it.each(['', '- a', '42', 'rungs: {}', '{"id": 3', '\t', 'a: [1'])('refuses %j', (text) => {
    expect(readLadderFile(text).ok).toBe(false)
  })

  it('refuses a file that is far too long', () => {
    expect(errorsOf(`${BALANCE}${'#'.repeat(128_000)}`)[0]?.message).toMatch(/more than 128000/)
  })

  it('refuses references that stand for gigabytes at once', () => {
    const rows = 'bcdefghij'
      .split('')
      .map((key, n) => `${key}: &${key} [${Array(9).fill(`*${'abcdefghi'[n]}`)}]`)
    expect(errorsOf(['a: &a [1]', ...rows].join('\n'))[0]?.line).toBe(2)
  })

  it('refuses brackets without end rather than fall over', () => {
    expect(readLadderFile('['.repeat(60_000)).ok).toBe(false)
  })
})

it('never throws on any text, and every error has a line within the file', () => {
  const mangled = fc
    .tuple(fc.nat(BALANCE.length), fc.nat(40), fc.string())
    .map(([at, length, junk]) => BALANCE.slice(0, at) + junk + BALANCE.slice(at + length))
  fc.assert(
    fc.property(fc.oneof(fc.string(), mangled), (text) => {
      const read = readLadderFile(text)
      if (read.ok) return
      expect(read.errors.length).toBeGreaterThan(0)
      const lineCount = text.split('\n').length
      for (const error of read.errors) {
        expect(error.line).toBeGreaterThanOrEqual(1)
        expect(error.line).toBeLessThanOrEqual(lineCount)
      }
    }),
    { numRuns: 300 },
  )
})
