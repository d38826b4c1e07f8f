import { openStore } from '../../src/store/open.ts'
import { checkIn, ground, outcome, put } from './samples.ts'

// A process of its own: writes, says so, and then sits in the middle of another transaction until it is killed.
const opened = await openStore(process.argv[2] ?? '')
await opened.store.transaction((tx) => tx.apply(ground('heron')))
await opened.store.transaction((tx) => tx.apply(outcome([put('checkIn', checkIn('c:heron', '2026-03-08'))])))
await opened.store.transaction(async (tx) => {
  await tx.apply(outcome([put('checkIn', checkIn('c:heron', '2026-03-09'))]))
  process.stdout.write('acknowledged\n')
  await new Promise((resolve) => setTimeout(resolve, 20_000))
})
