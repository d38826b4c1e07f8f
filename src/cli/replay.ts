import { parseArgs } from 'node:util'
import { historyKnownOn, spanOf } from '../domain/history-csv/history.ts'
import { replay } from '../domain/rules/replay.ts'
import { diaryTexts, replayLines } from '../text/en/diary.ts'
import { flagJson } from './assessment-json.ts'
import { openDiary, orWrongUse } from './diary-file.ts'
import type { Io } from './io.ts'

export const help = `Usage: ebb replay FILE [--json]

Plays a client's diary day by day, as if it had come in live: what each day raised, what was over, what was
proposed at its end. Days to come are never looked at, and a row filled in later is not known before.
FILE as for assess. Without --json only days on which something changed are shown.
Exit 0; 1 where rows could not be right (they are named, the rest is replayed); 2 for wrong use.`

/** `ebb replay`: see `help`. */
export function run(args: string[], io: Io): Promise<number> {
  return orWrongUse(io, async () => {
    const { values, positionals } = parseArgs({
      args,
      allowPositionals: true,
      options: { json: { type: 'boolean' } },
    })
    const diary = await openDiary(positionals, io)
    const span = spanOf(diary)
    const bad = diary.problems.length > 0
    if (span === null) {
      io.err(diaryTexts.noDay)
      return bad ? 1 : 2
    }
    let before = 'none'
    for (const day of replay(historyKnownOn(diary), span.first, span.last)) {
      if (values.json) io.out(JSON.stringify({ ...day, raised: day.raised.map(flagJson) }))
      else for (const line of replayLines(day, before)) io.out(line)
      before = day.proposal
    }
    return bad ? 1 : 0
  })
}
