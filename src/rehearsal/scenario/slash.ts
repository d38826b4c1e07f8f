import { commands } from '../../../commands/index.ts'
import type { OptionSpec } from '../../engine/command.ts'
import type { SlashCommand } from './script.ts'

type Value = string | number | boolean

// Options that hold a sentence, in which a colon is nothing but a colon.
const SENTENCES: readonly string[] = ['text', 'reason', 'by', 'loads', 'ladders']

/** A command as it is typed, "/decide client:heron do:advance"; a problem in words where the app would not send it. */
export function readSlash(line: string): SlashCommand | string {
  const [, name, rest] = /^\/([\w-]+)\s*(.*)$/s.exec(line.trim()) ?? []
  const command = commands.find((one) => one.name === name)
  if (!command) {
    const known = commands.map((one) => `/${one.name}`).join(', ')
    return `there is no command ${line.trim().split(/\s/)[0]}; allowed: ${known}`
  }
  const { options: specs } = command
  const allowed =
    specs.length === 0 ? 'no options' : `options ${specs.map((spec) => `${spec.name}:`).join(' ')}`
  const marks = marksOf(rest ?? '', specs)
  if ((rest ?? '').trim() !== '' && marks[0]?.index !== 0)
    return `“${rest}” is no option of /${name}; allowed: ${allowed}`
  const options: Record<string, Value> = {}
  for (const [n, mark] of marks.entries()) {
    const spec = specs.find((one) => one.name === mark[1])
    if (!spec) return `/${name} has no option ${mark[1]}; allowed: ${allowed}`
    const text = rest!.slice(mark.index + mark[0].length, marks[n + 1]?.index).trim()
    const value = readOption(spec, text)
    if (value === null) return `“${text}” does not fit ${spec.name} of /${name}; allowed: ${forms(spec)}`
    options[spec.name] = value
  }
  const lacking = specs.find((spec) => spec.required && options[spec.name] === undefined)
  if (lacking) return `/${name} needs ${lacking.name}; allowed: ${allowed}`
  return { name: name!, options }
}

/** Where an option begins: its name and a colon. */
function marksOf(rest: string, specs: readonly OptionSpec[]): RegExpExecArray[] {
  const marks: RegExpExecArray[] = []
  for (const mark of rest.matchAll(/(?:^|\s)([a-z-]+):/g)) {
    const inSentence = SENTENCES.includes(marks.at(-1)?.[1] ?? '')
    if (!inSentence || specs.some((spec) => spec.name === mark[1])) marks.push(mark)
  }
  return marks
}

function readOption(spec: OptionSpec, text: string): Value | null {
  if (spec.choices && !spec.choices.includes(text)) return null
  if (spec.kind === 'yes-no')
    return { true: true, yes: true, false: false, no: false }[text.toLowerCase()] ?? null
  if (spec.kind !== 'number') return text === '' ? null : text
  const number = Number(text)
  const fits = Number.isInteger(number) && number >= (spec.least ?? number) && number <= (spec.most ?? number)
  return text !== '' && fits ? number : null
}

function forms(spec: OptionSpec): string {
  if (spec.choices) return spec.choices.join(', ')
  if (spec.kind === 'yes-no') return 'true, false'
  if (spec.kind === 'number')
    return `a whole number${spec.most === undefined ? '' : `, ${spec.least ?? 0} to ${spec.most}`}`
  return 'some words'
}
