import { stopsDrills } from '../src/domain/care.ts'
import { plain } from '../src/engine/answer.ts'
import type { CoachCommand } from '../src/engine/command.ts'
import { isLocked, openSigns } from '../src/engine/status.ts'
import { spokenWith as spoken } from '../src/engine/urgent/clear.ts'

/** The coach has spoken with a client who wrote of self-harm; no clinician is needed for this one. */
export const spokenWith: CoachCommand = {
  name: 'spoken-with',
  who: 'coach',
  options: [{ name: 'client', kind: 'client', required: true }],
  run(draft, { actor }) {
    const open = openSigns(draft.file).some((row) => row.sign === 'self-harm')
    if (!open) return plain(draft.forCoach.coach.nothingToNote, draft.client.ref)
    spoken(draft, `<@${actor.user}>`)
    const { alerts, signs } = draft.forCoach
    const { ref } = draft.client
    const left = openSigns(draft.file).filter((row) => stopsDrills(row.care))
    const text = isLocked(draft.file)
      ? alerts.spokenStill(
          ref,
          left.map((row) => signs[row.sign].short),
        )
      : alerts.spoken(ref)
    return { ...plain(text, ref), kind: 'cleared' }
  },
}
