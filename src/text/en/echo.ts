import type { DayReading } from '../../domain/reply/reading.ts'

/** What was understood, in one short line ("2 sessions, calf, pain 4"); empty where no value was. */
export function echo(reading: DayReading): string {
  const { sessions, reach, pain } = reading
  const parts: string[] = []
  if (sessions !== null) parts.push(sessions === 1 ? '1 session' : `${sessions} sessions`)
  if (reach !== null) parts.push(reach === 'none' ? 'nowhere' : reach)
  if (pain !== null) parts.push(`pain ${pain}`)
  return parts.join(', ')
}
