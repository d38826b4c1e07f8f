import { SIDES } from '../../domain/checkin.ts'
import type { Day } from '../../domain/day.ts'
import { REACHES } from '../../domain/reach.ts'
import type { Ask, Slot } from '../../domain/reply/reading.ts'
import { careOf, type SignId } from '../../domain/signs/catalogue.ts'
import type { Texts } from '../../text/index.ts'
import type { Act, Button, Pick } from '../message.ts'

/** A question with its choices; the same whether it travels with a receipt or by itself. */
export interface Question {
  readonly ask: Ask | 'activities'
  readonly day: Day
  readonly text: string
  readonly buttons: readonly Button[]
  readonly pick: Pick | null
  /** Silence counts as yes. */
  readonly pressing: boolean
}

export const BARRIERS = ['time', 'pain', 'unsure-how', 'no-kit', 'other'] as const
export type Barrier = (typeof BARRIERS)[number]

const answer = (ask: Ask, value: string | number, day: Day): Act => ({ do: 'answer', ask, value, day })

/** Buttons of a plain choice, named by the value alone where that reads well, else by question and value. */
const choices = (ask: Ask, day: Day, values: readonly (readonly [string | number, string])[]): Button[] =>
  values.map(([value, label]) => ({ name: `${ask}-${value}`, label, act: answer(ask, value, day) }))

const calm = (ask: Ask, day: Day, text: string, buttons: readonly Button[]): Question => ({
  ask,
  day,
  text,
  buttons,
  pick: null,
  pressing: false,
})

/** The question for one of the three values of a day. */
export function valueQuestion(texts: Texts, slot: Slot, day: Day, planned: number, again: boolean): Question {
  const { client } = texts
  const values: Record<Slot, [string | number, string][]> = {
    sessions: Array.from({ length: planned + 3 }, (_, n) => [n, String(n)]),
    reach: REACHES.map((reach) => [reach, texts.words.reach(reach)]),
    pain: Array.from({ length: 11 }, (_, n) => [n, String(n)]),
  }
  const text = again ? client.askAgain(slot, planned) : client.askValue(slot, planned)
  return calm(slot, day, text, choices(slot, day, values[slot]))
}

/** Which leg, where none is on record. */
export const sideQuestion = (texts: Texts, day: Day): Question =>
  calm(
    'side',
    day,
    texts.client.askSide,
    choices(
      'side',
      day,
      SIDES.map((side) => [side, texts.words.side(side)]),
    ),
  )

/** The other leg was named than the one on record: the same, the other, or both? */
export function otherSideQuestion(texts: Texts, day: Day): Question {
  const { side } = texts.client
  const values = (['same', 'other', 'both'] as const).map((value) => [value, side[value]] as const)
  return { ...calm('side', day, texts.client.askSideAgain, choices('side', day, values)), pressing: true }
}

export const yesNoQuestion = (texts: Texts, ask: 'comfort' | 'settled', day: Day, text: string): Question =>
  calm(
    ask,
    day,
    text,
    choices(ask, day, [
      ['yes', texts.words.yes],
      ['no', texts.words.no],
    ]),
  )

export const barrierQuestion = (texts: Texts, day: Day): Question =>
  calm(
    'barrier',
    day,
    texts.client.askBarrier,
    choices(
      'barrier',
      day,
      BARRIERS.map((barrier) => [barrier, texts.client.barrier[barrier]]),
    ),
  )

/** The routine question on warning signs: "none of these" and "one of these". */
export const routineSigns = (texts: Texts, day: Day): Question =>
  calm('signs', day, texts.client.routineSigns, signButtons(texts, day))

export const signButtons = (texts: Texts, day: Day): Button[] => [
  { name: 'none-of-these', label: texts.client.noneOfThese, act: answer('signs', 'none', day) },
  {
    name: 'one-of-these',
    label: texts.client.oneOfThese,
    act: answer('signs', 'some', day),
    style: 'danger',
  },
]

/**
 * The signs that the routine question names: somebody who says "one of these" and then no more is taken to have
 * all of them, since any of them could be meant and each wants the same help.
 */
export const ROUTINE_SIGNS: readonly SignId[] = [
  'saddle-numbness',
  'bladder-change',
  'bowel-change',
  'both-legs',
  'leg-weakness',
]

/** Which of them: asked after "one of these". */
export function whichSign(texts: Texts, day: Day, listed: readonly SignId[]): Question {
  const options = listed.map((sign) => ({ value: sign, label: texts.signs[sign].label }))
  const pick: Pick = {
    name: 'which-sign',
    label: texts.client.pickSigns,
    options,
    most: options.length,
    act: answer('signs', 'these', day),
  }
  return { ...calm('signs', day, texts.client.whichSign, []), pick, pressing: true }
}

/** Somebody hinted at a sign: yes or no, and what to do meanwhile if the answer is yes. */
export function hintedSign(texts: Texts, day: Day, sign: SignId, emergency: string | null): Question {
  const buttons: Button[] = [
    { name: 'yes', label: texts.words.yes, act: { do: 'sign', sign, value: 'yes' }, style: 'danger' },
    { name: 'no', label: texts.words.no, act: { do: 'sign', sign, value: 'no' } },
  ]
  const { question } = texts.signs[sign]
  const text =
    sign === 'self-harm'
      ? texts.client.hintedSelfHarm(question)
      : texts.client.hintedSign(question, careOf(sign), emergency)
  return { ...calm('signs', day, text, buttons), pressing: true }
}
