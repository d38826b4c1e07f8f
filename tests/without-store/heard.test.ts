import { expect, it } from 'vitest'
import type { ChatEvent, Filled } from '../../src/engine/event.ts'
import type { Act } from '../../src/engine/message.ts'
import { heardIn } from '../../src/without-store/heard.ts'

const actor = { user: 'user-heron', guild: null, roles: [], keeper: false }
const at = new Date('2026-03-02T15:00:00Z')
const say = (text: string): ChatEvent => ({
  kind: 'words',
  id: '1',
  actor,
  at,
  text,
  edits: null,
  attached: 'none',
})
const press = (act: Act, values: string[] = []): ChatEvent => ({
  ...{ kind: 'choice', id: '1', actor, outbox: 'o', act, label: 'x', values },
})
const fill = (filled: Filled): ChatEvent => ({
  ...{ kind: 'form', id: '1', actor, outbox: 'o', act: { do: 'check-in', day: '2026-03-02' }, filled },
})

it.each([
  ['plain words', say("I can't pee since this morning"), ['bladder-change'], true],
  ['words in another language', say('No puedo orinar desde esta mañana'), ['bladder-change'], false],
  ['a hint in another language', say('no sé si estoy orinando bien'), ['bladder-change'], false],
  ['one of these, and not which', press({ do: 'answer', ask: 'signs', value: 'some' }), 5, true],
  [
    'chosen from the list',
    press({ do: 'answer', ask: 'signs', value: 'these' }, ['fever-unwell']),
    ['fever-unwell'],
    true,
  ],
  ['yes to a hint', press({ do: 'sign', sign: 'both-legs', value: 'yes' }), ['both-legs'], true],
  ['both legs', press({ do: 'answer', ask: 'side', value: 'both' }), ['both-legs'], true],
  ['ticked in the form', fill({ signs: ['calf-swelling'], pain: '4' }), ['calf-swelling'], true],
] as const)('%s', (_, event, signs, plain) => {
  const heard = heardIn(event, 'en', ['en', 'es'])
  if (typeof signs === 'number') expect(heard?.signs).toHaveLength(signs)
  else expect(heard?.signs).toEqual(signs)
  expect(heard?.plain).toBe(plain)
})

it.each([
  ['a check-in', say('2 calf 4, no signs')],
  ['a word that is an answer in both languages', say('no')],
  ['a lesser sign alone', press({ do: 'answer', ask: 'signs', value: 'these' }, ['night-pain'])],
  ['none of these', press({ do: 'answer', ask: 'signs', value: 'none' })],
  ['no to a hint', press({ do: 'sign', sign: 'both-legs', value: 'no' })],
  ['what is known and old', fill({ known: ['both-legs'], signs: ['none'] })],
])('%s is no reason for the short way', (_, event) => {
  expect(heardIn(event, 'en', ['en', 'es'])).toBeNull()
})
