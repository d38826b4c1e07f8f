import { type Day, isDay } from '../../domain/day.ts'
import { date } from './dates.ts'

/** "Thu 12 Mar 2026"; without its year in a table. */
export const fullDate = (day: Day, year = true): string =>
  year ? `${date(day)} ${day.slice(0, 4)}` : date(day).slice(4)

export const count = (n: number, one: string): string => `${n} ${n === 1 ? one : `${one}s`}`

/** Words from data as one line, without control and direction characters, cut with an ellipsis. */
export function oneLine(words: string, most: number): string {
  const letters = [...words.replace(/[\p{C}\p{Zl}\p{Zp}\s]+/gu, ' ').trim()]
  return letters.length > most
    ? `${letters
        .slice(0, most - 1)
        .join('')
        .trimEnd()}…`
    : letters.join('')
}

/** "emergency physician, 2026-03-13" with the date as it is read; platform ids are nobody's business here. */
export function who(by: string): string {
  const named = by.replace(/ \(<@\d+>\)$/, '').replace(/<@\d+>/g, 'the coach')
  const at = named.lastIndexOf(', ')
  const day = named.slice(at + 2)
  return oneLine(at > 0 && isDay(day) ? `${named.slice(0, at)}, ${fullDate(day)}` : named, 90)
}
