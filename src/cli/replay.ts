import { parseArgs } from 'node:util'
import { flagJson } from '../assessment-json.ts'
import { historyKnownOn, spanOf } from '../domain/history-csv/history.ts'
import { replay } from '../domain/rules/replay.ts'
import { diaryTexts, replayLines } from '../text/en/diary.ts'
import { oneOf, openDiary, typed } from './diary-file.ts'
import type { Io } from './io.ts'
import { orWrongUse } from './wrong-use.ts'

export const help = `Usage: ebb replay FILE [--json]

Plays a client's diary day by day, as if it had come in live: what each day raised, what was over, what was
proposed at its end. Days to come are never looked at, and a row filled in later is not known before.
FILE as for assess. Without --json only days on which something changed are shown.
Exit 0; 1 where rows could not be right (they are named, the rest is replayed); 2 for wrong use.`

/** @throws Error in one sentence where the words typed cannot be used */
function optionsOf(args: string[]): { file: string; json: boolean } {
  const options = { json: { type: 'boolean', default: false } } as const
  const { values, positionals } = typed(() => parseArgs({ args, allowPositionals: true, options }))
  return { file: oneOf(positionals), json: values.json }
}

/** `ebb replay`: see `help`. */
export async function run(args: string[], io: Io): Promise<number> {
  const options = orWrongUse(() => optionsOf(args), io, null)
  if (options === null) return 2
  const diary = await openDiary(options.file, io)
  if (diary === null) return 2
  const span = spanOf(diary)
  const bad = diary.problems.length > 0
  if (span === null) {
    io.err(diaryTexts.noDay)
    return bad ? 1 : 2
  }
  let before = 'none'
  for (const day of replay(historyKnownOn(diary), span.first, span.last)) {
    if (options.json) io.out(JSON.stringify({ ...day, raised: day.raised.map(flagJson) }))
    else for (const line of replayLines(day, before)) io.out(line)
    before = day.proposal
  }
  return bad ? 1 : 0
}
