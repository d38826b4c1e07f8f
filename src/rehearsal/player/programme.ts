import { addDays } from '../../domain/day.ts'
import { instantOf } from '../../domain/local-time.ts'
import type { OutboxRow } from '../../engine/rows.ts'
import type { ClientAct, CoachPress, Script, ScriptClient, SlashCommand, Step } from '../scenario/index.ts'
import { NEEDS_CHAT, onPlatform, playAct } from './acts.ts'
import type { Agenda } from './agenda.ts'
import type { Board } from './board.ts'
import type { VirtualClock } from './clock.ts'
import type { Log } from './log.ts'
import { enrolAt, fileOf, openingAt, openingStep, type Phase, setUpCommand } from './opening.ts'
import { type Reply, replyTo } from './replies.ts'
import type { Stage } from './stage.ts'

export interface Programme<S extends Stage = Stage> {
  readonly script: Script
  readonly clock: VirtualClock
  readonly board: Board
  readonly stage: S
  readonly agenda: Agenda
  readonly log: Log
  /** For a play that is lived on: by whom questions are answered. */
  answering?: Answering
}

export interface Answering {
  /** Whether a client's questions are left to somebody who lives with the play. */
  isLeft(ref: string): boolean
  /** Hears of each answer that the script gave, as it would stand under a day. */
  gave(ref: string, item: Readonly<Record<string, unknown>>): void
}

const MINUTE = 60_000
// Consent, thirteen questions in words and the plan, with room for some asked again.
const OPENING_MOST = 30
// At one instant: what the script says, then answers to what was asked a minute ago.
const SCRIPTED = 0
const ANSWERED = 1

/** Writes all that people do into the agenda; what depends on the bot's messages is added as they come. */
export function planAll(parts: Programme): void {
  const { script, stage, agenda, log, clock } = parts
  const said = new Map<string, string[]>()
  log.onAsked = (ref, row) => planAnswer(parts, ref, row, said)
  if (!script.practice['by-hand'])
    agenda.add(openingAt(script), SCRIPTED, async () => {
      log.deed('coach', '/set-up')
      await stage.command('coach', setUpCommand(script, stage))
    })
  for (const [n, client] of script.clients.entries())
    if (!client['by-hand']) planOpening(parts, client, 'enrol', enrolAt(script, n))
  const play = (step: Step) => agenda.add(step.at, SCRIPTED, () => playStep(parts, step, said))
  if (script.practice.window === 0) {
    for (const step of script.steps) play(step)
    return
  }
  // with prompts spread over a window, a reply half an hour after the prompt is known once the prompt is
  const spreadAt = new Date((script.steps[0]?.at ?? clock.world()).getTime() - MINUTE)
  agenda.add(spreadAt, SCRIPTED, async () => {
    for (const step of script.steps) play(await shifted(step, parts))
  })
}

function planOpening(parts: Programme, client: ScriptClient, phase: Phase, at: Date, steps = 1): void {
  const { agenda, log, clock, stage, board, script } = parts
  agenda.add(at, SCRIPTED, async () => {
    if (stage.isUnreadable)
      return planOpening(parts, client, phase, new Date(clock.world().getTime() + MINUTE), steps)
    if (steps > OPENING_MOST) return log.trouble(`the first questions of ${client.ref} find no end`)
    if (phase === 'consent') log.deed(client.ref, client.consent ? 'agrees' : 'says no')
    if (phase === 'screening') log.deed(client.ref, 'answers the first questions')
    if (phase === 'enrol') log.deed('coach', `/enrol ${client.ref}`)
    if (phase === 'plan') log.deed('coach', `/plan ${client.ref}`)
    const trouble = (what: string) => log.trouble(what)
    const next = await openingStep(phase, client, { stage, board, script, now: clock.world(), trouble })
    if (next !== 'done' && next !== 'locked')
      planOpening(parts, client, next, new Date(at.getTime() + MINUTE), steps + 1)
  })
}

async function shifted(step: Step, { script, stage }: Programme): Promise<Step> {
  const { act } = step
  if (!step.fromPrompt || act.who !== 'client') return step
  const file = await fileOf(act.ref, stage)
  const due = file?.dues.find((row) => row.kind === 'prompt')
  const client = script.clients.find(({ ref }) => ref === act.ref)!
  if (!due) return step
  const spread = due.at.getTime() - instantOf(String(due.data.day), client.prompt, client.zone).getTime()
  return { ...step, at: new Date(step.at.getTime() + spread) }
}

async function playStep(parts: Programme, step: Step, said: Map<string, string[]>): Promise<void> {
  const { script, stage, board, log } = parts
  const { act } = step
  if (act.who === 'world') return stage.fault(act.fault)
  if (act.who === 'coach' && 'press' in act) return coachPress(parts, act.press)
  if (act.who === 'coach' && 'use' in act) {
    log.deed('coach', `uses ${act.use.name}`)
    const problem = stage.use ? await stage.use('coach', act.use) : NEEDS_CHAT
    return problem ? log.trouble(`${script.file}:${step.line}: ${problem}`) : undefined
  }
  if (act.who === 'coach') {
    log.deed('coach', typed(act.command))
    await stage.command('coach', { ...act.command, options: onPlatform(act.command.options, stage) })
    return planAgain(parts, act.command)
  }
  const client = script.clients.find(({ ref }) => ref === act.ref)!
  const day = addDays(script.start, step.day - 1)
  log.deed(act.ref, inBrief(act.does))
  const problem = await playAct(client, act.does, { stage, board, said, day, settle: () => log.settle() })
  if (problem) log.trouble(`${script.file}:${step.line}: ${problem}`)
  if (act.does.do === 'travel' || act.does.do === 'command') {
    const file = await fileOf(act.ref, stage)
    if (file) log.moved(act.ref, file.client.zone)
  }
}

/** One click of the coach's on a message about a client, in either of their rooms. */
async function coachPress(
  { script, stage, board, log }: Programme,
  { ref, button, line }: CoachPress,
): Promise<void> {
  const found = board.find('coach', button, ref) ?? board.find('alerts', button, ref)
  if (!found) return log.trouble(`${script.file}:${line}: no message about ${ref} has a button “${button}”`)
  log.deed('coach', `presses “${found.row.body.buttons[found.index]!.label}” for ${ref}`)
  await stage.press('coach', found.row, found.index)
}

/** With an urgent sign open, or parked, there is no plan (nor questions): both go on a minute after the coach's word. */
async function planAgain(parts: Programme, { name, options }: SlashCommand): Promise<void> {
  const { script, stage, clock } = parts
  if (name !== 'clear' && name !== 'spoken-with' && name !== 'release') return
  const client = script.clients.find(({ ref }) => ref === options.client)
  const file = client && (await fileOf(client.ref, stage))
  if (!client || client['by-hand'] || !file || file.plan) return
  const { stage: at } = file.client
  const phase = at === 'screening' ? 'screening' : at === 'enrolled' ? 'plan' : null
  if (phase) planOpening(parts, client, phase, new Date(clock.world().getTime() + MINUTE))
}

/** A question has reached a client: a minute later it is answered, where the script says how and it is still open. */
function planAnswer(parts: Programme, ref: string, row: OutboxRow, said: Map<string, string[]>): void {
  const { script, stage, agenda, clock, log } = parts
  const client = script.clients.find((one) => one.ref === ref)
  if (!client || row.body.asks === 'consent' || row.body.asks?.startsWith('screening:')) return
  agenda.add(new Date(clock.world().getTime() + MINUTE), ANSWERED, async () => {
    if (stage.isUnreadable) return planAnswer(parts, ref, row, said)
    const file = await fileOf(ref, stage)
    const asked = file?.asked.find((one) => one.ask === row.body.asks) ?? null
    // the words of the day may have answered it; the morning question of a locked plan is not kept as asked
    if (!asked && row.kind !== 'follow-up') return
    const reply = replyTo(client, row, asked)
    if (!reply || parts.answering?.isLeft(ref)) return
    parts.answering?.gave(ref, itemOf(reply, row))
    if (reply.by === 'words') {
      log.deed(ref, `“${reply.text}”`)
      said.set(ref, [...(said.get(ref) ?? []), await stage.say(ref, reply.text)])
      return
    }
    if (reply.by === 'list') {
      log.deed(ref, `chooses ${reply.values.join(', ')}`)
      return stage.choose(ref, row, reply.values)
    }
    log.deed(ref, `presses “${row.body.buttons[reply.index]!.label}”`)
    return stage.press(ref, row, reply.index)
  })
}

function itemOf(reply: Reply, { body }: OutboxRow): Readonly<Record<string, unknown>> {
  if (reply.by === 'words') return { say: reply.text }
  if (reply.by === 'list') return { use: { name: body.pick!.name, back: 0, values: [...reply.values] } }
  return { press: body.buttons[reply.index]!.name }
}

const typed = ({ name, options }: SlashCommand): string =>
  [`/${name}`, ...Object.entries(options).map(([key, value]) => `${key}:${value}`)].join(' ')

function inBrief(does: ClientAct): string {
  switch (does.do) {
    case 'say':
      return `“${does.text}”`
    case 'edit':
      return `changes the last message to “${does.text}”`
    case 'delete':
      return 'takes the last message back'
    case 'form':
      return `fills in the form: ${JSON.stringify(does.values)}`
    case 'press':
      return `presses ${does.button}`
    case 'use':
      return `uses ${does.use.name}`
    case 'command':
      return typed(does.command)
    case 'travel':
      return `travels: ${[does.zone, does.region].filter(Boolean).join(', ')}`
  }
}
