import { parseArgs } from 'node:util'
import { z } from 'zod'
import { isSignId, type SignId } from '../domain/signs/catalogue.ts'
import { type Expectation, type Score, score } from '../domain/signs/score.ts'
import { screen } from '../domain/signs/screen.ts'
import type { Io } from './io.ts'
import { answerEach, objectIn, takeEach } from './json-lines.ts'
import { orWrongUse } from './wrong-use.ts'

export const help = `Usage: ebb screen [--locale LOCALE] [--score FILE]
Looks for urgent signs in texts: JSON Lines from standard input, one object a line, one object out in the same order.
In:  {"id", "text", "locale": "en"}   (all but "text" may be left out)
Out: {"id", "signs", "denied", "care", "unsure", "evidence": [{"sign", "words", "negated"}]}
A line that cannot be used gives {"error"} in its place.
--locale LOCALE  the language of lines that name none ("en" where it is left out)
--score FILE  reads texts that also state "signs", "denied", "ask" and "part", and prints by part how many signs are
              caught and how many texts without one are left alone.`

const Text = z.object({
  id: z.unknown().optional(),
  text: z.string(),
  locale: z.string().optional(),
})

const signId = z.string().refine((id): id is SignId => isSignId(id), 'no sign of the catalogue')
const Expected = z.object({
  text: z.string(),
  locale: z.string().optional(),
  signs: z.array(signId),
  denied: z.array(z.union([z.literal('all'), signId])).default([]),
  ask: z.boolean().default(false),
  part: z.string().default('all'),
})

function answer(line: string, locale: string): Record<string, unknown> {
  const { id, text, locale: own } = objectIn(line, Text)
  const screening = screen(text, own ?? locale)
  return id === undefined ? { ...screening } : { id, ...screening }
}

const share = (part: number, whole: number): number | null =>
  whole === 0 ? null : Math.round((part / whole) * 1000) / 1000

function figures(part: string, { texts, emergency, otherSigns, signless, denials, wrong }: Score) {
  return {
    part,
    texts,
    emergency: { ...emergency, share: share(emergency.caught, emergency.of) },
    otherSigns: { ...otherSigns, share: share(otherSigns.caught, otherSigns.of) },
    signless: {
      ...signless,
      aloneShare: share(signless.alone, signless.of),
      askedShare: share(signless.asked, signless.of),
    },
    denials: { ...denials, share: share(denials.found, denials.of) },
    wrong: wrong.length,
  }
}

async function scoreFile(file: string, io: Io, locale: string): Promise<number> {
  const parts = new Map<string, (Expectation & { locale: string })[]>()
  const code = await takeEach(file, io, (line) => {
    const { part, locale: own = locale, ...expected } = objectIn(line, Expected)
    parts.set(part, [...(parts.get(part) ?? []), { ...expected, locale: own }])
  })
  if (code !== 0) return code
  for (const [part, texts] of parts)
    io.out(
      JSON.stringify(
        figures(
          part,
          score(texts, (text, each) => screen(text, each.locale)),
        ),
      ),
    )
  return 0
}

/** @throws Error in one sentence where the words typed cannot be used */
function optionsOf(args: string[]): { file: string | undefined; locale: string } {
  const { values } = parseArgs({
    args,
    options: { score: { type: 'string' }, locale: { type: 'string', default: 'en' } },
  })
  return { file: values.score, locale: values.locale }
}

/** Exit 0 done, 1 the file to score is broken, 2 wrong use. */
export async function run(args: string[], io: Io): Promise<number> {
  const options = orWrongUse(() => optionsOf(args), io, help)
  if (options === null) return 2
  const { file, locale } = options
  if (file !== undefined) return scoreFile(file, io, locale)
  await answerEach(io, (line) => answer(line, locale))
  return 0
}
