import type { ClientExport } from '../facts.ts'
import { carePlans } from './care-plans.ts'
import { BASE, type FhirLabels, idOf, type Resource } from './codes.ts'
import { observations } from './observations.ts'
import { responses } from './responses.ts'

/**
 * The course of a client as one FHIR R4 Bundle (http://hl7.org/fhir/R4, version 4.0.1) of type collection: Patient by
 * alias, an Observation for each value, a QuestionnaireResponse for the screening and for what was said of the signs,
 * a CarePlan for each plan. Nothing in it is a diagnosis.
 */
export function exportFhir(facts: ClientExport, labels: FhirLabels): string {
  const resources = [
    patient(facts),
    ...carePlans(facts, labels),
    ...responses(facts, labels),
    ...observations(facts, labels),
  ]
  const bundle = {
    resourceType: 'Bundle',
    id: idOf(facts.client.alias, 'export'),
    language: labels.language,
    type: 'collection',
    timestamp: facts.made,
    entry: resources.map((resource) => ({
      fullUrl: `${BASE}/${resource.resourceType}/${resource.id}`,
      resource,
    })),
  }
  return `${JSON.stringify(bundle, null, 2)}\n`
}

/** Known by the alias alone: no name, no birth date, no address. */
const patient = ({ client }: ClientExport): Resource => ({
  resourceType: 'Patient',
  id: idOf(client.alias),
  identifier: [{ use: 'secondary', system: `${BASE}/alias`, value: client.alias }],
})
