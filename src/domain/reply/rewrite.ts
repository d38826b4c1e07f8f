import { type Item, makeItem } from './items.ts'

/** A rule looks at the items from `at` on; it answers how many it takes and what stands in their place. */
export type Join = (
  items: readonly Item[],
  at: number,
  planned: number,
) => readonly [taken: number, instead: readonly Item[]] | null

/** Nothing is joined that does not start with one of these. */
const OPENS = new Set<Item['cue']>([
  ...([
    'num',
    'unitBefore',
    'notYet',
    'clock',
    'dayUnit',
    'all',
    'change',
    'to',
    'between',
    'from',
    'atMost',
    'limit',
    'hour',
    'session',
    'unit',
    'none',
  ] as const),
  ...(['below', 'above', 'outOf'] as const),
])
const opens = (items: readonly Item[], at: number): boolean =>
  OPENS.has(items[at]!.cue) || (items[at + 1]?.cue === 'num' && items[at + 1]!.tight)

/** One pass from left to right; the first rule that fits wins. What no rule touches is given back as it is. */
export function rewrite(items: readonly Item[], joins: readonly Join[], planned: number): readonly Item[] {
  let out: Item[] | null = null
  for (let at = 0; at < items.length; ) {
    const hit = opens(items, at) ? firstHit(items, at, joins, planned) : null
    if (hit) {
      out ??= items.slice(0, at)
      out.push(...hit[1])
    } else out?.push(items[at]!)
    at += hit ? hit[0] : 1
  }
  return out ?? items
}

function firstHit(
  items: readonly Item[],
  at: number,
  joins: readonly Join[],
  planned: number,
): ReturnType<Join> {
  for (const join of joins) {
    const hit = join(items, at, planned)
    if (hit) return hit
  }
  return null
}

export const isNum = (item: Item | undefined): item is Item => item?.cue === 'num'

export function merged(from: Item, to: Item, value: number, more: Partial<Item> = {}): Item {
  return Object.assign(makeItem('num', value, from.text, from.start, to.end, from.tight), more)
}

export const skipped = (items: readonly Item[], from: number, to: number): Item =>
  makeItem('none', 0, '', items[from]!.start, items[to]!.end, items[from]!.tight)
