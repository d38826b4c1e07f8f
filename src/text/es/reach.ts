import type { Reach } from '../../domain/reach.ts'

/** The zones, nearest to the spine first, as a person names them. */
export const REACH: Readonly<Record<Reach, string>> = {
  none: 'en ningún sitio',
  back: 'espalda',
  buttock: 'nalga',
  thigh: 'muslo',
  knee: 'rodilla',
  calf: 'pantorrilla',
  foot: 'pie',
}
