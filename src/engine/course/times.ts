import { isClockTime, isZone } from '../../domain/local-time.ts'
import { regionOf } from '../../domain/region.ts'
import { saysNone } from '../../domain/reply/says-none.ts'
import type { Texts } from '../../text/index.ts'
import { readDaysOff } from '../check-in/days-off.ts'
import type { Command } from '../event.ts'
import type { ClientRow } from '../rows.ts'

/** When and where a client is prompted. */
export type Times = Pick<ClientRow, 'prompt' | 'reminder' | 'zone' | 'off' | 'region'>

/** The times as wished, or the sentence that says what cannot be. "none" ends a reminder or the days off. */
export function readTimes(
  options: Command['options'],
  before: Times,
  { commands, language }: Texts,
): Times | string {
  const word = (name: string): string | null =>
    options[name] === undefined ? null : String(options[name]).trim()
  const prompt = clockOf(word('prompt')) ?? before.prompt
  const wished = word('reminder')
  const reminder = wished !== null && saysNone(wished, language) ? null : (clockOf(wished) ?? before.reminder)
  const zone = word('zone') ?? before.zone
  const region = word('region')?.toUpperCase() ?? before.region
  const daysOff = word('off')
  const off = daysOff === null ? [...before.off] : readDaysOff(daysOff, language)
  if (!isClockTime(prompt)) return commands.badTime(prompt)
  if (reminder !== null && !isClockTime(reminder)) return commands.badTime(reminder)
  if (!isZone(zone)) return commands.badZone(zone)
  if (region !== null && !regionOf(region)) return commands.badRegion(region)
  return off === null ? commands.badOff(daysOff ?? '') : { prompt, reminder, zone, region, off }
}

/** "7:30" is 07:30. */
const clockOf = (word: string | null): string | null => word && (/^\d:/.test(word) ? `0${word}` : word)
