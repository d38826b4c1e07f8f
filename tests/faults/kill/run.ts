import { EVENTS } from './events.ts'
import { draw, runMatrix } from './matrix.ts'

// `tsx tests/faults/kill/run.ts [all|NUMBER] [SEED] [EVENT]`: kills the bot at each named step, or at all there are;
// of one event only where it is named
const [most = '60', seed = '7', only] = process.argv.slice(2)
const { rows, failures, cells, names } = await runMatrix({
  events: EVENTS.filter(({ name }) => only === undefined || name === only),
  choose: (all) => draw(all, most === 'all' ? null : Number(most), Number(seed)),
  say: (line) => console.log(line),
})
console.table(rows)
const tried = rows.reduce((sum, row) => sum + row.kills, 0)
console.log(`${cells} steps with ${names} names; ${tried} kills tried, ${tried - failures.length} survived`)
process.exit(failures.length > 0 ? 1 : 0)
