import type { Reach } from '../../domain/reach.ts'
import type { SignId } from '../../domain/signs/catalogue.ts'

/** What a client fills into the form of a day; `signs` empty is "none of these" ticked, left out is untouched. */
export interface DayValues {
  readonly sessions?: number | undefined
  readonly reach?: Reach | undefined
  readonly pain?: number | undefined
  readonly side?: 'left' | 'right' | 'both' | undefined
  readonly signs?: readonly SignId[] | undefined
}
