import type { Care } from '../care.ts'
import type { SignId } from './catalogue.ts'

/** What the screen makes of one text; it knows no history. */
export interface Screening {
  /** Present or likely. */
  readonly signs: readonly SignId[]
  readonly denied: readonly (SignId | 'all')[]
  /** The highest level of `signs`; two or more `soon` signs make same-day. */
  readonly care: Care
  /** Those of `signs` that must be asked back with two buttons. */
  readonly unsure: readonly SignId[]
  readonly evidence: readonly {
    readonly sign: SignId | 'all'
    readonly words: string
    readonly negated: boolean
  }[]
}
