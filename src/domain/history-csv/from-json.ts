import { type Diary, FACTS, type Fact, UnreadableDiary } from './diary.ts'
import { readFacts } from './facts.ts'
import { type RowRead, readRow } from './row.ts'

type Fields = Readonly<Record<string, unknown>>

const isObject = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** A JSON value as the CSV cell that says the same, so that both are judged by the same reader. */
function cellOf(value: unknown, between: string): string {
  if (value === null || value === undefined) return ''
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  if (Array.isArray(value)) return value.map((part) => cellOf(part, between)).join(';')
  if (!isObject(value)) return String(value).trim()
  return Object.entries(value)
    .map(([key, part]) => `${key}:${cellOf(part, between)}`)
    .join(between)
}

function factText(fact: Fact, value: unknown): string {
  if (fact !== 'baseline' || !isObject(value)) return cellOf(value, ';')
  return [value.reach, value.pain]
    .map((part) => cellOf(part, ';'))
    .join(' ')
    .trim()
}

function readEntry(entry: unknown, line: number): RowRead {
  if (!isObject(entry)) return { row: null, problems: [{ line, what: 'entry', value: cellOf(entry, ';') }] }
  return readRow((column) => cellOf(entry[column], ';'), line)
}

/**
 * A diary from JSON: an object with the names of the CSV file,
 * `{"side": "left", "baseline": {"reach": "calf", "pain": 6}, "start": "2026-03-02", "known": ["bladder-change"],
 *   "days": [{"date": "2026-03-02", "sessions": 2, "planned": 2, "reach": "calf", "pain": 6, "signs": ["none"],
 *   "rungs": {"extension": 1}, "comfort": true, "settled": null, "filled": "2026-03-02", "cleared": [], "noted": []}]}`,
 * all but `days` and `date` optional. Lists and objects may also be written as in CSV ("calf 6",
 * "extension:1;glide:1"). `signs` empty or null was not said. Throws UnreadableDiary where it is no such object.
 */
export function diaryFromJson(text: string): Diary {
  let parsed: unknown
  try {
    parsed = JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch (error) {
    throw new UnreadableDiary('not-json', error instanceof Error ? error.message : '')
  }
  if (!isObject(parsed) || !Array.isArray(parsed.days)) throw new UnreadableDiary('no-days')
  const given = FACTS.map((fact) => ({ fact, text: factText(fact, (parsed as Fields)[fact]), line: 0 }))
  const { facts, problems } = readFacts(given)
  const read = parsed.days.map((entry: unknown, n: number) => readEntry(entry, n + 1))
  return {
    ...facts,
    rows: read.flatMap(({ row }) => row ?? []),
    problems: [...problems, ...read.flatMap((r) => r.problems)],
  }
}

/** JSON begins with a brace or bracket, CSV never does. */
export const looksLikeJson = (text: string): boolean => /^[\uFEFF\s]*[{[]/.test(text)
