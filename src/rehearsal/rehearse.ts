import { mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { told } from '../cli/play-told.ts'
import { packageRoot } from '../store/root.ts'
import { textsFor } from '../text/index.ts'
import { type PlayResult, playScenario } from './player/index.ts'
import { loadScenario } from './scenario/index.ts'

const DEMO = join('scenarios', 'demo.yaml')

/**
 * Plays the demo through the real bot and the real chat client against the stand-in, on an embedded database, and
 * says what came of it. Gives the exit status: 0 where everything that the demo expects came.
 */
export async function rehearse(): Promise<number> {
  const { rehearsal } = textsFor('en')
  const folder = mkdtempSync(join(tmpdir(), 'ebbline-rehearsal-'))
  const file = join(packageRoot(), DEMO)
  const { script } = loadScenario(DEMO, readFileSync(file, 'utf8'))
  say(rehearsal.begins(script.title, script.clients.length, Math.round(script.days / 7)))
  const began = Date.now()
  const pictures = join(folder, 'pictures')
  mkdirSync(pictures, { mode: 0o700 })
  const database = `file:${join(folder, 'practice.db')}`
  const result = await playScenario({ script, database, folder: pictures, direct: false })
  writeFileSync(join(folder, 'transcript.txt'), `${told(script, result).join('\n')}\n`)
  writeFileSync(join(folder, 'messages.jsonl'), result.messages.map((m) => `${JSON.stringify(m)}\n`).join(''))
  for (const line of summary(result)) say(line)
  say(rehearsal.where(folder, result.messages.filter((m) => m.picture).length, (Date.now() - began) / 1000))
  for (const failed of result.checks.failed) say(failed)
  return result.checks.failed.length === 0 ? 0 : 1
}

const say = (line: string): void => void process.stdout.write(`${line}\n`)

/** A few lines a client: prompted, answered, flagged, decided, and where they stand. */
function summary({ messages, clients }: PlayResult): string[] {
  const { rehearsal } = textsFor('en')
  return clients.map(({ ref, status, assessment, records }) => {
    const to = messages.filter((message) => message.to === `client:${ref}`)
    const about = messages.filter((message) => message.about === ref && message.to !== `client:${ref}`)
    const count = (list: typeof messages, ...kinds: string[]) =>
      list.filter((m) => kinds.includes(m.kind)).length
    return rehearsal.client({
      ref,
      prompts: count(to, 'prompt'),
      answered: records.length,
      urgent: count(to, 'urgent'),
      alerts: count(about, 'alert', 'alert-repeat'),
      proposals: count(about, 'proposal'),
      decisions: count(to, 'decision'),
      digests: count(about, 'digest'),
      status,
      direction: assessment?.direction ?? null,
      flags: assessment?.flags.map((flag) => flag.rule) ?? [],
    })
  })
}
