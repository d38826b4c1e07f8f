import type { ClassSet } from './class-set.ts'
import type { Compiled } from './compile.ts'
import { BREAK, FARTHEST, NOWHERE, type Unit } from './units.ts'

/** Another person owns what follows until the writer speaks of themselves again. */
export function otherPerson(
  units: readonly Unit[],
  { cue }: Compiled,
  anywhere: ClassSet,
  isWrittenFor: boolean,
): Uint8Array {
  if (!anywhere.has(cue.person) && !anywhere.has(cue.third)) return NOWHERE
  const other = new Uint8Array(units.length)
  let owner = 0
  let wasOther = false
  for (let i = 0; i < units.length; i++) {
    const { entry } = units[i]!
    const { gap } = units[i]!
    if (gap === BREAK.sentence) owner = 0
    if (gap === BREAK.comma && owner === 2) owner = 1
    if (entry.has(cue.and) && owner === 2 && turnsToMe(units, i, cue)) owner = 1
    // whoever writes for the client calls them "she"
    const isClient = entry.has(cue.me) || (isWrittenFor && entry.has(cue.third))
    if (isClient && !units[i + 1]?.entry.has(cue.person)) {
      owner = 0
      wasOther = false
    } else if (entry.has(cue.report)) owner = 0
    // "my dad had this and now it takes ages": it may be the writer's turn
    else if (entry.has(cue['my-turn'])) owner = Math.min(owner, 1)
    else if (entry.has(cue.person)) {
      owner = isLikened(units, i, cue.like) ? 0 : isAside(units, i, cue) ? 1 : 2
      wasOther = true
    } else if (entry.has(cue.third) && (wasOther || i === 0 || gap !== BREAK.none)) owner = 2
    other[i] = owner
  }
  return other
}

/** "my dad had cancer and numb when I wipe", "my dad is fine and ...": what follows may be the writer's. */
function turnsToMe(
  units: readonly Unit[],
  and: number,
  { me, third, person, fine, finding, thing, verb, cant }: Compiled['cue'],
): boolean {
  if (units[and - 1]!.entry.has(fine)) return true
  const first = units[and + 1]
  // "... and numb down there" leaves out whose it is; "... and couldn't pee" goes on about the other
  const isBare =
    first !== undefined &&
    (first.entry.has(finding) || first.entry.has(thing)) &&
    !first.entry.has(verb) &&
    !first.entry.has(cant)
  let isMine = false
  for (let i = and + 1; i < units.length && i - and < FARTHEST && units[i]!.gap === BREAK.none; i++) {
    const { entry } = units[i]!
    if (entry.has(third) || entry.has(person)) return false
    isMine ||= entry.has(me)
  }
  return isMine || isBare
}

/** "I carried the dog upstairs", "can't feel my partner": the writer leads the phrase, the other only comes into it. */
function isAside(units: readonly Unit[], person: number, { me, cant }: Compiled['cue']): boolean {
  for (let i = person; i > 0 && person - i < FARTHEST; i--) {
    if (units[i]!.gap !== BREAK.none) return false
    const { entry, gap } = units[i - 1]!
    if (i - 1 < person - 1 && entry.has(me)) return true
    if (entry.has(cant) && (i === 1 || gap !== BREAK.none)) return true
  }
  return false
}

const isLikened = (units: readonly Unit[], i: number, like: number): boolean =>
  [1, 2].some((back) => units[i - back]?.entry.has(like) === true)
