import { isDay } from '../src/domain/day.ts'
import { plain } from '../src/engine/answer.ts'
import { release as releaseClient } from '../src/engine/clear.ts'
import type { CoachCommand } from '../src/engine/command.ts'
import { openHold } from '../src/engine/status.ts'

/** A clinician agrees with gentle drills for a parked client: profession and date, no more. */
export const release: CoachCommand = {
  name: 'release',
  who: 'coach',
  options: [
    { name: 'client', kind: 'client', required: true },
    { name: 'by', kind: 'text', required: true },
    { name: 'on', kind: 'text', required: true },
  ],
  run(draft, { options, actor }) {
    const { commands, coach } = draft.forCoach
    const { ref } = draft.client
    const on = String(options.on)
    if (!isDay(on)) return plain(commands.badDay(on), ref)
    if (on > draft.today) return plain(coach.clearDate(draft.today, draft.today), ref)
    if (!openHold(draft.file, 'park')) return plain(commands.notParked(ref), ref)
    releaseClient(draft, String(options.by).slice(0, 80), on, `<@${actor.user}>`)
    return { ...plain(commands.released(ref), ref), kind: 'cleared' }
  },
}
