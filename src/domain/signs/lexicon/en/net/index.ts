import type { NetSource } from '../../shape.ts'
import { inflected } from './forms.ts'
import { frames } from './frames.ts'
import { plain } from './plain.ts'
import { topics } from './topics.ts'
import { troubles } from './troubles.ts'

const words = Object.fromEntries(
  Object.entries({ ...topics, ...troubles, ...plain }).map(([name, text]) => [name, inflected(text)]),
)

/** English, as the second layer reads it. */
export const net: NetSource = { words, frames }
