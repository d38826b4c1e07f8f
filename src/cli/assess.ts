import { parseArgs } from 'node:util'
import { isDay } from '../domain/day.ts'
import { historyKnownOn, spanOf } from '../domain/history-csv/history.ts'
import { assess } from '../domain/rules/assess.ts'
import { assessmentLines, diaryTexts } from '../text/en/diary.ts'
import { assessmentJson } from './assessment-json.ts'
import { openDiary, orWrongUse, WrongUse } from './diary-file.ts'
import type { Io } from './io.ts'

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

/** `ebb assess`: see `help`. */
export function run(args: string[], io: Io): Promise<number> {
  return orWrongUse(io, async () => {
    const { values, positionals } = parseArgs({
      args,
      allowPositionals: true,
      options: { on: { type: 'string' }, json: { type: 'boolean' } },
    })
    if (values.on !== undefined && !isDay(values.on)) throw new WrongUse(diaryTexts.badOn(values.on))
    const diary = await openDiary(positionals, io)
    const on = values.on ?? spanOf(diary)?.last
    const bad = diary.problems.length > 0
    if (on === undefined) {
      io.err(diaryTexts.noDay)
      return bad ? 1 : 2
    }
    const assessment = assess(historyKnownOn(diary)(on), on)
    if (values.json) io.out(JSON.stringify(assessmentJson(assessment)))
    else for (const line of assessmentLines(assessment)) io.out(line)
    return bad ? 1 : 0
  })
}
