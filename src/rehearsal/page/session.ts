import { mkdirSync, mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { isDay } from '../../domain/day.ts'
import { instantOf } from '../../domain/local-time.ts'
import { type Status, statusOf } from '../../engine/status.ts'
import type { Modal } from '../platform/index.ts'
import { chatStage } from '../player/chat-stage.ts'
import { createClock } from '../player/clock.ts'
import { endOfRun } from '../player/ends.ts'
import { openingAt } from '../player/opening.ts'
import { begin } from '../player/play.ts'
import type { Programme } from '../player/programme.ts'
import type { Hooks, LiveStage } from '../player/stage.ts'
import type { Script } from '../scenario/index.ts'
import { Cards } from './cards.ts'
import { type Doc, type Recorded, scenarioText } from './recording.ts'
import type { Mark } from './wire.ts'
import { witnessed } from './witness.ts'

export interface Opening {
  readonly script: Script
  /** The scenario as plain values, for saving. */
  readonly doc: Doc
}
/** A form that the bot has opened, and what opened it. */
interface Open {
  readonly as: string
  readonly modal: Modal
  readonly card: string
  readonly control: string
  readonly label: string
}

/** One live practice: stand-in, chat client, engine and database under a virtual clock, and what was done in it. */
export class Session {
  readonly forms = new Map<string, Open>()
  readonly acts: Recorded[] = []
  readonly troubles: string[] = []
  /** Clients whom the reader has been: the script answers no question in their place any more. */
  readonly lived = new Set<string>()
  /** Of these a question that the script would have answered was left to the reader. */
  private readonly left = new Set<string>()
  /** What the script answered by itself. */
  private readonly answered: Recorded[] = []
  /** The faults that last, by kind, with what is written down of them. */
  readonly struck = new Map<'chat' | 'database', Recorded>()
  /** So many troubles of the log came of a fault that was played: they are told no more. */
  excused = 0
  aheadMs = 0
  clockChangeAt: Date | null = null
  statuses = new Map<string, Status>()
  flagMarks: Mark[] = []
  practiceZone: string
  /** Whether the practice has been set up. */
  isSetUp = false

  private constructor(
    readonly programme: Programme<LiveStage>,
    readonly cards: Cards,
    readonly doc: Doc,
    readonly folder: string,
  ) {
    this.practiceZone = programme.script.practice.zone
    programme.answering = {
      isLeft: (ref) => {
        const isLeft = this.lived.has(ref) || this.now > this.end
        if (isLeft) this.left.add(ref)
        return isLeft
      },
      gave: (who, item) => void this.answered.push({ at: this.now, who, item: { ...item } }),
    }
  }

  static async open({ script, doc }: Opening): Promise<Session> {
    const folder = mkdtempSync(join(tmpdir(), 'ebbline-live-'))
    const pictures = join(folder, 'pictures')
    mkdirSync(pictures, { mode: 0o700 })
    const isEmpty = script.clients.length === 0
    const clock = createClock(
      isEmpty ? instantOf(script.start, '06:00', script.practice.zone) : openingAt(script),
    )
    const session: { now: Session | null } = { now: null }
    const early: (() => void)[] = []
    const tell = (say: (cards: Cards) => void): void =>
      session.now ? say(session.now.cards) : void early.push(() => say(session.now!.cards))
    const stage = async (hooks: Hooks): Promise<LiveStage> => {
      const url = `file:${join(folder, 'practice.db')}`
      const tapped: Hooks = {
        ...hooks,
        onSent: (row, sent) => {
          tell((cards) => cards.sent(row))
          hooks.onSent(row, sent)
        },
        onHandled: (event, handled) => {
          tell((cards) => cards.handled(event, handled))
          hooks.onHandled(event, handled)
        },
      }
      const live = await chatStage({ url, clock, hooks: tapped, script })
      live.platform.on('message', (event) => tell((cards) => cards.posted(event)))
      return witnessed(live, clock, () => session.now!.cards)
    }
    const programme = await begin({ script, clock, folder: pictures, stage })
    const cards: Cards = new Cards({
      cast: programme.stage.cast,
      start: script.start,
      practiceZone: () => session.now?.practiceZone ?? script.practice.zone,
      zoneOf: (who) => programme.log.zoneOf(who),
    })
    session.now = new Session(programme, cards, doc, folder)
    for (const say of early) say()
    return session.now
  }

  get now(): Date {
    return this.programme.clock.world()
  }

  /** An instant before the end of the scenario, as its play ends. */
  get end(): Date {
    const { script, log } = this.programme
    return new Date(endOfRun(script, (ref) => log.zoneOf(ref)).getTime() - 1)
  }

  get stage(): LiveStage {
    return this.programme.stage
  }

  get refs(): string[] {
    return [...this.stage.cast.clients.keys()]
  }

  /** What was reported so far came of a fault. */
  excuse(): void {
    this.excused = this.programme.log.troubles.length
  }

  /** Writes down an act for the scenario that may be saved. */
  record(who: string, item: Recorded['item']): Recorded {
    const one = { at: this.now, who, item }
    this.acts.push(one)
    return one
  }

  /** Cards for all that has come. */
  async settle(): Promise<void> {
    this.programme.log.settle()
    const { stage } = this
    await this.cards.settle((id) =>
      stage.isDatabaseAway ? Promise.resolve(null) : stage.store.store.transaction((tx) => tx.outbox(id)),
    )
  }

  /** Looks at what the engine holds: where clients stand, and the episodes of the rules; not while the database is away. */
  async look(): Promise<void> {
    if (this.stage.isDatabaseAway) return
    const { guild } = this.stage.cast
    await this.stage.store.store.transaction(async (tx) => {
      const practice = await tx.practiceOfGuild(guild)
      this.isSetUp = practice !== null
      if (!practice) return
      this.practiceZone = practice.zone
      const files = await tx.roster(practice.id)
      const refs = new Map(files.map(({ client }) => [client.id, client.ref]))
      this.statuses = new Map(files.map((file) => [file.client.ref, statusOf(file)]))
      for (const { client } of files) this.programme.log.moved(client.ref, client.zone)
      const { flags } = await tx.proposals(practice.id)
      this.flagMarks = flags.flatMap(({ clientId, rule, openedAt }) => {
        const about = refs.get(clientId)
        return about ? [{ at: openedAt.toISOString(), kind: 'flag', about, card: null, what: rule }] : []
      })
    })
  }

  /** Everything so far as a scenario file. */
  saved(): string {
    const acts = this.acts.map((one) => ({ ...one, item: { ...one.item } }))
    for (const [kind, begun] of this.struck) {
      const copy = acts[this.acts.indexOf(begun)]!
      copy.item = { [kind]: begun.item[kind], for: lasting(begun.at, this.now) }
    }
    // whom the script no longer answers for: what it did answer is written down, each at its time
    const doc = structuredClone(this.doc)
    for (const client of doc.clients) if (this.left.has(String(client.ref))) delete client.answers
    acts.push(...this.answered.filter(({ who }) => this.left.has(who)))
    return scenarioText(doc, acts, { steps: this.programme.script.steps, now: this.now })
  }

  async close(): Promise<void> {
    for (const kind of this.struck.keys()) await this.stage.release(kind)
    await this.stage.close()
  }
}

/** Whole minutes, as a scenario writes them. */
export const lasting = (from: Date, to: Date): string =>
  `${Math.max(1, Math.round((to.getTime() - from.getTime()) / 60_000))}m`

/** A practice in which nothing has been done yet. */
export function emptyPractice(start: string, zone: string): Opening {
  if (!isDay(start)) throw new RangeError('no day')
  const practice = { zone, digest: 'Sun 18:00', region: null, window: 0, quote: true, 'by-hand': true }
  const script = {
    file: 'live.yaml',
    title: '',
    practice,
    start,
    days: 1000,
    clients: [],
    steps: [],
    expectations: [],
  }
  return { script, doc: { title: '', practice: { zone, 'by-hand': true }, start, days: 1, clients: [] } }
}
