import { LADDER_IDS } from '../src/domain/ladder/plan.ts'
import { plain } from '../src/engine/answer.ts'
import type { CoachCommand } from '../src/engine/command.ts'
import { DECISIONS, type Decision, decisionProblem, decide as takeDecision } from '../src/engine/decide.ts'
import { assessOn } from '../src/engine/watch.ts'

/** The coach decides; the client is told in plain words what changes tomorrow. */
export const decide: CoachCommand = {
  name: 'decide',
  who: 'coach',
  options: [
    { name: 'client', kind: 'client', required: true },
    { name: 'do', kind: 'text', required: true, choices: DECISIONS },
    { name: 'ladder', kind: 'text', required: false, choices: LADDER_IDS },
    { name: 'reason', kind: 'text', required: false },
  ],
  run(draft, { options, actor }) {
    const assessment = assessOn(draft, draft.today)
    const by = `<@${actor.user}>`
    const wish = {
      decision: options.do as Decision,
      ladder: options.ladder === undefined ? assessment.ladder : String(options.ladder),
      reason: String(options.reason ?? '').slice(0, 300),
      by,
      proposal: assessment.proposal,
      rules: assessment.reasons,
    }
    const problem = decisionProblem(draft, wish)
    if (problem) return plain(problem, draft.client.ref)
    takeDecision(draft, wish)
    const text = draft.forCoach.coach.decided(draft.client.ref, wish.decision, wish.ladder, by)
    return { ...plain(text, draft.client.ref), kind: 'decision' }
  },
}
