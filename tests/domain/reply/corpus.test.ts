import { readFileSync } from 'node:fs'
import { afterAll, describe, expect, it } from 'vitest'
import { emptyTally, scoreLine, tally } from '../../../src/cli/parse-score.ts'
import { dayAt } from '../../../src/domain/local-time.ts'
import { readReply } from '../../../src/domain/reply/read.ts'
import type { Ask } from '../../../src/domain/reply/reading.ts'

interface Line {
  readonly locale?: string
  readonly text: string
  readonly planned?: number
  readonly asked?: Ask
  readonly now?: string
  readonly zone?: string
  readonly promptDay?: string
  readonly expect: Record<string, unknown>
  readonly part?: 'kept'
}

/** Goals on replies not used while the reader was built, in percent of slots. */
const RIGHT = 97
const SILENT = 0.5

const linesOf = (language: string): Line[] =>
  readFileSync(new URL(`corpus/${language}.jsonl`, import.meta.url), 'utf8')
    .trim()
    .split('\n')
    .map((line): Line => JSON.parse(line) as Line)

const read = (line: Line) => {
  const today = dayAt(new Date(line.now ?? '2026-03-04T19:10:00Z'), line.zone ?? 'UTC')
  return readReply(line.text, {
    planned: line.planned ?? 2,
    today,
    promptDay: line.promptDay ?? today,
    locale: line.locale ?? 'en',
    asked: line.asked ?? null,
  })
}

describe('corpus of replies', () => {
  const printed: string[] = []
  afterAll(() => console.log(printed.join('\n')))

  it.each([
    ['en', 'seen while tuning', 300],
    ['en', 'set aside', 300],
    ['es', 'seen while tuning', 190],
    ['es', 'set aside', 90],
  ])('%s, %s', (language, part, least) => {
    const sum = emptyTally()
    for (const line of linesOf(language)) {
      if ((line.part === 'kept') !== (part === 'set aside')) continue
      tally(sum, line.expect, read(line) as unknown as Record<string, unknown>)
    }
    printed.push(scoreLine(`${language}, ${part}`, sum))
    expect(sum.replies).toBeGreaterThan(least)
    expect((100 * sum.slotsRight) / sum.slots).toBeGreaterThanOrEqual(RIGHT)
    expect((100 * sum.silent) / sum.slots).toBeLessThanOrEqual(SILENT)
  })
})
