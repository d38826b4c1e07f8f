import { WEEKDAYS, type Weekday } from '../../domain/day.ts'
import { saysNone } from '../../domain/reply/says-none.ts'

/** How weekdays begin in the languages that are spoken, Monday first; accents left out. */
const BEGINS: readonly (readonly string[])[] = [
  WEEKDAYS.map((day) => day.toLowerCase()),
  ['lun', 'mar', 'mie', 'jue', 'vie', 'sab', 'dom'],
]

/** "Sat Sun", "saturday, sunday" or "sáb dom" as days off, "none" as none of them; null where a word is no day. */
export function readDaysOff(text: string, language: string): Weekday[] | null {
  if (saysNone(text, language)) return []
  const words = text.split(/[\s,;]+/).filter(Boolean)
  const days = words.map((word) => WEEKDAYS.find((_, n) => BEGINS.some((begins) => begins[n] === bare(word))))
  return days.length > 0 && days.every((day) => day !== undefined) ? [...new Set(days as Weekday[])] : null
}

const bare = (word: string): string => word.toLowerCase().normalize('NFD').replace(/\p{M}/gu, '').slice(0, 3)
