import { isDay } from '../src/domain/day.ts'
import { plain } from '../src/engine/answer.ts'
import type { CoachCommand } from '../src/engine/command.ts'
import { planConflicts, planNeeds, setPlan } from '../src/engine/plan.ts'

/** The coach picks ladders and a rung on each, sessions a day and loads; what stands against it is said first. */
export const plan: CoachCommand = {
  name: 'plan',
  who: 'coach',
  options: [
    { name: 'client', kind: 'client', required: true },
    { name: 'sessions', kind: 'number', required: true, least: 1, most: 6 },
    { name: 'ladders', kind: 'text', required: true },
    { name: 'loads', kind: 'text', required: false },
    { name: 'from', kind: 'text', required: false },
  ],
  run(draft, { options, actor }) {
    const { commands } = draft.forCoach
    const { ref } = draft.client
    const text = String(options.ladders)
    const rungs = readRungs(text)
    if (!rungs) return plain(commands.badLadders(text), ref)
    const from = options.from === undefined ? null : String(options.from)
    if (from !== null && !isDay(from)) return plain(commands.badDay(from), ref)
    const wish = {
      sessions: Number(options.sessions),
      rungs,
      loads: readLoads(String(options.loads ?? '')),
      from,
    }
    const conflicts = planConflicts(draft, wish)
    if (conflicts.length > 0) return plain(conflicts.join('\n'), ref)
    const day = setPlan(draft, wish, `<@${actor.user}>`)
    const needs = planNeeds(wish).map(({ ladder, need }) => commands.need(ladder, need))
    return plain(commands.planSaved(ref, day, needs), ref)
  },
}

/** "extension:1 glide:2" as rungs; null where a word cannot be read. */
function readRungs(text: string): Record<string, number> | null {
  const rungs: Record<string, number> = {}
  for (const word of text.split(/[\s,;]+/).filter(Boolean)) {
    const [, ladder, rung] = /^([\p{L}\d-]+):(\d{1,2})$/u.exec(word) ?? []
    if (!ladder || !rung) return null
    rungs[ladder] = Number(rung)
  }
  return rungs
}

/** "lift: 5 kg bell; glide: light band" as loads by ladder. */
const readLoads = (text: string): Record<string, string> =>
  Object.fromEntries(
    text
      .split(';')
      .map((part) => part.split(':').map((word) => word.trim()))
      .filter((pair): pair is [string, string] => pair.length === 2 && pair[0] !== '' && pair[1] !== '')
      .map(([ladder, load]) => [ladder, load.slice(0, 60)]),
  )
