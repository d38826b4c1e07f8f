import { execFileSync } from 'node:child_process'
import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { pino } from 'pino'
import { describe, expect, it } from 'vitest'
import type { Cast } from '../../src/rehearsal/player/cast.ts'
import { leaksIn } from '../../src/rehearsal/player/log-leaks.ts'
import { loadScenario } from '../../src/rehearsal/scenario/index.ts'
import { lastLine, safeError } from '../../src/safe-error.ts'
import { onBothDatabases } from '../store/databases.ts'
import { client, practice } from '../store/samples.ts'

const SRC = fileURLToPath(new URL('../../src/', import.meta.url))
const REPLY = '2 sessions, tingling down to my calf, pain 7\n    at rest (worse:10:10)'

const script = loadScenario(
  'scenario.yaml',
  `practice: { zone: Europe/Lisbon, region: PT }
start: 2026-03-02
days: 1
clients:
  - ref: heron
    prompt: "08:00"
    days: { 1: "2 calf 4, no signs" }
`,
)
const cast = { clients: new Map([['heron', '700000000000000007']]) } as unknown as Cast

/** Every play through the chat looks for these in the bot's log (`src/rehearsal/player/log-leaks.ts`). */
describe('what a play looks for in the log', () => {
  const logged = (fields: object, sentence: string): string[] => {
    const lines: string[] = []
    pino({ level: 'trace', base: null }, { write: (line: string) => void lines.push(line) }).trace(
      fields,
      sentence,
    )
    return leaksIn(lines, script, cast)
  }

  it.each([
    ['a reply', { said: '2 calf 4, no signs' }, 'heard'],
    ['a reply in the sentence', {}, 'cannot read “2 calf 4, no signs”'],
    ['a zone word', { reach: 'shin' }, 'read'],
    ['a zone word in Spanish', { reach: 'pantorrilla' }, 'read'],
    ['a pain value', { day: { pain: 4 } }, 'read'],
    ['a pain value in the sentence', {}, 'pain of 4'],
    ['an alias', { key: 'prompt/heron/2026-03-02' }, 'sent'],
    ['a client by the platform’s id', { user: '700000000000000007' }, 'sent'],
    ['a sign', { sign: 'saddle-numbness' }, 'told'],
  ])('finds %s', (_, fields, sentence) => expect(logged(fields, sentence)).toHaveLength(1))

  it('finds nothing in what the log may tell', () => {
    const error = safeError(new Error(REPLY))
    expect(logged({ error, server: '100', kind: 'words' }, 'an event could not be handled')).toEqual([])
    expect(logged({ server: '100' }, 'the bot is in a server, for the first time or again')).toEqual([])
  })
})

describe('an error that quotes what somebody wrote', () => {
  it('keeps a place in the code and loses the words, a line that looks like a place among them', () => {
    const told = JSON.stringify(safeError(new Error(REPLY)))
    expect(told).toContain('logs.test.ts')
    expect(told).not.toMatch(/calf|rest|pain/)
    expect(safeError(Object.assign(new Error(''), { code: 'X' })).frames).not.toEqual([])
  })

  it('goes into no log call of the program but by its kind', () => {
    const calls = readdirSync(SRC, { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.ts') && !name.startsWith('generated'))
      .flatMap((name) =>
        [
          ...readFileSync(SRC + name, 'utf8').matchAll(
            /\blog\.(?:trace|debug|info|warn|error|fatal)\([^;]*?\)\n/g,
          ),
        ].map(([call]) => `${name}: ${call}`),
      )
    expect(calls.length).toBeGreaterThan(10)
    expect(
      calls.filter((call) => /\berr\b|\bas Error\b|\{ error[ ,}]|\.message\b|\.stack\b|String\(/.test(call)),
    ).toEqual([])
  })

  it('is not told by a program that fails, either', () => {
    const script = `import { endOnFault } from './src/safe-error.ts'; endOnFault(); throw new Error(process.argv.at(-1))`
    const run = () =>
      execFileSync(process.execPath, ['--import', 'tsx', '--input-type=module', '-e', script, '--', REPLY], {
        cwd: fileURLToPath(new URL('../..', import.meta.url)),
        stdio: 'pipe',
      })
    const error = (() => {
      try {
        run()
        return null
      } catch (caught) {
        return caught as { status: number; stderr: Buffer }
      }
    })()
    expect(error?.status).toBe(1)
    expect(String(error?.stderr)).toMatch(/^Ebbline failed by a fault of its own: Error\n/)
    expect(String(error?.stderr)).not.toMatch(/calf|pain/)
  })
})

onBothDatabases('a statement that fails with a reply in it', (bench) => {
  it('leaves nothing of the reply in log or standard error', async () => {
    const { store } = await bench.open()
    const note = { id: 'n', clientId: 'nobody', at: new Date(0), by: '<@1>', text: REPLY }
    const ways: (() => Promise<unknown>)[] = [
      // a row that refers to nobody
      () => store.transaction((tx) => tx.apply({ changes: [{ put: 'note', row: note }], postings: [] })),
      // a value of the wrong kind beside it, which the client refuses
      () =>
        store.transaction((tx) =>
          tx.apply({ changes: [{ put: 'note', row: { ...note, at: REPLY as never } }], postings: [] }),
        ),
      // the same alias twice
      () =>
        store.transaction((tx) =>
          tx.apply({
            changes: [
              { put: 'practice', row: practice },
              { put: 'client', row: client('heron', { id: 'a', zone: REPLY }) },
              { put: 'client', row: client('heron', { id: 'b', zone: REPLY }) },
            ],
            postings: [],
          }),
        ),
      // a column that is not there
      () =>
        store.transaction((tx) =>
          tx.apply({ changes: [{ put: 'note', row: { ...note, [REPLY]: 1 } as never }], postings: [] }),
        ),
    ]
    for (const way of ways) {
      const error = await way().then(
        () => null,
        (caught: unknown) => caught,
      )
      expect(error).toBeInstanceOf(Error)
      const lines: string[] = []
      const log = pino({ level: 'trace', base: null }, { write: (line: string) => void lines.push(line) })
      log.error({ error: safeError(error), kind: 'words' }, 'an event could not be handled')
      expect(lines.join('') + lastLine(error)).not.toMatch(/calf|tingling|pain 7/)
      expect(lines.join('')).toMatch(/"frames":\["at /)
    }
  })
})
