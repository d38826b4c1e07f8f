import { describe, expect, it } from 'vitest'
import { readSettings, SettingsError } from '../src/config.ts'

const problemOf = (environment: NodeJS.ProcessEnv): string => {
  try {
    readSettings(environment)
  } catch (error) {
    expect(error).toBeInstanceOf(SettingsError)
    return (error as Error).message
  }
  throw new Error('nothing was refused')
}

describe('settings from the environment', () => {
  it('need none', () => {
    const defaults = {
      token: null,
      databaseUrl: 'file:data/ebbline.db',
      api: null,
      healthPort: null,
      ladders: null,
      key: null,
      keyFile: null,
      backupDays: 30,
      perSecond: 50,
      spoolFolder: null,
      logLevel: 'info',
    }
    expect(readSettings({})).toEqual(defaults)
    expect(readSettings({ DISCORD_TOKEN: '', DATABASE_URL: '', DISCORD_API: '', LOG_LEVEL: '' })).toEqual(
      defaults,
    )
  })

  it('are taken as they are', () => {
    const environment = {
      DISCORD_TOKEN: ' some.token.here\n',
      DATABASE_URL: 'postgresql://ebb:secret@db:5432/ebb',
      DISCORD_API: 'http://127.0.0.1:3000/api',
      EBBLINE_BACKUP_DAYS: '14',
      EBBLINE_KEY_FILE: 'ebbline.key',
      EBBLINE_LADDERS: 'ladders.yaml',
      EBBLINE_SPOOL_DIR: '/var/spool/ebbline',
      LOG_LEVEL: 'warn',
    }
    expect(readSettings(environment)).toEqual({
      token: 'some.token.here',
      databaseUrl: 'postgresql://ebb:secret@db:5432/ebb',
      api: 'http://127.0.0.1:3000/api',
      healthPort: null,
      ladders: 'ladders.yaml',
      key: null,
      keyFile: 'ebbline.key',
      backupDays: 14,
      perSecond: 50,
      spoolFolder: '/var/spool/ebbline',
      logLevel: 'warn',
    })
  })

  it.each([
    ['DATABASE_URL', 'mysql://db/ebb', /file:PATH.*postgresql:\/\//],
    ['DATABASE_URL', 'data/ebbline.db', /file:PATH/],
    ['DATABASE_URL', 'file:', /file:PATH/],
    ['DISCORD_TOKEN', '   ', /bot token/],
    ['DISCORD_TOKEN', 'two words', /bot token/],
    ['DISCORD_API', 'nonsense', /http:/],
    ['DISCORD_API', 'ftp://127.0.0.1/api', /http:/],
    ['EBBLINE_LADDERS', '  ', /name a file/],
    ['EBBLINE_BACKUP_DAYS', 'a month', /whole number of days from 1 to 3650/],
    ['EBBLINE_BACKUP_DAYS', '0', /from 1 to 3650/],
    ['LOG_LEVEL', 'loud', /fatal, error, warn, info, debug/],
  ])('refuse %s=%j in one sentence with the mend', (name, value, mend) => {
    const problem = problemOf({ [name]: value })
    expect(problem).toMatch(mend)
    expect(problem).toContain(name)
    expect(problem).toMatch(/^[^\n]+\.$/)
  })

  it('name every problem at once, and never a password', () => {
    const problem = problemOf({ DATABASE_URL: 'mysql://ebb:secret@db/ebb', LOG_LEVEL: 'loud' })
    expect(problem).toMatch(/DATABASE_URL.*LOG_LEVEL/)
    expect(problem).not.toContain('secret')
  })
})
