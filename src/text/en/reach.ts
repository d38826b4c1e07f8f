import type { Reach } from '../../domain/reach.ts'

/** The zones, nearest to the spine first, as a person names them. */
export const REACH: Readonly<Record<Reach, string>> = {
  none: 'none',
  back: 'back',
  buttock: 'buttock',
  thigh: 'thigh',
  knee: 'knee',
  calf: 'calf',
  foot: 'foot',
}
