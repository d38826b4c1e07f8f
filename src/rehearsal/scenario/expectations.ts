import { readSpan } from './days.ts'
import { endExpectation, messageExpectation, type ScenarioFile } from './format.ts'
import type { Path } from './lines.ts'
import type { Findings } from './problem.ts'
import type { EndExpectation, Expectation, MessageExpectation } from './script.ts'

/** The expectations of a scenario, each with its line. */
export function readExpectations(file: ScenarioFile, findings: Findings): Expectation[] {
  const refs = file.clients.map((client) => client.ref)
  return file.expect.flatMap((one, n): Expectation[] => {
    const path: Path = ['expect', n]
    const isEnd = typeof one === 'object' && one !== null && Object.hasOwn(one, 'end')
    const read = isEnd ? ofEnd(one, path, refs, findings) : ofMessages(one, path, refs, file.days, findings)
    return read ? [read] : []
  })
}

function known(ref: string, refs: readonly string[], findings: Findings, path: Path, key: string): boolean {
  if (refs.includes(ref)) return true
  findings.add(path, `there is no client “${ref}”; allowed: ${refs.join(', ')}`, key)
  return false
}

function ofEnd(one: unknown, path: Path, refs: readonly string[], findings: Findings): EndExpectation | null {
  const read = findings.read(endExpectation, one, path)
  if (!read || !known(read.end, refs, findings, path, 'end')) return null
  return {
    of: 'end',
    line: findings.lined.lineOf(path),
    ref: read.end,
    status: read.status ?? null,
    direction: read.direction ?? null,
    proposal: read.proposal ?? null,
  }
}

function ofMessages(
  one: unknown,
  path: Path,
  refs: readonly string[],
  days: number,
  findings: Findings,
): MessageExpectation | null {
  const read = findings.read(messageExpectation, one, path)
  if (!read) return null
  const [, ref] = /^client:(.+)$/.exec(read.to) ?? []
  if (ref !== undefined) {
    if (!known(ref, refs, findings, path, 'to')) return null
  } else if (read.to !== 'coach' && read.to !== 'alerts') {
    findings.add(path, `“${read.to}” is nobody; allowed: client:ALIAS, coach, alerts`, 'to')
    return null
  }
  if (read.about !== undefined && !known(read.about, refs, findings, path, 'about')) return null
  const span = read.day === undefined ? null : readSpan(read.day, days, findings, path, 'day')
  if (read.day !== undefined && !span) return null
  return {
    of: 'messages',
    line: findings.lined.lineOf(path),
    days: span,
    to: read.to,
    kind: read.kind ?? null,
    about: read.about ?? null,
    care: read.care ?? null,
    says: read.says ?? null,
    withinMs: read.within ?? null,
    count: read.count ?? null,
  }
}
