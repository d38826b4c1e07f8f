import { parseArgs } from 'node:util'
import { DateTime } from 'luxon'
import { z } from 'zod'
import { isDay } from '../domain/day.ts'
import { readReply } from '../domain/reply/read.ts'
import { ASKS, type Reading } from '../domain/reply/reading.ts'
import { echo as echoEn } from '../text/en/echo.ts'
import { echo as echoEs } from '../text/es/echo.ts'
import type { Io } from './io.ts'
import { answerEach, BadLine, objectIn, takeEach } from './json-lines.ts'
import { emptyTally, scoreLine, type Tally, tally } from './parse-score.ts'
import { orWrongUse } from './wrong-use.ts'

export const help = `Usage: ebb parse [--score FILE]
Reads replies as JSON Lines from standard input, one object a line, and writes one object a line in the same order.
In:  {"id", "text", "planned": 2, "zone": "UTC", "now": ISO instant, "locale": "en", "asked": null, "promptDay"}
     All but "text" may be left out.
Out: {"id", "sessions", "reach", "pain", "day", "side", "signs", "denied", "care", "missing", "unsure", "intent", "others", "echo"}
A line that cannot be used gives {"error"} in its place.
--score FILE  reads replies that also state "expect" (fields of the output) and "part", and prints how many come out
              right, by part.`

const Line = z.object({
  id: z.unknown().optional(),
  text: z.string(),
  planned: z.number().int().min(0).max(20).default(2),
  zone: z.string().default('UTC'),
  now: z.string().nullish(),
  locale: z.string().default('en'),
  asked: z.enum(ASKS).nullish(),
  promptDay: z.string().refine(isDay, 'a date that exists, as 2026-03-04').nullish(),
  expect: z.record(z.string(), z.unknown()).optional(),
  part: z.string().optional(),
})
type Line = z.infer<typeof Line>

/** The last answer is kept: lines of one run mostly share instant and zone. */
let lastToday: { key: string; day: string } = { key: '', day: '' }

function localToday(now: string | null | undefined, zone: string): string {
  if (!now) return dayOf(DateTime.now().setZone(zone), zone, now)
  const key = `${now} ${zone}`
  if (lastToday.key !== key)
    lastToday = { key, day: dayOf(DateTime.fromISO(now, { setZone: true }).setZone(zone), zone, now) }
  return lastToday.day
}

function dayOf(at: DateTime, zone: string, now: string | null | undefined): string {
  const day = at.toISODate()
  if (day !== null) return day
  throw new BadLine(
    DateTime.utc().setZone(zone).isValid
      ? `now: "${now}" is no instant; write it as 2026-03-04T19:10:00Z`
      : `zone: "${zone}" is not known; write it as Europe/Oslo`,
  )
}

function read(line: Line): Reading {
  const today = localToday(line.now, line.zone)
  return readReply(line.text, {
    planned: line.planned,
    today,
    promptDay: line.promptDay ?? today,
    locale: line.locale,
    asked: line.asked ?? null,
  })
}

const echoIn = (locale: string) => (locale.toLowerCase().startsWith('es') ? echoEs : echoEn)

function output(line: Line, r: Reading): Record<string, unknown> {
  const { sessions, reach, pain, day, side, signs, denied, care, missing, unsure, intent, others } = r
  const fields = {
    sessions,
    reach,
    pain,
    day,
    side,
    signs,
    denied,
    care,
    missing,
    unsure,
    intent,
    others,
    echo: echoIn(line.locale)(r),
  }
  return line.id === undefined ? fields : { id: line.id, ...fields }
}

function answer(text: string): Record<string, unknown> {
  const line = objectIn(text, Line)
  return output(line, read(line))
}

const WHOLE = 'all'

/** Readings that differ from what the file states are listed, except those of a part set aside. */
async function score(file: string, io: Io): Promise<number> {
  const tallies = new Map<string, Tally>()
  const code = await takeEach(file, io, (text) => {
    const line = objectIn(text, Line)
    const part = line.part ?? WHOLE
    const sum = tallies.get(part) ?? emptyTally()
    tallies.set(part, sum)
    const reading = read(line)
    const given = { ...output(line, reading), answer: reading.answer }
    const wrong = tally(sum, line.expect ?? {}, given)
    if (wrong.length === 0 || line.part !== undefined) return
    const fields = Object.fromEntries(
      wrong.map((f) => [f, [line.expect?.[f] ?? null, given[f as keyof typeof given] ?? null]]),
    )
    io.err(JSON.stringify({ text: line.text, 'stated and read': fields }))
  })
  if (code !== 0) return code
  for (const [part, sum] of tallies) await io.out(JSON.stringify({ part, ...sum }))
  for (const [part, sum] of tallies) io.err(scoreLine(part, sum))
  return 0
}

/** @throws Error in one sentence where the words typed cannot be used */
const optionsOf = (args: string[]): { score?: string } =>
  parseArgs({ args, options: { score: { type: 'string' } } }).values

/** Exit code: 0 done, 1 the work failed, 2 wrong use. */
export async function run(args: string[], io: Io): Promise<number> {
  const options = orWrongUse(() => optionsOf(args), io, help)
  if (options === null) return 2
  if (options.score !== undefined) return score(options.score, io)
  await answerEach(io, answer)
  return 0
}
