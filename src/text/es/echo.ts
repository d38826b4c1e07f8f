import type { Reach } from '../../domain/reach.ts'
import type { DayReading } from '../../domain/reply/reading.ts'

const ZONES: Readonly<Record<Reach, string>> = {
  none: 'en ningún sitio',
  back: 'espalda',
  buttock: 'nalga',
  thigh: 'muslo',
  knee: 'rodilla',
  calf: 'pantorrilla',
  foot: 'pie',
}

/** What was understood, in one short line ("2 sesiones, pantorrilla, dolor 4"); empty where no value was. */
export function echo(reading: DayReading): string {
  const { sessions, reach, pain } = reading
  const parts: string[] = []
  if (sessions !== null) parts.push(sessions === 1 ? '1 sesión' : `${sessions} sesiones`)
  if (reach !== null) parts.push(ZONES[reach])
  if (pain !== null) parts.push(`dolor ${pain}`)
  return parts.join(', ')
}
