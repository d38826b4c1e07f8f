import fc from 'fast-check'
import { expect, it } from 'vitest'
import { cleanText } from '../../src/store/clean.ts'
import { onBothDatabases } from './databases.ts'
import { at } from './samples.ts'

onBothDatabases('lease', (bench) => {
  const [noon, later, muchLater] = ['12:00', '12:05', '12:10'].map((time) =>
    at(`2026-03-08T${time}:00Z`),
  ) as [Date, Date, Date]

  it('is held by one, renewed by its holder, and free again when it has run out or been given back', async () => {
    const { leases } = await bench.open()
    expect(await leases.take('tick', 'a', noon, later)).toBe(true)
    expect(await leases.take('tick', 'b', noon, later)).toBe(false)
    expect(await leases.take('digest', 'b', noon, later)).toBe(true)
    expect(await leases.take('tick', 'a', noon, muchLater)).toBe(true)
    expect(await leases.take('tick', 'b', later, muchLater)).toBe(false)
    expect(await leases.take('tick', 'b', muchLater, at('2026-03-08T13:00:00Z'))).toBe(true)
    await leases.release('tick', 'a')
    expect(await leases.take('tick', 'a', muchLater, at('2026-03-08T13:00:00Z'))).toBe(false)
    await leases.release('tick', 'b')
    expect(await leases.take('tick', 'a', muchLater, at('2026-03-08T13:00:00Z'))).toBe(true)
  })

  it('goes to one of many who reach for it at once', async () => {
    const { leases } = await bench.open()
    const holders = ['a', 'b', 'c', 'd']
    const got = await Promise.all(holders.map((holder) => leases.take('tick', holder, noon, later)))
    expect(got.filter(Boolean)).toHaveLength(1)
  })
})

onBothDatabases('setting', (bench) => {
  it('is kept under its key, the last one said', async () => {
    const { settings } = await bench.open()
    expect(await settings.get('commands')).toBeNull()
    await settings.set('commands', 'one')
    await settings.set('commands', 'two')
    expect(await settings.get('commands')).toBe('two')
  })
})

it('cleaned text is well formed, without NUL, as long as before, and itself where nothing was unfit', () => {
  fc.assert(
    fc.property(
      fc.string({ unit: fc.integer({ min: 0, max: 0xffff }).map((n) => String.fromCharCode(n)) }),
      (text) => {
        const [clean] = cleanText([text])
        expect(clean).toHaveLength(text.length)
        expect(Buffer.from(clean ?? '', 'utf8').toString('utf8')).toBe(clean)
        expect(clean).not.toContain('\0')
        expect(cleanText([clean])).toStrictEqual([clean])
      },
    ),
  )
  const untouched = { words: 'calf 4 🦵 é', at: at('2026-03-08T12:00:00Z'), list: [null, 1] }
  expect(cleanText(untouched)).toBe(untouched)
})
