import { plain } from '../src/engine/answer.ts'
import { spokenWith as spoken } from '../src/engine/clear.ts'
import type { CoachCommand } from '../src/engine/command.ts'
import { openSigns } from '../src/engine/status.ts'

/** The coach has spoken with a client who wrote of self-harm; no clinician is needed for this one. */
export const spokenWith: CoachCommand = {
  name: 'spoken-with',
  who: 'coach',
  options: [{ name: 'client', kind: 'client', required: true }],
  run(draft, { actor }) {
    const open = openSigns(draft.file).some((row) => row.sign === 'self-harm')
    if (!open) return plain(draft.forCoach.coach.nothingToNote, draft.client.ref)
    spoken(draft, `<@${actor.user}>`)
    return { ...plain(draft.forCoach.commands.done, draft.client.ref), kind: 'cleared' }
  },
}
