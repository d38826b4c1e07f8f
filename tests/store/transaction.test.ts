import { expect, it } from 'vitest'
import { onBothDatabases } from './databases.ts'
import { at, checkIn, client, ground, outcome, posting, practice, put, samples } from './samples.ts'

const LATE = at('2027-01-01T00:00:00Z')

onBothDatabases('transaction', (bench) => {
  it('leaves nothing behind when its work throws', async () => {
    const { store, outbox, dues } = await bench.open()
    const attempt = store.transaction(async (tx) => {
      await tx.apply(ground('heron'))
      await tx.apply(outcome([put('due', samples.due), put('inbound', samples.inbound)], [posting('k')]))
      expect(await tx.seen(samples.inbound.id)).toBe(true)
      throw new Error('undo')
    })
    await expect(attempt).rejects.toThrow('undo')
    expect(await store.transaction((tx) => tx.practice(practice.id))).toBeNull()
    expect(await store.transaction((tx) => tx.seen(samples.inbound.id))).toBe(false)
    expect(await outbox.waiting(LATE, 10)).toEqual([])
    expect(await dues.dueBy(LATE, 10)).toEqual([])
  })

  it('leaves nothing behind when the database refuses one of its rows', async () => {
    const { store } = await bench.open()
    await store.transaction((tx) => tx.apply(ground('heron')))
    const half = outcome([
      put('checkIn', checkIn('c:heron', '2026-03-08')),
      put('note', { ...samples.note, clientId: 'c:nobody' }),
    ])
    await expect(store.transaction((tx) => tx.apply(half))).rejects.toThrow()
    expect((await store.transaction((tx) => tx.client('c:heron')))?.checkIns).toEqual([])
  })

  it('applies a platform id once, however many arrive at the same moment', async () => {
    const { store, outbox } = await bench.open()
    await store.transaction((tx) => tx.apply(ground('heron')))
    const handle = (n: number) =>
      store.transaction(async (tx) => {
        if (await tx.seen(samples.inbound.id)) return false
        await tx.apply(outcome([put('inbound', samples.inbound)], [posting(`receipt/${n}`)]))
        return true
      })
    const applied = await Promise.all([1, 2, 3, 4, 5].map(handle))
    expect(applied.filter(Boolean)).toHaveLength(1)
    expect(await outbox.waiting(LATE, 10)).toHaveLength(1)
  })

  it('gives back what the work gives', async () => {
    const { store } = await bench.open()
    expect(await store.transaction(async () => 41)).toBe(41)
  })

  it('finishes what runs before the store closes', async () => {
    const url = await bench.address()
    const first = await bench.open(url)
    await first.store.transaction((tx) => tx.apply(ground('heron')))
    const writing = first.store.transaction((tx) =>
      tx.apply(outcome([put('checkIn', checkIn('c:heron', '2026-03-08'))])),
    )
    await Promise.all([writing, first.close()])
    const second = await bench.open(url)
    const file = await second.store.transaction((tx) => tx.client('c:heron'))
    expect(file?.checkIns).toHaveLength(1)
    expect(file?.client).toStrictEqual(client('heron'))
  })

  it('is undone where the process dies in the middle, and what was committed stays', async () => {
    const url = await bench.address()
    const first = await bench.open(url)
    await first.store.transaction((tx) => tx.apply(ground('heron')))
    const dying = first.store.transaction(async (tx) => {
      await tx.apply(outcome([put('checkIn', checkIn('c:heron', '2026-03-08'))], [posting('k')]))
      first.abandon()
      await tx.seen('x')
    })
    await expect(dying).rejects.toThrow()
    const second = await bench.open(url)
    const file = await second.store.transaction((tx) => tx.client('c:heron'))
    expect(file?.client.ref).toBe('heron')
    expect(file?.checkIns).toEqual([])
    expect(await second.outbox.waiting(LATE, 10)).toEqual([])
  })
})
