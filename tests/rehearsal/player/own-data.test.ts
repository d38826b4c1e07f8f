import { mkdtempSync, readFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { readDiary } from '../../../src/domain/history-csv/history.ts'
import { playScenario } from '../../../src/rehearsal/player/index.ts'
import { loadScenario } from '../../../src/rehearsal/scenario/index.ts'
import { readBundle } from '../../fhir.ts'

const TEXT = `
title: A client's own data
practice: { zone: Europe/Lisbon, digest: "Sun 18:00", region: PT }
start: 2026-03-02
days: 4
clients:
  - ref: heron
    prompt: "08:00"
    side: left
    consent: yes
    screening: { onset: 2026-02-10, age: 41, baseline: { reach: calf, pain: 6 }, eases: extension, activities: { rowing: 7 } }
    plan: { sessions: 2, rungs: { extension: 1 } }
    days:
      1-2: "2 calf 5 no signs"
      3: [ "2 calf 4 no signs", { after: 5m, command: "/my-data format:csv" } ]
      4: [ { at: "09:00", say: "my data" }, { at: "09:01", press: "my-data" }, { at: "09:05", command: "/erase-me sure:true" } ]
coach:
  3: { at: "12:00", export: { client: heron, format: fhir } }
expect:
  - { day: 3, to: "client:heron", kind: report, count: 1 }
  - { day: 3, to: coach, kind: report, about: heron, says: "out of this private place", count: 1 }
  - { day: 4, to: "client:heron", kind: report, says: "To change a day", count: 1 }
  - { day: 4, to: "client:heron", kind: report, says: "JSON", count: 1 }
  - { day: 4, to: "client:heron", kind: notice, says: "rows are gone" }
`

describe('a client’s own data in a scenario', () => {
  it.each(['direct', 'chat'])(
    'comes as files, %s',
    async (mode) => {
      const folder = mkdtempSync(join(tmpdir(), 'ebbline-own-data-'))
      const script = loadScenario('own-data.yaml', TEXT)
      const database = `file:${join(folder, 'play.db')}`
      const result = await playScenario({ script, database, folder, direct: mode === 'direct' })
      expect(result.checks.failed).toEqual([])
      const read = (name: string): string => readFileSync(join(folder, name), 'utf8')
      expect(readDiary(read('heron-2026-03-04.csv')).rows).toHaveLength(3)
      expect(readBundle(read('heron-2026-03-04.fhir.json')).errors).toEqual([])
      expect(JSON.parse(read('heron-2026-03-05.json')).client.alias).toBe('heron')
    },
    120_000,
  )
})
