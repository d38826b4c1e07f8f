import fc from 'fast-check'
import { expect, it } from 'vitest'
import { cleanText } from '../../src/store/clean.ts'
import { onBothDatabases } from './databases.ts'
import { at } from './samples.ts'

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
