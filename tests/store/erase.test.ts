import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import type { Table } from '../../src/engine/rows.ts'
import { outboxId } from '../../src/store/apply.ts'
import { onBothDatabases } from './databases.ts'
import { at, checkIn, client, ground, message, outcome, posting, practice, put, samples } from './samples.ts'

const LATE = at('2027-01-01T00:00:00Z')

onBothDatabases('erasure', (bench) => {
  it('leaves no row of the client, and every row of the others', async () => {
    const { store, outbox, dues } = await bench.open()
    const tables = Object.keys(samples) as Table[]
    const about = (key: string, ref: string | null, text: string) =>
      posting(key, { clientId: null, message: message(key, { about: ref, text }) })
    await store.transaction((tx) => tx.apply(ground('heron', 'dipper')))
    await store.transaction((tx) =>
      tx.apply(
        outcome(
          [
            ...tables.map((table) => put(table, samples[table])),
            put('checkIn', checkIn('c:dipper', '2026-03-08')),
          ],
          [
            posting('prompt'),
            about('digest heron', 'heron', 'replies 6/7'),
            about('digest dipper', 'dipper', 'replies 7/7'),
            about('roll-call', null, 'Open: heron, dipper'),
            about('roll-call of herons', null, 'Open: heron-two'),
          ],
        ),
      ),
    )
    for (const key of ['roll-call', 'roll-call of herons']) await outbox.sent(outboxId(key), LATE, '1', '2')
    await store.transaction((tx) => tx.erase('c:heron', LATE))

    expect(await store.transaction((tx) => tx.client('c:heron'))).toBeNull()
    expect(await store.transaction((tx) => tx.notes('c:heron'))).toEqual([])
    expect(await dues.dueBy(LATE, 10)).toEqual([])
    expect((await outbox.waiting(LATE, 10)).map((row) => row.key)).toEqual(['digest dipper'])
    const body = async (key: string) => (await store.transaction((tx) => tx.outbox(outboxId(key))))?.body
    expect(await body('roll-call')).toMatchObject({ text: '', buttons: [] })
    expect((await body('roll-call of herons'))?.text).toBe('Open: heron-two')
    const roster = await store.transaction((tx) => tx.roster(practice.id))
    expect(roster.map((file) => [file.client.ref, file.checkIns.length])).toEqual([['dipper', 1]])
    // what was applied is not applied again when it is fetched once more
    expect(await store.transaction((tx) => tx.seen(samples.inbound.id))).toBe(true)
  })

  it('knows the alias by all of its letters, and at the beginning of a line', async () => {
    const { store, outbox } = await bench.open()
    await store.transaction((tx) => tx.apply(ground('mar', 'maría')))
    const lines = { sent: 'Needs you:\nmar: no reply', about: 'Needs you:\nmaría: no reply' }
    const posted = Object.entries(lines).map(([key, text]) =>
      posting(key, { clientId: null, message: message(key, { about: null, text }) }),
    )
    await store.transaction((tx) => tx.apply(outcome([], posted)))
    await outbox.sent(outboxId('sent'), LATE, '1', '2')
    await store.transaction((tx) => tx.erase('c:mar', LATE))
    const text = async (key: string) => (await store.transaction((tx) => tx.outbox(outboxId(key))))?.body.text
    expect(await text('sent')).toBe('')
    expect(await text('about')).toBe(lines.about)
  })

  it('of nobody changes nothing, and the alias is free again', async () => {
    const { store } = await bench.open()
    await store.transaction((tx) => tx.apply(ground('heron')))
    await store.transaction((tx) => tx.erase('c:nobody', LATE))
    await store.transaction((tx) => tx.erase('c:heron', LATE))
    await store.transaction((tx) => tx.apply(outcome([put('client', client('heron', { id: 'c:second' }))])))
    expect((await store.transaction((tx) => tx.clientByRef(practice.id, 'heron')))?.client.id).toBe(
      'c:second',
    )
  })

  it.skipIf(bench.kind !== 'sqlite')('leaves none of the words on the disk', async () => {
    const url = await bench.address()
    const { store } = await bench.open(url)
    const onDisk = () =>
      ['', '-wal'].some((end) => readFileSync(url.slice('file:'.length) + end).includes('pins-and-needles'))
    await store.transaction((tx) => tx.apply(ground('heron')))
    const words = { ...samples.version, words: 'pins-and-needles' }
    await store.transaction((tx) => tx.apply(outcome([put('version', words)])))
    expect(onDisk()).toBe(true)
    await store.transaction((tx) => tx.erase('c:heron', LATE))
    expect(onDisk()).toBe(false)
  })
})
