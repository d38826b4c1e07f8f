import { runMatrix } from './matrix.ts'

// `tsx tests/faults/kill/run.ts [all|NUMBER] [SEED]`: kills the bot at each named step, or at all there are
const [most = '60', seed = '7'] = process.argv.slice(2)
const { rows, failures, cells, names } = await runMatrix(
  most === 'all' ? null : Number(most),
  Number(seed),
  (line) => console.log(line),
)
console.table(rows)
const tried = rows.reduce((sum, row) => sum + row.kills, 0)
console.log(`${cells} steps with ${names} names; ${tried} kills tried, ${tried - failures.length} survived`)
process.exit(failures.length > 0 ? 1 : 0)
