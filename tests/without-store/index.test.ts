import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pino } from 'pino'
import { expect, it, onTestFinished } from 'vitest'
import { outboxId } from '../../src/store/apply.ts'
import { textsFor } from '../../src/text/index.ts'
import { openWithoutStore } from '../../src/without-store/index.ts'
import { openKnown } from '../../src/without-store/known.ts'

const away = () => Promise.reject(new Error('the store is away'))

it('tells of a list that could not be read its kind, code and place, and no words', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'ebbline-without-store-'))
  const lines: string[] = []
  const way = await openWithoutStore({
    ...{ spool: join(folder, 'spool'), seal: null, known: openKnown(join(folder, 'known')), textsFor },
    ...{ idOf: outboxId, languages: ['en'], probe: away, onSent: () => {}, now: () => new Date() },
    store: { transaction: away },
    engineOn: () => ({ handle: away }),
    courier: { deliver: away },
    // biome-ignore lint/correctness/useYield: it fails before it gives anybody
    readKnown: async function* () {
      throw Object.assign(new RangeError('heron wrote: numb since Monday'), { code: 'SQLITE_CORRUPT' })
    },
    log: pino({ base: null }, { write: (line: string) => void lines.push(line) }),
  })
  onTestFinished(async () => {
    await way.close()
    rmSync(folder, { recursive: true })
  })
  expect(lines).toHaveLength(1)
  const { error } = JSON.parse(lines[0]!)
  expect(error).toMatchObject({ name: 'RangeError', code: 'SQLITE_CORRUPT' })
  expect(error.frames[0]).toContain('index.test.ts')
  expect(lines[0]).not.toMatch(/heron|numb|Monday/)
})
