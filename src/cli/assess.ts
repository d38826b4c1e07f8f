import { parseArgs } from 'node:util'
import { assessmentJson } from '../assessment-json.ts'
import { isDay } from '../domain/day.ts'
import { historyKnownOn, spanOf } from '../domain/history-csv/history.ts'
import { assess } from '../domain/rules/assess.ts'
import { assessmentLines, diaryTexts } from '../text/en/diary.ts'
import { oneOf, openDiary, typed } from './diary-file.ts'
import type { Io } from './io.ts'
import { orWrongUse } from './wrong-use.ts'

export const help = `Usage: ebb assess FILE [--on DATE] [--json]

Runs the shared rules over one client's diary and prints the assessment at the end of DATE
(default: the date of the last row). FILE is CSV or JSON, "-" reads standard input.

CSV: a header with any of date,sessions,planned,reach,pain,signs,note,rungs,comfort,settled,filled,cleared,noted;
an empty cell was not answered, a missing date is a day without reply. Above it, if wanted:
# side: left
# baseline: calf 6
# start: 2026-03-02
# known: bladder-change
JSON: {"side", "baseline", "start", "known", "days": [{"date", ...}]} with the same names.

A row filled in after DATE is not known on DATE.
Exit 0; 1 where rows could not be right (they are named, the rest is assessed); 2 for wrong use.`

interface Options {
  readonly file: string
  readonly on: string | undefined
  readonly json: boolean
}

/** @throws Error in one sentence where the words typed cannot be used */
function optionsOf(args: string[]): Options {
  const options = { on: { type: 'string' }, json: { type: 'boolean', default: false } } as const
  const { values, positionals } = typed(() => parseArgs({ args, allowPositionals: true, options }))
  const { on, json } = values
  if (on !== undefined && !isDay(on)) throw new Error(diaryTexts.badOn(on))
  return { file: oneOf(positionals), on, json }
}

/** `ebb assess`: see `help`. */
export async function run(args: string[], io: Io): Promise<number> {
  const options = orWrongUse(() => optionsOf(args), io, null)
  if (options === null) return 2
  const diary = await openDiary(options.file, io)
  if (diary === null) return 2
  const on = options.on ?? spanOf(diary)?.last
  const bad = diary.problems.length > 0
  if (on === undefined) {
    io.err(diaryTexts.noDay)
    return bad ? 1 : 2
  }
  const assessment = assess(historyKnownOn(diary)(on), on)
  if (options.json) io.out(JSON.stringify(assessmentJson(assessment)))
  else for (const line of assessmentLines(assessment)) io.out(line)
  return bad ? 1 : 0
}
