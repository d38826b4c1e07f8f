import { existsSync, mkdtempSync, readFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { playScenario } from '../../../src/rehearsal/player/index.ts'
import { loadScenario } from '../../../src/rehearsal/scenario/index.ts'
import { told } from '../../../src/rehearsal/told.ts'
import { readPdf } from '../../picture/pdf-text.ts'

const TEXT = `
title: A report is made
practice: { zone: Europe/Lisbon, digest: "Sun 18:00", region: PT }
start: 2026-03-02
days: 3
clients:
  - ref: heron
    prompt: "08:00"
    side: left
    consent: yes
    screening: { onset: 2026-02-10, age: 41, baseline: { reach: calf, pain: 6 }, eases: extension, activities: { rowing: 7 } }
    plan: { sessions: 2, rungs: { extension: 1 } }
    days: { 1-3: "2 calf 5 no signs" }
coach:
  3: { report: heron }
expect:
  - { day: 3, to: coach, kind: report, about: heron, count: 1 }
`

describe('a report in a scenario', () => {
  it.each(['direct', 'chat'])('is made and lies in the folder, %s', async (mode) => {
    const folder = mkdtempSync(join(tmpdir(), 'ebbline-report-'))
    const script = loadScenario('report.yaml', TEXT)
    const database = `file:${join(folder, 'play.db')}`
    const result = await playScenario({ script, database, folder, direct: mode === 'direct' })
    expect(result.checks.failed).toEqual([])
    const [message] = result.messages.filter(({ kind }) => kind === 'report')
    expect(message).toMatchObject({ to: 'coach', picture: 'report-heron-2026-03-04.png' })
    expect(Object.keys(message!)).not.toContain('files')
    const [picture, pdf] = ['png', 'pdf'].map((ending) => join(folder, `report-heron-2026-03-04.${ending}`))
    expect(existsSync(picture!)).toBe(true)
    const { pages, text } = readPdf(readFileSync(pdf!))
    expect(pages).toBe(1)
    expect(text).toContain('Report for a clinician: heron')
    expect(told(script, result).join('\n')).toContain('File: report-heron-2026-03-04.pdf')
  })
})
