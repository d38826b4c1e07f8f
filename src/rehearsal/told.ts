import { daysBetween } from '../domain/day.ts'
import { dayAt, timeAt } from '../domain/local-time.ts'
import { date } from '../text/en/dates.ts'
import type { Deed, Delivered, PlayResult, Shown } from './player/index.ts'
import type { Script } from './scenario/index.ts'

const WEEKLY: readonly string[] = ['digest', 'roll-call']

/** A play in words that a coach understands: what was written, day by day, then the digests and how it ended. */
export function told(script: Script, { story, messages, clients, checks }: PlayResult): string[] {
  const digests = messages.filter((message) => WEEKLY.includes(message.kind))
  return [
    script.title,
    'Times are in each person’s own zone; the days are those of the practice.',
    ...story.flatMap((one, n) => [...newDay(script, one, story[n - 1]), ...lineOf(one)]),
    ...(digests.length > 0 ? ['', '== Digests'] : []),
    ...digests.flatMap((message) => [
      '',
      `${date(message.day)} ${clock(message)}`,
      ...body({ message, files: [] }, '  '),
    ]),
    '',
    '== In the end',
    ...clients.map(({ ref, status, plan, assessment, records }) =>
      [
        `${ref}: ${status}`,
        `${records.length} ${records.length === 1 ? 'day' : 'days'} on record`,
        plan
          ? `steps ${Object.entries(plan.rungs)
              .map(([ladder, rung]) => `${ladder} ${rung}`)
              .join(', ')}`
          : 'no plan',
        assessment ? `${assessment.direction}, proposal ${assessment.proposal}` : '',
      ]
        .filter((part) => part !== '')
        .join('; '),
    ),
    `${checks.passed} of ${checks.passed + checks.failed.length} expectations met`,
  ]
}

const isDeed = (one: Deed | Shown): one is Deed => 'what' in one
const instant = (one: Deed | Shown): Date => (isDeed(one) ? one.at : new Date(one.message.at))

/** Days are headed by the practice's date. */
function newDay(script: Script, one: Deed | Shown, before: Deed | Shown | undefined): string[] {
  const day = dayAt(instant(one), script.practice.zone)
  if (before && dayAt(instant(before), script.practice.zone) === day) return []
  const n = daysBetween(script.start, day) + 1
  return ['', n >= 1 ? `== Day ${n}, ${date(day)}` : `== Before day 1, ${date(day)}`]
}

const clock = (message: Delivered): string => message.local.slice(11)

function lineOf(one: Deed | Shown): string[] {
  if (isDeed(one)) return [`${timeAt(one.at, one.zone)}  ${one.who}: ${one.what}`]
  const { message } = one
  const about = message.about && !message.to.endsWith(message.about) ? `, about ${message.about}` : ''
  const head = `${clock(message)}  -> ${message.to.replace('client:', '')} (${message.kind}${about})`
  return WEEKLY.includes(message.kind) ? [`${head}: see below`] : [head, ...body(one, '         ')]
}

function body({ message: { text, buttons, picture }, files }: Shown, indent: string): string[] {
  const lines = text.split('\n').filter((line) => line.trim() !== '')
  return [
    ...lines.map((line) => indent + line.replaceAll('**', '')),
    ...(buttons.length > 0 ? [`${indent}[${buttons.map(({ label }) => label).join('] [')}]`] : []),
    ...(picture ? [`${indent}Picture: ${picture}`] : []),
    ...files.map((file) => `${indent}File: ${file}`),
  ]
}
