import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { shake } from './shake.ts'

/** `npm run shake -- --seeds N --minutes M --from FIRST`: practices from seeds until one of both is reached. */
const { values } = parseArgs({
  options: { seeds: { type: 'string' }, minutes: { type: 'string' }, from: { type: 'string' } },
})
const [seeds, minutes, from] = [values.seeds ?? '20', values.minutes ?? '60', values.from ?? '1'].map(Number)
if (![seeds, minutes, from].every((n) => Number.isFinite(n) && n! > 0)) {
  process.stderr.write('Give whole numbers: npm run shake -- --seeds 20 --minutes 10 --from 1\n')
  process.exit(2)
}
const began = performance.now()
// made for the first that breaks something
let folder: string | null = null
const sum = { seeds: 0, steps: 0, faults: 0, messages: 0, broken: 0 }

for (let seed = from!; seed < from! + seeds!; seed += 1) {
  if (performance.now() - began > minutes! * 60_000) break
  const shaken = await shake(seed)
  sum.seeds += 1
  sum.steps += shaken.steps
  sum.faults += shaken.faults
  sum.messages += shaken.messages
  if (shaken.breaches.length === 0) continue
  sum.broken += 1
  folder ??= mkdtempSync(join(tmpdir(), 'ebbline-shaken-'))
  const file = join(folder, `seed-${seed}.yaml`)
  writeFileSync(file, shaken.scenario)
  console.log(`seed ${seed}, replayed by: npm run -s ebb -- play ${file}`)
  for (const breach of shaken.breaches.slice(0, 10)) console.log(`  ${breach}`)
}
console.table([{ ...sum, minutes: Math.round((performance.now() - began) / 6_000) / 10 }])
process.exitCode = sum.broken === 0 ? 0 : 1
