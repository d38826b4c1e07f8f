import { mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { daysBetween } from '../domain/day.ts'
import { dayAt } from '../domain/local-time.ts'
import { progressBar } from '../progress.ts'
import { packageRoot } from '../store/root.ts'
import { textsFor } from '../text/index.ts'
import { playedTo } from './page/carrying-out.ts'
import { Hub } from './page/hub.ts'
import { openingOf } from './page/offers.ts'
import { servePage } from './page/server.ts'
import type { Opening, Session } from './page/session.ts'
import { clientEnds } from './player/closing.ts'
import { check } from './player/expected.ts'
import { type PlayResult, playScenario } from './player/index.ts'
import { told } from './told.ts'

const DEMO = join('scenarios', 'demo.yaml')

interface Wish {
  /** A scenario file; the demo where left out. */
  readonly file?: string
  /** Whether the page is served afterwards; only where somebody is there to open its link. */
  readonly page: boolean
}

/**
 * Plays a scenario (the demo) through the real bot and the real chat client against the stand-in, on an embedded
 * database, says what came of it, and with `page` serves the practice to be lived on in until the process is told to
 * stop. Gives the exit status: 0 where everything that the scenario expects came.
 * @throws ScenarioProblems where the file is no scenario
 */
export async function rehearse({ file, page }: Wish): Promise<number> {
  const { rehearsal } = textsFor('en')
  const name = file ?? DEMO
  const text = readFileSync(file ?? join(packageRoot(), DEMO), 'utf8')
  const opening = openingOf(name, text)
  const { script } = opening
  say(rehearsal.begins(script.title, script.clients.length, Math.round(script.days / 7)))
  const began = Date.now()
  const { result, folder, session } = await (page ? playLive(opening) : playThrough(script))
  writeFileSync(join(folder, 'transcript.txt'), `${told(script, result).join('\n')}\n`)
  writeFileSync(join(folder, 'messages.jsonl'), result.messages.map((m) => `${JSON.stringify(m)}\n`).join(''))
  for (const line of summary(result)) say(line)
  say(rehearsal.where(folder, result.messages.filter((m) => m.picture).length, (Date.now() - began) / 1000))
  for (const failed of result.checks.failed) say(failed)
  if (session) await servePractice(session)
  return result.checks.failed.length === 0 ? 0 : 1
}

interface Came {
  readonly result: PlayResult
  readonly folder: string
  readonly session: Session | null
}

async function playThrough(script: Opening['script']): Promise<Came> {
  const folder = mkdtempSync(join(tmpdir(), 'ebbline-rehearsal-'))
  const pictures = join(folder, 'pictures')
  mkdirSync(pictures, { mode: 0o700 })
  const database = `file:${join(folder, 'practice.db')}`
  const result = await playScenario({ script, database, folder: pictures, direct: false })
  return { result, folder, session: null }
}

/** The same play, in a practice that stays open. */
async function playLive(opening: Opening): Promise<Came> {
  const session = await playedTo(opening, 'end', dayShown(opening.script))
  const { stage, log } = session.programme
  const clients = await clientEnds(opening.script, stage)
  const checks = check(opening.script, log.lines, clients, log.troubles)
  const messages = log.lines.map((line) => line.message)
  return { result: { messages, story: log.story, clients, checks }, folder: session.folder, session }
}

/** Shows how far the play has come: a busy machine takes a minute for it. */
function dayShown({ start, days, practice }: Opening['script']): (session: Session) => void {
  const show = progressBar()
  return ({ now }) => show(Math.min(days, daysBetween(start, dayAt(now, practice.zone)) + 1), days)
}

/** Until the process is told to stop. */
async function servePractice(session: Session): Promise<void> {
  const hub = new Hub(session)
  await hub.ready()
  const server = await servePage(hub)
  say(textsFor('en').rehearsal.page.link(server.url))
  await new Promise<void>((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve())
  })
  await server.close()
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
