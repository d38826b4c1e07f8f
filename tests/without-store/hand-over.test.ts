import { pino } from 'pino'
import { expect, it } from 'vitest'
import { createHandOver } from '../../src/without-store/hand-over.ts'
import type { Entry, Spool } from '../../src/without-store/spool.ts'

it('tells of an event that the store will not take the kind, code and place of the fault, and no words', async () => {
  const lines: string[] = []
  const at = new Date('2026-03-08T12:00:00Z')
  const actor = { user: 'heron', guild: null, roles: [], keeper: false }
  const event = { kind: 'words', id: 'm1', actor, text: 'numb', at, edits: null, attached: 'none' } as const
  const entry: Entry = { event, at, heard: null }
  const handOver = createHandOver({
    engine: {
      handle: () => Promise.reject(Object.assign(new Error('heron wrote: numb'), { code: 'P2003' })),
    },
    spool: { entries: () => [entry] } as unknown as Spool,
    storeAnswers: async () => true,
    log: pino({ base: null }, { write: (line: string) => void lines.push(line) }),
  })
  for (let n = 0; n < 4; n += 1) await handOver.takeUp()
  expect(lines).toHaveLength(1)
  expect(JSON.parse(lines[0]!)).toMatchObject({ kind: 'words', error: { name: 'Error', code: 'P2003' } })
  expect(lines[0]).toContain('hand-over.test.ts')
  expect(lines[0]).not.toMatch(/heron|numb/)
})
