import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { commands } from '../../commands/index.ts'
import { type Bot, createBot } from '../../src/bot.ts'
import type { OwnLadder } from '../../src/domain/ladder/ladder-file.ts'
import { LADDERS } from '../../src/domain/ladder/ladders.ts'
import { dayAt, instantOf } from '../../src/domain/local-time.ts'
import { createEngine } from '../../src/engine/engine.ts'
import type { Actor, Command, Filled } from '../../src/engine/event.ts'
import type { Answer, Message } from '../../src/engine/message.ts'
import { rungsOn } from '../../src/engine/plan/rungs.ts'
import type { ClientFile } from '../../src/engine/ports.ts'
import type { OutboxRow } from '../../src/engine/rows.ts'
import { statusOf } from '../../src/engine/status.ts'
import { type OpenStore, openStore } from '../../src/store/open.ts'
import { textsFor } from '../../src/text/index.ts'
import { setOwnLadders } from '../../src/text/own-ladders.ts'
import { onceDone } from './enrolled.ts'

const ZONE = 'Europe/Lisbon'
export const GUILD = 'guild-1'
export const COACH: Actor = { user: 'coach-1', guild: GUILD, roles: ['role-coach'], keeper: true }
export const person = (name: string): Actor => ({
  user: `user-${name}`,
  guild: null,
  roles: [],
  keeper: false,
})

export interface Saying {
  readonly minutesAgo?: number
  readonly edits?: string
  readonly id?: string
  readonly attached?: 'none' | 'file' | 'voice' | 'sticker'
}

export interface Delivered {
  readonly at: Date
  readonly to: string
  readonly message: Message
  readonly id: string
}

/** A practice on a real store with the real engine and delivery; only the platform is left out. */
export interface Practice {
  /** The file of the store. */
  readonly path: string
  readonly sent: Delivered[]
  readonly store: OpenStore
  readonly bot: Bot
  /** Moves the clock on, handling everything due on the way. */
  until(day: string, time: string): Promise<void>
  /** Words in private; `at` (minutes ago), the message edited, or the platform's id where they matter. */
  say(client: string, text: string, more?: Saying): Promise<Message[]>
  /** Takes a message back. */
  takeBack(client: string): Promise<Message[]>
  press(client: string, button: string, values?: string[], by?: Actor): Promise<Answer | null>
  /** The bot's clock moves on by minutes, handling everything due on the way. */
  wait(minutes: number): Promise<void>
  /** The clock alone moves: the bot was away. */
  away(day: string, time: string): void
  file(client: string): Promise<ClientFile>
  rungs(client: string, day?: string): Promise<Record<string, number>>
  fill(client: string, button: string, filled: Filled): Promise<Message[]>
  coachPress(about: string, button: string, by?: Actor): Promise<Answer | null>
  /** Presses a button beside an answer. */
  answerPress(answer: Answer | null, button: string, by?: Actor): Promise<Answer | null>
  /** A form behind a button of a message about a client, filled in by a coach. */
  coachFill(about: string, button: string, filled: Filled, by?: Actor): Promise<Answer | null>
  /** By the coach, by a client in private, or by somebody else as they are. */
  command(
    name: string,
    options?: Record<string, string | number | boolean>,
    by?: string | Actor,
    people?: Command['people'],
  ): Promise<Answer | null>
  /** Invited, agreed, screened and planned, an hour before the first prompt. */
  enrol(
    client: string,
    more?: Record<string, string | boolean>,
    screening?: Filled,
    plan?: string,
  ): Promise<void>
  /** Invited, and nothing more. */
  invite(client: string, more?: Record<string, string | boolean>): Promise<Answer | null>
  status(client: string): Promise<string>
  to(client: string): Message[]
  /** Messages to the coach's channel, to the alert channel, or to anybody. */
  toCoach(): Message[]
  toAlerts(): Message[]
  close(): Promise<void>
}

/**
 * @param settings options of `/set-up` beside the usual ones
 * @param own ladders of the practice beside the eight of the house
 */
export async function openPractice(
  start: string,
  settings: Record<string, string | number | boolean> = {},
  own: readonly OwnLadder[] = [],
): Promise<Practice> {
  const folder = mkdtempSync(join(tmpdir(), 'ebbline-engine-'))
  const path = join(folder, 'test.db')
  const store = await openStore(`file:${path}`)
  const clock = { now: instantOf(start, '05:00', ZONE) }
  const sent: Delivered[] = []
  const count = { id: 0 }
  const nextId = () => `event-${String(++count.id).padStart(6, '0')}`
  setOwnLadders(own)
  const ladders = [...LADDERS, ...own.map(({ ladder }) => ladder)]
  const engine = createEngine({ store: store.store, commands, textsFor, ladders })
  const bot = createBot({
    engine,
    dues: store.dues,
    outbox: store.outbox,
    now: () => clock.now,
    courier: {
      deliver: async (row: OutboxRow) => ({
        channel: `to-${row.body.address.to}`,
        platformId: `m-${row.id}`,
      }),
    },
    onSent: (row) => {
      const { address } = row.body
      sent.push({
        at: clock.now,
        to: address.to === 'client' ? address.user : address.to,
        message: row.body,
        id: row.id,
      })
    },
  })

  const during = async (work: () => Promise<unknown>): Promise<Message[]> => {
    const before = sent.length
    await work()
    return sent.slice(before).map((one) => one.message)
  }
  const lastWith = (to: (one: Delivered) => boolean, name: string) => {
    const found = sent.findLast(
      (one) =>
        to(one) && (one.message.buttons.some((b) => b.name === name) || one.message.pick?.name === name),
    )
    if (!found) throw new Error(`no message with “${name}”`)
    const button = found.message.buttons.find((b) => b.name === name)
    return { outbox: found.id, act: (button ?? found.message.pick)!.act, label: button?.label ?? name }
  }

  const runTo = async (goal: Date): Promise<void> => {
    for (let next = await bot.nextDue(); next !== null && next <= goal; next = await bot.nextDue()) {
      if (next > clock.now) clock.now = next
      await bot.tick()
    }
    clock.now = goal
  }
  const file = (client: string): Promise<ClientFile> =>
    store.store.transaction(async (tx) => {
      const found = await tx.clientByRef(GUILD, client)
      if (!found) throw new Error(`no client ${client}`)
      return found
    })

  const enrol = async (
    client: string,
    more: Record<string, string | boolean>,
    screening: Filled,
    plan: string,
  ): Promise<void> => {
    await practice.invite(client, more)
    await practice.press(client, 'consent-yes')
    await practice.press(client, 'sexual-yes')
    const all: Filled = {
      signs: ['none'],
      age: '41',
      onset: '2026-02-10',
      earlier: ['no'],
      seen: ['yes'],
      risks: ['none'],
      known: ['none'],
      reach: ['calf'],
      pain: ['6'],
      side: ['left'],
      eases: ['extension'],
      activities: 'rowing 7',
      lift: 'deadlift',
      ...screening,
    }
    const part = (...names: string[]) => Object.fromEntries(names.map((name) => [name, all[name]!]))
    await practice.fill(client, 'fill-in', part('signs', 'age', 'onset', 'earlier', 'seen'))
    if ((await practice.status(client)) === 'locked') return
    await practice.fill(client, 'fill-in', part('risks', 'known', 'reach', 'pain', 'side'))
    await practice.fill(client, 'fill-in', part('eases', 'activities', 'lift'))
    if (plan) await practice.command('plan', { client, sessions: 2, ladders: plan, anyway: true })
  }

  const practice: Practice = {
    path,
    sent,
    store,
    bot,
    until: (day, time) => runTo(instantOf(day, time, ZONE)),
    async wait(minutes) {
      const goal = new Date(clock.now.getTime() + minutes * 60_000)
      await runTo(goal)
    },
    away(day, time) {
      clock.now = instantOf(day, time, ZONE)
    },
    say: (client, text, { minutesAgo = 0, edits, id, attached = 'none' } = {}) =>
      during(() =>
        bot.handle({
          kind: 'words',
          id: id ?? nextId(),
          actor: person(client),
          at: new Date(clock.now.getTime() - minutesAgo * 60_000),
          text,
          edits: edits ?? null,
          attached,
        }),
      ),
    takeBack: (client) =>
      during(() =>
        bot.handle({ kind: 'taken-back', id: nextId(), actor: person(client), message: 'message-1' }),
      ),
    async press(client, name, values = [], by = person(client)) {
      const target = lastWith((one) => one.to === `user-${client}`, name)
      return (await bot.handle({ kind: 'choice', id: nextId(), actor: by, ...target, values })).answer
    },
    fill: (client, name, filled) =>
      during(() =>
        bot.handle({
          kind: 'form',
          id: nextId(),
          actor: person(client),
          ...lastWith((one) => one.to === `user-${client}`, name),
          filled,
        }),
      ),
    async coachPress(about, name, by = COACH) {
      const target = lastWith((one) => one.message.about === about && one.to !== `user-${about}`, name)
      return (await bot.handle({ kind: 'choice', id: nextId(), actor: by, ...target, values: [] })).answer
    },
    async answerPress(answer, name, by = COACH) {
      const button = answer?.choices?.buttons.find((one) => one.name === name)
      if (!button) throw new Error(`no answer with “${name}”`)
      const { act, label } = button
      const target = { outbox: answer!.choices!.outbox!, act, label, values: [] }
      return (await bot.handle({ kind: 'choice', id: nextId(), actor: by, ...target })).answer
    },
    async coachFill(about, name, filled, by = COACH) {
      const target = lastWith((one) => one.message.about === about && one.to !== `user-${about}`, name)
      return (await bot.handle({ kind: 'form', id: nextId(), actor: by, ...target, filled })).answer
    },
    async command(name, options = {}, by = 'coach', people) {
      const actor = typeof by !== 'string' ? by : by === 'coach' ? COACH : person(by)
      const more = people ? { people } : {}
      return (await bot.handle({ kind: 'command', id: nextId(), actor, name, options, ...more })).answer
    },
    invite: (client, more = {}) =>
      practice.command('enrol', {
        person: `user-${client}`,
        alias: client,
        side: 'left',
        prompt: '08:00',
        ...more,
      }),
    enrol: (client, more = {}, screening = {}, plan = 'extension:1 glide:1') =>
      onceDone({ path, sent, count }, [client, more, screening, plan, clock.now, own], () =>
        enrol(client, more, screening, plan),
      ),
    status: async (client) => statusOf(await file(client)),
    file,
    rungs: async (client, day) => rungsOn(await file(client), day ?? dayAt(clock.now, ZONE)),
    toCoach: () => sent.filter((one) => one.to === 'coach').map((one) => one.message),
    toAlerts: () => sent.filter((one) => one.to === 'alerts').map((one) => one.message),
    to: (client) => sent.filter((one) => one.to === `user-${client}`).map((one) => one.message),
    async close() {
      await store.close()
      rmSync(folder, { recursive: true, force: true })
    },
  }
  await practice.command('set-up', {
    'coach-role': 'role-coach',
    'coach-channel': 'channel-coach',
    'alert-channel': 'channel-alerts',
    zone: ZONE,
    digest: 'Sun 18:00',
    region: 'PT',
    'policy-settled': true,
    ...settings,
  })
  return practice
}
