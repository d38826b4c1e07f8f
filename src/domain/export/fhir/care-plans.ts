import type { ClientExport, PlanFacts } from '../facts.ts'
import { type FhirLabels, idOf, type Json, ownCoding, patientOf, type Resource } from './codes.ts'

/** How a plan stands by the client's status (values of R4's request-status and care-plan-activity-status). */
const STANDING: Readonly<Record<string, readonly [plan: string, activity: string]>> = {
  invited: ['draft', 'not-started'],
  screening: ['draft', 'not-started'],
  active: ['active', 'in-progress'],
  locked: ['on-hold', 'on-hold'],
  parked: ['on-hold', 'on-hold'],
  paused: ['on-hold', 'on-hold'],
  discharged: ['completed', 'completed'],
  left: ['revoked', 'stopped'],
}
const REPLACED = ['completed', 'completed'] as const

/** Each plan that the coach saved, with the rungs at its end; the last is the one in force. */
export function carePlans(facts: ClientExport, labels: FhirLabels): Resource[] {
  const { alias } = facts.client
  return facts.plans.map((plan, n) => {
    const next = facts.plans[n + 1]
    const [status, doing] = next ? REPLACED : (STANDING[facts.client.status] ?? ['unknown', 'unknown'])
    const activity = activities(facts, plan, next, doing, labels)
    return {
      resourceType: 'CarePlan',
      id: idOf(alias, 'plan', n + 1),
      status,
      intent: 'plan',
      title: labels.plan,
      subject: patientOf(alias),
      created: plan.at,
      period: period(plan, next?.day ?? facts.client.ended?.slice(0, 10) ?? null),
      ...(n > 0 ? { replaces: [{ reference: `CarePlan/${idOf(alias, 'plan', n)}` }] } : {}),
      ...(activity.length > 0 ? { activity } : {}),
    }
  })
}

/** A plan may begin on a later day than that on which it was replaced. */
const period = ({ day }: PlanFacts, end: string | null): Json =>
  end === null ? { start: day } : { start: day, end: end < day ? day : end }

function activities(
  facts: ClientExport,
  { sessions, loads }: PlanFacts,
  next: PlanFacts | undefined,
  doing: string,
  labels: FhirLabels,
): Json[] {
  const rungs = new Map<string, number>()
  for (const move of facts.rungs) if (!next || move.at < next.at) rungs.set(move.ladder, move.to)
  const resting = new Set(
    facts.holds.flatMap(({ kind, ladder, ended }) => (kind === 'rest' && ended === null ? [ladder] : [])),
  )
  return [...rungs]
    .filter(([, rung]) => rung > 0)
    .map(([ladder, rung]) => {
      const id = `${ladder}:${rung}`
      const name = labels.drill(ladder, rung)
      const rests = !next && resting.has(ladder) && doing === 'in-progress'
      return {
        detail: {
          kind: 'ServiceRequest',
          code: { coding: [ownCoding('drill', id, name)], text: name },
          status: rests ? 'on-hold' : doing,
          scheduledTiming: { repeat: { frequency: sessions, period: 1, periodUnit: 'd' } },
          description: [labels.timesADay(sessions), loads[id]].filter(Boolean).join(', '),
        },
      }
    })
}
