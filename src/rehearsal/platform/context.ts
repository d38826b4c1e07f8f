import type { Interactions } from './interactions.ts'
import type { Posting } from './posting.ts'

/** What routes and people work with. */
export interface Context extends Posting {
  interactions: Interactions
  gatewayUrl: string
  /** Lines that the gateway asks a bot to open. */
  shards: number
}
