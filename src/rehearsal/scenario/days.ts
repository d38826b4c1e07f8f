import type { Path } from './lines.ts'
import type { Findings } from './problem.ts'

export type Span = readonly [first: number, last: number]

const SPAN = /^(\d{1,4})(?:-(\d{1,4}))?$/

/** "7" or "5-9" as first and last day, where they lie inside the run; else the finding is kept. */
export function readSpan(
  text: string,
  days: number,
  findings: Findings,
  path: Path,
  key?: string,
): Span | null {
  const [, first, last] = SPAN.exec(text) ?? []
  const span: Span = [Number(first), Number(last ?? first)]
  const allowed = `1 to ${days}, or a span like 5-9`
  if (first === undefined) findings.add(path, `“${text}” is no day; allowed: ${allowed}`, key)
  else if (span[0] < 1 || span[1] > days)
    findings.add(path, `day ${text} lies outside the run; allowed: ${allowed}`, key)
  else if (span[1] < span[0]) findings.add(path, `the span ${text} runs backward; allowed: ${allowed}`, key)
  else return span
  return null
}

/** The entry of each day: a day of its own beats a span; two spans over one day are refused. */
export function spread(
  script: Readonly<Record<string, unknown>>,
  days: number,
  findings: Findings,
  path: Path,
): Map<number, string> {
  const keyOf = new Map<number, string>()
  const spans = Object.keys(script).flatMap((key) => {
    const span = readSpan(key, days, findings, path, key)
    return span ? [{ key, span }] : []
  })
  const wide = spans.filter(({ key }) => key.includes('-'))
  for (const { key, span } of wide) {
    const shared = wide.find((other) => other.key !== key && overlap(other.span, span))
    if (shared && wide.indexOf(shared) < wide.findIndex((one) => one.key === key))
      findings.add(path, `${shared.key} and ${key} share days; allowed: each day in one span`, key)
  }
  const single = spans.filter((one) => !wide.includes(one))
  for (const { key, span } of [...wide, ...single])
    for (let day = span[0]; day <= span[1]; day += 1) keyOf.set(day, key)
  return keyOf
}

const overlap = (a: Span, b: Span): boolean => a[0] <= b[1] && b[0] <= a[1]
