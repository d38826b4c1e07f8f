import { z } from 'zod'
import { DRILL_SIDES, NEEDS } from './ladders.ts'
import { LADDER_IDS } from './plan.ts'

// A day's drills are read on a telephone, in one chat message where they fit.
const WORDS_AT_MOST = 400
// No drill may promise or name a condition.
const FORBIDDEN = /\b(safe(ly)?|all clear|diagnos\w*|cures?|guaranteed?)\b/i

const whole = (low: number, high: number) => {
  const message = `a whole number from ${low} to ${high} is needed`
  return z.int(message).min(low, message).max(high, message)
}
// What a chat would format, link or call somebody by, at the start of a line or anywhere; and what cannot be seen. The
// joiners of some scripts (U+200C, U+200D) are words.
const ACTIVE = /^(?:[#>]|-#|- )|[\\*_~`|<>[\]@]|:\/\/|(?![\u200c\u200d])\p{C}/u

const words = (most: number) =>
  z
    .string('words are needed')
    .overwrite((text) => text.replace(/\s+/g, ' ').trim())
    .min(1, 'words are needed')
    .max(most, `at most ${most} characters`)
    .refine((text) => !FORBIDDEN.test(text), 'say what to do; promise nothing and name no diagnosis')
    .refine(
      (text) => !ACTIVE.test(text),
      'plain words alone: no links, no @, none of * _ ~ ` | < > [ ] \\, and no # or - in front',
    )

/** An object whose unknown keys are answered with the known ones. */
const keyed = <Shape extends z.ZodRawShape>(shape: Shape) => {
  const known = Object.keys(shape).join(', ')
  return z.strictObject(shape, {
    error: ({ code }) =>
      code === 'unrecognized_keys' ? `not known here; known are ${known}` : `needs ${known}`,
  })
}

const Dose = keyed({
  reps: whole(1, 50),
  hold: whole(0, 600).default(0),
  ease: whole(0, 600).default(0),
  sets: whole(1, 10).default(1),
  times: whole(1, 6),
})

const Rung = keyed({
  name: words(60),
  how: words(300),
  dose: Dose,
  kit: z.array(words(30)).max(6, 'at most 6 things').default([]),
  needs: z.array(z.enum(NEEDS, `one of ${NEEDS.join(', ')}`)).default([]),
  side: z.enum(DRILL_SIDES, `one of ${DRILL_SIDES.join(', ')}`).default('none'),
  'load-percent': whole(1, 100).nullable().default(null),
  'least-days': whole(1, 60).nullable().default(null),
  cautions: words(150),
  'stop-if': words(150),
})
  .refine(({ kit, needs }) => !kit.some(isBand) || needs.includes('anchor-check'), {
    path: ['needs'],
    message: 'a drill with a band needs anchor-check',
  })
  .refine(
    (rung) =>
      [rung.name, ...rung.kit, rung.how, rung.cautions, rung['stop-if']].join(' ').length <= WORDS_AT_MOST,
    {
      message: `name, kit, how, cautions and stop-if together hold at most ${WORDS_AT_MOST} characters`,
    },
  )

const LadderEntry = keyed({
  id: z
    .string('an id is needed')
    .regex(/^[a-z][a-z0-9-]{1,29}$/, 'small letters, digits and hyphens, 2 to 30, a letter first')
    .refine(
      (id) => !(LADDER_IDS as readonly string[]).includes(id),
      'this id is one of the eight of the house; take another',
    ),
  // 1 to 8 are the ladders of the house
  number: whole(9, 99),
  name: words(40),
  rungs: z.array(Rung, 'a list of rungs is needed').min(1, 'at least one rung').max(12, 'at most 12 rungs'),
})
export type RungInFile = z.infer<typeof Rung>

const isBand = (kit: string): boolean => /\bbands?\b/i.test(kit)
export type LadderInFile = z.infer<typeof LadderEntry>

/** One ladder by itself. */
export const OneLadder = LadderEntry.transform((ladder) => [ladder])

// The platform offers at most 25 values of a choice, and eight are the house's.
const LADDERS_AT_MOST = 17

/** Several ladders under `ladders:`, each with an id and a number of its own. */
export const SeveralLadders = keyed({
  ladders: z
    .array(LadderEntry, 'a list of ladders is needed')
    .min(1, 'at least one ladder')
    .max(LADDERS_AT_MOST, `at most ${LADDERS_AT_MOST} ladders`),
})
  .superRefine(({ ladders }, context) => {
    ladders.forEach((ladder, n) => {
      for (const key of ['id', 'number'] as const)
        if (ladders.slice(0, n).some((other) => other[key] === ladder[key]))
          context.addIssue({
            code: 'custom',
            path: ['ladders', n, key],
            message: `${ladder[key]} is taken by a ladder above; take another`,
          })
    })
  })
  .transform(({ ladders }) => ladders)
