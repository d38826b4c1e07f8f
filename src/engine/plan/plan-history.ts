import type { Draft } from '../draft.ts'
import type { PlanRow } from '../rows.ts'

/** Every plan and every change of a rung, latest first, in words. */
export function planHistory({ file, client, forCoach }: Draft, plans: readonly PlanRow[]): string {
  const { plan } = forCoach
  const entries = [
    ...plans.map(({ at, day, by, sessions, loads }) => ({
      at,
      isPlan: true,
      text: plan.historyPlan(day, by, sessions, loads),
    })),
    ...file.rungs.map((move) => ({ at: move.at, isPlan: false, text: plan.historyMove(move) })),
  ]
  // of one moment the plan stands first, then the rungs that it moved
  entries.sort((a, b) => b.at.getTime() - a.at.getTime() || Number(b.isPlan) - Number(a.isPlan))
  return plan.history(
    client.ref,
    entries.map(({ text }) => text),
  )
}
