import { type Day, isDay } from '../day.ts'
import { LADDERS, ladderOf, lastRung } from '../ladder/ladders.ts'
import type { Rungs } from '../ladder/plan.ts'
import { isReach, type Reach } from '../reach.ts'
import { isSignId, type SignId } from '../signs/catalogue.ts'

/** A cell read: its value, or that it cannot be right. */
export type Cell<T> = { readonly ok: true; readonly value: T } | { readonly ok: false }

const good = <T>(value: T): Cell<T> => ({ ok: true, value })
const bad = { ok: false } as const

/** An empty cell was not answered. */
const optional = <T>(text: string, read: (text: string) => Cell<T>): Cell<T | null> =>
  text === '' ? good(null) : read(text)

/** A whole number from least to most ("4.0" is one, "4.5" is not). */
export const wholeCell = (text: string, least: number, most: number): Cell<number | null> =>
  optional(text, (filled) => {
    const value = /^\d{1,4}(\.0+)?$/.test(filled) ? Number(filled) : Number.NaN
    return value >= least && value <= most ? good(value) : bad
  })

export const reachCell = (text: string): Cell<Reach | null> =>
  optional(text.toLowerCase(), (word) => (isReach(word) ? good(word) : bad))

export const yesNoCell = (text: string): Cell<boolean | null> =>
  optional(text.toLowerCase(), (word) => (word === 'yes' ? good(true) : word === 'no' ? good(false) : bad))

export const dayCell = (text: string): Cell<Day | null> =>
  optional(text, (day) => (isDay(day) ? good(day) : bad))

export interface SignsCell {
  readonly signs: readonly SignId[]
  /** All denied in so many words ("none"). */
  readonly denied: boolean
  /** Words that are no id, or "none" beside an id: the row cannot be right, but the signs named are kept. */
  readonly wrong: readonly string[]
}

const listed = (text: string): string[] =>
  text
    .toLowerCase()
    .split(/[;,]/)
    .map((word) => word.trim())
    .filter((word) => word !== '')

export function signsCell(text: string): SignsCell {
  const words = listed(text)
  const signs = [...new Set(words.filter(isSignId))]
  const denied = words.includes('none')
  const unknown = words.filter((word) => word !== 'none' && !isSignId(word))
  const clash = denied && words.length > 1 ? ['none'] : []
  return { signs, denied: denied && words.length === 1, wrong: [...unknown, ...clash] }
}

/** Ids alone, as for signs ended that day or on the known list; ";" or "," between them. */
export function idsCell(text: string): Cell<readonly SignId[]> {
  const words = listed(text)
  return words.every(isSignId) ? good([...new Set(words.filter(isSignId))]) : bad
}

/** "extension:2;glide:1"; rung 0 is a ladder planned but not begun. Null where the cell is empty. */
export const rungsCell = (text: string): Cell<Rungs | null> =>
  optional(text.toLowerCase(), (filled) => {
    const rungs: Record<string, number> = {}
    for (const part of listed(filled)) {
      const [, id, number] = /^([a-z][a-z0-9-]{0,39})\s*:\s*(\d{1,2})$/.exec(part) ?? []
      if (id === undefined || Object.hasOwn(rungs, id)) return bad
      const ladder = ladderOf(id, LADDERS)
      if (ladder !== null && Number(number) > lastRung(ladder)) return bad
      rungs[id] = Number(number)
    }
    return good(rungs)
  })
