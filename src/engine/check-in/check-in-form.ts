import { SIDES, type Side } from '../../domain/checkin.ts'
import { type Day, weekday } from '../../domain/day.ts'
import { isReach, REACHES } from '../../domain/reach.ts'
import { isSignId, type SignId } from '../../domain/signs/catalogue.ts'
import type { Draft } from '../draft.ts'
import type { Filled } from '../event.ts'
import type { Field, Form, Option } from '../message.ts'
import { plannedOn } from '../plan/rungs.ts'
import { listedSigns } from '../urgent/listed-signs.ts'
import type { Given } from './record.ts'

const numbers = (most: number): Option[] =>
  Array.from({ length: most + 1 }, (_, n) => ({ value: String(n), label: String(n) }))

/** The day's form: sessions, reach, pain, side and all signs with an explicit "none of these"; nothing pre-ticked. */
export function checkInForm(draft: Draft, day: Day): Form {
  const { client, words, signs } = draft.texts
  const planned = plannedOn(draft.file, weekday(day))
  const one = (name: string, label: string, options: readonly Option[]): Field => ({
    name,
    label,
    kind: 'one',
    options,
    required: false,
  })
  const reaches = REACHES.map((reach) => ({ value: reach, label: words.reach(reach) }))
  const sides = SIDES.map((side) => ({ value: side, label: words.side(side) }))
  const allSigns = [
    { value: 'none', label: client.noneOfThese },
    ...listedSigns(draft.file).map((sign) => ({ value: sign, label: signs[sign].label })),
  ]
  return {
    name: `check-in-${day}`,
    title: client.formTitle(day),
    fields: [
      one('sessions', client.form.sessions(planned), numbers(planned + 2)),
      one('reach', client.form.reach, reaches),
      one('pain', client.form.pain, numbers(10)),
      one('side', client.form.side, sides),
      { name: 'signs', label: client.form.signs, kind: 'many', options: allSigns, required: false },
    ],
  }
}

export interface FormRead {
  readonly given: Given
  readonly side: Side | null
  readonly signs: readonly SignId[]
  /** "None of these" was ticked, and nothing else. */
  readonly denied: boolean
}

/** A filled form as values; a field left empty is not an answer, and an empty list of signs is not "none". */
export function readCheckInForm(filled: Filled): FormRead {
  const one = (name: string): string | null => {
    const value = filled[name]
    return (typeof value === 'string' ? value : value?.[0]) || null
  }
  const number = (name: string): number | null => {
    const value = Number(one(name) ?? Number.NaN)
    return Number.isInteger(value) && value >= 0 ? value : null
  }
  const ticked = filled.signs ?? []
  const signs = (typeof ticked === 'string' ? [ticked] : ticked).filter(isSignId)
  const [sessions, reach, pain, side] = [number('sessions'), one('reach'), number('pain'), one('side')]
  return {
    given: {
      ...(sessions === null ? {} : { sessions }),
      ...(reach !== null && isReach(reach) ? { reach } : {}),
      ...(pain === null || pain > 10 ? {} : { pain }),
    },
    side: SIDES.find((known) => known === side) ?? null,
    signs,
    denied: signs.length === 0 && ticked.includes('none'),
  }
}
