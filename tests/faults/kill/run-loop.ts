import { readFileSync } from 'node:fs'
import { loadScenario } from '../../../src/rehearsal/scenario/index.ts'
import { runLoop } from './loop.ts'

// `tsx tests/faults/kill/run-loop.ts [KILLS] [SEED] [FILE]`: three weeks of four clients, killed again and again
const [kills = '200', seed = '7', file] = process.argv.slice(2)
const path = file ?? new URL('three-weeks.yaml', import.meta.url)
const script = loadScenario('three-weeks', readFileSync(path, 'utf8'))
const begun = performance.now()
const { difference, ...found } = await runLoop(script, Number(kills), Number(seed), (line) =>
  console.log(line),
)
if (difference) console.log(JSON.stringify(difference, null, 2))
const { lost, twice } = difference ?? { lost: [], twice: [] }
console.log(found)
const seconds = Math.round((performance.now() - begun) / 1000)
console.log(`kills tried ${found.kills}; lost ${lost.length}, twice ${twice.length}; ${seconds} s`)
process.exit(difference || found.troubles.length > 0 ? 1 : 0)
