import { parseArgs } from 'node:util'
import { CAUSES, coachRules } from '../domain/diaries/coach.ts'
import { type DayRule, timesPerMonth } from '../domain/diaries/measure.ts'
import {
  FEWEST_WEEKS,
  figuresOf,
  type Heard,
  listenAll,
  type RuleFigures,
  rounded,
  type Simulation,
  simulateWords,
} from '../domain/diaries/simulate.ts'
import { ALARMS, type Alarms, alarmRules, SIMULATED, tableRule } from '../domain/diaries/table-rules.ts'
import type { WordFigures } from '../domain/diaries/wrong-words.ts'
import { progressBar } from '../progress.ts'
import type { Io } from './io.ts'
import { alarmsFrom } from './simulate-alarms.ts'
import { orWrongUse } from './wrong-use.ts'

export const help = `Usage: ebb simulate [--clients N] [--weeks W] [--seed S] [--rules FILE] [--json]
Runs the rules over made-up diaries of pain and reach. The same numbers give the same output on every machine.
--clients N   people in each of the 6 courses (default 300)
--weeks W     weeks of each diary, ${FEWEST_WEEKS} or more (default 13)
--seed S      a whole number (default 7)
--json        one object a line instead of the table
--rules FILE  JSON with other parameters for the two alarm sums, all optional; only those rows are measured:
              {"pain": {"k": 1, "h": 3.25, "need": 10}, "reach": {"k": 0.5, "h": 1.5, "need": 6}, "usual": {"days": 21, "gap": 5}}
Rows: "alarms" (reach-spread and pain-up together), each rule that pain and reach alone can set off, "weekly-word"
(share of stable weeks with a wrong word, the more frequent way) and "coach" (messages to the coach per client-month
besides the digest, on stable diaries, and what they are about; a met gate, a plateau and other notes wait for the
digest and bring none, and what hangs on sessions or signs is not in these diaries).
falseAlarms: episodes per client-month of 30.4 days; a word of getting better is none on improving diaries.
detect: days from the onset to the first alarm (median, null where half are not seen
in 28 days) and the share within 7 days.`

interface Options extends Simulation {
  readonly json: boolean
  /** Other parameters for the two alarms; null where all rules are measured as they are. */
  readonly alarms: Alarms | null
}

function wholeNumber(name: string, text: string, least: number): number {
  const value = Number(text)
  if (/^\d+$/.test(text) && Number.isSafeInteger(value) && value >= least) return value
  throw new Error(`--${name} takes a whole number, ${least} or more, not "${text}"`)
}

/** @throws Error that tells the mend where the words typed or the file named cannot be used */
function optionsOf(args: string[]): Options {
  const { values } = parseArgs({
    args,
    options: {
      clients: { type: 'string', default: '300' },
      weeks: { type: 'string', default: '13' },
      seed: { type: 'string', default: '7' },
      rules: { type: 'string' },
      json: { type: 'boolean', default: false },
    },
  })
  return {
    clients: wholeNumber('clients', values.clients, 1),
    weeks: wholeNumber('weeks', values.weeks, FEWEST_WEEKS),
    seed: wholeNumber('seed', values.seed, 0),
    alarms: values.rules === undefined ? null : alarmsFrom(values.rules),
    json: values.json,
  }
}

interface Coach {
  readonly rule: 'coach'
  /** Per client-month. */
  readonly messages: { readonly stable: number }
  readonly about: Readonly<Record<string, number>>
}
type Row = RuleFigures | { readonly rule: 'weekly-word'; readonly wrong: WordFigures } | Coach

function coachRow(stable: Heard): Coach {
  const spoken = CAUSES.map((cause) => ({ cause, rate: timesPerMonth(stable[`coach ${cause}`] ?? []) }))
  const all = spoken.reduce((sum, { rate }) => sum + rate, 0)
  return {
    rule: 'coach',
    messages: { stable: rounded(all) },
    about: Object.fromEntries(spoken.map(({ cause, rate }) => [cause, rounded(rate)])),
  }
}

/** All rows, every rule read from one and the same assessment of each day. */
function allRows(settings: Simulation): Row[] {
  const table = SIMULATED.map((id): [string, DayRule] => [id, tableRule(id)])
  const rules = { alarms: alarmRules(ALARMS).alarms, ...Object.fromEntries(table) }
  const heard = listenAll(settings, rules, coachRules, progressBar())
  return [
    ...Object.keys(rules).map((rule) => figuresOf(rule, heard)),
    { rule: 'weekly-word', wrong: simulateWords(settings) },
    coachRow(heard.stable),
  ]
}

function alarmRows(settings: Simulation, alarms: Alarms): Row[] {
  const rules = alarmRules(alarms)
  const heard = listenAll(settings, rules, {}, progressBar())
  return Object.keys(rules).map((rule) => figuresOf(rule, heard))
}

const HEAD = ['rule', 'stable', 'improving', 'pain +2', 'reach +1', 'reach +2', 'both']
const WIDTHS = [13, 8, 10, 12, 12, 12, 12]
const inColumns = (cells: readonly string[]): string =>
  cells
    .map((cell, n) => (n === 0 ? cell.padEnd(WIDTHS[n]!) : cell.padStart(WIDTHS[n]!)))
    .join('')
    .trimEnd()

function words(row: Row): string {
  if ('wrong' in row) {
    const { pain, reach } = row.wrong
    return `The weekly word is wrong in ${(100 * pain).toFixed(1)} % (pain) and ${(100 * reach).toFixed(1)} % (reach) of stable weeks.`
  }
  if ('messages' in row) {
    const about = Object.entries(row.about).map(([cause, rate]) => `${cause} ${rate.toFixed(2)}`)
    return `The coach gets ${row.messages.stable.toFixed(2)} messages per stable client-month besides the digest: ${about.join(', ')}.`
  }
  const { stable, improving } = row.falseAlarms
  const seen = Object.values(row.detect).map(
    ({ days, within7 }) => `${days ?? '-'}, ${Math.round(100 * within7)} %`,
  )
  return inColumns([row.rule, stable.toFixed(2), improving.toFixed(2), ...seen])
}

function table({ clients, weeks, seed }: Simulation, rows: readonly Row[]): string[] {
  return [
    `${clients} people a course, ${weeks} weeks, seed ${seed}`,
    'False alarms per client-month; then days from the onset to the first alarm (median) and share within 7 days.',
    inColumns(HEAD),
    ...rows.map(words),
  ]
}

/** Exit code: 0 done, 2 wrong use. */
export async function run(args: string[], io: Io): Promise<number> {
  const options = orWrongUse(() => optionsOf(args), io, help)
  if (options === null) return 2
  const { alarms } = options
  const rows = alarms === null ? allRows(options) : alarmRows(options, alarms)
  for (const line of options.json ? rows.map((row) => JSON.stringify(row)) : table(options, rows))
    io.out(line)
  return 0
}
