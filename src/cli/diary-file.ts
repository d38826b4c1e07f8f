import { readFile } from 'node:fs/promises'
import type { Diary } from '../domain/history-csv/diary.ts'
import { UnreadableDiary } from '../domain/history-csv/diary.ts'
import { looksLikeJson } from '../domain/history-csv/from-json.ts'
import { readDiary } from '../domain/history-csv/history.ts'
import { diaryTexts, problemLine, unreadableLine } from '../text/en/diary.ts'
import type { Io } from './io.ts'

/** Wrong use: exit 2, the message names the mend. */
export class WrongUse extends Error {}

async function textOf(file: string, io: Io): Promise<string> {
  if (file !== '-') {
    return readFile(file, 'utf8').catch(() => {
      throw new WrongUse(diaryTexts.noFile(file))
    })
  }
  const parts: Buffer[] = []
  for await (const part of io.stdin) parts.push(Buffer.from(part))
  return Buffer.concat(parts).toString('utf8')
}

/** Reads a diary and names on standard error every row that cannot be right. Throws WrongUse. */
export async function openDiary(files: readonly string[], io: Io): Promise<Diary> {
  const [file, ...more] = files
  if (file === undefined || more.length > 0) throw new WrongUse(diaryTexts.oneFile)
  const text = await textOf(file, io)
  try {
    const diary = readDiary(text)
    const form = looksLikeJson(text) ? 'json' : 'csv'
    for (const problem of diary.problems) io.err(problemLine(problem, form))
    return diary
  } catch (error) {
    if (error instanceof UnreadableDiary) throw new WrongUse(unreadableLine(error.why, error.detail))
    throw error
  }
}

/** Runs a verb; wrong use ends in 2 with its message. */
export async function orWrongUse(io: Io, work: () => Promise<number>): Promise<number> {
  try {
    return await work()
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code ?? ''
    if (!(error instanceof WrongUse) && !code.startsWith('ERR_PARSE_ARGS')) throw error
    io.err(error instanceof WrongUse ? error.message : diaryTexts.badOption((error as Error).message))
    return 2
  }
}
