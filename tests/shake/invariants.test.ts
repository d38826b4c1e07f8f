import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import SqliteDatabase from 'better-sqlite3'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Delivered, playScenario } from '../../src/rehearsal/player/index.ts'
import { loadScenario } from '../../src/rehearsal/scenario/index.ts'
import { INVARIANTS, type Invariant, lockedWatch } from './invariants.ts'
import { type Sight, watcher } from './sight.ts'

/**
 * Whoever looks for breaches must be able to see one: each invariant is broken on purpose, in the record or in what was
 * delivered, and must say so; unbroken, it must say nothing.
 */
const SCENARIO = `practice: { zone: Europe/Lisbon, region: PT }
start: 2026-03-02
days: 2
clients:
  - ref: heron
    prompt: "08:00"
    side: left
    plan: { sessions: 2, rungs: { extension: 1 } }
    days: { 1: "2 calf 4, no signs", 2: "2 calf 6 and I can't pee since this morning" }
  - ref: dipper
    prompt: "08:00"
    side: left
    plan: { sessions: 1, rungs: { extension: 1 } }
    days: { 1-2: "1 knee 3, no signs" }
  - ref: wren
    prompt: "08:00"
    side: left
    plan: { sessions: 1, rungs: { extension: 1 } }
    days: { 1: none, 2: { at: "23:55", say: "1 knee 3, maybe my foot feels numb?" } }
`
const LONG_AGO = '2026-03-01T00:00:00.000Z'

interface Damage {
  /** What is done to the rows. */
  readonly sql?: string
  /** What is done to the rest of the sight. */
  readonly change?: (sight: Sight) => Partial<Sight>
}

const without = (kind: string) => (sight: Sight) => ({
  delivered: sight.delivered.filter((one) => one.kind !== kind),
})
const withMessage = (kind: string, more: Partial<Delivered>) => (sight: Sight) => {
  const one = { ...sight.delivered.find((each) => each.kind === kind)!, ...more }
  return { fresh: [one], delivered: [...sight.delivered, one] }
}

/** How each is broken, by how its sentence begins. */
const SABOTAGE: Readonly<Record<string, Damage>> = {
  'Nobody gets two prompts': { change: withMessage('prompt', {}) },
  'A message about one client': {
    change: withMessage('receipt', { to: 'client:dipper', about: 'heron' }),
  },
  'A plan is locked exactly': { sql: `DELETE FROM "Hold" WHERE "kind" = 'lock'` },
  'Every lock has told': { change: without('urgent') },
  'Every alert has reached': { change: without('alert') },
  'An alert that nobody': { sql: `DELETE FROM "Due" WHERE "kind" = 'alert-step'` },
  'A sign that somebody hinted': { sql: `DELETE FROM "Due" WHERE "kind" = 'deadline'` },
  'An active client has': { sql: `DELETE FROM "Due" WHERE "kind" = 'prompt'` },
  'Whoever has left': { sql: `UPDATE "Client" SET "stage" = 'left'` },
  'In calm, nothing that is due': { sql: `UPDATE "Due" SET "at" = '${LONG_AGO}'` },
  'In calm, everything': { change: () => ({ said: new Map([['heron', 99]]) }) },
  'Nothing is kept of somebody': { sql: `UPDATE "Client" SET "stage" = 'invited'` },
  'A check-in lies': { sql: 'UPDATE "CheckIn" SET "pain" = 11' },
  // what must be broken in more than one way
  'A plan is locked exactly.': { sql: `UPDATE "Sign" SET "state" = 'ended' WHERE "state" = 'open'` },
  'An active client has.': {
    sql: `INSERT INTO "Due" SELECT "id" || '-2', "practiceId", "clientId", "kind", "at", "data" FROM "Due" WHERE "kind" = 'prompt'`,
  },
  'In calm, nothing that is due.': {
    sql: `UPDATE "Outbox" SET "state" = 'waiting', "notBefore" = '${LONG_AGO}'`,
  },
  'A check-in lies.': { sql: `UPDATE "CheckIn" SET "day" = '2027-01-01' WHERE "day" = '2026-03-02'` },
}

const folder = mkdtempSync(join(tmpdir(), 'ebbline-sabotage-'))
let sight: Sight
let file: Buffer

beforeAll(async () => {
  const path = join(folder, 'play.db')
  const looks = watcher(path)
  const script = loadScenario('sabotage.yaml', SCENARIO)
  await playScenario({
    ...{ script, database: `file:${path}`, folder, direct: true },
    watch: (played, now) => {
      sight = looks.sight(played, now) ?? sight
    },
  })
  looks.close()
  const db = new SqliteDatabase(path)
  // with a log of writes beside it, it could not be opened from memory
  db.pragma('journal_mode = DELETE')
  file = db.serialize()
  db.close()
})
afterAll(() => rmSync(folder, { recursive: true }))

/** What an invariant says of the play with this damage. */
function seen(invariant: Invariant, { sql, change }: Damage = {}): readonly string[] {
  const db = new SqliteDatabase(Buffer.from(file))
  try {
    if (sql) expect(db.prepare(sql).run().changes).toBeGreaterThan(0)
    const rows: Sight['rows'] = (query) => db.prepare(query).all() as ReturnType<Sight['rows']>
    return invariant.breaches({ ...sight, rows, ...change?.(sight) })
  } finally {
    db.close()
  }
}

describe('what looks for breaches of the invariants', () => {
  it('has a sabotage for each', () => {
    const tried = Object.keys(SABOTAGE)
    expect(INVARIANTS.filter(({ says }) => !tried.some((name) => says.startsWith(name)))).toEqual([])
  })

  it.each(INVARIANTS.map((one) => [one.says, one] as const))(
    'finds nothing where nothing is wrong: %s',
    (_, invariant) => {
      expect(sight.calm).toBe(true)
      expect(seen(invariant)).toEqual([])
    },
  )

  it.each(Object.entries(SABOTAGE))('sees it broken: %s', (name, damage) => {
    const invariant = INVARIANTS.find(({ says }) => says.startsWith(name.replace('.', '')))!
    expect(seen(invariant, damage)).not.toEqual([])
  })

  it('sees a drill in a message to somebody who was locked before', () => {
    const watch = lockedWatch()
    const change = withMessage('plan', { to: 'client:heron', drills: ['extension:1'] })
    expect(seen(watch)).toEqual([])
    expect(seen(watch)).toEqual([])
    expect(seen(watch, { change })).toEqual(['plan to client:heron: extension:1'])
    // not before there was a lock
    expect(seen(lockedWatch(), { change })).toEqual([])
  })

  it('counts what each has said', () => {
    expect([...sight.said]).toEqual([
      ['heron', 2],
      ['dipper', 2],
      ['wren', 1],
    ])
  })
})
