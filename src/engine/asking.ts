import { SIDES } from '../domain/checkin.ts'
import type { Day } from '../domain/day.ts'
import { REACHES } from '../domain/reach.ts'
import type { Ask, SLOTS } from '../domain/reply/reading.ts'
import { isCaudaEquina, SIGN_IDS, type SignId } from '../domain/signs/catalogue.ts'
import type { Texts } from '../text/index.ts'
import type { Draft } from './draft.ts'
import type { Act, Button, Pick } from './message.ts'
import type { AskedRow } from './rows.ts'

/** A question with its choices; the same whether it travels with a receipt or by itself. */
export interface Question {
  readonly ask: Ask
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

/** The question for one of the three values of a day. */
export function valueQuestion(
  texts: Texts,
  slot: (typeof SLOTS)[number],
  day: Day,
  planned: number,
  again: boolean,
): Question {
  const { client } = texts
  const values: Record<(typeof SLOTS)[number], [string | number, string][]> = {
    sessions: Array.from({ length: planned + 3 }, (_, n) => [n, String(n)]),
    reach: REACHES.map((reach) => [reach, texts.words.reach(reach)]),
    pain: Array.from({ length: 11 }, (_, n) => [n, String(n)]),
  }
  const text = again ? client.askAgain(slot, planned) : client.askValue(slot, planned)
  return { ask: slot, day, text, buttons: choices(slot, day, values[slot]), pick: null, pressing: false }
}

export function sideQuestion(texts: Texts, day: Day, known: boolean, pressing: boolean): Question {
  const values: [string, string][] = known
    ? [
        ['same', texts.client.side.same],
        ['other', texts.client.side.other],
        ['both', texts.client.side.both],
      ]
    : SIDES.map((side) => [side, texts.words.side(side)])
  const text = known ? texts.client.askSideAgain : texts.client.askSide
  return { ask: 'side', day, text, buttons: choices('side', day, values), pick: null, pressing }
}

export function yesNoQuestion(texts: Texts, ask: 'comfort' | 'settled', day: Day, text: string): Question {
  return {
    ask,
    day,
    text,
    buttons: choices(ask, day, [
      ['yes', texts.words.yes],
      ['no', texts.words.no],
    ]),
    pick: null,
    pressing: false,
  }
}

export function barrierQuestion(texts: Texts, day: Day): Question {
  const values = BARRIERS.map((barrier) => [barrier, texts.client.barrier[barrier]] as const)
  return {
    ask: 'barrier',
    day,
    text: texts.client.askBarrier,
    buttons: choices('barrier', day, values),
    pick: null,
    pressing: false,
  }
}

/** The routine question on warning signs: "none of these" and "one of these". */
export function routineSigns(texts: Texts, day: Day, text: string): Question {
  return { ask: 'signs', day, text, buttons: signButtons(texts, day), pick: null, pressing: false }
}

export const signButtons = (texts: Texts, day: Day): Button[] => [
  { name: 'none-of-these', label: texts.client.noneOfThese, act: answer('signs', 'none', day) },
  {
    name: 'one-of-these',
    label: texts.client.oneOfThese,
    act: answer('signs', 'some', day),
    style: 'danger',
  },
]

/** Which of them: asked after "one of these". Not answering counts as an emergency, as the hint was given. */
export function whichSign(texts: Texts, day: Day): Question {
  const options = SIGN_IDS.map((sign) => ({ value: sign, label: texts.signs[sign].label }))
  return {
    ask: 'signs',
    day,
    text: texts.client.whichSign,
    buttons: [],
    pick: {
      name: 'which-sign',
      label: texts.client.pickSigns,
      options,
      most: options.length,
      act: answer('signs', 'these', day),
    },
    pressing: true,
  }
}

/** Somebody hinted at a sign: yes or no, and what to do meanwhile if the answer is yes. */
export function hintedSign(texts: Texts, day: Day, sign: SignId): Question {
  return {
    ask: 'signs',
    day,
    text: texts.client.hintedSign(texts.signs[sign].question, isCaudaEquina(sign)),
    buttons: [
      { name: 'yes', label: texts.words.yes, act: { do: 'sign', sign, value: 'yes' }, style: 'danger' },
      { name: 'no', label: texts.words.no, act: { do: 'sign', sign, value: 'no' } },
    ],
    pick: null,
    pressing: true,
  }
}

/** Keeps the question until it is answered or the day ends, and gives what a message needs to carry it. */
export function carry(
  draft: Draft,
  question: Question,
): { asks: Ask; buttons: readonly Button[]; pick: Pick | null } {
  const row: AskedRow = {
    id: draft.id('asked', question.ask),
    clientId: draft.client.id,
    ask: question.ask,
    day: question.day,
    at: draft.now,
    message: draft.cause,
    pressing: question.pressing,
    options: [
      ...question.buttons.map(({ name, label, act }) => ({ name, label, act })),
      ...(question.pick?.options.map((option) => ({
        name: option.value,
        label: option.label,
        act: { ...question.pick!.act, chosen: option.value },
      })) ?? []),
    ],
  }
  draft.put('asked', row)
  return { asks: question.ask, buttons: question.buttons, pick: question.pick }
}
/** The question answers have to be read against: the latest still open. */
export const latestAsked = (draft: Draft): AskedRow | null =>
  [...draft.file.asked].sort((a, b) => a.at.getTime() - b.at.getTime()).at(-1) ?? null

export function answeredNow(draft: Draft, ask: AskedRow['ask']): void {
  const row = draft.file.asked.find((asked) => asked.ask === ask)
  if (row) draft.drop('asked', row.id)
}
