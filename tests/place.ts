import { existsSync, mkdirSync, readdirSync, rmSync } from 'node:fs'
import { dirname, join } from 'node:path'
import type { TestProject } from 'vitest/node'

/** The folder in memory in which the tests make theirs (`vitest.config.ts`); gone with all that is in it at the end. */
export default function setup({ config }: TestProject): () => void {
  const { TMPDIR } = config.env
  if (!TMPDIR) return () => {}
  clean(dirname(TMPDIR))
  mkdirSync(TMPDIR, { mode: 0o700 })
  return () => remove(TMPDIR)
}

/** What runs that were killed have left there. */
function clean(place: string): void {
  for (const name of readdirSync(place)) {
    const pid = /^ebbline-tests-(\d+)$/.exec(name)?.[1]
    if (pid && !existsSync(`/proc/${pid}`)) remove(join(place, name))
  }
}

/** What a killed run has mounted cannot be removed: it is said, and is no reason to fail. */
function remove(folder: string): void {
  try {
    rmSync(folder, { recursive: true, force: true })
  } catch (error) {
    console.warn(`${folder} is left behind: ${String(error)}`)
  }
}
