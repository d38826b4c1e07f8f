import { readFileSync } from 'node:fs'
import { basename } from 'node:path'
import { expect, it } from 'vitest'
import { chatStage } from '../../src/rehearsal/player/chat-stage.ts'
import { createClock } from '../../src/rehearsal/player/clock.ts'
import { clientEnds } from '../../src/rehearsal/player/closing.ts'
import { directStage } from '../../src/rehearsal/player/direct-stage.ts'
import { openingAt } from '../../src/rehearsal/player/opening.ts'
import { play } from '../../src/rehearsal/player/play.ts'
import { loadScenario, type Script } from '../../src/rehearsal/scenario/index.ts'
import { openStore } from '../../src/store/open.ts'
import { isShort, LEFT_OUT } from '../long.ts'
import { onServers, sqliteAddresses, temporaryFolder } from './databases.ts'
import { mover } from './moving.ts'

const folder = temporaryFolder()
const onFile = sqliteAddresses()
const moved = mover()

/** A third of the scenario, a stop, another third, a stop, the rest. */
function script(file: string, stops: boolean): Script {
  const text = readFileSync(file, 'utf8')
  const whole = loadScenario(basename(file), text)
  if (!stops) return whole
  const [first, second] = [Math.floor(whole.days / 3), Math.floor((2 * whole.days) / 3)]
  const stop = '{ at: "20:10", restart: stop }'
  return loadScenario(basename(file), `${text}\nfaults: { ${first}: ${stop}, ${second}: ${stop} }\n`)
}

interface Way {
  readonly of: Script
  readonly direct: boolean
  /** The databases one after another: at each stop what is there is moved to the next. */
  readonly urls: readonly [string, ...string[]]
}

/** All messages and records. */
async function played({ of, direct, urls }: Way) {
  const clock = createClock(openingAt(of))
  let [current, ...rest] = urls
  let opened = false
  const open: typeof openStore = async (_url, ...given) => {
    const next = opened ? rest.shift() : undefined
    opened = true
    if (next !== undefined) {
      await moved(current, next)
      current = next
    }
    return openStore(current, ...given)
  }
  const { stage, log } = await play({
    script: of,
    clock,
    folder,
    stage: (hooks) =>
      (direct ? directStage : chatStage)({ url: current, clock, hooks, script: of, openStore: open }),
  })
  const clients = await clientEnds(of, stage).finally(() => stage.close())
  expect(log.troubles).toEqual([])
  expect(rest).toEqual([])
  return { messages: log.lines.map(({ message }) => message), clients }
}

// With an urgent sign open over a move.
const USUAL = ['urgent-second-week direct']
const ALSO = [
  ...['course-of-heron direct', 'demo direct', 'demo chat', 'en-espanol direct', 'end-of-the-way direct'],
  ...['four-zones-spring direct', 'goes-quiet direct', 'reach-draws-in direct', 'words-only chat'],
]

onServers('a practice moved in the middle of a scenario, and back', (onServer) => {
  it.each(USUAL)('%s: goes on as if nothing had happened', both, 300_000)
  it.skipIf(isShort).each(ALSO)(`%s: goes on as if nothing had happened${LEFT_OUT}`, both, 300_000)

  async function both(what: string): Promise<void> {
    const [name, mode] = what.split(' ')
    const [file, direct] = [`scenarios/${name}.yaml`, mode === 'direct']
    const undisturbed = await played({ of: script(file, false), direct, urls: [await onFile()] })
    const urls = [await onFile(), await onServer(), await onFile()] as const
    const disturbed = await played({ of: script(file, true), direct, urls })
    expect(undisturbed.messages.length).toBeGreaterThan(20)
    expect(disturbed).toEqual(undisturbed)
  }
})
