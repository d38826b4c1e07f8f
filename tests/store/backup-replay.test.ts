import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { createClock } from '../../src/rehearsal/player/clock.ts'
import { directStage } from '../../src/rehearsal/player/direct-stage.ts'
import { openingAt } from '../../src/rehearsal/player/opening.ts'
import { play } from '../../src/rehearsal/player/play.ts'
import type { Stage } from '../../src/rehearsal/player/stage.ts'
import { loadScenario, type Script } from '../../src/rehearsal/scenario/index.ts'
import { backUp } from '../../src/store/backup.ts'
import { restore } from '../../src/store/restore.ts'
import { temporaryFolder } from './databases.ts'

const folder = temporaryFolder()
const text = readFileSync('scenarios/demo.yaml', 'utf8')
/** Two weeks of the demo with a stop of the bot in the middle. */
const whole = loadScenario('demo.yaml', `${text}\nfaults:\n  9: { at: "10:00", restart: stop }\n`)
const DAYS = 14
const script: Script = { ...whole, days: DAYS, steps: whole.steps.filter(({ day }) => day <= DAYS) }
const NOW = new Date('2026-03-20T12:00:00Z')

/** A stop in which the database is replaced by a backup made just before it, while the bot ran. */
function restoring(stage: Stage, url: string, seen: string[]): Stage {
  const file = join(folder, 'backup.db')
  return Object.create(stage, {
    fault: {
      value: async (fault: Parameters<Stage['fault']>[0]) => {
        await backUp(url, file, NOW)
        await stage.store.close()
        const { kept, counts } = await restore(url, file, { replace: true, now: NOW })
        seen.push(`${kept !== null} ${counts.client! > 0}`)
        await stage.fault(fault)
      },
    },
  }) as Stage
}

async function messages(of: Script, name: string, wrap: (stage: Stage, url: string) => Stage) {
  const url = `file:${join(folder, `${name}.db`)}`
  const clock = createClock(openingAt(of))
  const { stage, log } = await play({
    script: of,
    clock,
    folder,
    stage: async (hooks) => wrap(await directStage({ url, clock, hooks, script: of }), url),
  })
  await stage.close()
  expect(log.troubles).toEqual([])
  return log.lines.map(({ message }) => message)
}

it('the demo goes on the same on a restored backup', async () => {
  const seen: string[] = []
  const undisturbed = await messages(script, 'undisturbed', (stage) => stage)
  const restored = await messages(script, 'restored', (stage, url) => restoring(stage, url, seen))
  expect(seen).toEqual(['true true'])
  expect(undisturbed.length).toBeGreaterThan(50)
  expect(restored).toEqual(undisturbed)
}, 240_000)
