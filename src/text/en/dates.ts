import { type Day, weekday } from '../../domain/day.ts'

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec']
/** "12 Mar" */
export const shortDate = (day: Day): string =>
  `${Number(day.slice(8))} ${MONTHS[Number(day.slice(5, 7)) - 1]}`
/** "Thu 12 Mar" */
export const date = (day: Day): string => `${weekday(day)} ${shortDate(day)}`
/** With the year, for a day that may be far from now. */
export const fullDate = (day: Day): string => `${date(day)} ${day.slice(0, 4)}`
