import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pino } from 'pino'
import { expect, it, onTestFinished } from 'vitest'
import type { OutboxRow } from '../../src/engine/rows.ts'
import { createSender } from '../../src/without-store/sender.ts'
import { openSpool } from '../../src/without-store/spool.ts'

it('tells of each message that goes past the store before it leaves, so that what can wait makes room', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'ebbline-sender-'))
  const spool = await openSpool(join(folder, 'spool'))
  const seen: string[] = []
  const sender = createSender({
    courier: {
      async deliver({ id }) {
        seen.push(`leaves: ${id}`)
        return { channel: 'c', platformId: id }
      },
    },
    spool,
    onSent: () => {},
    onPast: ({ id }) => void seen.push(`past: ${id}`),
    log: pino({ level: 'silent' }),
  })
  onTestFinished(async () => {
    sender.stop()
    await spool.close()
    rmSync(folder, { recursive: true })
  })
  const row = (id: string) => ({ id, priority: 0, body: { buttons: [], pick: null } }) as unknown as OutboxRow
  await sender.send(row('one'), null, () => false)
  // by the bot, at its own pace
  await sender.courier.deliver(row('two'))
  expect(seen).toEqual(['past: one', 'leaves: one', 'leaves: two'])
})
