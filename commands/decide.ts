import { LADDER_IDS } from '../src/domain/ladder/plan.ts'
import { plain } from '../src/engine/answer.ts'
import { DECISIONS, type Decision } from '../src/engine/coach/decide.ts'
import { decideTyped } from '../src/engine/coach/decision-press.ts'
import { assessOn } from '../src/engine/coach/watch.ts'
import type { CoachCommand } from '../src/engine/command.ts'

/** The coach decides; the client is told in plain words what changes tomorrow, the reason only where it is shown. */
export const decide: CoachCommand = {
  name: 'decide',
  who: 'coach',
  options: [
    { name: 'client', kind: 'client', required: true },
    { name: 'do', kind: 'text', required: true, choices: DECISIONS },
    { name: 'ladder', kind: 'text', required: false, choices: LADDER_IDS },
    { name: 'reason', kind: 'text', required: false },
    { name: 'show-reason', kind: 'yes-no', required: false },
    { name: 'anyway', kind: 'yes-no', required: false },
  ],
  run(draft, { options, actor }) {
    const assessment = assessOn(draft, draft.today)
    const wish = {
      decision: options.do as Decision,
      ladder: options.ladder === undefined ? assessment.ladder : String(options.ladder),
      reason: String(options.reason ?? '').slice(0, 300),
      shown: options['show-reason'] === true,
      by: `<@${actor.user}>`,
      proposal: assessment.proposal,
      rules: assessment.reasons,
    }
    const { text, choices } = decideTyped(draft, wish, options.anyway === true)
    const answer = { ...plain(text, draft.client.ref), kind: 'decision' as const }
    return choices ? { ...answer, choices } : answer
  },
}
