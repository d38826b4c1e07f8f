import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type PlayResult, playScenario } from '../../../src/rehearsal/player/index.ts'
import { loadScenario } from '../../../src/rehearsal/scenario/index.ts'

/** Plays a scenario given as text; pictures and database go to a new folder. */
export async function playText(text: string, mode: 'direct' | 'chat' = 'direct'): Promise<PlayResult> {
  const folder = mkdtempSync(join(tmpdir(), 'ebbline-test-'))
  const script = loadScenario('scenario.yaml', text)
  const database = `file:${join(folder, 'play.db')}`
  return playScenario({ script, database, folder, direct: mode === 'direct' })
}

/** Messages as short lines: local time, who, kind. */
export const brief = ({ messages }: PlayResult): string[] =>
  messages.map(({ local, to, kind }) => `${local} ${to} ${kind}`)

/** What a client has received, from day 1 on. */
export const toClient = ({ messages }: PlayResult, ref: string, kind?: string) =>
  messages.filter(
    (message) => message.to === `client:${ref}` && (kind === undefined || message.kind === kind),
  )
