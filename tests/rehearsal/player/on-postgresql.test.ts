import { readFileSync } from 'node:fs'
import { basename } from 'node:path'
import { expect, it } from 'vitest'
import { playScenario } from '../../../src/rehearsal/player/index.ts'
import { loadScenario } from '../../../src/rehearsal/scenario/index.ts'
import { isShort, LEFT_OUT } from '../../long.ts'
import { onServers, sqliteAddresses, temporaryFolder } from '../../store/databases.ts'

const folder = temporaryFolder()
const onFile = sqliteAddresses()

// A short one in which the order matters in which things are named.
const USUAL = ['scenarios/words-only.yaml']
const ALSO = [
  ...['course-of-heron', 'demo', 'en-espanol', 'end-of-the-way', 'four-zones-autumn', 'four-zones-spring'],
  ...['goes-quiet', 'reach-draws-in', 'review-of-forty', 'urgent-second-week'],
].map((name) => `scenarios/${name}.yaml`)

async function play(file: string, database: string, direct: boolean) {
  const script = loadScenario(basename(file), readFileSync(file, 'utf8'))
  const { messages, clients, checks } = await playScenario({ script, database, folder, direct })
  expect(checks.failed).toEqual([])
  return { messages, clients }
}

onServers('a scenario on PostgreSQL', (onServer) => {
  it.each(USUAL)('%s: the same messages and records as on SQLite', same, 300_000)
  it.skipIf(isShort).each(ALSO)(`%s: the same messages and records as on SQLite${LEFT_OUT}`, same, 600_000)
  it.skipIf(isShort).each(ALSO)(`%s: meets what it expects through the chat client${LEFT_OUT}`, chat, 600_000)

  async function same(file: string): Promise<void> {
    const [there, here] = [await play(file, await onServer(), true), await play(file, await onFile(), true)]
    expect(there).toEqual(here)
  }

  async function chat(file: string): Promise<void> {
    expect((await play(file, await onServer(), false)).messages.length).toBeGreaterThan(0)
  }
})
