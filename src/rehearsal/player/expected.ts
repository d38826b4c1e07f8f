import { addDays, daysBetween } from '../../domain/day.ts'
import type { EndExpectation, MessageExpectation, Script } from '../scenario/index.ts'
import type { ClientEnd } from './closing.ts'
import type { Line } from './log.ts'

export interface Checks {
  readonly passed: number
  /** Each with its line in the file, in words. */
  readonly failed: readonly string[]
}

/** Holds what a scenario expects against what came. What went wrong on the way fails too. */
export function check(
  script: Script,
  lines: readonly Line[],
  ends: readonly ClientEnd[],
  troubles: readonly string[],
): Checks {
  const results = script.expectations.map((one) =>
    one.of === 'end' ? checkEnd(one, ends) : checkMessages(one, lines, script),
  )
  const failed = results.flatMap((problem, n) =>
    problem ? [`${script.file}:${script.expectations[n]!.line}: ${problem}`] : [],
  )
  return { passed: results.length - failed.length, failed: [...failed, ...troubles] }
}

function checkMessages(want: MessageExpectation, lines: readonly Line[], script: Script): string | null {
  const found = lines.filter((line) => fits(want, line, script)).length
  const enough = want.count === null ? found > 0 : found === want.count
  if (enough) return null
  return `expected ${want.count ?? 'at least one'} ${described(want, script)}, found ${found}`
}

function fits(want: MessageExpectation, { message, sinceMs }: Line, { start }: Script): boolean {
  const n = daysBetween(start, message.day) + 1
  if (want.days && (n < want.days[0] || n > want.days[1])) return false
  if (want.to !== message.to) return false
  if (want.kind !== null && want.kind !== message.kind) return false
  if (want.about !== null && want.about !== message.about) return false
  if (want.care !== null && want.care !== message.care) return false
  if (want.says && !want.says.test(message.text)) return false
  return want.withinMs === null || (sinceMs !== null && sinceMs <= want.withinMs)
}

function described(
  { kind, to, about, care, days, says, withinMs }: MessageExpectation,
  { start }: Script,
): string {
  const dates = days ? [...new Set(days)].map((n) => `${n} (${addDays(start, n - 1)})`).join(' to ') : null
  return [
    kind ?? 'message',
    `to ${to}`,
    about ? `about ${about}` : '',
    care ? `of care ${care}` : '',
    dates ? `on day ${dates}` : '',
    says ? `that says /${says.source}/` : '',
    withinMs === null ? '' : `within ${withinMs / 1000} s`,
  ]
    .filter((part) => part !== '')
    .join(' ')
}

function checkEnd(want: EndExpectation, ends: readonly ClientEnd[]): string | null {
  const end = ends.find(({ ref }) => ref === want.ref)!
  const facts = {
    status: end.status,
    direction: end.assessment?.direction ?? null,
    proposal: end.assessment?.proposal ?? null,
  }
  const wrong = (['status', 'direction', 'proposal'] as const).filter(
    (fact) => want[fact] !== null && want[fact] !== facts[fact],
  )
  if (wrong.length === 0) return null
  return `expected of ${want.ref} at the end ${wrong.map((fact) => `${fact} ${want[fact]}, found ${facts[fact]}`).join('; ')}`
}
