import { type Item, isMark, makeItem } from './items.ts'

/** The sessions of a day told in turn, each with a yes or no. */
interface Turn {
  readonly done: boolean
  readonly next: number
}

const YES: readonly Item['cue'][] = ['yes', 'done', 'did']
const NO: readonly Item['cue'][] = ['no', 'nope', 'nothing', 'missed', 'noSession']

/** "am", "the evening one", "session 2": how many items name the session, 0 where none does. */
function namedAt(items: readonly Item[], at: number): number {
  const cue = items[at]?.cue
  if (cue === 'session' && items[at + 1]?.cue === 'num') return 2
  if (cue !== 'dayPart' && cue !== 'oneSession') return 0
  return items[at + 1]?.cue === 'session' ? 2 : 1
}

/** "no evening", "did the morning one": the verb before the name. */
function turnBefore(items: readonly Item[], at: number): Turn | null {
  const cue = items[at]?.cue
  if (cue === undefined || !(YES.includes(cue) || NO.includes(cue))) return null
  const name = items[at + 1]?.cue === 'article' ? at + 2 : at + 1
  const named = namedAt(items, name)
  if (named === 0 || items[name]!.cue === 'session' || !endsTurn(items[name + named])) return null
  return { done: YES.includes(cue), next: afterJoints(items, name + named) }
}

const endsTurn = (item: Item | undefined): boolean =>
  item === undefined || item.cue === 'and' || isMark(item, ',.;+&/\n')

function afterJoints(items: readonly Item[], from: number): number {
  let next = from
  while (items[next] !== undefined && endsTurn(items[next])) next += 1
  return next
}

function turnAt(items: readonly Item[], at: number): Turn | null {
  const named = namedAt(items, at)
  if (named === 0) return null
  let told = at + named
  while (items[told]?.cue === 'be' || isMark(items[told], ':=-')) told += 1
  const cue = items[told]?.cue
  if (cue === undefined || !(YES.includes(cue) || NO.includes(cue))) return null
  return { done: YES.includes(cue), next: afterJoints(items, told + 1) }
}

/** "am yes pm no calf 4", "session one done session two missed": the number done stands in place of the turns. */
export function joinTurns(items: readonly Item[], planned: number): readonly Item[] {
  for (let at = 0; at < items.length; at++) {
    if (namedAt(items, at) === 0) continue
    const turns: Turn[] = []
    let from = at
    for (
      let turn = turnAt(items, from);
      turn !== null;
      turn = turnAt(items, from) ?? turnBefore(items, from)
    ) {
      turns.push(turn)
      from = turn.next
    }
    if (turns.length < 2 || turns.length > planned) continue
    const [first, last] = [items[at]!, items[from - 1]!]
    const done = turns.filter((turn) => turn.done).length
    const sum = makeItem('num', done, first.text, first.start, last.end, first.tight)
    sum.slot = 'sessions'
    const closing = isMark(last, ',.;\n') ? [last] : []
    return [...items.slice(0, at), sum, ...closing, ...items.slice(from)]
  }
  return items
}
