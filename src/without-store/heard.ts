import { type Care, stopsDrills } from '../domain/care.ts'
import { type Day, isDay } from '../domain/day.ts'
import { screenAny } from '../domain/reply/screen-any.ts'
import type { SignId } from '../domain/signs/catalogue.ts'
import { careFor } from '../domain/signs/screen.ts'
import type { Screening } from '../domain/signs/screening.ts'
import { ROUTINE_SIGNS } from '../engine/check-in/asking.ts'
import type { ChatEvent } from '../engine/event.ts'
import { signsToldBy } from '../engine/urgent/told-by.ts'

/** Signs that an event tells of by itself, without a look at any record. */
export interface Heard {
  readonly signs: readonly SignId[]
  readonly care: Care
  /** As the client wrote them; empty where something was pressed or ticked. */
  readonly words: string
  /** One of the urgent ones was said outright: pressed, ticked, or in words that leave no doubt. */
  readonly plain: boolean
  /** False: there is one of the signs, and which was not said. */
  readonly named: boolean
  /** The day that the pressed message or form stands for; null where it names none. */
  readonly day: Day | null
}

/**
 * What must be answered at once: a sign of level emergency or same-day, sure or not, since there is no record that
 * could tell more. Null where there is none.
 */
export function heardIn(event: ChatEvent, language: string, others: readonly string[] = []): Heard | null {
  const { signs, unsure } = signsOf(event, language, others)
  const care = careFor(signs)
  if (!stopsDrills(care)) return null
  const day = 'act' in event ? String(event.act.day) : ''
  return {
    ...{ signs, care },
    words: event.kind === 'words' ? event.text : '',
    plain: stopsDrills(careFor(signs.filter((sign) => !unsure.includes(sign)))),
    // only where none is named it counts as all of those that are asked for every day
    named: signs !== ROUTINE_SIGNS,
    day: isDay(day) ? day : null,
  }
}

type Signs = Pick<Screening, 'signs' | 'unsure'>

function signsOf(event: ChatEvent, language: string, others: readonly string[]): Signs {
  if (event.kind === 'words')
    return screenAny(
      event.text,
      language,
      others.filter((code) => code !== language),
      event.at.toISOString().slice(0, 10),
    )
  const isPress = event.kind === 'form' || event.kind === 'choice'
  return { signs: isPress ? signsToldBy(event) : [], unsure: [] }
}
