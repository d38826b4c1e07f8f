import { isDay } from '../../domain/day.ts'
import { oneLine } from '../en/report-words.ts'
import { fullDate } from './dates.ts'

/** "médica de urgencias, vie 13 mar 2026"; platform ids are nobody's business here. */
export function who(by: string): string {
  const named = by.replace(/ \(<@\d+>\)$/, '').replace(/<@\d+>/g, 'el coach')
  const at = named.lastIndexOf(', ')
  const day = named.slice(at + 2)
  return oneLine(at > 0 && isDay(day) ? `${named.slice(0, at)}, ${fullDate(day)}` : named, 90)
}
