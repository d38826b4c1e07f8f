import { expect, it } from 'vitest'
import type { Posting } from '../../src/engine/ports.ts'
import { outboxId } from '../../src/store/apply.ts'
import type { OpenStore } from '../../src/store/open.ts'
import { onBothDatabases } from './databases.ts'
import { at, ground, message, outcome, posting, practice } from './samples.ts'

const NOW = at('2026-03-08T12:00:00Z')
const minutes = (n: number): Date => new Date(NOW.getTime() + n * 60_000)
const keys = async (opened: OpenStore, now = NOW): Promise<string[]> =>
  (await opened.outbox.waiting(now, 100)).map((row) => row.key)

onBothDatabases('outbox', (bench) => {
  async function withPostings(...postings: Posting[]): Promise<OpenStore> {
    const opened = await bench.open()
    await opened.store.transaction((tx) => tx.apply(ground('heron', 'dipper')))
    await opened.store.transaction((tx) => tx.apply(outcome([], postings)))
    return opened
  }
  const due = (key: string, more: Partial<Posting> = {}) => posting(key, { notBefore: NOW, ...more })

  it('holds a message whole, under an id made of its key', async () => {
    const expires = minutes(60)
    const opened = await withPostings(due('prompt/heron/2026-03-08', { expires }))
    const row = (await opened.outbox.waiting(NOW, 1))[0]
    expect(row).toStrictEqual({
      id: outboxId('prompt/heron/2026-03-08'),
      key: 'prompt/heron/2026-03-08',
      practiceId: practice.id,
      clientId: 'c:heron',
      kind: 'prompt',
      body: message('prompt/heron/2026-03-08'),
      priority: 3,
      seq: 1,
      state: 'waiting',
      notBefore: NOW,
      expires,
      attempts: 0,
      sentAt: null,
      channel: null,
      platformId: null,
      reason: null,
    })
    expect(await opened.store.transaction((tx) => tx.outbox(row?.id ?? ''))).toStrictEqual(row)
  })

  it('reads a message of before messages could carry files as one without any', async () => {
    const { files: _, ...old } = message('old')
    const opened = await withPostings(due('old', { message: old as Posting['message'] }))
    expect((await opened.outbox.waiting(NOW, 1))[0]?.body.files).toEqual([])
  })

  it('gives urgent ones first, then in order of writing', async () => {
    const opened = await withPostings(
      due('digest', { priority: 4, clientId: null }),
      due('prompt 1'),
      due('prompt 2', { clientId: 'c:dipper' }),
      due('alert', { priority: 1, clientId: null }),
      due('urgent', { priority: 0 }),
      due('not yet', { priority: 0, clientId: 'c:dipper', notBefore: minutes(5) }),
    )
    expect(await keys(opened)).toEqual(['urgent', 'alert', 'prompt 1', 'prompt 2', 'digest'])
    expect((await opened.outbox.waiting(NOW, 2)).map((row) => row.key)).toEqual(['urgent', 'alert'])
    expect((await keys(opened, minutes(5)))[1]).toBe('not yet')
  })

  it('writes a key once, within one outcome and later', async () => {
    const opened = await withPostings(due('a'), due('a'), due('b'))
    await opened.store.transaction((tx) => tx.apply(outcome([], [due('b'), due('c')])))
    const rows = await opened.outbox.waiting(NOW, 10)
    expect(rows.map((row) => [row.key, row.seq])).toEqual([
      ['a', 1],
      ['b', 2],
      ['c', 3],
    ])
    const [first] = rows
    await opened.outbox.sent(first?.id ?? '', NOW, '1', '2')
    await opened.store.transaction((tx) => tx.apply(outcome([], [due('a')])))
    expect(await keys(opened)).toEqual(['b', 'c'])
  })

  it('keeps the order of one client: behind a message that is tried again the rest wait', async () => {
    const opened = await withPostings(
      due('heron 1'),
      due('heron 2'),
      due('dipper 1', { clientId: 'c:dipper' }),
      due('heron urgent', { priority: 0 }),
      due('roll-call 1', { clientId: null }),
      due('roll-call 2', { clientId: null }),
    )
    await opened.outbox.retry(outboxId('heron 1'), minutes(1))
    await opened.outbox.retry(outboxId('roll-call 1'), minutes(1))
    expect(await keys(opened)).toEqual(['heron urgent', 'dipper 1', 'roll-call 2'])
    expect(await keys(opened, minutes(1))).toContain('heron 2')
    await opened.outbox.failed(outboxId('heron 1'), 'closed')
    expect(await keys(opened)).toContain('heron 2')
  })

  it('says when the next may go', async () => {
    const opened = await withPostings(
      due('1', { notBefore: minutes(10) }),
      due('2', { notBefore: minutes(1) }),
    )
    expect(await opened.outbox.nextDue()).toStrictEqual(minutes(10))
    await opened.outbox.sent(outboxId('1'), NOW, '1', '2')
    expect(await opened.outbox.nextDue()).toStrictEqual(minutes(1))
    await opened.outbox.dropped(outboxId('2'), 'stale')
    expect(await opened.outbox.nextDue()).toBeNull()
  })

  it('keeps how each ended, and never brings one back', async () => {
    const opened = await withPostings(due('sent'), due('dropped'), due('failed'))
    const [sent, dropped, failed] = ['sent', 'dropped', 'failed'].map(outboxId) as [string, string, string]
    await opened.outbox.retry(sent, minutes(1))
    await opened.outbox.sent(sent, minutes(2), '77', '88')
    await opened.outbox.dropped(dropped, 'stale')
    await opened.outbox.failed(failed, 'closed')
    for (const id of [sent, dropped, failed]) {
      await opened.outbox.retry(id, NOW)
      await opened.outbox.dropped(id, 'late')
    }
    const row = (id: string) => opened.store.transaction((tx) => tx.outbox(id))
    expect(await row(sent)).toMatchObject({
      state: 'sent',
      sentAt: minutes(2),
      channel: '77',
      platformId: '88',
      attempts: 2,
    })
    expect(await row(dropped)).toMatchObject({ state: 'dropped', reason: 'stale', attempts: 0 })
    expect(await row(failed)).toMatchObject({ state: 'failed', reason: 'closed', attempts: 1 })
    expect(await keys(opened)).toEqual([])
    await opened.outbox.sent('nobody', NOW, '1', '2')
  })

  it('withdraws what must not go out any more, with the rest of the transaction', async () => {
    const plain = due('follow-up', { message: message('follow-up', { drills: [] }) })
    const opened = await withPostings(due('prompt'), plain, due('other', { clientId: 'c:dipper' }))
    const withdraw = (fails: boolean) =>
      opened.store.transaction(async (tx) => {
        await tx.withdraw('c:heron', 'locked', (row) => row.body.drills.length > 0)
        if (fails) throw new Error('undo')
      })
    await expect(withdraw(true)).rejects.toThrow('undo')
    expect(await keys(opened)).toEqual(['prompt', 'follow-up', 'other'])
    await withdraw(false)
    expect(await keys(opened)).toEqual(['follow-up', 'other'])
  })

  it('numbers messages in one row, also where many write at once', async () => {
    const opened = await withPostings()
    const write = (n: number) => opened.store.transaction((tx) => tx.apply(outcome([], [due(`k${n}`)])))
    await Promise.all([...Array(8).keys()].map(write))
    expect((await opened.outbox.waiting(NOW, 10)).map((row) => row.seq)).toEqual([1, 2, 3, 4, 5, 6, 7, 8])
  })
})
