import { plain } from '../src/engine/answer.ts'
import type { CoachCommand } from '../src/engine/command.ts'
import { planHistory as historyText } from '../src/engine/plan/plan-history.ts'

/** How a client's plan came to be: every plan and every change of a rung, latest first. */
export const planHistory: CoachCommand = {
  name: 'plan-history',
  who: 'coach',
  options: [{ name: 'client', kind: 'client', required: true }],
  run: async (draft, _, tx) => ({
    ...plain(historyText(draft, await tx.plans(draft.client.id)), draft.client.ref),
    kind: 'report',
  }),
}
