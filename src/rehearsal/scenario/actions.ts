import { z } from 'zod'
import { DECISIONS } from '../../engine/coach/decide.ts'
import { OUTCOMES } from '../../engine/urgent/alert.ts'
import {
  date,
  duration,
  jump,
  keyed,
  lateTime,
  listOf,
  oneOf,
  reach,
  ref,
  region,
  side,
  sign,
  text,
  whole,
  wrong,
  zone,
} from './values.ts'

/** What may stand under a day, by the key that names it. Beside it only `at` or `after` (and what is listed). */

const timing = { at: lateTime.optional(), after: duration.optional() }
const action = <T extends z.ZodRawShape>(shape: T) => keyed({ ...timing, ...shape })

const slash = text.refine((line) => line.startsWith('/'), {
  error: wrong('command', 'a slash, the name and options, like "/today" or "/decide client:heron do:hold"'),
})

const form = keyed(
  {
    sessions: whole('number of sessions', 0, 8).optional(),
    reach: reach.optional(),
    pain: whole('pain', 0, 10).optional(),
    side: side.optional(),
    signs: listOf(sign, 'list of signs').optional(),
  },
  'form',
)

/** Anything that stands under a message as it is shown: a button or a list by its name. */
const use = keyed(
  {
    name: text,
    back: whole('count', 0, 9999).default(0),
    values: listOf(text, 'list of values').optional(),
    fill: z
      .record(text, z.union([text, listOf(text, 'list of values')]), {
        error: wrong('form', 'fields with what is filled in, like { pain: 4 }'),
      })
      .optional(),
  },
  'use',
)

export const CLIENT_ACTIONS = {
  say: action({ say: text }),
  form: action({ form }),
  edit: action({ edit: text }),
  delete: action({ delete: z.literal(true, { error: wrong('mark', 'true') }) }),
  press: action({ press: text }),
  command: action({ command: slash }),
  use: action({ use }),
  zone: action({ zone, region: region.optional() }),
  region: action({ region }),
}

/** A client alone, or with more to say: `pause: heron` and `pause: { client: heron }` are the same. */
const about = <T extends z.ZodRawShape>(shape: T) =>
  z.preprocess(
    (given) => (typeof given === 'string' || typeof given === 'number' ? { client: given } : given),
    keyed({ client: ref, ...shape }),
  )
const alone = about({})
const seenBy = about({ by: text, on: date })

export const COACH_ACTIONS = {
  command: action({ command: slash }),
  press: action({ press: about({ button: text }) }),
  use: action({ use }),
  decide: action({
    decide: about({
      ladder: text.optional(),
      do: oneOf('decision', DECISIONS),
      reason: text.optional(),
    }),
  }),
  'take-up': action({ 'take-up': about({ outcome: oneOf('outcome', OUTCOMES).optional() }) }),
  clear: action({ clear: seenBy }),
  release: action({ release: seenBy }),
  discharge: action({ discharge: alone }),
  pause: action({ pause: alone }),
  resume: action({ resume: alone }),
  note: action({ note: about({ text }) }),
  noted: action({ noted: about({ sign: sign.optional() }) }),
  'spoken-with': action({ 'spoken-with': alone }),
  report: action({ report: alone }),
  export: action({ export: about({ format: oneOf('format', ['json', 'csv', 'fhir'] as const).optional() }) }),
  erase: action({ erase: alone }),
}

const CHAT_FAULTS = [
  'down',
  'slow',
  '500',
  '429',
  'lost-answer',
  'gateway-drop',
  'no-resume',
  'revoked',
] as const
const DATABASE_FAULTS = ['locked', 'slow', 'full', 'read-only', 'gone'] as const

export const FAULTS = {
  chat: action({ chat: oneOf('fault of the chat', CHAT_FAULTS), for: duration.optional() }),
  database: action({ database: oneOf('fault of the database', DATABASE_FAULTS), for: duration.optional() }),
  restart: action({ restart: oneOf('restart', ['kill', 'stop'] as const) }),
  clock: action({ clock: jump }),
}
