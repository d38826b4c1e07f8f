import { expect, it } from 'vitest'
import { playScenario } from '../../src/rehearsal/player/index.ts'
import { loadScenario } from '../../src/rehearsal/scenario/index.ts'
import { onBothDatabases, temporaryFolder } from './databases.ts'
import { everyRow, type StoredRow } from './every-row.ts'

/** Every kind of row that a client can have, then erasure: by the coach, and by the client with a sign open. */
const scenario = (last: string): string => `
title: Erased
practice: { zone: Europe/Lisbon, digest: "Sun 18:00", region: PT }
start: 2026-03-02
days: 16
clients:
  - ref: heron
    prompt: "08:00"
    reminder: "19:00"
    side: left
    consent: yes
    screening: { onset: 2026-02-10, age: 41, baseline: { reach: calf, pain: 6 }, risks: [osteoporosis], eases: extension, activities: { sculling-upstream: 7 } }
    plan: { sessions: 2, rungs: { extension: 1, glide: 1 } }
    answers: { comfort: yes, settled: yes }
    days:
      1-5: "2 calf 5 no signs, wording-one"
      6: "cannot pee since wording-two"
      7: "may I row with wording-three?"
      8: none
      9: { form: { sessions: 2, reach: knee, pain: 4, side: left, signs: [] } }
      10: { at: "09:00", command: "/my-data format:json" }
      11-14: "1 foot 8 wording-four"
      15: ${last === 'coach' ? 'none' : '[ "numb between the legs", { after: 30m, command: "/erase-me sure:true" } ]'}
  - ref: dipper
    prompt: "08:00"
    side: right
    consent: yes
    screening: { onset: 2026-02-10, age: 50, baseline: { reach: knee, pain: 4 }, eases: extension }
    plan: { sessions: 2, rungs: { extension: 1 } }
    days: { 1-16: "2 knee 3 no signs" }
coach:
  2: { release: { client: heron, by: general practitioner, on: 2026-03-03 } }
  4: { note: { client: heron, text: wording-five } }
  6: { at: "10:00", take-up: { client: heron, outcome: reached } }
  7: { clear: { client: heron, by: emergency physician, on: 2026-03-08 } }
  8: [ { at: "10:00", command: "/roster" }, { at: "10:10", command: "/questions" }, { at: "10:20", command: "/plan-history client:heron" } ]
  9: { decide: { client: heron, ladder: extension, do: hold, reason: wording-six } }
  10: [ { report: heron }, { at: "13:00", export: heron }, { at: "13:30", command: "/client-record client:heron" } ]
  14: { at: "12:00", command: "/proposals" }
  ${last === 'coach' ? '16: { erase: heron }' : '16: { at: "12:00", command: "/roster" }'}
`

const TRACES = [/(?<![\w-])heron(?![\w-])/i, /wording-/, /sculling/]

/** All of heron's days but the last are over. */
const EVE = new Date('2026-03-16T00:00:00Z')

onBothDatabases('an erased client', (bench) => {
  const folder = temporaryFolder()

  /** All rows on the eve of the erasure, and at the end. */
  const play = async (by: string): Promise<{ before: StoredRow[]; after: StoredRow[] }> => {
    const script = loadScenario('erased.yaml', scenario(by))
    const database = await bench.address()
    let before: StoredRow[] | null = null
    await playScenario({
      ...{ script, database, folder, direct: true },
      watch: async (_, now) => {
        if (now >= EVE) before ??= await everyRow(database)
      },
    })
    return { before: before ?? [], after: await everyRow(database) }
  }

  // what erases is the same on both databases, whoever asked for it
  it.each(bench.kind === 'sqlite' ? ['coach', 'client'] : ['coach'])(
    'leaves no id, alias or word in any row of any table, erased by the %s',
    async (by) => {
      const { before, after } = await play(by)
      const heron = before.find(({ table, row }) => table === 'Client' && row.ref === 'heron')?.row
      const traces = [...TRACES, new RegExp(String(heron?.id)), new RegExp(String(heron?.user))]
      for (const trace of traces)
        expect(
          before.some(({ text }) => trace.test(text)),
          `${trace} before`,
        ).toBe(true)
      const left = after.filter(({ text }) => traces.some((trace) => trace.test(text)))
      expect(left.map(({ table, text }) => `${table}: ${text.slice(0, 300)}`)).toEqual([])
    },
    240_000,
  )
})
