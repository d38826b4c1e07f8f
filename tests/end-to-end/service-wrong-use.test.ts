import { once } from 'node:events'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { type AddressInfo, createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import pino from 'pino'
import { afterAll, describe, expect, it } from 'vitest'
import { Platform } from '../../src/rehearsal/platform/index.ts'
import { startService } from '../../src/service.ts'
import { chat as texts } from '../../src/text/en/chat.ts'
import { run } from './service-process.ts'

const folder = mkdtempSync(join(tmpdir(), 'ebbline-wrong-use-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const notADatabase = join(folder, 'words.db')
writeFileSync(
  notADatabase,
  'Words, and enough of them that the driver looks at the head of the file. '.repeat(20),
)

const TOKEN = { DISCORD_TOKEN: 'some.token.here', DISCORD_API: 'http://127.0.0.1:9/api' }
const ONE_SENTENCE = /^[^\n]+\.\n$/

/** Starts the bot with this as a process and gives how it ended. */
const start = (environment: Record<string, string>) =>
  run('src/main.ts', [], {
    ...TOKEN,
    DATABASE_URL: `file:${join(folder, 'good.db')}`,
    ...environment,
  }).ended()

/** The same within this process: quicker, and what is thrown is what the process would say. */
const problemOf = (databaseUrl: string, platform = { token: 'some.token.here', apiUrl: TOKEN.DISCORD_API }) =>
  startService({
    databaseUrl,
    token: platform.token,
    api: platform.apiUrl,
    now: () => new Date(),
    log: pino({ enabled: false }),
  }).then(
    () => 'it started',
    (error: Error) => `${error.name}: ${error.message}`,
  )

describe('the bot started wrongly ends with one sentence that names the mend', () => {
  it.each([
    ['settings', { DATABASE_URL: 'mysql://db/ebb' }, 2, /DATABASE_URL must be file:PATH/],
    [
      'a database',
      { DATABASE_URL: `file:${notADatabase}` },
      1,
      /is not a SQLite database: choose another in/,
    ],
  ])(
    '%s that cannot be used',
    async (_, environment: Record<string, string>, status, mend) => {
      const ended = await start(environment)
      expect(ended.err).toMatch(mend)
      expect(ended.err).toMatch(ONE_SENTENCE)
      expect(ended).toMatchObject({ code: status, out: '' })
    },
    40_000,
  )

  it('a port for its health that is taken, though all else would do', async () => {
    const platform = new Platform()
    await platform.start()
    const other = createServer().listen(0, '127.0.0.1')
    await once(other, 'listening')
    const { port } = other.address() as AddressInfo
    try {
      const ended = await start({
        DISCORD_TOKEN: platform.token,
        DISCORD_API: platform.apiUrl,
        EBBLINE_HEALTH_PORT: String(port),
      })
      expect(ended).toMatchObject({ code: 2, out: '' })
      expect(ended.err).toMatch(/EBBLINE_HEALTH_PORT is taken/)
      expect(ended.err).toMatch(ONE_SENTENCE)
    } finally {
      other.close()
      await platform.stop()
    }
  }, 40_000)

  it('a folder that cannot be made', async () => {
    expect(await problemOf(`file:${join(notADatabase, 'ebbline.db')}`)).toMatch(
      /^StoreProblem: .*a part of its path is a file: choose another in DATABASE_URL\.$/,
    )
  })

  it('a platform that is not there', async () => {
    const sentence = texts.problem.unreachable('127.0.0.1:9')
    expect(await problemOf(`file:${join(folder, 'alone.db')}`)).toBe(`ChatProblem: ${sentence}`)
  })

  it('a token that the platform refuses, which nobody gets to see', async () => {
    const platform = new Platform()
    await platform.start()
    try {
      const ended = await start({ DISCORD_TOKEN: 'wrong.token.here', DISCORD_API: platform.apiUrl })
      expect(ended).toMatchObject({ code: 1, err: `${texts.problem.token}\n` })
      expect(ended.out).not.toContain('wrong.token.here')
    } finally {
      await platform.stop()
    }
  }, 40_000)

  it('a platform that fails while the commands are declared', async () => {
    const platform = new Platform()
    await platform.start()
    platform.fault({ match: /PUT .*\/commands$/, times: 100, status: 500 })
    try {
      const sentence = texts.problem.unreachable(new URL(platform.url).host)
      const problem = await problemOf(`file:${join(folder, 'commands.db')}`, platform)
      expect(problem).toBe(`ChatProblem: ${sentence}`)
      expect(platform.connected).toBe(false)
    } finally {
      await platform.stop()
    }
  })
})

describe('the command line', () => {
  const ebb = (...args: string[]) => run('src/cli/index.ts', args, {}).ended()
  const VERBS = /parse[\s\S]*screen[\s\S]*assess[\s\S]*replay[\s\S]*simulate[\s\S]*play/

  it.each([[[]], [['toString']]])('%j is wrong use: what there is goes to standard error', async (args) => {
    const ended = await ebb(...args)
    expect(ended).toMatchObject({ code: 2, out: '' })
    expect(ended.err).toMatch(VERBS)
    if (args[0]) expect(ended.err).toContain(`“${args[0]}”`)
  })

  it.each([
    ['play', '--help'],
    ['parse', '-h'],
  ])('%s %s is answered on standard output too', async (verb, asked) => {
    const ended = await ebb(verb, asked)
    expect(ended).toMatchObject({ code: 0, err: '' })
    expect(ended.out).toMatch(new RegExp(`^Usage: ebb ${verb} `))
  })

  it.each([[['--help']], [['help']]])('%j is answered on standard output', async (args) => {
    const ended = await ebb(...args)
    expect(ended).toMatchObject({ code: 0, err: '' })
    expect(ended.out).toMatch(VERBS)
  })
})
