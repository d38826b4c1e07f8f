import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { assess } from './assess.ts'
import { digest } from './digest.ts'
import { fanOut } from './fan-out.ts'
import { growth } from './growth.ts'
import { idle } from './idle.ts'
import type { Bench, Figure, Measured } from './measure.ts'
import { parse } from './parse.ts'
import { reply } from './reply.ts'
import { start } from './start.ts'
import { tick } from './tick.ts'
import { urgent } from './urgent.ts'
import { workers } from './workers.ts'
import { year } from './year.ts'

/** `npm run bench [-- ID ...]`: every row, or those named. Figures as a table, and as JSON in a new folder. */
const ROWS: readonly Bench[] = [
  parse,
  assess,
  reply,
  urgent,
  fanOut,
  idle,
  tick,
  digest,
  start,
  growth,
  workers,
  year,
]
const ROUNDS = 15

const short = (value: number): string => value.toPrecision(3)
const spread = ({ median, least, most }: Figure): string =>
  `${short(median).padStart(8)}  (${short(least)} to ${short(most)})`

function print({ id, what }: Bench, { figures, ratios }: Measured): void {
  console.log(`\n${id}: ${what}`)
  for (const [name, figure] of Object.entries(figures))
    console.log(`  ${name.padEnd(34)}${spread(figure)} ${figure.unit}`)
  for (const [name, ratio] of Object.entries(ratios))
    console.log(`  ${name.padEnd(34)}${spread(ratio)} goal ${ratio.goal}: ${ratio.met ? 'met' : 'NOT met'}`)
}

const wanted = process.argv.slice(2)
const unknown = wanted.filter((id) => !ROWS.some((row) => row.id === id))
if (unknown.length > 0) {
  console.error(`No such row: ${unknown.join(', ')}. Rows: ${ROWS.map(({ id }) => id).join(', ')}`)
  process.exit(2)
}
const found: Record<string, Measured> = {}
for (const row of ROWS) {
  if (wanted.length > 0 && !wanted.includes(row.id)) continue
  const measured = await row.run(ROUNDS)
  found[row.id] = measured
  print(row, measured)
}
const file = join(mkdtempSync(join(tmpdir(), 'ebbline-bench-')), 'figures.json')
writeFileSync(file, `${JSON.stringify({ node: process.version, rounds: ROUNDS, rows: found }, null, 2)}\n`)
console.log(
  `\nMedians of ${ROUNDS} rounds where a row does not say otherwise, least and most beside them. ${file}`,
)
