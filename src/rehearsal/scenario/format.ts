import { z } from 'zod'
import { LADDERS } from '../../domain/ladder/ladders.ts'
import { DIRECTIONS, PROPOSALS } from '../../domain/rules/assessment.ts'
import { SIGN_IDS } from '../../domain/signs/catalogue.ts'
import { BARRIERS } from '../../engine/check-in/asking.ts'
import { RISKS } from '../../engine/course/screening-questions.ts'
import { MESSAGE_KINDS } from '../../engine/message.ts'
import { STATUSES } from '../../engine/status.ts'
import { LANGUAGE_CODES } from '../../text/index.ts'
import {
  clockTime,
  date,
  duration,
  keyed,
  listOf,
  oneOf,
  pattern,
  reach,
  ref,
  region,
  side,
  sign,
  text,
  weekday,
  whole,
  wrong,
  yesNo,
  zone,
} from './values.ts'

/**
 * The format of a scenario: one YAML file that says day by day what clients write and coaches do.
 *
 * ```yaml
 * title: Reach draws in over three weeks
 * practice: { zone: Europe/Lisbon, digest: "Sun 18:00", region: PT, window: 0, quote: on }
 * start: 2026-03-02            # day 1
 * days: 21
 * clients:
 *   - ref: heron               # letters, digits, hyphen
 *     zone: America/New_York   # the practice's where left out
 *     region: US
 *     prompt: "08:00"
 *     reminder: "19:00"        # none where left out
 *     off: [Sun]               # days without sessions
 *     side: left
 *     consent: yes
 *     hands: words             # never touches a button or form; buttons where left out
 *     screening: { onset: 2026-02-10, age: 41, baseline: { reach: calf, pain: 6 }, activities: { rowing: 7 } }
 *     plan: { sessions: 2, rungs: { extension: 1, glide: 1 } }
 *     answers: { comfort: yes, signs: none, side: same, settled: yes, barrier: time }
 *     days:
 *       1: "2 calf 6"                          # said 30 minutes after the prompt
 *       2: { at: "21:10", say: "did both, still calf, about a 5" }
 *       3: none                                # no reply
 *       4: { form: { sessions: 2, reach: knee, pain: 4, signs: [] } }   # signs: [] ticks "none of these"
 *       5-9: "2 knee 4"                        # the same each day; a day of its own beats a span
 *       10: [ "2 thigh 3", { after: 5m, say: "sorry, pain was 4" }, { after: 1m, edit: "2 thigh 4" } ]
 *       11: { at: "09:00", press: take-a-break }
 *       12: { at: "09:00", command: "/today" }
 *       13: { zone: Europe/Madrid, region: ES }   # travels
 * coach:                                       # at 12:00 where no time is given
 *   7: { decide: { client: heron, ladder: extension, do: advance } }
 *   8: { press: { client: heron, button: advance } }   # a button of the last message about heron that has it
 *   9: { at: "10:15", command: "/roster" }
 *   12: [ { at: "09:05", take-up: { client: heron, outcome: reached } } ]
 * faults:
 *   6: { at: "09:30", restart: kill }
 * expect:
 *   - { day: 4, to: "client:heron", kind: receipt, says: "calf|knee" }
 *   - { end: heron, status: active, direction: centralising }
 * ```
 *
 * A client's day n is their own local date start + n - 1, in the zone where they are that morning; a coach's, a
 * fault's and a coach's message's is the practice's. `after` counts from the item before it in the list, the first
 * from the prompt (of a coach: from 12:00). An expectation without `count` wants at least one message; `day` may be
 * a span like 8-12, and where it is left out any day will do. `says` is tried on the text without regard to case.
 * A form is the one under that day's prompt, or where no prompt came, one that the client asks for with /check-in.
 * `use: { name: check-in, fill: { sessions: "2", reach: calf, pain: "4" } }`, of a client or the coach, uses what stands
 * under the newest message that has a button or list of this name (`back: 1`: under the one before it), with the
 * `values` chosen from a list or what is filled into the form that opens; it needs the stand-in.
 * Enrolment, consent, screening and plan are played before anything else; `by-hand: yes` of a practice leaves out the
 * set-up, of a client all of these: they stand under the days then. For a client the run ends with their own
 * last local day.
 */

/** The kinds of values that a day's script may ask for without a time. */
export const DEFAULTS = { prompt: '08:00', coach: '12:00', replyMs: 30 * 60_000 } as const

const DIGEST = /^(Mon|Tue|Wed|Thu|Fri|Sat|Sun) ([01]\d|2[0-3]):[0-5]\d$/
const digest = z.custom<string>((value) => typeof value === 'string' && DIGEST.test(value), {
  error: wrong('weekday with a time', 'like "Sun 18:00"'),
})

const practice = keyed(
  {
    zone,
    digest: digest.default('Sun 18:00'),
    region: region.optional(),
    window: whole('window', 0, 60).default(0),
    quote: yesNo.default(true),
    'by-hand': yesNo.optional(),
  },
  'practice',
)

const hardness = z.record(text, whole('hardness', 0, 10), {
  error: wrong('activities', 'names with a number, like { rowing: 7 }'),
})
const screening = keyed(
  {
    onset: date.optional(),
    age: whole('age', 1, 120).default(40),
    baseline: keyed(
      { reach: reach.default('calf'), pain: whole('pain', 0, 10).default(5) },
      'baseline',
    ).prefault({}),
    earlier: oneOf('earlier episode', ['no', 'episode', 'surgery'] as const).default('no'),
    seen: yesNo.default(true),
    risks: listOf(oneOf('risk', RISKS), 'list of risks').default([]),
    known: listOf(sign, 'list of signs').default([]),
    signs: listOf(sign, 'list of signs').default([]),
    eases: oneOf('easing', ['flexion', 'extension', 'neither'] as const).default('extension'),
    activities: hardness.default({}),
    lift: text.optional(),
  },
  'screening',
)

const RUNGS = LADDERS.map((ladder) => ladder.id)
const rungs = z.partialRecord(oneOf('ladder', RUNGS), whole('rung', 1, 9), {
  error: wrong('rungs', 'ladders with a number, like { extension: 1 }'),
})
const plan = keyed({ sessions: whole('number of sessions', 1, 6).default(2), rungs }, 'plan')

const signAnswer = z
  .union([z.literal('none'), sign.transform((one) => [one]), listOf(sign, 'list of signs')], {
    error: wrong('answer to the signs', `none, or ids: ${SIGN_IDS.join(', ')}`),
  })
  .transform((given) => (given === 'none' ? [] : given))
const ANSWERS = {
  comfort: yesNo,
  signs: signAnswer,
  side: oneOf('answer to the side', ['same', 'other', 'both', 'left', 'right'] as const),
  settled: yesNo,
  barrier: oneOf('barrier', BARRIERS),
  sessions: whole('number of sessions', 0, 8),
  reach,
  pain: whole('pain', 0, 10),
}
const answers = keyed(ANSWERS, 'answers').partial()

/** Days by number or span; what stands under each is read on its own. */
const script = z.record(z.string(), z.unknown(), {
  error: wrong('days', 'days with what happens, like 1: "2 calf 4"'),
})

/** One client; the days are read on their own. */
export const clientSchema = keyed(
  {
    ref,
    zone: zone.optional(),
    region: region.optional(),
    language: oneOf('language', LANGUAGE_CODES).default('en'),
    prompt: clockTime.default(DEFAULTS.prompt),
    reminder: clockTime.optional(),
    off: listOf(weekday, 'list of weekdays').default([]),
    side: side.optional(),
    consent: yesNo.default(true),
    'by-hand': yesNo.optional(),
    hands: oneOf('way of answering', ['buttons', 'words'] as const).default('buttons'),
    screening: screening.prefault({}),
    plan: plan.optional(),
    answers: answers.default({}),
    days: script.default({}),
  },
  'client',
)

const CARES = ['none', 'soon', 'same-day', 'emergency'] as const
export const messageExpectation = keyed(
  {
    day: z.union([z.string(), z.number()]).transform(String).optional(),
    to: text,
    kind: oneOf('kind of message', MESSAGE_KINDS).optional(),
    about: ref.optional(),
    care: oneOf('level of care', CARES).optional(),
    says: pattern.optional(),
    within: duration.optional(),
    count: whole('count', 0, 100_000).optional(),
  },
  'expectation',
)
export const endExpectation = keyed(
  {
    end: ref,
    status: oneOf('status', STATUSES).optional(),
    direction: oneOf('direction', DIRECTIONS).optional(),
    proposal: oneOf('proposal', PROPOSALS).optional(),
  },
  'expectation',
)

/** The file as a whole; clients, what happens on single days and what is expected are read each on their own. */
export const scenarioSchema = keyed(
  {
    title: text.default(''),
    practice,
    start: date,
    days: whole('number of days', 1, 1000),
    clients: z
      .array(z.unknown(), { error: wrong('list of clients', 'a list of clients, each with a ref') })
      .min(1, { error: () => 'there is no client; allowed: one or more' }),
    coach: script.default({}),
    faults: script.default({}),
    expect: z.array(z.unknown(), { error: wrong('list of expectations', 'a list') }).default([]),
  },
  'scenario',
)
export type ClientFileEntry = z.infer<typeof clientSchema>
export type ScenarioFile = Omit<z.infer<typeof scenarioSchema>, 'clients'> & {
  readonly clients: readonly ClientFileEntry[]
}
