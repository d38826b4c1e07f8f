import { startPatiently } from '../../src/start.ts'
import { oneClient } from './live.ts'
import { ownServer } from './own-postgresql.ts'

/**
 * `npx tsx tests/faults/postgresql-restart-run.ts [BIN] [USER]`: a PostgreSQL server of its own is stopped under the bot
 * and started again, and once more before the bot starts. USER runs it, since it does not run as root.
 */
const [bin, user] = process.argv.slice(2)
const server = ownServer(bin, user)
let failed = 0
const must = (what: string, isSo: boolean): void => {
  console.log(`${isSo ? 'ok    ' : 'NOT ok'} ${what}`)
  if (!isSo) failed += 1
}

try {
  const live = await oneClient(server.url)
  const { heron, until, toHeron, inAlerts, platform, parts } = live
  const told: string[] = []
  const tell = ({ message }: Error): void => void told.push(message)
  let service = await startPatiently({ ...parts, tell })

  server.stop()
  await heron.say("I can't pee since this morning")
  const ms = await until(() => toHeron().length === 1 && inAlerts().length === 1)
  must(`server stopped while the bot runs: reply and alert after ${ms.toFixed(0)} ms`, ms < 3_000)
  await heron.say('2 calf 4')
  await until(() => toHeron().length === 2)
  service.abandon()
  await service.client.destroy()

  const starting = startPatiently({ ...parts, tell })
  await until(() => told.length > 0 && platform.connected)
  must(`the keeper reads: ${told[0]}`, told[0]!.includes('start it'))
  await heron.say('also my foot is dragging since this morning')
  const again = await until(() => toHeron().length === 3)
  must(`server away at the start: reply after ${again.toFixed(0)} ms`, again < 3_000)

  server.start()
  service = await starting
  for (let n = 0; n < 3; n += 1) await service.bot.tick()
  const file = await service.store.store.transaction((tx) => tx.client('c:heron'))
  const signs = file!.signs.map(({ sign, state }) => `${sign} ${state}`).sort()
  must(
    `signs in the database: ${signs.join(', ')}`,
    signs.includes('bladder-change open') && signs.includes('leg-weakness open'),
  )
  must(
    'the check-in is in the database',
    file!.checkIns.some(({ pain }) => pain === 4),
  )
  const urgent = toHeron().filter(({ content }) => content.includes('112'))
  must(
    `urgent replies: ${urgent.length}, alerts: ${inAlerts().length}`,
    urgent.length === 2 && inAlerts().length === 2,
  )
  await service.stop()
  await platform.stop()
} finally {
  server.remove()
}
process.exit(failed === 0 ? 0 : 1)
