import { expect, it } from 'vitest'
import type { Tx } from '../../src/engine/ports.ts'
import type { Table } from '../../src/engine/rows.ts'
import { onBothDatabases } from './databases.ts'
import { at, checkIn, client, ground, outcome, posting, practice, put, samples } from './samples.ts'

onBothDatabases('rows', (bench) => {
  const tables = Object.keys(samples) as Table[]
  // backwards, so that the store itself must see to what refers to what
  const everything = outcome(tables.toReversed().map((table) => put(table, samples[table])))

  async function readAll(tx: Tx): Promise<Record<string, unknown>> {
    const file = await tx.client('c:heron')
    return {
      practice: file?.practice,
      client: file?.client,
      consent: file?.consent,
      screening: file?.screening,
      plan: file?.plan,
      rung: file?.rungs[0],
      checkIn: file?.checkIns[0],
      sign: file?.signs[0],
      hold: file?.holds[0],
      flag: file?.flags[0],
      decision: file?.decisions[0],
      alert: file?.alerts[0],
      asked: file?.asked[0],
      due: file?.dues[0],
      activity: file?.activities[0],
      question: file?.questions[0],
      cover: file?.covers[0],
      note: (await tx.notes('c:heron'))[0],
    }
  }

  it('come back as they were written, type for type', async () => {
    const { store } = await bench.open()
    await store.transaction((tx) => tx.apply(everything))
    const read = await store.transaction(readAll)
    for (const [table, row] of Object.entries(read)) {
      expect(row, table).toStrictEqual(samples[table as Table])
    }
    expect(await store.transaction((tx) => tx.seen(samples.inbound.id))).toBe(true)
    expect(await store.transaction((tx) => tx.seen('100000000000000010'))).toBe(false)
  })

  it('change nothing when written twice', async () => {
    const { store } = await bench.open()
    await store.transaction((tx) => tx.apply(everything))
    const once = await store.transaction(readAll)
    await store.transaction((tx) => tx.apply(everything))
    expect(await store.transaction(readAll)).toStrictEqual(once)
  })

  it('are replaced by id, nothing said told apart from nothing denied', async () => {
    const { store } = await bench.open()
    const day = (denied: 'all' | null | []) => put('checkIn', checkIn('c:heron', '2026-03-08', { denied }))
    await store.transaction((tx) => tx.apply(ground('heron')))
    for (const denied of ['all', null, []] as const) {
      await store.transaction((tx) => tx.apply(outcome([day(denied as never)])))
      const file = await store.transaction((tx) => tx.client('c:heron'))
      expect(file?.checkIns).toHaveLength(1)
      expect(file?.checkIns[0]?.denied).toStrictEqual(denied)
    }
  })

  it('are removed by id, and removing what is not there is no error', async () => {
    const { store } = await bench.open()
    await store.transaction((tx) => tx.apply(everything))
    await store.transaction((tx) =>
      tx.apply(
        outcome([
          { drop: 'due', id: 'x' },
          { drop: 'asked', id: 'none' },
        ]),
      ),
    )
    const file = await store.transaction((tx) => tx.client('c:heron'))
    expect(file?.dues).toStrictEqual([])
    expect(file?.asked).toHaveLength(1)
  })

  it('keep characters that a database cannot hold from losing the whole message', async () => {
    const { store, outbox } = await bench.open()
    const words = 'numb\0 down \ud83d there'
    const version = { ...samples.version, words, reading: { [words]: [words] } }
    const odd = posting('odd')
    const sent = { ...odd, message: { ...odd.message, text: words } }
    await store.transaction((tx) => tx.apply(ground('heron')))
    await store.transaction((tx) => tx.apply(outcome([put('version', version)], [sent])))
    const [row] = await outbox.waiting(at('2027-01-01T00:00:00Z'), 1)
    expect(row?.body.text).toBe('numb\uFFFD down \uFFFD there')
  })

  it('hold one client of an alias in a practice, and one practice of a server', async () => {
    const { store } = await bench.open()
    await store.transaction((tx) => tx.apply(ground('heron')))
    const twin = put('client', client('heron', { id: 'c:other' }))
    await expect(store.transaction((tx) => tx.apply(outcome([twin])))).rejects.toThrow()
    const second = put('practice', { ...practice, id: 'p:other' })
    await expect(store.transaction((tx) => tx.apply(outcome([second])))).rejects.toThrow()
  })

  it('refuse a row of a client who does not exist', async () => {
    const { store } = await bench.open()
    await store.transaction((tx) => tx.apply(ground('heron')))
    const stray = put('checkIn', checkIn('c:nobody', '2026-03-08'))
    await expect(store.transaction((tx) => tx.apply(outcome([stray])))).rejects.toThrow()
  })

  it('keep instants to the millisecond on both sides of a clock change', async () => {
    const { store } = await bench.open()
    await store.transaction((tx) => tx.apply(ground('heron')))
    for (const text of ['2026-03-08T06:59:59.999Z', '2026-03-08T07:00:00.001Z', '2026-11-01T06:30:00.000Z']) {
      const due = { ...samples.due, at: at(text) }
      await store.transaction((tx) => tx.apply(outcome([put('due', due)])))
      expect((await store.transaction((tx) => tx.due('x')))?.at).toStrictEqual(at(text))
    }
  })
})
