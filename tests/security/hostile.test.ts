import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { commands } from '../../commands/index.ts'
import { readLadderFile } from '../../src/domain/ladder/ladder-file.ts'
import type { ChatCommand } from '../../src/engine/command.ts'
import type { Actor, ChatEvent, Command } from '../../src/engine/event.ts'
import { textsFor } from '../../src/text/index.ts'
import { BALANCE } from '../domain/ladder/balance.ts'
import { COACH, type Practice, person } from '../engine/practice.ts'
import { everyButton, type Kind, NOW, openHouses } from './houses.ts'
import { NOTE, openTrial, type Trial, type Tried } from './trial.ts'
import { eventOf, givenFor } from './tries.ts'

/** What words could do in a chat message: call, format, link, break out of a quotation, hide or turn round. */
const HOSTILE =
  '@everyone @here <@111> <@&222> <#333> **bold** __u__ ~~s~~ ||x|| `c` ```js\nblock``` [a](https://owl.example) https://owl.example <https://owl.example>\n# head\n> quote\n-# small\u202edne\u200b \u2066x\u2069 ” “ \\'
/** The same in one word, for what is read word by word. */
const WORD = '@everyone<@111>**x**`c`https://owl.example\u202e'
/** What of it must not stand in a message as it was written. */
const ACTIVE =
  /@(?:everyone|here)|<@&?\d{3}>|<#333>|(?<!\\)\*\*(?:bold|x)|(?<!\\)__u|(?<!\\)~~s|(?<!\\)\|\|x|(?<!\\)`c`|```|\]\(|https?:\/\/|^# head|^> quote|^-# small|[\u202a-\u202e\u2066-\u2069]/m

/** What a coach writes to a client may have lines, emphasis and links that can be seen, and nothing else of it. */
const CALLS_OR_HIDES =
  /@(?:everyone|here)|(?<!\\)<[@#]&?\d{3}>|(?<!\\)\|\|x|(?<!\\)`c`|(?<!\\)```|(?<!\\)\]\(|[\u202a-\u202e\u2066-\u2069]/
const { fromCoach } = textsFor('en').commands

const LONG = `${HOSTILE} ${'word '.repeat(1_200)}`
let practice: Practice
let trial: Trial
let id = 0

beforeAll(async () => {
  practice = await openHouses()
  trial = await openTrial(practice.path)
}, 60_000)
afterAll(async () => {
  await trial.close()
  await practice.close()
})

const coachSays = (name: string, options: Command['options'] = {}, actor: Actor = COACH): Command => ({
  ...{ kind: 'command', id: `hostile-${++id}`, name, options },
  actor,
})

/** Where what was written is read again: by the coach, and by the client. */
const reading = (ref: string): ChatEvent[] => [
  ...['roster', 'questions', 'proposals', 'set-up'].map((name) => coachSays(name)),
  ...['client-record', 'digest', 'plan-history', 'why'].map((name) => coachSays(name, { client: ref })),
  ...['today', 'my-record', 'help'].map((name) => coachSays(name, {}, person(ref))),
]

const shownBy = ({ answer, messages }: Tried): string[] => [
  ...(answer ? [answer.text] : []),
  ...messages.map(({ text }) => text),
]

const patternFor = (text: string): RegExp =>
  text.startsWith(fromCoach('')) || text.includes('\nYour coach answers: ') ? CALLS_OR_HIDES : ACTIVE

/** Nothing of what these events show is more than words; where something was kept, nor when it is read again. */
async function harmless(write: ChatEvent, ref: string, what: string): Promise<void> {
  const [first] = await trial.attempt([write])
  const isKept = (first?.changes ?? 0) > NOTE
  const tried = isKept ? await trial.attempt([write, ...reading(ref)]) : [first!]
  const active = tried.flatMap(shownBy).filter((text) => patternFor(text).test(text))
  const found = active.map((text) => `${patternFor(text).exec(text)} in: ${text.slice(0, 300)}`)
  expect.soft(found, what).toEqual([])
}

/** The command with one option as given, and what it needs besides. */
function withOption({ name, who, options }: ChatCommand, one: string, value: string, ref: string): Command {
  const others = options.filter((option) => option.required && option.name !== one)
  const filled = Object.fromEntries(others.map((option) => [option.name, givenFor(option)]))
  const given = { ...filled, ...('client' in filled ? { client: ref } : {}), [one]: value }
  return coachSays(name, given, who === 'client' ? person(ref) : COACH)
}

describe('what is written', () => {
  const texts = commands.flatMap((command) => command.options.map((option) => ({ command, option })))

  it.each(['heron', 'wren'])('in an option of a command is shown as words (%s)', async (ref) => {
    for (const { command, option } of texts.filter(
      ({ option }) => option.kind === 'text' || option.kind === 'client',
    ))
      for (const value of ref === 'wren' ? [HOSTILE, WORD] : [HOSTILE]) {
        const write = withOption(command, option.name, value, ref)
        await harmless(write, ref, `/${command.name} ${option.name}`)
      }
  })

  it('in a form is shown as words', async () => {
    for (const kind of everyButton(trial.rows)) {
      const event = eventOf(kind, `form-${++id}`)
      if (event.kind !== 'form') continue
      const lines = linesOf(kind)
      const filled = { ...event.filled, ...Object.fromEntries(lines.map((name) => [name, HOSTILE])) }
      const ref = kind.row.body.about ?? 'heron'
      await harmless({ ...event, filled }, ref, `${kind.name}: ${lines}`)
    }
  })

  it('in private is shown as words', async () => {
    const said = [
      HOSTILE,
      `question: ${HOSTILE}`,
      `numb between my legs ${HOSTILE}`,
      `2 calf 4 ${HOSTILE}`,
      LONG,
    ]
    for (const ref of ['heron', 'wren', 'dipper'])
      for (const text of said) {
        const words = { kind: 'words', id: `said-${++id}`, actor: person(ref), at: NOW, text } as const
        await harmless({ ...words, edits: null, attached: 'file' }, ref, `${ref}: ${text.slice(0, 30)}`)
      }
  })
})

describe('what stands in a practice’s own ladder file', () => {
  // each alone, since a field holds no more than a line
  const PIECES = [
    ...[
      '@everyone',
      '<@111>',
      '<#333>',
      '**bold**',
      '__u__',
      '~~s~~',
      '||x||',
      '`c`',
      '[a](https://owl.example)',
    ],
    ...[
      'https://owl.example',
      '# head',
      '> quote',
      '-# small',
      '- item',
      'turned \u202e round',
      'zero \u200b wide',
    ],
  ]
  const FIELDS = [
    'Stand steady',
    'Stand on one leg',
    'Hold on to a chair and lift one foot. Keep your hips level and breathe.',
    'a firm chair',
    'Stand near a wall.',
    'Stop if the leg gives way.',
  ]

  it.each(FIELDS)('is refused where it is more than words: %s', (field) => {
    for (const piece of PIECES) {
      const read = readLadderFile(BALANCE.replace(field, JSON.stringify(piece)))
      const says = read.ok ? 'taken' : read.errors.map(({ message }) => message).join()
      expect.soft(says, piece).toMatch(/^plain words alone/)
    }
  })

  it('is shown as it is where it is words, on one line', () => {
    const name = 'Rise & hold: "1 – 2" (slowly), 50 %'
    const read = readLadderFile(BALANCE.replace('Stand steady', `|\n  ${name.replace(' (', '\n  (')}`))
    expect(read).toMatchObject({ ok: true, ladders: [{ name }] })
  })
})

const linesOf = ({ part }: Kind): string[] =>
  ('form' in part ? (part.form?.fields ?? []) : [])
    .filter(({ kind }) => kind.startsWith('line'))
    .map(({ name }) => name)

describe('what no app would send in a command', () => {
  const STRANGE = [LONG, '', -1, 1e21, true, '__proto__']

  it('is answered, whatever stands in an option', async () => {
    for (const command of commands)
      for (const option of command.options)
        for (const value of STRANGE) {
          const event = withOption(command, option.name, value as string, 'wren')
          const [tried] = await trial.attempt([event])
          expect
            .soft(tried?.answer?.text, `/${command.name} ${option.name} ${String(value).slice(0, 20)}`)
            .toBeTruthy()
        }
  })
})
