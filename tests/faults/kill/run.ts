import { EVENTS } from './events.ts'
import { draw, runMatrix } from './matrix.ts'

// `tsx tests/faults/kill/run.ts [all|NUMBER] [SEED] [files|server] [EVENT]`: kills the bot at each named step, or at all
// there are; of one event only where it is named. The databases are files, or on the server that EBBLINE_TEST_POSTGRES
// names.
const [most = '60', seed = '7', where = 'files', only] = process.argv.slice(2)
const server = process.env.EBBLINE_TEST_POSTGRES ?? null
if (where === 'server' && server === null) throw new Error('EBBLINE_TEST_POSTGRES names no server')
const { rows, failures, cells, names } = await runMatrix({
  events: EVENTS.filter(({ name }) => only === undefined || name === only),
  choose: (all) => draw(all, most === 'all' ? null : Number(most), Number(seed)),
  server: where === 'server' ? server : null,
  say: (line) => console.log(line),
})
console.table(rows)
const tried = rows.reduce((sum, row) => sum + row.kills, 0)
console.log(`${cells} steps with ${names} names; ${tried} kills tried, ${tried - failures.length} survived`)
process.exit(failures.length > 0 ? 1 : 0)
