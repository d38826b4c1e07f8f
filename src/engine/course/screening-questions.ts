import { REACHES } from '../../domain/reach.ts'
import { SIGN_IDS } from '../../domain/signs/catalogue.ts'
import type { Texts } from '../../text/index.ts'
import type { Field, Option } from '../message.ts'
import type { ScreeningRow } from '../rows.ts'

export type Value = ScreeningRow['answers'][string]

export const RISKS = [
  'cancer',
  'osteoporosis',
  'long-steroids',
  'immune',
  'pregnancy',
  'recent-fall',
  'anticoagulants',
] as const

/** One question of the form before any plan; asked in a form of up to five, or one by one in words. */
export interface ScreeningQuestion {
  readonly id: string
  readonly kind: Field['kind']
  readonly required: boolean
  options(texts: Texts): readonly Option[]
  /** What was written or chosen as a value; null where it must be asked again. */
  read(given: string | readonly string[], texts: Texts): Value | null
}

const none = { value: 'none' }
const listOf = (given: string | readonly string[]): readonly string[] =>
  typeof given === 'string' ? [given] : given

const one = (
  id: string,
  values: readonly string[],
  labels: (texts: Texts) => Readonly<Record<string, string>>,
  required = true,
): ScreeningQuestion => ({
  id,
  kind: 'one',
  required,
  options: (texts) => values.map((value) => ({ value, label: labels(texts)[value] ?? value })),
  read: (given) => values.find((value) => value === listOf(given)[0]) ?? null,
})

/** Several may hold; "none of these" is a choice of its own, and leaving it empty is no answer. */
const many = (
  id: string,
  values: readonly string[],
  labels: (texts: Texts) => Readonly<Record<string, string>>,
): ScreeningQuestion => ({
  id,
  kind: 'many',
  required: true,
  options: (texts) => [
    { ...none, label: texts.client.noneOfThese },
    ...values.map((value) => ({ value, label: labels(texts)[value] ?? value })),
  ],
  read: (given) => {
    const chosen = listOf(given)
    if (chosen.length === 0) return null
    const known = chosen.filter((value) => values.includes(value))
    return known.length > 0 || chosen.includes('none') ? [...known] : null
  },
})

const line = (id: string, required: boolean, read: (text: string) => Value | null): ScreeningQuestion => ({
  id,
  kind: 'line',
  required,
  options: () => [],
  read: (given) => read(listOf(given).join(' ').trim()),
})

const signLabels = (texts: Texts): Record<string, string> =>
  Object.fromEntries(SIGN_IDS.map((sign) => [sign, texts.signs[sign].label]))
const ASKED_SIGNS = SIGN_IDS.filter((sign) => sign !== 'self-harm')

/** The age from which a person may decide alone; younger ones are refused politely. */
export const ADULT = 18

const QUESTIONS: readonly ScreeningQuestion[] = [
  many('signs', ASKED_SIGNS, signLabels),
  line('age', true, readAge),
  line('onset', true, readOnset),
  one('earlier', ['no', 'episode', 'surgery'], (t) => t.screening.earlier),
  one('seen', ['yes', 'no'], (t) => t.screening.seen),
  many('risks', RISKS, (t) => t.screening.risk),
  many('known', ASKED_SIGNS, signLabels),
  one('reach', REACHES, (t) => Object.fromEntries(REACHES.map((reach) => [reach, t.words.reach(reach)]))),
  one(
    'pain',
    Array.from({ length: 11 }, (_, n) => String(n)),
    () => ({}),
  ),
  one('side', ['left', 'right', 'both'], (t) => ({
    left: t.words.side('left'),
    right: t.words.side('right'),
    both: t.words.side('both'),
  })),
  one('eases', ['flexion', 'extension', 'neither'], (t) => t.screening.eases),
  line('activities', false, readActivities),
  line('lift', false, (text) => text.slice(0, 100)),
]

/** Forms of at most five questions, in order. */
export const STEPS: readonly (readonly ScreeningQuestion[])[] = [
  QUESTIONS.slice(0, 5),
  QUESTIONS.slice(5, 10),
  QUESTIONS.slice(10),
]

export const questionOf = (id: string): ScreeningQuestion | undefined =>
  QUESTIONS.find((question) => question.id === id)

function readAge(text: string): number | null {
  const age = Number(/\d{1,3}/.exec(text)?.[0])
  return Number.isInteger(age) && age >= 1 && age <= 120 ? age : null
}

/** An ISO date, or words kept as they are ("about three weeks ago"). */
function readOnset(text: string): string | null {
  return text === '' ? null : text.slice(0, 100)
}

/** "rowing 7, sitting 5": up to three activities and how hard each is, 0..10. */
function readActivities(text: string): Record<string, number> {
  const found: Record<string, number> = {}
  for (const part of text.split(/[,;\n]/).slice(0, 3)) {
    const match = /^\s*(.*?)[\s:=-]*(\d{1,2})\s*$/.exec(part)
    const hard = Number(match?.[2])
    if (match?.[1] && hard <= 10) found[match[1].slice(0, 40)] = hard
  }
  return found
}
