import type { z } from 'zod'
import type { Path } from './lines.ts'
import type { Findings } from './problem.ts'

/** One thing that happens on a day, read and checked, with its time as it was written. */
export interface Item {
  /** The key that names what happens: say, press, decide, restart ... */
  readonly name: string
  /** What stands under the keys, checked. */
  readonly data: Readonly<Record<string, unknown>>
  readonly at: string | null
  readonly afterMs: number | null
  readonly path: Path
}

type Kinds = Readonly<Record<string, z.ZodType>>
interface Timing {
  readonly at?: string | undefined
  readonly after?: number | undefined
}

/** What stands under a day: one thing or a list. `words` makes a thing of bare text; null where text is not allowed. */
export function readItems(
  entry: unknown,
  path: Path,
  kinds: Kinds,
  words: string | null,
  findings: Findings,
): Item[] {
  if (entry === 'none' && words !== null) return []
  const list = Array.isArray(entry) ? entry : [entry]
  return list.flatMap((one: unknown, n) => {
    const place = Array.isArray(entry) ? [...path, n] : path
    const item = readItem(one, place, kinds, words, findings)
    return item ? [item] : []
  })
}

function readItem(
  one: unknown,
  path: Path,
  kinds: Kinds,
  words: string | null,
  findings: Findings,
): Item | null {
  const names = Object.keys(kinds)
  const allowed = names.join(', ')
  if (words !== null && ['string', 'number', 'boolean'].includes(typeof one))
    return { name: words, data: { [words]: String(one) }, at: null, afterMs: null, path }
  if (typeof one !== 'object' || one === null || Array.isArray(one)) {
    const forms = words === null ? `one of ${allowed}` : `words, none, or one of ${allowed}`
    findings.add(path, `${JSON.stringify(one)} says nothing that can happen; allowed: ${forms}`)
    return null
  }
  const given = names.filter((name) => Object.hasOwn(one, name))
  // a new zone may come with its region
  const [name, second] = given.includes('zone') ? given.filter((key) => key !== 'region') : given
  if (name === undefined) {
    nothing(one, path, names, findings)
    return null
  }
  if (second !== undefined) {
    findings.add(path, `${name} and ${second} stand together; allowed: one of ${allowed}`, second)
    return null
  }
  const data = findings.read(kinds[name]!, one, path) as (Record<string, unknown> & Timing) | null
  if (data === null) return null
  if (data.at !== undefined && data.after !== undefined)
    findings.add(path, 'at and after stand together; allowed: one of them', 'after')
  return { name, data, at: data.at ?? null, afterMs: data.after ?? null, path }
}

function nothing(one: object, path: Path, names: readonly string[], findings: Findings): void {
  const strange = Object.keys(one).find((key) => key !== 'at' && key !== 'after')
  const allowed = `at or after, with one of ${names.join(', ')}`
  if (strange === undefined) findings.add(path, `nothing happens here; allowed: ${allowed}`)
  else findings.add(path, `unknown key “${strange}”; allowed: ${allowed}`, strange)
}
