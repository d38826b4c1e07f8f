import { addDays, type Day } from '../../domain/day.ts'
import { instantOf, isClockTime, isZone } from '../../domain/local-time.ts'
import { CLIENT_ACTIONS, COACH_ACTIONS, FAULTS } from './actions.ts'
import { coachCommand } from './coach-acts.ts'
import { spread } from './days.ts'
import type { DayValues } from './form-values.ts'
import { type ClientFileEntry, DEFAULTS, type ScenarioFile } from './format.ts'
import { type Item, readItems } from './items.ts'
import type { Path } from './lines.ts'
import type { Findings } from './problem.ts'
import type { ChatFault, ClientAct, DatabaseFault, Fault, Step, Use } from './script.ts'
import { readSlash } from './slash.ts'

interface Run {
  readonly file: ScenarioFile
  readonly findings: Findings
}

/** Local day n of the run. */
const dayOf = (file: ScenarioFile, n: number): Day => addDays(file.start, n - 1)

/** The instants of a day's items: by the clock, after the one before, or where nothing is said at the usual time. */
function instants(items: readonly Item[], day: Day, zone: string, base: Date, usualMs: number): Date[] {
  let last = base
  return items.map((item) => {
    if (item.at !== null) last = instantOf(day, item.at, zone)
    else last = new Date(item.afterMs === null ? base.getTime() + usualMs : last.getTime() + item.afterMs)
    return last
  })
}

/** Whether an item's time hangs on the prompt: nothing said, or after one that hangs on it. */
function countsFromPrompt(items: readonly Item[], n: number): boolean {
  const item = items[n]
  if (!item) return true
  return item.at === null && (item.afterMs === null || countsFromPrompt(items, n - 1))
}

export function clientSteps({ file, findings }: Run, client: ClientFileEntry, index: number): Step[] {
  const path: Path = ['clients', index, 'days']
  const keyOf = spread(client.days, file.days, findings, path)
  const read = new Map<string, Item[]>()
  for (const key of new Set(keyOf.values()))
    read.set(key, readItems(client.days[key], [...path, key], CLIENT_ACTIONS, 'say', findings))
  let zone = client.zone ?? file.practice.zone
  let prompt = client.prompt
  let said = false
  const steps: Step[] = []
  for (let n = 1; n <= file.days; n += 1) {
    const items = read.get(keyOf.get(n) ?? '') ?? []
    if (items.length === 0) continue
    const day = dayOf(file, n)
    const at = instants(items, day, zone, instantOf(day, prompt, zone), DEFAULTS.replyMs)
    for (const [i, item] of items.entries()) {
      const does = clientAct(item, findings)
      if (!does) continue
      if ((does.do === 'edit' || does.do === 'delete') && !said)
        findings.add(
          item.path,
          `nothing has been said that could be changed; allowed: ${does.do} after a message`,
        )
      said = does.do === 'say' || (said && does.do !== 'delete')
      if (does.do === 'travel') zone = does.zone ?? zone
      if (does.do === 'command' && does.command.name === 'my-times') {
        const { options } = does.command
        if (isZone(String(options.zone))) zone = String(options.zone)
        if (isClockTime(String(options.prompt))) prompt = String(options.prompt)
      }
      const act = { who: 'client', ref: client.ref, does } as const
      const line = findings.lined.lineOf(item.path)
      steps.push({ at: at[i]!, day: n, line, act, fromPrompt: countsFromPrompt(items, i) })
    }
  }
  return steps
}

function clientAct({ name, data, path }: Item, findings: Findings): ClientAct | null {
  switch (name) {
    case 'say':
    case 'edit':
      return { do: name, text: String(data[name]) }
    case 'delete':
      return { do: 'delete' }
    case 'form':
      return { do: 'form', values: data.form as DayValues }
    case 'press':
      return { do: 'press', button: String(data.press) }
    case 'use':
      return { do: 'use', use: data.use as Use }
    case 'command': {
      const read = readSlash(String(data.command))
      if (typeof read !== 'string') return { do: 'command', command: read }
      findings.add(path, read, 'command')
      return null
    }
    default:
      return {
        do: 'travel',
        zone: data.zone === undefined ? null : String(data.zone),
        region: data.region === undefined ? null : String(data.region),
      }
  }
}

/** Steps of the coach and of the world, each in the practice's zone. */
export function practiceSteps(run: Run): Step[] {
  const { file, findings } = run
  const refs = file.clients.map((client) => client.ref)
  const coach = dated(run, 'coach', COACH_ACTIONS, (item) => {
    const command = coachCommand(item, refs, findings)
    if (!command) return null
    if ('button' in command) return { who: 'coach', press: command }
    return 'back' in command ? { who: 'coach', use: command } : { who: 'coach', command }
  })
  const faults = dated(run, 'faults', FAULTS, (item) => ({ who: 'world', fault: faultOf(item) }))
  return [...faults, ...coach]
}

function dated(
  { file, findings }: Run,
  part: 'coach' | 'faults',
  kinds: Parameters<typeof readItems>[2],
  actOf: (item: Item) => Step['act'] | null,
): Step[] {
  const keyOf = spread(file[part], file.days, findings, [part])
  const read = new Map<string, { item: Item; act: Step['act'] | null }[]>()
  for (const key of new Set(keyOf.values())) {
    const items = readItems(file[part][key], [part, key], kinds, null, findings)
    read.set(
      key,
      items.map((item) => ({ item, act: actOf(item) })),
    )
  }
  return [...keyOf].flatMap(([n, key]) => {
    const day = dayOf(file, n)
    const items = read.get(key)!
    const { zone } = file.practice
    const at = instants(
      items.map(({ item }) => item),
      day,
      zone,
      instantOf(day, DEFAULTS.coach, zone),
      0,
    )
    return items.flatMap(({ item, act }, i) =>
      act ? [{ at: at[i]!, day: n, line: findings.lined.lineOf(item.path), act, fromPrompt: false }] : [],
    )
  })
}

function faultOf({ name, data }: Item): Fault {
  const forMs = data.for === undefined ? null : Number(data.for)
  if (name === 'chat') return { kind: 'chat', what: data.chat as ChatFault, forMs }
  if (name === 'database') return { kind: 'database', what: data.database as DatabaseFault, forMs }
  if (name === 'restart') return { kind: 'restart', what: data.restart as 'kill' | 'stop' }
  return { kind: 'clock', ms: Number(data.clock) }
}
