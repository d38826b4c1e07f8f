import type { Denied } from '../../checkin.ts'
import { isSignId, SIGN_IDS, type SignId } from '../../signs/catalogue.ts'
import type { ClientExport, DayFacts } from '../facts.ts'
import { BASE, type FhirLabels, idOf, type Json, ownCoding, patientOf, type Resource } from './codes.ts'

/** The screening, and what was said of the signs on each day on which anything was said of them. */
export function responses(facts: ClientExport, labels: FhirLabels): Resource[] {
  const { alias } = facts.client
  const screenings = facts.screenings.map(({ answers, started, done }, n) => ({
    ...response(alias, 'screening', n + 1, done ?? started),
    status: done === null ? 'in-progress' : 'completed',
    ...listed(Object.entries(answers).map(([id, value]) => answerItem(id, value, labels))),
  }))
  return [...screenings, ...facts.checkIns.flatMap((day) => signsOf(alias, day, labels))]
}

const response = (alias: string, form: string, which: string | number, authored: string): Resource => ({
  resourceType: 'QuestionnaireResponse',
  id: idOf(alias, form, which),
  questionnaire: `${BASE}/Questionnaire/${form}`,
  status: 'completed',
  subject: patientOf(alias),
  source: patientOf(alias),
  authored,
})

/** FHIR knows no empty list: it is left out. */
const listed = (item: readonly Json[]): Json => (item.length > 0 ? { item } : {})

/** A sign named is true and a sign denied false; what was not said has no item. */
function signsOf(alias: string, { day, updated, signs, denied }: DayFacts, labels: FhirLabels): Resource[] {
  const no = deniedSigns(denied).filter((sign) => !signs.includes(sign))
  if (signs.length + no.length === 0) return []
  const item = [...signs.map((sign) => [sign, true] as const), ...no.map((sign) => [sign, false] as const)]
  return [
    {
      ...response(alias, 'signs', day, updated),
      item: item.map(([sign, valueBoolean]) => ({
        linkId: sign,
        text: labels.sign(sign),
        answer: [{ valueBoolean }],
      })),
    },
  ]
}

// thoughts of self-harm are never asked in a list, so denying the list does not deny them
const ASKED = SIGN_IDS.filter((sign) => sign !== 'self-harm')
const deniedSigns = (denied: Denied): readonly SignId[] => (denied === 'all' ? ASKED : (denied ?? []))

type Value = ClientExport['screenings'][number]['answers'][string]

function answerItem(id: string, value: Value, labels: FhirLabels): Json {
  const item = { linkId: id, text: labels.question(id) }
  if (typeof value === 'number' || typeof value === 'string') {
    const answer = simple(value)
    return answer ? { ...item, answer: [answer] } : item
  }
  if (Array.isArray(value)) {
    const chosen = value.length > 0 ? (value as readonly string[]) : ['none']
    return { ...item, answer: chosen.map((code) => ({ valueCoding: coding(id, code, labels) })) }
  }
  const parts = Object.entries(value as Readonly<Record<string, number>>)
  return {
    ...item,
    ...listed(
      parts.map(([name, score], n) => ({
        linkId: `${id}.${n + 1}`,
        text: name || labels.activity,
        answer: [{ valueInteger: score }],
      })),
    ),
  }
}

const coding = (question: string, code: string, labels: FhirLabels): Json =>
  ownCoding(question, code, isSignId(code) ? labels.sign(code) : code)

/** Null where there are no words at all. */
function simple(value: number | string): Json | null {
  if (/^\d{1,4}$/.test(String(value))) return { valueInteger: Number(value) }
  return String(value).trim() === '' ? null : { valueString: String(value) }
}
