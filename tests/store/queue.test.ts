import { setTimeout as pause } from 'node:timers/promises'
import { PrismaBetterSqlite3 } from '@prisma/adapter-better-sqlite3'
import { expect, it } from 'vitest'
import { PrismaClient } from '../../src/generated/sqlite/client.ts'
import { openStore } from '../../src/store/open.ts'
import { createQueue } from '../../src/store/queue.ts'
import { onBothDatabases, temporaryFolder } from './databases.ts'

const folder = temporaryFolder()

it('the trap is real: on the bare SQLite client an outside write vanishes with a rollback', async () => {
  const path = `${folder}/trap.db`
  await (await openStore(`file:${path}`)).close()
  const client = new PrismaClient({ adapter: new PrismaBetterSqlite3({ url: path }) })
  let reportedDone = false
  const transaction = client.$transaction(async (db) => {
    await db.setting.create({ data: { key: 'inside', value: '1' } })
    await client.setting.create({ data: { key: 'outside', value: '1' } })
    reportedDone = true
    throw new Error('undo')
  })
  await expect(transaction).rejects.toThrow('undo')
  expect(reportedDone).toBe(true)
  expect(await client.setting.findUnique({ where: { key: 'outside' } })).toBeNull()
  await client.$disconnect()
})

onBothDatabases('a write beside an open transaction', (bench) => {
  it('stays when the transaction is undone', async () => {
    const { store, settings } = await bench.open()
    let outside: Promise<void> | undefined
    const transaction = store.transaction(async (tx) => {
      await tx.seen('x')
      await begun
      await pause(20)
      throw new Error('undo')
    })
    const begun = pause(5).then(() => {
      outside = settings.set('outside', 'kept')
    })
    await expect(transaction).rejects.toThrow('undo')
    await outside
    expect(await settings.get('outside')).toBe('kept')
  })
})

it('a queue keeps the order, one at a time, also past failures', async () => {
  const queue = createQueue()
  const seen: string[] = []
  const work = (name: string, ms: number, fails = false) =>
    queue.run(async () => {
      seen.push(`${name} in`)
      await pause(ms)
      seen.push(`${name} out`)
      if (fails) throw new Error(name)
      return name
    })
  const results = await Promise.allSettled([work('a', 10), work('b', 5, true), work('c', 1)])
  expect(results.map((result) => result.status)).toEqual(['fulfilled', 'rejected', 'fulfilled'])
  expect(seen).toEqual(['a in', 'a out', 'b in', 'b out', 'c in', 'c out'])
})

it('a queue refuses work that would wait for itself for ever, but not work that a turn left behind', async () => {
  const queue = createQueue()
  await expect(queue.run(() => queue.run(async () => 1))).rejects.toThrow('inside a transaction')
  const later = await queue.run(async () => ({ result: pause(5).then(() => queue.run(async () => 2)) }))
  expect(await later.result).toBe(2)
})

it('a closed queue finishes what it has and takes no more', async () => {
  const queue = createQueue()
  const first = queue.run(async () => {
    await pause(5)
    return 1
  })
  await queue.close()
  expect(await first).toBe(1)
  await expect(queue.run(async () => 2)).rejects.toThrow('closed')
})
