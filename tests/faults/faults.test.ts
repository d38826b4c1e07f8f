import { mkdtempSync, readdirSync, readFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, describe, expect, it } from 'vitest'
import { playScenario } from '../../src/rehearsal/player/index.ts'
import { loadScenario } from '../../src/rehearsal/scenario/index.ts'
import { isShort, LEFT_OUT } from '../long.ts'
import { onServers } from '../store/databases.ts'

const HERE = fileURLToPath(new URL('.', import.meta.url))
const files = readdirSync(HERE).filter((name) => name.endsWith('.yaml'))
/** Played on PostgreSQL in the usual run too: the server takes no connections, then the bot is killed. */
const USUAL_ON_SERVER = ['urgent-while-gone-then-killed.yaml']

/** Each fault with what it struck and whether everything that the scenario expects came, once. */
const table: { scenario: string; faults: number; survived: number }[] = []

describe('faults, through the real chat client and database', () => {
  afterAll(() => {
    const sum = (key: 'faults' | 'survived') => table.reduce((total, row) => total + row[key], 0)
    console.table([...table, { scenario: 'all', faults: sum('faults'), survived: sum('survived') }])
  })

  it.concurrent.each(files)('%s: everybody gets what they should, once', (name) => survives(name), 300_000)

  onServers('on PostgreSQL', (onServer) => {
    const left = files.filter((name) => !USUAL_ON_SERVER.includes(name))
    const on = async (name: string): Promise<void> => survives(name, await onServer())
    it.each(USUAL_ON_SERVER)('%s: everybody gets what they should, once', on, 300_000)
    it.skipIf(isShort).each(left)(`%s: everybody gets what they should, once${LEFT_OUT}`, on, 300_000)
  })
})

/** @param server address of a database there; a new file where left out */
async function survives(name: string, server?: string): Promise<void> {
  const script = loadScenario(name, readFileSync(join(HERE, name), 'utf8'))
  const folder = mkdtempSync(join(tmpdir(), 'ebbline-faults-'))
  const database = server ?? `file:${join(folder, 'play.db')}`
  const faults = script.steps.filter(({ act }) => act.who === 'world').length
  const scenario = `${name.replace('.yaml', '')}${server ? ' on PostgreSQL' : ''}`
  const row = { scenario, faults, survived: 0 }
  table.push(row)
  const { checks } = await playScenario({ script, database, folder, direct: false })
  expect(checks.failed).toEqual([])
  row.survived = faults
}
