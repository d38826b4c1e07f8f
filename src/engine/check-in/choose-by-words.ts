import type { Draft } from '../draft.ts'
import type { Act } from '../message.ts'
import type { AskedRow } from '../rows.ts'
import { latestAsked } from './asked.ts'

export interface Chosen {
  readonly act: Act
  /** Of a list of which several may hold: the values chosen. */
  readonly values: readonly string[]
}

/** Values that the reader knows by themselves: a number is then no place in a list. */
const PLAIN = ['sessions', 'reach', 'pain']
/** "3", "1, 4", "2 and 5" or "2 y 5". */
const NUMBERS = /^\d{1,2}(?:\s*(?:,|;|\+|&|and|y|\s)\s*\d{1,2})*[.!]?$/

/** A choice said in words: its number in the list shown, its label or its name. */
export function chooseByWords(draft: Draft, text: string): Chosen | null {
  const asked = latestAsked(draft)
  if (!asked || PLAIN.includes(asked.ask)) return null
  const said = text.trim().toLowerCase()
  const numbered = wasListed(draft, asked) && NUMBERS.test(said) ? byNumber(asked, said) : null
  return numbered ?? byLabel(draft, asked, said.replace(/[.!]+$/, ''))
}

/** Only who has no buttons was shown a numbered list, and a prompt shows none for the signs beside it. */
const wasListed = (draft: Draft, asked: AskedRow): boolean =>
  draft.client.wordsOnly && asked.message !== draft.id('prompt', asked.day)

function byNumber(asked: AskedRow, said: string): Chosen | null {
  const options = (said.match(/\d+/g) ?? []).map((n) => asked.options[Number(n) - 1])
  const [first] = options
  if (!first || options.includes(undefined)) return null
  const values = options.flatMap((option) =>
    typeof option?.act.chosen === 'string' ? [option.act.chosen] : [],
  )
  return options.length > 1 && values.length === 0 ? null : { act: first.act, values }
}

function byLabel({ texts: { words } }: Draft, asked: AskedRow, said: string): Chosen | null {
  const bare = unaccented(said)
  const name = bare === unaccented(words.yes) ? 'yes' : bare === unaccented(words.no) ? 'no' : said
  const option = asked.options.find(
    (one) => unaccented(one.label) === bare || one.name === name || one.name === `${asked.ask}-${name}`,
  )
  return option ? { act: option.act, values: [] } : null
}

/** In small letters, accents left out: many write "si" for "sí". */
export const unaccented = (text: string): string => text.toLowerCase().normalize('NFD').replace(/\p{M}/gu, '')
