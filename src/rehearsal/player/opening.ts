import { addDays } from '../../domain/day.ts'
import { dayAt, instantOf } from '../../domain/local-time.ts'
import { questionOf } from '../../engine/course/screening-questions.ts'
import type { Filled } from '../../engine/event.ts'
import type { ClientFile } from '../../engine/ports.ts'
import type { OutboxRow } from '../../engine/rows.ts'
import { openHold } from '../../engine/status.ts'
import { textsFor } from '../../text/index.ts'
import type { Script, ScriptClient, SlashCommand } from '../scenario/index.ts'
import type { Board } from './board.ts'
import type { Stage } from './stage.ts'

/** How far a client has come on the way to the first prompt. */
export type Phase = 'enrol' | 'consent' | 'screening' | 'plan' | 'locked' | 'done'

const MINUTE = 60_000
const AHEAD_MS = 2 * 3_600_000

/** Two hours before the first thing that happens: the earliest first prompt, or what is said or done before it. */
export function openingAt({ clients, steps, start }: Script): Date {
  const prompts = clients.map(({ prompt, zone }) => instantOf(start, prompt, zone).getTime())
  const first = Math.min(...prompts, steps[0]?.at.getTime() ?? Number.POSITIVE_INFINITY)
  return new Date(first - AHEAD_MS)
}

/** The first step of each client, a second apart; every further one comes a minute after the one before. */
export const enrolAt = (script: Script, index: number): Date =>
  new Date(openingAt(script).getTime() + MINUTE + index * 1000)

export function setUpCommand({ practice }: Script, stage: Stage): SlashCommand {
  const { role, coachChannel, alertChannel } = stage.cast
  const { zone, digest, region, window, quote } = practice
  return {
    name: 'set-up',
    options: {
      'coach-role': role,
      'coach-channel': coachChannel,
      'alert-channel': alertChannel,
      zone,
      digest,
      ...(region ? { region } : {}),
      window,
      quote,
      'policy-settled': true,
    },
  }
}

function enrolCommand(client: ScriptClient, stage: Stage): SlashCommand {
  const { ref, zone, region, language, prompt, reminder, off, side, hands } = client
  return {
    name: 'enrol',
    options: {
      person: stage.cast.clients.get(ref)!,
      alias: ref,
      zone,
      prompt,
      language,
      ...(side ? { side } : {}),
      ...(reminder ? { reminder } : {}),
      ...(off.length > 0 ? { off: off.join(' ') } : {}),
      ...(region ? { region } : {}),
      ...(hands === 'words' ? { 'in-words': true } : {}),
    },
  }
}

/** The plan as the coach sends it: from day 1, or where that has passed from the next day on. */
function planCommand(client: ScriptClient, script: Script, now: Date): SlashCommand | null {
  if (!client.plan) return null
  const ladders = Object.entries(client.plan.rungs).map(([ladder, rung]) => `${ladder}:${rung}`)
  const isAhead = dayAt(now, client.zone) <= script.start
  return {
    name: 'plan',
    options: {
      client: client.ref,
      sessions: client.plan.sessions,
      ladders: ladders.join(' '),
      // what speaks against it has been weighed by whoever wrote the scenario
      anyway: true,
      ...(isAhead ? { from: script.start } : {}),
    },
  }
}

/** One step of a client's opening; gives the next phase. */
export async function openingStep(
  phase: Phase,
  client: ScriptClient,
  parts: { stage: Stage; board: Board; script: Script; now: Date; trouble: (what: string) => void },
): Promise<Phase> {
  const { stage, board, script } = parts
  switch (phase) {
    case 'enrol':
      await stage.command('coach', enrolCommand(client, stage))
      return 'consent'
    case 'consent':
      await answerConsent(client, stage, board, parts.trouble)
      return client.consent ? 'screening' : 'done'
    case 'screening':
      return screeningStep(client, stage, board, script)
    case 'plan': {
      if (await isWithheld(client.ref, stage)) return 'locked'
      const command = planCommand(client, script, parts.now)
      if (command) await stage.command('coach', command)
      return 'done'
    }
    default:
      return phase
  }
}

async function answerConsent(
  { ref, consent, hands }: ScriptClient,
  stage: Stage,
  board: Board,
  trouble: (what: string) => void,
): Promise<void> {
  if (hands === 'words') return void (await stage.say(ref, consent ? 'yes' : 'no'))
  const found = board.find(`client:${ref}`, consent ? 'consent-yes' : 'consent-no')
  if (!found) return trouble(`${ref} was not asked for consent`)
  await stage.press(ref, found.row, found.index)
}

/** Fills in the part that lies open, or answers the question in words; the plan comes when nothing more is asked. */
async function screeningStep(
  client: ScriptClient,
  stage: Stage,
  board: Board,
  script: Script,
): Promise<Phase> {
  // an urgent answer stops the questions: they go on after the clearance
  if (await isLocked(client.ref, stage)) return 'locked'
  const file = await fileOf(client.ref, stage)
  if (file?.client.stage !== 'screening') return file?.client.stage === 'enrolled' ? 'plan' : 'done'
  const asking = board.lastAsking(`client:${client.ref}`, (asks) => asks.startsWith('screening:'))
  if (!asking) return 'done'
  if (asking.body.asks === 'screening:sexual') {
    if (client.hands === 'words') await stage.say(client.ref, '1')
    else await stage.press(client.ref, asking, 0)
    return 'screening'
  }
  const values = screeningValues(client, script)
  if (client.hands === 'words') await stage.say(client.ref, inWords(asking, values, client.language))
  else await stage.fill(client.ref, asking, 0, filledFor(asking, values))
  const after = await fileOf(client.ref, stage)
  return after?.client.stage === 'enrolled'
    ? 'plan'
    : after?.client.stage === 'screening'
      ? 'screening'
      : 'done'
}

const orNone = (list: readonly string[]): readonly string[] => (list.length > 0 ? list : ['none'])

/** The answers to the questions before any plan, by the id of the question. */
function screeningValues({ screening, side }: ScriptClient, { start }: Script): Filled {
  const { activities } = screening
  return {
    signs: orNone(screening.signs),
    age: String(screening.age),
    onset: screening.onset ?? addDays(start, -21),
    earlier: screening.earlier,
    seen: screening.seen ? 'yes' : 'no',
    risks: orNone(screening.risks),
    known: orNone(screening.known),
    reach: screening.baseline.reach,
    pain: String(screening.baseline.pain),
    side: side ?? 'left',
    eases: screening.eases,
    activities: Object.entries(activities)
      .map(([what, hard]) => `${what} ${hard}`)
      .join(', '),
    lift: screening.lift ?? '',
  }
}

function filledFor({ body }: OutboxRow, values: Filled): Filled {
  const fields = body.buttons[0]?.form?.fields ?? []
  return Object.fromEntries(
    fields.flatMap(({ name }) =>
      values[name] === undefined || values[name] === '' ? [] : [[name, values[name]]],
    ),
  )
}

/** The answer to one question as somebody writes it: the words of the choice, numbers where several may hold. */
function inWords({ body }: OutboxRow, values: Filled, language: string): string {
  const id = String(body.asks).slice('screening:'.length)
  const value = values[id] ?? ''
  const options = questionOf(id)?.options(textsFor(language)) ?? []
  if (typeof value !== 'string')
    return value.map((one) => options.findIndex((option) => option.value === one) + 1).join(', ')
  return options.find((option) => option.value === value)?.label || value || 'none'
}

/** Null as well where the store gives no answer: people go on without what the play would read for them. */
export const fileOf = async (ref: string, stage: Stage): Promise<ClientFile | null> =>
  stage.isUnreadable ? null : stage.store.store.transaction((tx) => tx.clientByRef(stage.cast.guild, ref))

/** No plan is set while a sign is open or a clinician's word is waited for. */
async function isWithheld(ref: string, stage: Stage): Promise<boolean> {
  const file = await fileOf(ref, stage)
  return file !== null && (openHold(file, 'lock') !== undefined || openHold(file, 'park') !== undefined)
}

async function isLocked(ref: string, stage: Stage): Promise<boolean> {
  const file = await fileOf(ref, stage)
  return file !== null && openHold(file, 'lock') !== undefined
}
