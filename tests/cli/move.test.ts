import { existsSync, writeFileSync } from 'node:fs'
import { Readable } from 'node:stream'
import { setTimeout as pause } from 'node:timers/promises'
import SqliteDatabase from 'better-sqlite3'
import { describe, expect, it } from 'vitest'
import { run as move } from '../../src/cli/move.ts'
import { openStore } from '../../src/store/open.ts'
import { run } from '../end-to-end/service-process.ts'
import { sqliteAddresses } from '../store/databases.ts'
import { everyRow } from '../store/every-row.ts'
import { grown } from '../store/grown.ts'
import { contents, filled, pathOf } from '../store/moving.ts'

const onFile = sqliteAddresses()

async function moved(...args: string[]) {
  const [out, err]: [string[], string[]] = [[], []]
  const io = {
    stdin: Readable.from(['']),
    out: (line: string) => void out.push(line),
    err: (line: string) => void err.push(line),
  }
  const code = await move(args, io)
  return { code, out, err: err.join('\n') }
}

describe('ebb move', () => {
  it.each([
    [[], 'Name both databases'],
    [['--from', 'file:a.db'], 'Name both databases'],
    [['--from', 'file:a.db', '--to', 'mysql://host/b'], 'which is not known here'],
    [['--from', 'file:a.db', '--to', 'file:./a.db'], 'name the same database'],
    [['--from', 'file:a.db', '--to', 'file:b.db', 'more'], 'Unexpected argument'],
  ])('%j is wrong use', async (args, why) => {
    const { code, err } = await moved(...args)
    expect(code).toBe(2)
    expect(err).toContain(why)
    expect(err).toContain('Usage: ebb move')
  })

  it('prints a line a table, and says what to do next', async () => {
    const [from, to] = [await onFile(), await onFile()]
    await filled(from)
    const { code, out, err } = await moved('--from', from, '--to', to)
    expect(code).toBe(0)
    expect(out).toContainEqual(expect.stringMatching(/^checkIn +601 {2}[0-9a-f]{16}$/))
    expect(err).toContain(
      `${pathOf(to)}-erased.jsonl. Set DATABASE_URL to the new database and start the bot`,
    )
    const again = await moved('--from', from, '--to', to)
    expect(again).toMatchObject({ code: 1, err: expect.stringContaining('holds rows already') })
  })

  it('is refused while words wait beside the old database, until they are taken up', async () => {
    const [from, to] = [await onFile(), await onFile()]
    await (await openStore(from)).close()
    writeFileSync(`${pathOf(from)}-spool`, '{"kind":"words"}\n')
    const { code, err } = await moved('--from', from, '--to', to)
    expect(code).toBe(1)
    expect(err).toContain('start the bot on the old database once')
    expect(existsSync(pathOf(to))).toBe(false)
    writeFileSync(`${pathOf(from)}-spool`, Buffer.alloc(17))
    expect((await moved('--from', from, '--to', to)).code).toBe(0)
  })

  it('told to stop it ends in order; killed at any time it loses nothing; then it goes on', async () => {
    const [from, to] = [await onFile(), await onFile()]
    await grown(from, 500)
    const args = ['move', '--from', from, '--to', to]
    const stopped = run('src/cli/index.ts', args, {})
    await copies(to, 0)
    const ended = await stopped.stop()
    expect(ended.code).toBe(1)
    expect(ended.err).toMatch(/^Stopped with \d+ of \d+ rows copied: run the same again to go on/)
    const killed = run('src/cli/index.ts', args, {})
    await copies(to, copiedIn(to))
    killed.kill()
    await killed.ended()
    await expect(openStore(to)).rejects.toThrow('This database holds half of')
    expect((await moved('--from', from, '--to', to)).code).toBe(0)
    expect(await contents(to)).toEqual(await contents(from))
    expect((await everyRow(to)).length).toBeGreaterThan(10_000)
  }, 240_000)
})

/** Resolves once more rows than so many are over. */
async function copies(url: string, more: number): Promise<void> {
  for (const late = performance.now() + 60_000; copiedIn(url) <= more; await pause(20))
    if (performance.now() > late) throw new Error('waited in vain')
}

/** Rows that are over, by the note of the move. */
function copiedIn(url: string): number {
  if (!existsSync(pathOf(url))) return 0
  const db = new SqliteDatabase(pathOf(url), { readonly: true, timeout: 5_000 })
  try {
    const note = db.prepare(`SELECT "value" FROM "Setting" WHERE "key" = 'half-moved'`).pluck().get()
    return note ? (JSON.parse(String(note)) as { rows: number }).rows : 0
  } catch {
    return 0
  } finally {
    db.close()
  }
}
