import { isDay } from '../src/domain/day.ts'
import { inOrder } from '../src/domain/ladder/ladders.ts'
import { plain } from '../src/engine/answer.ts'
import { readDaysOff } from '../src/engine/check-in/days-off.ts'
import type { CoachCommand } from '../src/engine/command.ts'
import { planAnswer } from '../src/engine/plan/plan-acts.ts'

/** The coach picks ladders and a rung on each, sessions a day, loads and days off; what stands against it is said first. */
export const plan: CoachCommand = {
  name: 'plan',
  who: 'coach',
  options: [
    { name: 'client', kind: 'client', required: true },
    { name: 'sessions', kind: 'number', required: true, least: 1, most: 6 },
    { name: 'ladders', kind: 'text', required: true },
    { name: 'loads', kind: 'text', required: false },
    { name: 'off', kind: 'text', required: false },
    { name: 'from', kind: 'text', required: false },
    { name: 'anyway', kind: 'yes-no', required: false },
  ],
  run(draft, { options, actor }) {
    const { commands, plan } = draft.forCoach
    const { ref } = draft.client
    const text = String(options.ladders)
    const rungs = readRungs(text)
    if (!rungs) return plain(commands.badLadders(text), ref)
    const loads = readLoads(String(options.loads ?? ''), rungs)
    if (!loads) return plain(plan.badLoads(String(options.loads)), ref)
    const off = options.off === undefined ? null : readDaysOff(String(options.off), draft.forCoach.language)
    if (options.off !== undefined && off === null) return plain(commands.badOff(String(options.off)), ref)
    const from = options.from === undefined ? null : String(options.from)
    if (from !== null && !isDay(from)) return plain(commands.badDay(from), ref)
    const wish = { sessions: Number(options.sessions), rungs: inOrder(rungs), loads, from, off }
    return planAnswer(draft, { wish, by: `<@${actor.user}>`, accepts: options.anyway === true ? 'all' : [] })
  },
}

/** "extension:1 glide:2" as rungs; null where a word cannot be read or a ladder comes twice. */
function readRungs(text: string): Record<string, number> | null {
  const rungs: Record<string, number> = {}
  for (const word of text
    .toLowerCase()
    .split(/[\s,;]+/)
    .filter(Boolean)) {
    const [, ladder, rung] = /^([a-z][a-z\d-]*):(\d{1,2})$/.exec(word) ?? []
    if (!ladder || !rung || Object.hasOwn(rungs, ladder)) return null
    rungs[ladder] = Number(rung)
  }
  return rungs
}

/** "lift:2 5 kg; glide: light band" as loads by drill; without a rung it is that of the plan. Null where unreadable. */
function readLoads(text: string, rungs: Readonly<Record<string, number>>): Record<string, string> | null {
  const loads: Record<string, string> = {}
  for (const part of text.split(/[;\n]/).filter((one) => one.trim() !== '')) {
    // "lift:5 kg" is 5 kg on the rung of the plan: a rung is followed by a space and more than a unit
    const [, ladder, rung, load] =
      /^\s*([a-z][a-z\d-]*)\s*(?::(\d{1,2})(?=[\s:=]+[^\s:=])(?!\s*(?:kg|kilos?|lbs?|pounds?)\b))?[\s:=]+(.+?)\s*$/i.exec(
        part,
      ) ?? []
    if (!ladder || !load) return null
    const id = ladder.toLowerCase()
    loads[`${id}:${rung ?? rungs[id] ?? ''}`] = load.slice(0, 60)
  }
  return loads
}
