import fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { commands } from '../../commands/index.ts'
import type { Actor, ChatEvent } from '../../src/engine/event.ts'
import type { Act, Button } from '../../src/engine/message.ts'
import { COACH, person } from './practice.ts'
import { COACH_2, GUILD_2, openTwo, SECRET, type TwoPractices } from './two-practices.ts'

/** Whatever somebody of one practice types or presses, no row of the other changes and no word of it is shown. */
let two: TwoPractices
beforeAll(async () => {
  two = await openTwo()
}, 60_000)
afterAll(() => two.close())

const KEEPER: Actor = { ...COACH, roles: [...COACH.roles, 'role-2'] }
const LIKELY: Readonly<Record<string, readonly (string | number | boolean)[]>> = {
  client: ['heron', 'osprey'],
  alias: ['heron', 'osprey', 'wren'],
  person: ['user-b-heron', 'user-b-osprey', 'user-heron'],
  by: ['coach-2', 'coach-1', 'surgeon'],
  to: ['coach-2', 'coach-1'],
  do: ['advance', 'hold', 'ease-back', 'refer', 'stop'],
  on: ['2026-03-09', '2026-03-02'],
  from: ['2026-03-09', '2026-03-10'],
  until: ['2026-03-20'],
  week: ['2026-W10', '2026-W09'],
  ladders: ['extension:1', 'glide:2'],
  ladder: ['extension', 'glide'],
  outcome: ['reached', 'false-alarm'],
  'coach-channel': ['channel-2', 'channel-coach'],
  'alert-channel': ['channel-2'],
  'coach-role': ['role-coach'],
  sign: ['saddle-numbness'],
}

let count = 0
const nextId = (): string => `apart-${++count}`

/** Option values: likely ones, and the ids of the other practice wherever text fits. */
const anyValue = (name: string, kind: string) => {
  const strange = fc.constantFrom(...two.ids[GUILD_2]!, GUILD_2, 'coach-2', '', '../heron')
  if (kind === 'yes-no') return fc.boolean()
  if (kind === 'number') return fc.integer({ min: 0, max: 400 })
  return LIKELY[name]
    ? fc.oneof({ weight: 4, arbitrary: fc.constantFrom(...LIKELY[name]) }, strange)
    : strange
}

const commandBy = (actors: readonly Actor[]): fc.Arbitrary<ChatEvent> =>
  fc.constantFrom(...commands).chain(({ name, options }) =>
    fc.record({
      kind: fc.constant('command' as const),
      id: fc.constant(nextId()),
      actor: fc.constantFrom(...actors),
      name: fc.constant(name),
      options: fc
        .record(
          Object.fromEntries(options.map((option) => [option.name, anyValue(option.name, option.kind)])),
          { requiredKeys: options.filter((option) => option.required).map((option) => option.name) },
        )
        .map((values) => values as Record<string, string | number | boolean>),
    }),
  )

/** A press or form on any message of either practice, as it stands there or with what another message means. */
const pressBy = (actors: readonly Actor[]): fc.Arbitrary<ChatEvent> => {
  const rows = Object.values(two.messages).flat()
  const acts: Act[] = rows.flatMap(({ body: { buttons, pick } }) => [
    ...buttons.map((button: Button) => button.act),
    ...(pick ? [pick.act] : []),
  ])
  const from = fc.record({
    id: fc.constant(0).map(nextId),
    actor: fc.constantFrom(...actors),
    outbox: fc.constantFrom(...rows.map((row) => row.id)),
    act: fc.constantFrom(...acts),
  })
  const values = fc.subarray(['heron', 'osprey', ...two.ids[GUILD_2]!.slice(0, 5)])
  const filled = fc.constantFrom<Record<string, string | string[]>>(
    { text: 'a word', by: 'surgeon', on: '2026-03-09', reason: 'a reason', decision: 'hold' },
    { sessions: '2', reach: ['knee'], pain: ['3'], side: ['left'], signs: ['none'] },
  )
  return fc.oneof(
    fc
      .tuple(from, values)
      .map(([one, chosen]) => ({ ...one, kind: 'choice' as const, label: 'Press', values: chosen })),
    fc.tuple(from, filled).map(([one, form]) => ({ ...one, kind: 'form' as const, filled: form })),
  )
}

async function staysOut(event: ChatEvent, from: string, secret: string): Promise<void> {
  const { answer, touched, written } = await two.attempt(event)
  expect(touched(from)).toEqual([])
  expect(JSON.stringify(answer)).not.toContain(secret)
  expect(written).not.toContain(secret)
}

const runs = (numRuns: number) => ({ numRuns, endOnFailure: true })

describe('two practices in one bot are apart', () => {
  it('sees what is done within a practice', async () => {
    const event = { kind: 'command' as const, id: nextId(), actor: COACH_2, name: 'note' }
    const tried = await two.attempt({ ...event, options: { client: 'osprey', text: 'x' } })
    expect(tried.touched(GUILD_2)).toHaveLength(1)
    const record = { kind: 'command' as const, id: nextId(), actor: COACH_2, name: 'questions', options: {} }
    expect(JSON.stringify((await two.attempt(record)).answer)).toContain(SECRET)
  })

  it('no command of a coach or keeper reaches the other', async () => {
    await fc.assert(
      fc.asyncProperty(commandBy([COACH, KEEPER]), (event) => staysOut(event, GUILD_2, SECRET)),
      runs(150),
    )
  }, 120_000)

  it('no button or form of a coach reaches the other', async () => {
    const own = new Set(two.ids[GUILD_2])
    expect(two.messages[GUILD_2]!.some((row) => row.body.buttons.length > 0 && own.has(row.id))).toBe(true)
    await fc.assert(
      fc.asyncProperty(pressBy([COACH, KEEPER]), (event) => staysOut(event, GUILD_2, SECRET)),
      runs(150),
    )
  }, 120_000)

  it('no client of one reaches the client of the other, nor another client of the same practice', async () => {
    const clients = fc.oneof(commandBy([person('heron')]), pressBy([person('heron')]))
    await fc.assert(
      fc.asyncProperty(clients, (event) => staysOut(event, GUILD_2, SECRET)),
      runs(70),
    )
    const others = fc.oneof(commandBy([person('b-heron')]), pressBy([person('b-heron'), person('b-osprey')]))
    await fc.assert(
      fc.asyncProperty(others, (event) => staysOut(event, 'guild-1', 'swan')),
      runs(70),
    )
  }, 120_000)
})
