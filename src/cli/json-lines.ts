import { createReadStream } from 'node:fs'
import { createInterface } from 'node:readline'
import type { z } from 'zod'
import type { Io } from './io.ts'
import { unread } from './unread.ts'

/** A line that cannot be used; the message says what to write instead. */
export class BadLine extends Error {}

/** @throws BadLine where the line is no JSON or not of the shape */
export function objectIn<T>(line: string, shape: z.ZodType<T>): T {
  let json: unknown
  try {
    json = JSON.parse(line)
  } catch {
    throw new BadLine('not JSON: write one object a line, as {"text": "2 calf 4"}')
  }
  const parsed = shape.safeParse(json)
  if (parsed.success) return parsed.data
  const [issue] = parsed.error.issues
  throw new BadLine(`${issue?.path.join('.') || 'the line'}: ${issue?.message ?? 'not understood'}`)
}

/**
 * Answers each line of standard input in its place; one that cannot be used with {"error"} and its id, where it has
 * one. Readline pauses its input while this waits, so memory stays flat however long the input is.
 */
export async function answerEach(io: Io, answer: (line: string) => object): Promise<void> {
  for await (const line of linesOf(io.stdin)) if (line.trim() !== '') await io.out(answered(line, answer))
}

function answered(line: string, answer: (line: string) => object): string {
  try {
    return JSON.stringify(answer(line))
  } catch (error) {
    if (!(error instanceof BadLine)) throw error
    return JSON.stringify({ ...idIn(line), error: error.message })
  }
}

function idIn(line: string): { id?: unknown } {
  try {
    const json: unknown = JSON.parse(line)
    return json !== null && typeof json === 'object' && 'id' in json ? { id: json.id } : {}
  } catch {
    return {}
  }
}

/** Takes each line of a file. @returns 0 done, 1 a line cannot be used, 2 the file cannot be read; both are said */
export async function takeEach(file: string, io: Io, take: (line: string) => void): Promise<0 | 1 | 2> {
  let number = 0
  try {
    for await (const line of linesOf(createReadStream(file))) {
      number += 1
      if (line.trim() !== '') take(line)
    }
    return 0
  } catch (error) {
    const isOfLine = error instanceof BadLine
    io.err(isOfLine ? `${file}, line ${number}: ${error.message}` : unread('file', file, error))
    return isOfLine ? 1 : 2
  }
}

const linesOf = (input: NodeJS.ReadableStream) =>
  createInterface({ input, crlfDelay: Number.POSITIVE_INFINITY })
