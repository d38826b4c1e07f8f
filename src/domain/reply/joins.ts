import { type Item, isMark, makeItem } from './items.ts'

/** A rule looks at the items from `at` on; it answers how many it takes and what stands in their place. */
type Join = (items: readonly Item[], at: number) => readonly [taken: number, instead: readonly Item[]] | null

/** Nothing is joined that does not start with one of these. */
const OPENS = new Set<Item['cue']>([
  ...([
    'num',
    'unitBefore',
    'clock',
    'dayUnit',
    'all',
    'change',
    'to',
    'between',
    'from',
    'atMost',
    'limit',
  ] as const),
  ...(['below', 'above', 'outOf'] as const),
])
const opens = (items: readonly Item[], at: number): boolean =>
  OPENS.has(items[at]!.cue) || (items[at + 1]?.cue === 'num' && items[at + 1]!.tight)

/** One pass from left to right; the first rule that fits wins. */
function rewrite(items: readonly Item[], joins: readonly Join[]): Item[] {
  const out: Item[] = []
  for (let at = 0; at < items.length; ) {
    const hit = opens(items, at) ? firstHit(items, at, joins) : null
    if (hit) out.push(...hit[1])
    else out.push(items[at]!)
    at += hit ? hit[0] : 1
  }
  return out
}

function firstHit(items: readonly Item[], at: number, joins: readonly Join[]): ReturnType<Join> {
  for (const join of joins) {
    const hit = join(items, at)
    if (hit) return hit
  }
  return null
}

const isNum = (item: Item | undefined): item is Item => item?.cue === 'num'

function merged(from: Item, to: Item, value: number, more: Partial<Item> = {}): Item {
  return { ...makeItem('num', value, from.text, from.start, to.end, from.tight), ...more }
}

const skipped = (items: readonly Item[], from: number, to: number): Item =>
  makeItem('none', 0, '', items[from]!.start, items[to]!.end, items[from]!.tight)

/** "four point five" */
const decimal: Join = (items, at) => {
  const a = items[at]
  const point = items[at + 1]
  const b = items[at + 2]
  if (!isNum(a) || point?.cue !== 'point' || !isNum(b) || b.value > 9) return null
  return [3, [merged(a, b, a.value + b.value / 10)]]
}

/** "4,5" as written on the continent; only after a name, since "2,5" may be two numbers. */
const decimalComma: Join = (items, at) => {
  const a = items[at]
  const comma = items[at + 1]
  const b = items[at + 2]
  if (!isNum(a) || !isMark(comma, ',') || !comma!.tight || !isNum(b) || !b.tight || b.text !== '5')
    return null
  const named = ['pain', 'be', 'article', 'zone', 'painLetter', 'was'].includes(items[at - 1]?.cue ?? '')
  return named ? [3, [merged(a, b, a.value + 0.5)]] : null
}

/** "4 and a half", "four-and-a-half", "4 1/2" is left to its parts. */
const andHalf: Join = (items, at) => {
  const a = items[at]
  if (!isNum(a)) return null
  let next = at + 1
  if (isMark(items[next], '-')) next += 1
  if (items[next]?.cue !== 'and') return null
  next += isMark(items[next + 1], '-') ? 2 : 1
  if (items[next]?.cue === 'article') next += 1
  const half = items[next]
  return half?.cue === 'half' ? [next - at + 1, [merged(a, half, a.value + 0.5)]] : null
}

/** Digits glued to letters that are no name of ours ("gr8", "b4", "2day"), and vertebrae ("L5/S1"). */
const glued: Join = (items, at) => {
  const a = items[at]
  const b = items[at + 1]
  if (!a || !b?.tight) return null
  if (a.cue === 'unitBefore' && isNum(b)) return vertebra(items, at)
  const c = items[at + 2]
  if (isNum(a) && b.cue === 'sessionLetter' && isNum(c) && c.tight) return [3, [skipped(items, at, at + 2)]]
  if ((a.cue === 'word' || a.cue === 'unit') && isNum(b)) return [2, [skipped(items, at, at + 1)]]
  if (isNum(a) && b.cue === 'word') return [2, [skipped(items, at, at + 1)]]
  return null
}

function vertebra(items: readonly Item[], at: number): ReturnType<Join> {
  let end = at + 1
  while (
    isMark(items[end + 1], '/-') &&
    items[end + 2]?.cue !== 'num' &&
    isNum(items[end + 3]) &&
    items[end + 3]!.tight
  )
    end += 3
  while (isMark(items[end + 1], '/-') && isNum(items[end + 2]) && items[end + 2]!.tight) end += 2
  if (items[end + 1]?.cue === 'sessionLetter' && items[end + 2]?.tight && items[end + 2]?.value === 1)
    end += 2
  return [end - at + 1, [skipped(items, at, end)]]
}

/** "21:10", "7.30am", "at 7 o'clock", "20 minutes", "week 3", "3rd": numbers of another kind. */
const foreign: Join = (items, at) => {
  const a = items[at]
  const b = items[at + 1]
  const c = items[at + 2]
  if (isNum(a) && isMark(b, ':') && b!.tight && isNum(c) && c.tight && c.text.length === 2) {
    const more = items[at + 3]?.cue === 'unit' || items[at + 3]?.cue === 'dayPart' ? 1 : 0
    return [3 + more, [skipped(items, at, at + 2 + more)]]
  }
  if (isNum(a) && b?.cue === 'setsOf' && isNum(c)) return [3, [skipped(items, at, at + 2)]]
  if (isNum(a) && b?.cue === 'setsOf') return [2, [skipped(items, at, at + 1)]]
  if (isNum(a) && b?.cue === 'dayPart' && b.tight) return [2, [skipped(items, at, at + 1), b]]
  if (
    isNum(a) &&
    (b?.cue === 'unit' ||
      b?.cue === 'dayUnit' ||
      b?.cue === 'percent' ||
      (b?.cue === 'unitBefore' && !isNum(c)))
  )
    return [2, [skipped(items, at, at + 1)]]
  if (isNum(a) && isMark(b, '-') && b!.tight && c?.cue === 'unit') return [3, [skipped(items, at, at + 2)]]
  if (a?.cue === 'unitBefore' || a?.cue === 'clock' || a?.cue === 'dayUnit') return afterName(items, at)
  return null
}

/** The number after "week" or "woke at", small words and a scale's top included. */
function afterName(items: readonly Item[], at: number): ReturnType<Join> {
  let end = at + 1
  while (['article', 'be', 'soft', 'inside'].includes(items[end]?.cue ?? '') || isMark(items[end], ':='))
    end += 1
  if (!isNum(items[end])) return null
  if ((isMark(items[end + 1], '/') || items[end + 1]?.cue === 'outOf') && isNum(items[end + 2])) end += 2
  return [end - at + 1, [skipped(items, at, end)]]
}

/** "8 out of 10", "4/10", "2 of 2": the number below tells what is counted. */
const outOf =
  (planned: number): Join =>
  (items, at) => {
    const a = items[at]
    const of = items[at + 1]
    const top = items[at + 2]
    if (!isNum(a) || !isNum(top)) return null
    const slash = isMark(of, '/')
    if (!slash && of?.cue !== 'outOf') return null
    if (slash && (isMark(items[at - 1], '/') || isMark(items[at + 3], '/'))) return null
    if (top.value === 10) return [3, [merged(a, top, a.value, { slot: 'pain' })]]
    if (items[at + 3]?.cue === 'session' || (top.value === planned && planned > 0))
      return [3, [merged(a, top, a.value, { slot: 'sessions' })]]
    // in "2/4" the second may be the pain; on any other scale ("4 of 5") nothing can be told
    if (slash && a.value <= planned && top.value > planned) return null
    return [3, [merged(a, top, a.value, { unsure: true })]]
  }

const joiner = (item: Item | undefined): boolean =>
  item?.cue === 'to' || item?.cue === 'or' || item?.cue === 'maybe' || isMark(item, '-~')

/** "4-5", "4 or 5", "between 4 and 5", "4, maybe 5": the worse end, known to be a range. */
const range: Join = (items, at) => {
  const opened = items[at]?.cue === 'between' || items[at]?.cue === 'from' ? 1 : 0
  const a = items[at + opened]
  if (!isNum(a) || a.slot === 'sessions') return null
  let next = at + opened + 1
  if (isMark(items[next], ',') && items[next + 1]?.cue === 'maybe') next += 1
  const joins = joiner(items[next]) || (opened === 1 && items[next]?.cue === 'and')
  if (!joins) return null
  const descends = items[next]!.cue === 'to' && opened === 1
  next += 1
  while (items[next]?.cue === 'article') next += 1
  const b = items[next]
  if (!isNum(b)) return null
  const slot = b.slot ?? a.slot
  const falls = descends && b.value < a.value
  return [
    next - at + 1,
    [merged(items[at]!, b, Math.max(a.value, b.value), { slot, range: true, unsure: falls })],
  ]
}

/** "down from 6 to 4", "6 -> 4": a change, and its end is the value. */
const change: Join = (items, at) => {
  const first = items[at]
  if (first?.cue === 'change' && isNum(items[at + 1])) {
    const a = items[at + 1]!
    const b = items[at + 3]
    if (items[at + 2]?.cue === 'to' && isNum(b))
      return [
        4,
        [
          merged(first, b, b.value, {
            slot: b.slot ?? a.slot ?? (items[at + 4]?.cue === 'session' ? null : 'pain'),
          }),
        ],
      ]
    return [2, [skipped(items, at, at + 1)]]
  }
  if (!isNum(first)) return null
  const arrow = isMark(items[at + 1], '→')
    ? 1
    : isMark(items[at + 1], '-') && isMark(items[at + 2], '>')
      ? 2
      : 0
  const b = items[at + 1 + arrow]
  return arrow > 0 && isNum(b) ? [2 + arrow, [merged(first, b, b.value, { slot: b.slot ?? 'pain' })]] : null
}

/** "down to 4 from 6" */
const changeBack: Join = (items, at) => {
  const to = items[at]
  const b = items[at + 1]
  const from = items[at + 2]
  const a = items[at + 3]
  if (to?.cue !== 'to' || !isNum(b) || from?.cue !== 'from' || !isNum(a)) return null
  return [4, [merged(to, a, b.value, { slot: b.slot })]]
}

/** "no more than 4" is 4; "less than 4" and "over 4" are asked back. */
const bound: Join = (items, at) => {
  const a = items[at]!
  const next = items[at + 1]?.cue === 'article' ? at + 2 : at + 1
  const b = items[next]
  if (!isNum(b)) return null
  const taken = next - at + 1
  if (a.cue === 'atMost') return [taken, [merged(a, b, b.value, { slot: b.slot ?? 'pain', range: b.range })]]
  const open = a.cue === 'limit' || a.cue === 'below' || a.cue === 'above'
  if (open || (a.cue === 'outOf' && !isNum(items[at - 1])))
    return [taken, [merged(a, b, b.value, { slot: b.slot, unsure: true })]]
  return null
}

/** A number before a word that is none of ours counts something else ("2 dogs"). */
const counted: Join = (items, at) => {
  const a = items[at]
  const b = items[at + 1]
  return isNum(a) && a.slot === null && b?.cue === 'word' && b.text.length > 1
    ? [1, [{ ...a, unread: true }]]
    : null
}

/** "all 3" */
const allOf: Join = (items, at) => {
  const all = items[at]
  const n = items[at + 1]
  const next = items[at + 2]
  if (all?.cue !== 'all' || !isNum(n) || n.slot !== null || next?.cue === 'outOf') return null
  return [2, [merged(all, n, n.value, { slot: 'sessions' })]]
}

/** Numbers as they are meant: decimals, scales, ranges and changes joined, numbers of other things set aside. */
export function joinNumbers(items: readonly Item[], planned: number): Item[] {
  if (!items.some(isNum)) return [...items]
  const parts = rewrite(items, [glued, decimal, decimalComma, andHalf])
  const own = rewrite(parts, [foreign])
  const scaled = rewrite(own, [outOf(planned)])
  return rewrite(rewrite(scaled, [change, changeBack, range]), [bound, allOf, counted])
}
