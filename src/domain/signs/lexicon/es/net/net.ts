import type { NetSource } from '../../shape.ts'
import { letBe, NO_WEAK, NOT_LIVE_HERE } from '../let-be.ts'
import { bodyWays } from './body-ways.ts'
import { events } from './events.ts'
import { feeling } from './feeling.ts'
import { forms } from './forms.ts'
import { frames } from './frames.ts'
import { functions } from './functions.ts'
import { legs } from './legs.ts'
import { moreForms } from './more-forms.ts'
import { otherWays } from './other-ways.ts'
import { topics } from './topics.ts'
import { turns } from './turns.ts'
import { upperBody } from './upper-body.ts'

/** Classes of one name, told in several files, are one class. */
function together(...parts: readonly NetSource['words'][]): NetSource['words'] {
  const all: NetSource['words'] = {}
  for (const part of parts)
    for (const [name, words] of Object.entries(part))
      all[name] = all[name] === undefined ? words : `${all[name]}, ${words}`
  return all
}

/** The second layer in Spanish: what no pattern knows, and what is therefore asked. */
export const net: NetSource = {
  words: together(
    topics,
    turns,
    legs,
    feeling,
    functions,
    upperBody,
    events,
    bodyWays,
    otherWays,
    forms,
    moreForms,
    { idiom: `${letBe}, ${NO_WEAK}, ${NOT_LIVE_HERE}` },
  ),
  frames,
  spells: true,
  within: 'phrase',
}
