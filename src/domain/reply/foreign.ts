import { type Item, isBreak, isMark, makeItem } from './items.ts'
import type { Language } from './lexicon/compile.ts'
import { isNum, type Join, skipped } from './rewrite.ts'

/** Digits glued to letters that are no name of ours ("gr8", "b4", "2day"), and vertebrae ("L5/S1"). */
export const glued: Join = (items, at) => {
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
export const foreign: Join = (items, at) => {
  const a = items[at]
  const b = items[at + 1]
  const c = items[at + 2]
  if (isNum(a) && isMark(b, ':') && b!.tight && isNum(c) && c.tight && c.text.length === 2) {
    const more = items[at + 3]?.cue === 'unit' || items[at + 3]?.cue === 'dayPart' ? 1 : 0
    return [3 + more, [skipped(items, at, at + 2 + more)]]
  }
  if (isNum(a) && b?.cue === 'setsOf' && c?.cue === 'session') return [2, [a]]
  if (isNum(a) && b?.cue === 'setsOf' && isNum(c)) return [3, [skipped(items, at, at + 2)]]
  if (isNum(a) && b?.cue === 'setsOf') return [2, [skipped(items, at, at + 1)]]
  if (isNum(a) && b?.cue === 'dayPart' && b.tight) return [2, [skipped(items, at, at + 1), b]]
  if (isNum(a) && b?.cue === 'unit' && c?.cue === 'sessionLetter' && c.text === 'x' && isNum(items[at + 3]))
    return [4, [skipped(items, at, at + 3)]]
  if (
    isNum(a) &&
    (b?.cue === 'unit' ||
      b?.cue === 'dayUnit' ||
      b?.cue === 'percent' ||
      isMark(b, '%') ||
      (b?.cue === 'unitBefore' && !isNum(c)))
  )
    return [2, [skipped(items, at, at + 1)]]
  if (isNum(a) && isMark(b, '-') && b!.tight && c?.cue === 'unit') return [3, [skipped(items, at, at + 2)]]
  if (isNum(a) && b?.cue === 'sessionLetter' && b.text === 'x' && isNum(c) && items[at + 3]?.cue === 'unit')
    return [4, [skipped(items, at, at + 3)]]
  // "a bad day: 7" is no seventh day
  const told = a?.cue === 'dayUnit' && ['painVague', 'clear'].includes(items[at - 1]?.cue ?? 'mark')
  if (a?.cue === 'unitBefore' || a?.cue === 'clock' || (a?.cue === 'dayUnit' && !told))
    return afterName(items, at)
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

/** "2 sessions left", "me falta una": what is still to do is not what was done. */
export const outstanding: Join = (items, at) => {
  const a = items[at]
  const b = items[at + 1]
  if (isNum(a) && b?.cue === 'notYet') return [2, [skipped(items, at, at), b]]
  // "left" for what remains stands at the end of its clause; before a limb it is the side
  if (isNum(a) && b?.cue === 'session' && items[at + 2]?.cue === 'left' && isBreak(items[at + 3]))
    return [
      3,
      [skipped(items, at, at), makeItem('notYet', 0, 'sessions left', b.start, items[at + 2]!.end, false)],
    ]
  return a?.cue === 'notYet' && isNum(b) ? [2, [a, skipped(items, at + 1, at + 1)]] : null
}

/** "pain 3 lets go", "knee is a 6 rn": the name before tells more than the word after. */
function ofPain(items: readonly Item[], at: number): boolean {
  let i = at - 1
  while (['article', 'be', 'was'].includes(items[i]?.cue ?? 'mark')) i -= 1
  const cue = items[i]?.cue ?? 'mark'
  return cue === 'pain' || cue === 'painLetter' || (cue === 'zone' && i < at - 1)
}

/** A number before a word that is none of ours counts something else ("2 dogs"). */
export const counted =
  (language: Language): Join =>
  (items, at) => {
    const a = items[at]
    const b = items[at + 1]
    if (!isNum(a) || a.slot !== null || b?.cue !== 'word' || b.text.length < 2) return null
    if (ofPain(items, at) || language.gerunds.some((ending) => b.text.endsWith(ending))) return null
    a.unread = true
    return [1, [a]]
  }
