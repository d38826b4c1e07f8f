import { zones as english } from '../../domain/reply/lexicon/en/slots.ts'
import { zones as spanish } from '../../domain/reply/lexicon/es/slots.ts'
import { SIGNS } from '../../domain/signs/catalogue.ts'
import type { Script } from '../scenario/index.ts'
import type { Cast } from './cast.ts'

/**
 * Health data, names and ids of people that stand in the bot's log, each in a sentence with the line; none should.
 * Looked for are: what clients and coach wrote in the scenario, every word for a zone, a pain beside its number, every
 * alias, every client's id and every sign.
 */
export function leaksIn(lines: readonly string[], script: Script, cast: Cast): string[] {
  const people = [...script.clients.map(({ ref }) => ref), ...cast.clients.values()].map(asWord)
  const anywhere = [...people, ...Object.keys(SIGNS).map(asWord), PAIN, ...longWords(script).map(asWord)]
  const inValues = [ZONES, ...shortWords(script).map(asWord)]
  return lines.flatMap((line) => {
    const values = valuesOf(JSON.parse(line) as Record<string, unknown>)
    const leaks = anywhere.some((one) => one.test(line)) || inValues.some((one) => one.test(values))
    return leaks ? [`the log tells of a client: ${line.trim()}`] : []
  })
}

/** Every value but the program's own sentence and the places in its code, which hold words like "back" of their own. */
const valuesOf = ({ msg: _, ...fields }: Record<string, unknown>): string =>
  JSON.stringify(fields, (key, value) => (key === 'frames' || key === 'time' ? undefined : value))

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')
// as JSON writes it, for the line is JSON
const asWord = (text: string): RegExp =>
  new RegExp(`(?<![\\p{L}\\p{N}])${escaped(JSON.stringify(text).slice(1, -1))}(?![\\p{L}\\p{N}])`, 'iu')

const PAIN = /(?:pain|dolor|ache)\W{0,4}(?:(?:of|is|was|de|es)\W+)?\d|\d\s*(?:of|\/|de|out of)\s*10\b/i
const ZONES = new RegExp(
  `(?<![\\p{L}\\p{N}-])(?:${[...Object.values(english), ...Object.values(spanish)]
    .flatMap((words) => words.split(','))
    .map((word) => escaped(word.trim().replace(/\s+/g, ' ')))
    .filter((word) => word !== '')
    .join('|')})(?![\\p{L}\\p{N}-])`,
  'iu',
)

/** What people typed: replies, values of forms, options of commands. */
const written = ({ steps }: Script): string[] => [
  ...new Set(steps.flatMap(({ act }) => textsIn(act).map((text) => text.trim()))),
]
const longWords = (script: Script): string[] => written(script).filter((text) => /\S\s+\S/.test(text))
// "ok", "2" and the like are words of the program, too; standing alone among the values they would be a reply
const shortWords = (script: Script): string[] =>
  written(script).filter((text) => !/\s/.test(text) && /\p{L}{3}/u.test(text))

function textsIn(act: Script['steps'][number]['act']): string[] {
  if (act.who === 'world') return []
  if (act.who === 'coach')
    return 'command' in act
      ? stringsIn(act.command.options)
      : 'use' in act
        ? stringsIn(act.use.fill ?? {})
        : []
  const { does } = act
  if (does.do === 'say' || does.do === 'edit') return [does.text]
  if (does.do === 'form') return stringsIn(does.values)
  if (does.do === 'use') return stringsIn(does.use.fill ?? {})
  return does.do === 'command' ? stringsIn(does.command.options) : []
}

const stringsIn = (values: object): string[] =>
  Object.values(values).filter((value): value is string => typeof value === 'string')
