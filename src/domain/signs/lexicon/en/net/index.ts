import type { NetSource } from '../../shape.ts'
import { inflected } from './forms.ts'
import { frames } from './frames.ts'
import { plain } from './plain.ts'
import { topics } from './topics.ts'
import { troubles } from './troubles.ts'
import { ways } from './ways.ts'
import { wider } from './wider.ts'

const own = { ...topics, ...troubles, ...plain, ...ways }
const words = Object.fromEntries(
  Object.entries(own).map(([name, text]) => [name, inflected([text, wider[name] ?? ''].join(','))]),
)

/** English, as the second layer reads it. */
export const net: NetSource = { words, frames }
