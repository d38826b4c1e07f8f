import { type Item, isBreak, isMark } from './items.ts'

export const isHour = (item: Item | undefined): boolean => item?.cue === 'dayPart' || item?.cue === 'now'

const TELLS_WHEN: readonly Item['cue'][] = ['dayPart', 'now', 'hour', 'times', 'clock']

/** The name of sessions beside a number, if any, and what tells its hour. */
function hourOf(items: readonly Item[], n: Item): { named: boolean; clock: Item | null } | null {
  const after = items.indexOf(n) + 1
  const named = items[after]?.cue === 'session'
  const at = after + Number(named)
  const { cue, text } = items[at] ?? { cue: 'mark', text: '' }
  // "1 at 7"
  const clock = cue === 'article' && items[at + 1]?.cue === 'num' ? items[at + 1]! : null
  const tells = TELLS_WHEN.includes(cue) || (cue === 'none' && text.includes(' ')) || clock !== null
  return tells ? { named, clock } : null
}

/** "one at 9 and the other at 5", the hours set aside by now: two of them. */
function oneAndOther(items: readonly Item[], planned: number): boolean {
  const at = items.findIndex(
    (other, i) =>
      other.cue === 'otherSide' &&
      (items[i - 1]?.cue === 'and' || isMark(items[i - 1], ',')) &&
      tellsHour(items[i - 2]) &&
      tellsHour(items[i + 1]) &&
      items[i - 3]?.cue === 'num' &&
      isBreak(items[i + 2]),
  )
  const one = items[at - 3]
  if (one?.value !== 1 || one.slot === 'pain' || planned < 2) return false
  one.value = 2
  one.slot = 'sessions'
  return true
}

const tellsHour = (item: Item | undefined): boolean =>
  item !== undefined && (TELLS_WHEN.includes(item.cue) || (item.cue === 'none' && item.text === ''))

const SMALL: readonly Item['cue'][] = ['article', 'be', 'was']

/** "pain 1 at 7 this morning" */
function isOfPain(items: readonly Item[], at: number): boolean {
  let before = at - 1
  while (SMALL.includes(items[before]?.cue ?? 'mark') || isMark(items[before], ':')) before -= 1
  return items[before]?.cue === 'pain' || items[before]?.cue === 'painLetter'
}

/** "1 this morning and 1 tonight", "two sessions before work and one after": together the sessions. */
export function addHours(items: readonly Item[], planned: number): void {
  const numbers = items.filter(
    (i, at) => i.cue === 'num' && !i.unread && !i.denied && i.slot !== 'pain' && !isOfPain(items, at),
  )
  if (numbers.length === 0) return
  const told = numbers.flatMap((n) => {
    const hour = hourOf(items, n)
    return hour ? [{ n, ...hour }] : []
  })
  const named = told.some((one) => one.named)
  const counted = told.filter(({ n }) => named || (n.value === 1 && n.slot === null))
  const [first, ...rest] = counted
  // "one this morning, none tonight": the none is of the other hour
  const none = items.find(
    (i) => i.cue === 'nothing' && !i.unread && !i.denied && isHour(items[items.indexOf(i) + 1]),
  )
  if (first && none) {
    none.unread = true
    first.n.slot = 'sessions'
  }
  if (oneAndOther(items, planned)) return
  const sum = counted.reduce((total, { n }) => total + n.value, 0)
  if (!first || rest.length === 0 || sum > planned) return
  first.n.value = sum
  first.n.slot = 'sessions'
  for (const { n } of rest) n.unread = true
  for (const { clock } of counted) if (clock) clock.unread = true
}
