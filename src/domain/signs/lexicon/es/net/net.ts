import type { NetSource } from '../../shape.ts'
import { events } from './events.ts'
import { feeling } from './feeling.ts'
import { frames } from './frames.ts'
import { functions } from './functions.ts'
import { legs } from './legs.ts'
import { topics } from './topics.ts'
import { turns } from './turns.ts'
import { upperBody } from './upper-body.ts'

/** The second layer in Spanish: what no pattern knows, and what is therefore asked. */
export const net: NetSource = {
  words: { ...topics, ...turns, ...legs, ...feeling, ...functions, ...upperBody, ...events },
  frames,
}
