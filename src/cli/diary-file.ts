import { readFile } from 'node:fs/promises'
import type { Diary } from '../domain/history-csv/diary.ts'
import { UnreadableDiary } from '../domain/history-csv/diary.ts'
import { looksLikeJson } from '../domain/history-csv/from-json.ts'
import { readDiary } from '../domain/history-csv/history.ts'
import { diaryTexts, problemLine, unreadableLine } from '../text/en/diary.ts'
import type { Io } from './io.ts'

/**
 * The words typed, as read by the parser.
 * @throws Error in one sentence where they cannot be used
 */
export function typed<T>(parse: () => T): T {
  try {
    return parse()
  } catch (error) {
    throw new Error(diaryTexts.badOption((error as Error).message))
  }
}

/** @throws Error in one sentence where it is not one file */
export function oneOf([file, second]: readonly string[]): string {
  if (file === undefined || second !== undefined) throw new Error(diaryTexts.oneFile)
  return file
}

/** Null where there is no such file. */
async function textOf(file: string, io: Io): Promise<string | null> {
  if (file !== '-') return readFile(file, 'utf8').catch(() => null)
  const parts: Buffer[] = []
  for await (const part of io.stdin) parts.push(Buffer.from(part))
  return Buffer.concat(parts).toString('utf8')
}

/**
 * Reads a diary and names on standard error every row that cannot be right; null where the whole cannot be used, which
 * was said with the mend.
 */
export async function openDiary(file: string, io: Io): Promise<Diary | null> {
  const text = await textOf(file, io)
  if (text === null) {
    io.err(diaryTexts.noFile(file))
    return null
  }
  try {
    const diary = readDiary(text)
    const form = looksLikeJson(text) ? 'json' : 'csv'
    for (const problem of diary.problems) io.err(problemLine(problem, form))
    return diary
  } catch (error) {
    if (!(error instanceof UnreadableDiary)) throw error
    io.err(unreadableLine(error.why, error.detail))
    return null
  }
}
