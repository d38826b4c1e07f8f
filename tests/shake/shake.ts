import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import SqliteDatabase from 'better-sqlite3'
import { type PlayResult, playScenario } from '../../src/rehearsal/player/index.ts'
import { loadScenario } from '../../src/rehearsal/scenario/index.ts'
import { INVARIANTS, lockedWatch } from './invariants.ts'
import { practiceOf } from './practice.ts'
import { watcher } from './sight.ts'

export interface Shaken {
  readonly seed: number
  /** The scenario's text: played again it does the same. */
  readonly scenario: string
  readonly steps: number
  readonly faults: number
  readonly messages: number
  /** Each breach with the instant at which it was first seen; empty where all holds. */
  readonly breaches: readonly string[]
}

/** Plays the practice of a seed through the whole program; every invariant is looked at after every step. */
export async function shake(seed: number, scenario: string = practiceOf(seed)): Promise<Shaken> {
  const name = `seed-${seed}.yaml`
  const script = loadScenario(name, scenario)
  const folder = mkdtempSync(join(tmpdir(), 'ebbline-shake-'))
  const file = join(folder, 'play.db')
  const looks = watcher(file)
  const invariants = [...INVARIANTS, lockedWatch()]
  const found = new Map<string, string>()
  let steps = 0
  const note = (what: string, now: Date): void => void (found.has(what) || found.set(what, now.toISOString()))
  let result: PlayResult | null = null
  try {
    result = await playScenario({
      script,
      database: `file:${file}`,
      folder,
      direct: false,
      watch: (played, now) => {
        steps += 1
        const sight = looks.sight(played, now)
        if (!sight) return
        for (const { says, breaches } of invariants)
          for (const breach of breaches(sight)) note(`${says} ${breach}`, now)
      },
    })
    for (const failed of result.checks.failed) if (!cannotBeDone(failed, name)) note(failed, new Date(0))
    for (const problem of damage(file)) note(problem, new Date(0))
  } catch (error) {
    note(`the play ended: ${error instanceof Error ? error.stack : error}`, new Date(0))
  } finally {
    looks.close()
    rmSync(folder, { recursive: true, force: true })
  }
  return {
    seed,
    scenario,
    steps,
    faults: script.steps.filter(({ act }) => act.who === 'world').length,
    messages: result?.messages.length ?? 0,
    breaches: [...found].map(([what, at]) => `${at} ${what}`),
  }
}

/** A random press or edit may find nothing to press: what people cannot do is no fault of the program. */
const cannotBeDone = (failed: string, name: string): boolean =>
  [`${name}:`, 'does not offer', 'pressed for a form'].some((part) => failed.includes(part))

function damage(file: string): string[] {
  const db = new SqliteDatabase(file, { readonly: true })
  try {
    const integrity = db.pragma('integrity_check', { simple: true })
    const keys = db.pragma('foreign_key_check') as unknown[]
    return [
      ...(integrity === 'ok' ? [] : [`integrity: ${integrity}`]),
      ...(keys.length === 0 ? [] : [`${keys.length} rows point nowhere`]),
    ]
  } finally {
    db.close()
  }
}
