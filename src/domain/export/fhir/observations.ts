import { rank } from '../../reach.ts'
import type { ClientExport, DayFacts } from '../facts.ts'
import { type FhirLabels, idOf, type Json, own, PAIN, patientOf, type Resource, SURVEY } from './codes.ts'

/** Pain, reach and sessions of each day, where they were answered, and the activities that matter. */
export function observations(facts: ClientExport, labels: FhirLabels): Resource[] {
  const { alias } = facts.client
  return [
    ...facts.checkIns.flatMap((day) => ofDay(alias, day, labels)),
    ...facts.activities.flatMap(({ day, at, scores }, row) =>
      Object.entries(scores).map(([name, score], n) => ({
        ...observation(alias, idOf(alias, 'activity', day, row + 1, n + 1), day, at),
        code: { ...own('measure', 'activity-difficulty', labels.activity), text: name || labels.activity },
        valueInteger: score,
      })),
    ),
  ]
}

function ofDay(alias: string, { day, updated, ...values }: DayFacts, labels: FhirLabels): Resource[] {
  const { pain, reach, sessions, planned } = values
  const about = (measure: string): Resource => observation(alias, idOf(alias, measure, day), day, updated)
  const found: Resource[] = []
  if (pain !== null)
    found.push({ ...about('pain'), code: { coding: [PAIN], text: labels.pain }, valueInteger: pain })
  if (reach !== null)
    found.push({
      ...about('reach'),
      code: own('measure', 'reach', labels.reach),
      valueCodeableConcept: own('reach', reach, labels.zone(reach)),
      // an ordinal scale: the number is a rank, not a distance
      component: [{ code: own('measure', 'reach-rank', labels.rank), valueInteger: rank(reach) }],
    })
  if (sessions !== null)
    found.push({
      ...about('sessions'),
      code: own('measure', 'sessions-done', labels.sessions),
      valueInteger: sessions,
      component: [{ code: own('measure', 'sessions-planned', labels.planned), valueInteger: planned }],
    })
  return found
}

/** By the client about the client, on a local date; written down (or last put right) at an instant. */
function observation(alias: string, id: string, day: string, issued: string): Resource {
  const patient: Json = patientOf(alias)
  return {
    resourceType: 'Observation',
    id,
    status: 'final',
    category: [SURVEY],
    subject: patient,
    performer: [patient],
    effectiveDateTime: day,
    issued,
  }
}
