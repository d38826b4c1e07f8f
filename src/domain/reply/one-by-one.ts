import { type Item, isBreak } from './items.ts'

type Told = 'done' | 'missed' | null

/** What the clause says of a session told by its place: the nearest verb before it decides. */
function toldOf(items: readonly Item[], at: number): { told: Told; only: boolean } {
  let told: Told = null
  let only = false
  for (let i = at - 1; i >= 0 && !isBreak(items[i]); i--) {
    const { cue } = items[i]!
    if (cue === 'only') only ||= told !== 'missed'
    // "didn't do the second": the denial stands before the verb
    if (cue === 'missed' || cue === 'no') told = 'missed'
    if (told !== null) continue
    if (cue === 'did' || cue === 'done') told = 'done'
  }
  return { told, only }
}

const isSession = ({ cue, unread, denied }: Item): boolean =>
  (cue === 'oneSession' || cue === 'aSession' || cue === 'otherSide') && !unread && !denied

/**
 * Sessions told one by one ("skipped the morning one, did the evening one"): a number where all that were planned
 * are told, or where those done are the only ones; null asks back; undefined where none is told so.
 */
export function toldOneByOne(items: readonly Item[], planned: number): number | null | undefined {
  const heard = items.filter((item) => item.cue !== 'otherSide' && isSession(item))
  if (heard.length === 0 || heard[0]!.text.startsWith('another')) return undefined
  let done = 0
  let missed = 0
  let onlyThose = false
  items.forEach((item, at) => {
    if (!isSession(item)) return
    const { told, only } = toldOf(items, at)
    if (told === 'done') done += 1
    if (told === 'missed') missed += 1
    onlyThose ||= only && told !== 'missed'
  })
  if (done + missed === planned && planned > 0) return done
  if (done > 0 && done <= planned && heard.every(({ cue }) => cue === 'aSession')) return done
  return onlyThose && missed === 0 && done <= 1 ? 1 : null
}
