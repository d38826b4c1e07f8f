import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pino } from 'pino'
import { expect, it, onTestFinished } from 'vitest'
import type { Store, Tx } from '../../src/engine/ports.ts'
import type { OutboxRow } from '../../src/engine/rows.ts'
import { createSender, type Sender, type SenderParts } from '../../src/without-store/sender.ts'
import { openSpool } from '../../src/without-store/spool.ts'
import { watched } from '../../src/without-store/watched.ts'

async function senderIn(seen: string[], other: Partial<SenderParts> = {}): Promise<Sender> {
  const folder = mkdtempSync(join(tmpdir(), 'ebbline-sender-'))
  const spool = await openSpool(join(folder, 'spool'))
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
    ...other,
  })
  onTestFinished(async () => {
    sender.stop()
    await spool.close()
    rmSync(folder, { recursive: true })
  })
  return sender
}

const row = (id: string, clientId: string | null = null, buttons: string[] = []) =>
  ({ id, clientId, priority: 0, body: { buttons, pick: null } }) as unknown as OutboxRow

it('tells of each message that goes past the store before it leaves, so that what can wait makes room', async () => {
  const seen: string[] = []
  const sender = await senderIn(seen)
  await sender.send(row('one'), null, () => false)
  // by the bot, at its own pace
  await sender.courier.deliver(row('two'))
  expect(seen).toEqual(['past: one', 'leaves: one', 'leaves: two'])
})

it('tells of a message that did not arrive the kind, code and place of what was in the way, and no words', async () => {
  const lines: string[] = []
  const sender = await senderIn([], {
    log: pino({ base: null }, { write: (line: string) => void lines.push(line) }),
    courier: {
      deliver: () => Promise.reject(Object.assign(new Error('heron wrote: numb'), { code: 'ECONNREFUSED' })),
    },
  })
  await sender.send(row('one'), null, () => false)
  expect(lines).toHaveLength(1)
  expect(JSON.parse(lines[0]!).error).toMatchObject({ name: 'Error', code: 'ECONNREFUSED' })
  expect(lines[0]).toContain('sender.test.ts')
  expect(lines[0]).not.toMatch(/heron|numb/)
})

it('forgets the messages with choices of a client who was erased, and no others', async () => {
  const sender = await senderIn([])
  await sender.courier.deliver(row('prompt', 'heron', ['yes']))
  await sender.courier.deliver(row('other', 'dipper', ['yes']))
  const store = {
    transaction: async <T>(work: (tx: Tx) => Promise<T>) => work({ erase: async () => {} } as unknown as Tx),
  } as unknown as Store
  await watched(store, () => {}, sender.forget).transaction(async (tx) => tx.erase('heron', new Date(0)))
  expect(sender.lately('prompt')).toBeNull()
  expect(sender.lately('other')).toMatchObject({ id: 'other' })
})
