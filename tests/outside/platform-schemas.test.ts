import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, describe, expect, it } from 'vitest'
import ours from '../../package.json' with { type: 'json' }
import { playScenario } from '../../src/rehearsal/player/index.ts'
import { loadScenario } from '../../src/rehearsal/scenario/index.ts'
import { readBundle } from '../fhir.ts'
import { isShort, LEFT_OUT } from '../long.ts'

/**
 * Every request that the bot sends in the scenarios, against the platform's published API schemas. Source: Discord's
 * OpenAPI description (github.com/discord/discord-api-spec, MIT), as the package discord-api-spec gives it; the
 * release in use is in the name of the suite. The stand-in checks each body and keeps what the schemas do not allow;
 * a play fails with each of those. That the check bites is shown in tests/rehearsal/platform.
 */
const version = ours.dependencies['discord-api-spec']
const SCENARIOS = fileURLToPath(new URL('../../scenarios/', import.meta.url))
const LONG = ['review-of-forty.yaml']
// played in tests/rehearsal/player/zones.test.ts, through the same stand-in
const ELSEWHERE = ['four-zones-spring.yaml', 'four-zones-autumn.yaml']
const files = readdirSync(SCENARIOS).filter((name) => name.endsWith('.yaml'))
const usual = files.filter((name) => ![...LONG, ...ELSEWHERE].includes(name))

const folder = mkdtempSync(join(tmpdir(), 'ebbline-schemas-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

describe(`requests of whole scenarios against the published schemas (discord-api-spec ${version})`, () => {
  it('has scenarios to look at', () => expect(files.length).toBeGreaterThanOrEqual(4))

  const play = async (name: string): Promise<void> => {
    const script = loadScenario(name, readFileSync(join(SCENARIOS, name), 'utf8'))
    const database = `file:${join(folder, `${name}.db`)}`
    const result = await playScenario({ script, database, folder, direct: false })
    expect(result.messages.length).toBeGreaterThan(0)
    // what the schemas do not allow, and what the scenario itself expects and did not come
    expect(result.checks.failed).toEqual([])
  }

  it.each(usual)('%s', play, 600_000)
  it.skipIf(isShort).each(LONG)(`%s${LEFT_OUT}`, play, 600_000)

  it('gave fourteen weeks of a client as FHIR R4 that its published schema takes', () => {
    const bundles = readdirSync(folder).filter((name) => name.endsWith('.fhir.json'))
    expect(bundles).toHaveLength(1)
    for (const name of bundles)
      expect(readBundle(readFileSync(join(folder, name), 'utf8')).errors).toEqual([])
  })
})
