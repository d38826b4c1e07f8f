import type { Day } from '../../domain/day.ts'
import type { SignId } from '../../domain/signs/catalogue.ts'
import { ROUTINE_SIGNS } from '../check-in/asking.ts'
import { record } from '../check-in/record.ts'
import type { Draft } from '../draft.ts'
import { askedSigns } from '../status.ts'
import { raiseSigns } from './urgent.ts'

interface Taken {
  readonly signs: readonly SignId[]
  readonly day: Day
  readonly words: string
}

/** The ten minutes are over without an answer: it counts as yes, and so does what came with the same words. */
export function silence(draft: Draft): void {
  const taken = takenAsYes(draft)
  for (const row of draft.file.asked) if (row.pressing) draft.drop('asked', row.id)
  if (taken) raiseSigns(draft, taken.signs, taken.day, taken.words)
}

/** The question that was before the client, with everything that came with the same words. */
function takenAsYes(draft: Draft): Taken | null {
  const { client } = draft.forCoach
  const waiting = askedSigns(draft.file)
  const side = draft.file.asked.find((row) => row.ask === 'side' && row.pressing)
  const signs = new Set<SignId>(waiting.map((row) => row.sign))
  if (side) {
    record(draft, side.day, { side: 'both' })
    signs.add('both-legs')
  }
  const which = draft.file.asked.find((row) => row.ask === 'signs' && row.pressing && row.options.length > 2)
  if (which) for (const sign of ROUTINE_SIGNS) signs.add(sign)
  const day = waiting[0]?.day ?? which?.day ?? side?.day
  if (!day) return null
  const words = waiting
    .map((row) => row.words)
    .filter((text, n, all) => text !== '' && all.indexOf(text) === n)
  if (which) words.push(client.notNamed)
  if (side) words.push(client.otherLegNamed)
  return { signs: [...signs], day, words: words.join(' / ') }
}
