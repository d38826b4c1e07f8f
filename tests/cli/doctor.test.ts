import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Readable } from 'node:stream'
import SqliteDatabase from 'better-sqlite3'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { hostLines } from '../../src/cli/doctor/host.ts'
import * as doctor from '../../src/cli/doctor.ts'
import type { PracticeRow } from '../../src/engine/rows.ts'
import { createHeart } from '../../src/heartbeat.ts'
import { Platform } from '../../src/rehearsal/platform/index.ts'
import { backUp } from '../../src/store/backup.ts'
import { openStore } from '../../src/store/open.ts'
import { doctor as words } from '../../src/text/en/doctor.ts'
import { textsFor } from '../../src/text/index.ts'
import { client, outcome, practice, put } from '../store/samples.ts'

const { setUp, chat } = textsFor('en')
const folder = mkdtempSync(join(tmpdir(), 'ebbline-doctor-'))
const database = `file:${join(folder, 'ebbline.db')}`
const platform = new Platform()
const guild = platform.build.addGuild('boathouse')
const coachRole = platform.build.addRole(guild.id, 'coach').id
const quiet = platform.build.addChannel(guild.id, 'coaches', { everyoneCanView: false })
const hall = platform.build.addChannel(guild.id, 'hall')
const WELL: PracticeRow = {
  ...practice,
  id: guild.id,
  guild: guild.id,
  coachRole,
  coachChannel: quiet.id,
  alertChannel: quiet.id,
  region: 'PT',
  policyConfirmed: '2026-03-01',
}

beforeAll(async () => {
  await platform.start()
  await keep(WELL)
})
afterAll(async () => {
  await platform.stop()
  rmSync(folder, { recursive: true, force: true })
})

async function keep(row: PracticeRow): Promise<void> {
  const { store, close } = await openStore(database)
  const heron = { ...client('heron'), practiceId: row.id }
  await store.transaction((tx) => tx.apply(outcome([put('practice', row), put('client', heron)], [])))
  await close()
}

const connected = (): Record<string, string> => ({
  DISCORD_TOKEN: platform.token,
  DISCORD_API: platform.apiUrl,
  DATABASE_URL: database,
})

async function ran(environment: Record<string, string>, args: string[] = [], now = () => new Date()) {
  const out: string[] = []
  const err: string[] = []
  const io = {
    stdin: Readable.from(['']),
    out: (line: string) => void out.push(line),
    err: (line: string) => void err.push(line),
  }
  const code = await doctor.run(args, io, environment, now)
  const text = out.join('\n')
  expect(`${text}${err.join('')}`).not.toContain(platform.token)
  expect(text).not.toMatch(/heron|knee|calf/)
  for (const line of out) expect(line).toMatch(/^(ok|not ok|not checked): [^:]+: \S/)
  return { code, text, err: err.join('\n') }
}

describe('ebb doctor', () => {
  it('finds all in order, a line a check', async () => {
    const { code, text } = await ran(connected())
    expect(text.split('\n').filter((line) => !line.startsWith('ok: '))).toEqual([])
    expect(code).toBe(0)
    const checks = text.split('\n').map((line) => line.split(': ')[1])
    expect(checks).toEqual([
      'token',
      'clock',
      'intents',
      'database',
      'integrity',
      'migrations',
      'database access',
      'disk space',
      'backups',
      'words',
      'channels of server boathouse',
      'platform policy of server boathouse',
      'emergency number of server boathouse',
      'Node.js',
      'zone data',
      'own ladders',
    ])
    expect(text).toContain('confirmed on 2026-03-01')
    expect(text).toContain('PT: 112, seen: ')
    expect(platform.violations).toEqual([])
  })

  it('--live tells whether the bot works at this moment, by the exit status too', async () => {
    const at = (seconds: number) => () => new Date(Date.parse('2026-03-02T08:00:00Z') + seconds * 1000)
    expect(await ran(connected(), ['--live'], at(0))).toMatchObject({ code: 1 })
    const { store, settings, close } = await openStore(database)
    await createHeart({ store, settings, now: at(0) }).beat()
    await close()
    const well = await ran(connected(), ['--live'], at(70))
    expect(well.text).toContain('ok: beat: the bot works; its latest beat is 70 s ago')
    expect(well.code).toBe(0)
    const still = await ran(connected(), ['--live'], at(600))
    expect(still.text).toContain(
      'not ok: beat: the bot does not work: its latest beat was at 2026-03-02T08:00:00Z',
    )
    expect(still.code).toBe(1)
  })

  it('without a token says what it could not check', async () => {
    const { code, text } = await ran({ DATABASE_URL: database })
    for (const check of ['token', 'clock', 'intents', `channels of server ${guild.id}`])
      expect(text).toContain(`not checked: ${check}: ${words.setToken}`)
    expect(text).toContain('ok: platform policy')
    expect(code).toBe(1)
  })

  it('names a token that the platform refuses, and a platform that cannot be reached', async () => {
    const wrong = await ran({ ...connected(), DISCORD_TOKEN: 'some.other.token' })
    expect(wrong.text).toContain(`not ok: token: ${words.tokenRefused}`)
    expect(wrong.text).not.toContain('some.other.token')
    expect(wrong.text).toContain('ok: clock')
    const away = await ran({ ...connected(), DISCORD_API: 'http://127.0.0.1:9/api' })
    expect(away.text).toContain(`not ok: token: ${words.unreachable('127.0.0.1:9')}`)
    expect(away.code).toBe(1)
  })

  it('names a clock that is off by more than a minute', async () => {
    const at = (minutes: number) => () => new Date(Date.now() + minutes * 60_000)
    expect((await ran(connected(), [], at(2))).text).toMatch(/not ok: clock: 1[12]\d s ahead of the platform/)
    expect((await ran(connected(), [], at(-2))).text).toMatch(/not ok: clock: 1[12]\d s behind the platform/)
    expect((await ran(connected(), [], at(0.5))).text).toMatch(/^ok: clock/m)
  })

  it('names what is wrong with a practice: channels, policy, region, a server that it was removed from', async () => {
    await keep({ ...WELL, coachChannel: hall.id, alertChannel: '99', policyConfirmed: null, region: null })
    const { code, text } = await ran(connected())
    expect(text).toContain(`not ok: channels of server boathouse: ${setUp.channelOpen('coach-channel')}`)
    expect(text).toContain(setUp.channelGone('alert-channel'))
    expect(text).toContain(`not ok: platform policy of server boathouse: ${setUp.policyOpen}`)
    expect(text).toContain(`not ok: emergency number of server boathouse: ${setUp.noRegion}`)
    expect(code).toBe(1)

    const dumb = platform.build.addChannel(guild.id, 'dumb', {
      everyoneCanView: false,
      overwrites: [{ id: coachRole, type: 'role', allow: 1024n, deny: 0n }],
    })
    platform.build.setOverwrites(dumb.id, [
      { id: guild.id, type: 'role', allow: 0n, deny: 1024n },
      { id: platform.appId, type: 'member', allow: 1024n, deny: (1n << 11n) | (1n << 15n) },
    ])
    await keep({ ...WELL, coachChannel: dumb.id, coachRole: '98', region: 'KR' })
    const lost = await ran(connected())
    const { SendMessages, AttachFiles } = chat.permissions
    expect(lost.text).toContain(setUp.channelLacks('coach-channel', [SendMessages, AttachFiles]))
    expect(lost.text).toContain(setUp.roleGone)
    expect(lost.text).toMatch(/ok: emergency number of server boathouse: KR: 119, from memory/)

    await keep(WELL)
    platform.build.removeBot(guild.id)
    expect((await ran(connected())).text).toContain(
      `not ok: channels of server ${guild.id}: ${words.notInServer}`,
    )
    platform.build.inviteBot(guild, (1n << 10n) | (1n << 11n) | (1n << 15n))
    expect((await ran(connected())).code).toBe(0)
  })

  it('names a database that is missing, damaged or not up to date, and makes or changes none', async () => {
    const none = join(folder, 'none.db')
    const { code, text } = await ran({}, ['--database', `file:${none}`])
    expect(text).toMatch(/not ok: database: There is no database at .*none\.db yet/)
    expect(text).toContain(`not checked: practices: ${words.needsDatabase}`)
    expect(code).toBe(1)
    expect(await ran({}, ['--database', `file:${none}`])).toMatchObject({ text })

    const notADatabase = join(folder, 'words.db')
    writeFileSync(notADatabase, 'no database at all, but words enough to fill a page of one. '.repeat(200))
    expect((await ran({}, ['--database', `file:${notADatabase}`])).text).toMatch(
      /not ok: database: .*not a SQLite/,
    )

    const empty = join(folder, 'empty.db')
    new SqliteDatabase(empty).close()
    const fresh = await ran({}, ['--database', `file:${empty}`])
    expect(fresh.text).toMatch(/not ok: migrations: \d+ changes of the tables to be made/)
    const db = new SqliteDatabase(empty)
    expect(db.prepare('SELECT count(*) FROM sqlite_master').pluck().get()).toBe(0)
    db.close()
  })

  it('names faults of the ladder file, each on its line', async () => {
    const file = join(folder, 'ladders.yaml')
    writeFileSync(file, 'id: Extension\n')
    expect((await ran({ DATABASE_URL: database, EBBLINE_LADDERS: file })).text).toMatch(
      /not ok: own ladders: .*ladders\.yaml:1/,
    )
  })

  it.each([
    ['20.18.3', 'not ok'],
    ['20.19.0', 'ok'],
    ['20.20.2', 'ok'],
    ['21.7.3', 'not ok'],
    ['22.0.0', 'ok'],
    ['22.23.1', 'ok'],
    ['24.21.0', 'not ok'],
  ])('knows the versions of Node.js that the bot is made for: %s is %s', (version, state) => {
    const line = hostLines(version, null).find(({ check }) => check === 'Node.js')
    const says = state === 'ok' ? words.node(version) : words.nodeOther(version, '20 or 22')
    expect(line).toEqual({ check: 'Node.js', state, says })
  })

  it.each([[['--live', 'now']], [['--database', 'mysql://x']], [['heron']]])(
    'refuses wrong use: %j',
    async (args) => {
      const { code, text, err } = await ran({}, args)
      expect(code).toBe(2)
      expect(text).toBe('')
      expect(err).not.toBe('')
    },
  )
})

describe('the backups that ebb doctor knows of', () => {
  const DAY_MS = 24 * 3_600_000
  const backups = async (now: Date, days = '14'): Promise<string> => {
    const { text } = await ran({ DATABASE_URL: database, EBBLINE_BACKUP_DAYS: days }, [], () => now)
    return text.split('\n').find((line) => line.includes(': backups: ')) ?? ''
  }

  it('are shown with the day and how long they are kept; one too old is not ok', async () => {
    const made = new Date('2026-03-20T12:00:00Z')
    expect(await backups(made)).toBe(`ok: backups: ${words.backupNever(14)}`)
    await backUp(database, join(folder, 'backup.db'), made)
    expect(await backups(made)).toBe(`ok: backups: ${words.backupAt(made.toISOString(), 14)}`)
    const later = new Date(made.getTime() + 15 * DAY_MS)
    expect(await backups(later)).toMatch(
      /^not ok: backups: .* 2026-03-20T12:00Z, longer ago .*: run ebb backup/,
    )
    expect(await backups(later, '30')).toMatch(/^ok: /)
  })
})
