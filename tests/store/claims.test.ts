import { spawnSync } from 'node:child_process'
import { setTimeout as pause } from 'node:timers/promises'
import { expect, it } from 'vitest'
import { createDelivery } from '../../src/chat/delivery.ts'
import type { Posting } from '../../src/engine/ports.ts'
import type { OutboxRow } from '../../src/engine/rows.ts'
import { type OpenStore, openStore } from '../../src/store/open.ts'
import { processNamed } from '../../src/store/process-name.ts'
import { onBothDatabases } from './databases.ts'
import { at, ground, outcome, posting } from './samples.ts'

const NOW = at('2026-03-08T12:00:00Z')
const later = (seconds: number): Date => new Date(NOW.getTime() + seconds * 1_000)
const REFS = ['heron', 'dipper', 'curlew', 'plover', 'wren', 'ouzel']
const due = (key: string, more: Partial<Posting> = {}) => posting(key, { notBefore: NOW, ...more })
const keysOf = (rows: readonly OutboxRow[]): string[] => rows.map((row) => row.key)

onBothDatabases('claims', (bench) => {
  /** One database with these messages, opened by two processes as it were. */
  async function twoOn(postings: readonly Posting[], names: readonly [string, string] = ['one', 'other']) {
    const url = await bench.address()
    const opened = await Promise.all([
      openStore(url, null, names[0]),
      pause(bench.kind === 'sqlite' ? 0 : 50).then(() => openStore(url, null, names[1])),
    ])
    await opened[0].store.transaction((tx) => tx.apply(ground(...REFS)))
    await opened[0].store.transaction((tx) => tx.apply(outcome([], postings)))
    return opened
  }
  const closing = async (opened: readonly OpenStore[], work: () => Promise<void>): Promise<void> => {
    try {
      await work()
    } finally {
      for (const store of opened) await store.close()
    }
  }

  it('lets two deliverers send each message once, in the order of its client', async () => {
    const postings = REFS.flatMap((ref) =>
      [1, 2, 3, 4].map((n) => due(`${ref} ${n}`, { clientId: `c:${ref}` })),
    )
    const opened = await twoOn(postings)
    await closing(opened, async () => {
      const sent: string[] = []
      const senders = opened.map(({ outbox }) =>
        createDelivery({
          outbox: { ...outbox, claim: (now, _most, least) => outbox.claim(now, 3, least) },
          now: () => NOW,
          onSent: () => {},
          undelivered: async () => undefined,
          courier: {
            async deliver(row) {
              await pause(1)
              sent.push(row.key)
              return { channel: 'dm', platformId: row.id }
            },
          },
        }),
      )
      // what one has claimed the other leaves, and comes back for where it was not sent
      while (sent.length < postings.length) await Promise.all(senders.map((sender) => sender.drain()))
      expect([...sent].sort()).toEqual(postings.map(({ message }) => message.key).sort())
      for (const ref of REFS)
        expect(sent.filter((key) => key.startsWith(ref))).toEqual([1, 2, 3, 4].map((n) => `${ref} ${n}`))
      expect(keysOf(await opened[0].outbox.waiting(later(600), 100))).toEqual([])
    })
  })

  it('claims urgent ones first, holds back what comes after a claimed one of its client, gives over in time', async () => {
    const opened = await twoOn([
      due('heron 1'),
      due('heron 2'),
      due('dipper 1', { clientId: 'c:dipper' }),
      due('heron urgent', { priority: 0 }),
    ])
    await closing(opened, async () => {
      const [{ outbox: one }, { outbox: other }] = opened
      expect(keysOf(await one.claim(NOW, 2, 4))).toEqual(['heron urgent', 'heron 1'])
      expect(keysOf(await other.claim(NOW, 9, 4))).toEqual(['dipper 1'])
      // whoever holds a row gets it again
      expect(keysOf(await one.claim(NOW, 9, 4))).toEqual(['heron urgent', 'heron 1', 'heron 2'])
      expect(keysOf(await other.claim(later(30), 9, 4))).toEqual(['heron urgent', 'dipper 1'])
      expect(keysOf(await one.claim(later(150), 9, 4))).toEqual([
        'heron urgent',
        'heron 1',
        'heron 2',
        'dipper 1',
      ])
    })
  })

  it('takes up at once what a killed process of this machine had claimed', async () => {
    const { pid } = spawnSync(process.execPath, ['--version'])
    const opened = await twoOn([due('heron 1')], [processNamed(pid, 'gone'), 'other'])
    await closing(opened, async () => {
      const [killed, other] = opened
      expect(keysOf(await killed.outbox.claim(NOW, 9, 4))).toEqual(['heron 1'])
      expect(keysOf(await other.outbox.claim(NOW, 9, 4))).toEqual(['heron 1'])
    })
  })
})
