import { z } from 'zod'
import { isDay, WEEKDAYS } from '../../domain/day.ts'
import { isClockTime, isZone } from '../../domain/local-time.ts'
import { isReach, REACHES } from '../../domain/reach.ts'
import { regionOf } from '../../domain/region.ts'
import { SIGN_IDS } from '../../domain/signs/catalogue.ts'

/** Single values of a scenario; each says what is wrong and, after a semicolon, what is allowed. */

const shown = (input: unknown): string =>
  typeof input === 'string' ? `“${input}”` : (JSON.stringify(input) ?? 'nothing')

/** The message of a value that is not there or not of the kind. */
export const wrong = (what: string, allowed: string) => (issue: { input?: unknown }) =>
  issue.input === undefined
    ? `${what} is missing; allowed: ${allowed}`
    : `${shown(issue.input)} is no ${what}; allowed: ${allowed}`

/** Text, also where YAML reads a number or a truth value ("4", "no"). */
const scalar = z.union([z.string(), z.number(), z.boolean()], { error: wrong('text', 'one line of text') })
export const text = scalar.transform(String)

const checked = <T extends string>(what: string, allowed: string, fits: (value: string) => boolean) =>
  z
    .custom<T | number>(
      (value) => (typeof value === 'string' || typeof value === 'number') && fits(String(value)),
      {
        error: wrong(what, allowed),
      },
    )
    .transform((value) => String(value) as T)

export const oneOf = <const T extends readonly string[]>(what: string, values: T) =>
  checked<T[number]>(what, values.join(', '), (value) => values.includes(value))

export const zone = checked(
  'time zone',
  'a name of the time-zone database, like Europe/Lisbon or America/New_York',
  isZone,
)
export const region = checked(
  'region that is known',
  'two letters of a country, like PT or US',
  (value) => regionOf(value) !== null && regionOf(value) !== undefined,
)
export const date = checked('date', 'a date like 2026-03-02', isDay)
export const clockTime = checked('time', '"00:00" to "23:59"', isClockTime)
/** A time of a local day that may run past midnight: "24:40" is 00:40 on the next. */
export const lateTime = checked('time', '"00:00" to "47:59", past 24 on the next day', (value) =>
  /^([0-3]\d|4[0-7]):[0-5]\d$/.test(value),
)
export const reach = checked('reach', REACHES.join(', '), isReach)
export const sign = oneOf('warning sign', SIGN_IDS)
export const weekday = oneOf('weekday', WEEKDAYS)
export const side = oneOf('side', ['left', 'right', 'both'] as const)

/** A client's alias. */
export const ref = checked('alias', '1 to 30 letters, digits or hyphens, like heron', (value) =>
  /^[\p{L}\d-]{1,30}$/u.test(value),
)

export const whole = (what: string, least: number, most: number) =>
  z.custom<number>((value) => Number.isInteger(value) && Number(value) >= least && Number(value) <= most, {
    error: wrong(what, `a whole number, ${least} to ${most}`),
  })

const YES = ['yes', 'on', 'true']
const NO = ['no', 'off', 'false']
export const yesNo = z
  .custom<string | boolean>((value) => [...YES, ...NO].includes(String(value)), {
    error: wrong('answer', 'yes or no'),
  })
  .transform((value) => YES.includes(String(value)))

const UNITS: Readonly<Record<string, number>> = { s: 1000, m: 60_000, h: 3_600_000, d: 86_400_000 }
const DURATION = /^([+-]?)(\d{1,5})([smhd])$/

const readDuration = (value: string): number => {
  const [, minus, count, unit] = DURATION.exec(value)!
  return (minus === '-' ? -1 : 1) * Number(count) * UNITS[unit!]!
}

/** Milliseconds. */
export const duration = checked('length of time', 'a number with s, m, h or d, like 5m', (value) =>
  /^\d{1,5}[smhd]$/.test(value),
).transform(readDuration)

/** A jump of the clock in milliseconds, forward or back. */
export const jump = checked('jump of the clock', 'like +2h or -30m', (value) =>
  DURATION.test(value),
).transform(readDuration)

export const pattern = text.transform((source, context) => {
  try {
    return new RegExp(source, 'is')
  } catch {
    context.addIssue({
      code: 'custom',
      message: `“${source}” is no regular expression; allowed: one that JavaScript can read, like calf|knee`,
    })
    return z.NEVER
  }
})

/** An object whose unknown keys are named together with the known ones. */
export const keyed = <T extends z.ZodRawShape>(shape: T, what = 'entry') =>
  z.strictObject(shape, {
    error: (issue) => {
      const allowed = Object.keys(shape).join(', ')
      if (issue.code !== 'unrecognized_keys') return wrong(what, `keys ${allowed}`)(issue)
      return `unknown key ${issue.keys.map((key) => `“${key}”`).join(', ')}; allowed: ${allowed}`
    },
  })

export const listOf = <T extends z.ZodType>(item: T, what: string) =>
  z.array(item, { error: wrong(what, 'a list like [a, b]') })
