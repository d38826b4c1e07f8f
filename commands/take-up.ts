import { plain } from '../src/engine/answer.ts'
import { takeUpWith } from '../src/engine/coach/coach-acts.ts'
import type { CoachCommand } from '../src/engine/command.ts'
import { OUTCOMES, type Outcome } from '../src/engine/urgent/alert.ts'

/** Takes up an open alert, with what came of it where that is known. */
export const takeUp: CoachCommand = {
  name: 'take-up',
  who: 'coach',
  options: [
    { name: 'client', kind: 'client', required: true },
    { name: 'outcome', kind: 'text', required: false, choices: OUTCOMES },
  ],
  run(draft, { options, actor }) {
    const outcome = OUTCOMES.find((one) => one === options.outcome) ?? (null as Outcome | null)
    return { ...plain(takeUpWith(draft, outcome, `<@${actor.user}>`), draft.client.ref), kind: 'taken-up' }
  },
}
