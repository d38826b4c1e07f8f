import cron from 'node-cron'
import { tellHeap } from './tell-heap.ts'
import { ZONES } from './town.ts'

/** A timer for each client, as it is usually done: everybody's prompt of every day, in their own zone. */
const CLIENTS = Number(process.env.CLIENTS)
for (let n = 0; n < CLIENTS; n += 1)
  cron.schedule('5 0 * * *', () => {}, { timezone: ZONES[n % ZONES.length]!, suppressMissedWarning: true })
tellHeap()
console.log('ready')
