import { mkdtempSync, readdirSync, readFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, describe, expect, it } from 'vitest'
import { playScenario } from '../../src/rehearsal/player/index.ts'
import { loadScenario } from '../../src/rehearsal/scenario/index.ts'

const HERE = fileURLToPath(new URL('.', import.meta.url))
const files = readdirSync(HERE).filter((name) => name.endsWith('.yaml'))

/** Each fault with what it struck and whether everything that the scenario expects came, once. */
const table: { scenario: string; faults: number; survived: number }[] = []

describe('faults, through the real chat client and database', () => {
  afterAll(() => {
    const sum = (key: 'faults' | 'survived') => table.reduce((total, row) => total + row[key], 0)
    console.table([...table, { scenario: 'all', faults: sum('faults'), survived: sum('survived') }])
  })

  it.each(files)(
    '%s: everybody gets what they should, once',
    async (name) => {
      const { script } = loadScenario(name, readFileSync(join(HERE, name), 'utf8'))
      const folder = mkdtempSync(join(tmpdir(), 'ebbline-faults-'))
      const database = `file:${join(folder, 'play.db')}`
      const faults = script.steps.filter(({ act }) => act.who === 'world').length
      const row = { scenario: name.replace('.yaml', ''), faults, survived: 0 }
      table.push(row)
      const { checks } = await playScenario({ script, database, folder, direct: false })
      expect(checks.failed).toEqual([])
      row.survived = faults
    },
    300_000,
  )
})
