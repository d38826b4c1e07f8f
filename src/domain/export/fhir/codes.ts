/** Where the resources of an export stand by name. The host is one that nobody can own (RFC 2606). */
export const BASE = 'https://ebbline.example/fhir'

/** A resource or a part of one, as JSON; the published schema of R4 says what may be in it. */
export type Json = { readonly [key: string]: unknown }
export interface Resource extends Json {
  readonly resourceType: string
  readonly id: string
}

/** Sentences and names in the language of the document. */
export interface FhirLabels {
  readonly language: string
  readonly pain: string
  readonly reach: string
  readonly sessions: string
  readonly planned: string
  /** How far a zone is from the spine, as a number. */
  readonly rank: string
  readonly activity: string
  readonly signs: string
  readonly screening: string
  readonly plan: string
  zone(reach: string): string
  sign(id: string): string
  question(id: string): string
  drill(ladder: string, rung: number): string
  timesADay(sessions: number): string
}

// Code and name as the FHIR guides of HL7 Belgium (patient monitoring, value set pain-scale) and of France (health
// measures) use them; looked up there, not at LOINC itself.
export const PAIN = {
  system: 'http://loinc.org',
  code: '72514-3',
  display: 'Pain severity - 0-10 verbal numeric rating [Score] - Reported',
} as const

const CATEGORY = 'http://terminology.hl7.org/CodeSystem/observation-category'
/** Answers of a person about themselves. */
export const SURVEY: Json = { coding: [{ system: CATEGORY, code: 'survey' }] }

/** A word of our own: what no published code says as the diary asks it. */
export const own = (list: string, code: string, text: string): Json => ({
  coding: [ownCoding(list, code, text)],
  text,
})
export const ownCoding = (list: string, code: string, display: string): Json => ({
  system: `${BASE}/CodeSystem/${list}`,
  code,
  display,
})

/**
 * An id as FHIR allows it: at most 64 letters, digits, hyphens and points. An alias has 30 at most; what stands
 * behind it is made of ids and dates.
 */
export const idOf = (alias: string, ...parts: readonly (string | number)[]): string =>
  [alias, ...parts]
    .join('-')
    .replaceAll(/[^A-Za-z0-9.-]/g, '-')
    .slice(0, 64)

export const patientOf = (alias: string): Json => ({ reference: `Patient/${idOf(alias)}` })
