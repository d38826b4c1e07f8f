import { textsFor } from '../../text/index.ts'
import { ScenarioProblems } from '../scenario/index.ts'
import { NotDone } from './acting.ts'
import { carryOut } from './carrying-out.ts'
import { firstStepsOf } from './first-steps.ts'
import { commandOffers, scenarioOffers } from './offers.ts'
import { passTo } from './passing.ts'
import { changedDays, NO_RIBBON, type Ribbon, ribbonOf } from './ribbon.ts'
import type { Session } from './session.ts'
import { cardsBefore, liesBefore, phonesOf, stateOf } from './view.ts'
import type { Action, Card, Change, Done, OpenForm, Refused, Snapshot } from './wire.ts'

interface Reader {
  readonly who: string | null
  readonly send: (event: 'snapshot' | 'change', data: Snapshot | Change) => void
}
const { page } = textsFor('en').rehearsal
/** Real time between two pictures of a time that runs. */
const FRAME_MS = 150
/** The same while an act lasts: each takes its own time from what is waited for. */
const GLIMPSE_MS = 400

/** Holds the practice that is lived in, carries out acts one at a time, and tells every reader what has changed. */
export class Hub {
  private readonly readers = new Set<Reader>()
  private queue: Promise<unknown> = Promise.resolve()
  private busy = 0
  private playing: number | null = null
  private number = 1
  private ribbon: Ribbon = NO_RIBBON
  private told = 0
  private isClosed = false
  private readonly offers = { commands: commandOffers(), scenarios: scenarioOffers() }

  constructor(public session: Session) {}

  /** Everything as it stands, for somebody who has just come. */
  async snapshot(who: string | null): Promise<Snapshot> {
    const { session } = this
    const phones = phonesOf(session)
    const chosen = phones.some(({ ref }) => ref === who) ? who : (phones[0]?.ref ?? null)
    const mine = cardsBefore(session, chosen, null)
    const coachs = cardsBefore(session, 'coach', null)
    return {
      ...(await stateOf(session, { busy: this.busy > 0, playing: this.playing })),
      session: this.number,
      title: session.programme.script.title,
      who: chosen,
      clients: phones,
      days: ribbonOf(session).days,
      cards: inOrder(session, [...mine.cards, ...coachs.cards]),
      more: { client: mine.more, coach: coachs.more },
      ...this.offers,
      firstSteps: firstStepsOf(session),
    }
  }

  /** Sends a snapshot, then whatever changes; gives the way to stop. */
  async listen(who: string | null, send: Reader['send']): Promise<() => void> {
    const first = await this.inTurn(() => this.snapshot(who))
    const reader = { who: first.who, send }
    this.readers.add(reader)
    send('snapshot', first)
    return () => void this.readers.delete(reader)
  }

  async act(action: Action): Promise<Done | Refused> {
    // whoever acts stops the time that runs
    this.playing = action.do === 'play' ? this.playing : null
    if (action.do === 'pause') {
      await this.inTurn(() => this.tell(true))
      return { ok: true, form: null, cards: [] }
    }
    if (action.do === 'play') return this.play(action.speed)
    this.busy += 1
    try {
      return await this.inTurn(() => this.one(action))
    } finally {
      this.busy -= 1
      void this.inTurn(() => this.tell(false)).catch(() => {})
    }
  }

  /** Looks at the practice as it was handed over. */
  async ready(): Promise<void> {
    await this.session.settle()
    await this.session.look()
    this.session.cards.take()
    this.ribbon = ribbonOf(this.session)
  }

  /** Goes on living in another practice. */
  async begin(opening: Session): Promise<void> {
    const before = this.session
    this.session = opening
    this.number += 1
    await before.close()
    await this.ready()
    for (const reader of this.readers) reader.send('change', { anew: await this.snapshot(reader.who) })
  }

  async close(): Promise<void> {
    this.isClosed = true
    this.playing = null
    await this.queue.catch(() => {})
    await this.session.close()
  }

  /** In the order in which they came, one at a time. */
  inTurn<T>(work: () => Promise<T>): Promise<T> {
    const next = this.queue.then(work, work)
    this.queue = next.catch(() => {})
    return next
  }

  private async one(action: Action): Promise<Done | Refused> {
    const known = new Set(this.session.cards.all.keys())
    try {
      const form: OpenForm | null = await carryOut(this, action, () => this.seen())
      await this.tell(true)
      const cards = [...this.session.cards.all.keys()].filter((id) => !known.has(id))
      return { ok: true, form, cards }
    } catch (error) {
      await this.tell(true)
      if (error instanceof NotDone || error instanceof ScenarioProblems)
        return { ok: false, problem: error.message }
      this.session.troubles.push(String(error))
      return { ok: false, problem: page.busy }
    }
  }

  private play(speed: number): Done | Refused {
    if (!Number.isFinite(speed) || speed < 60 || speed > 604_800) return { ok: false, problem: page.speed }
    const isOn = this.playing !== null
    this.playing = speed
    if (!isOn) void this.run()
    return { ok: true, form: null, cards: [] }
  }

  /** Time runs by itself: so many virtual seconds for each real one, less where there is much to do. */
  private async run(): Promise<void> {
    while (this.playing !== null && !this.isClosed) {
      await new Promise((resolve) => setTimeout(resolve, FRAME_MS))
      await this.inTurn(async () => {
        if (this.playing === null) return
        const target = new Date(this.session.now.getTime() + this.playing * FRAME_MS)
        await passTo(this.session.programme, target, () => {})
        await this.tell(true)
      })
    }
  }

  /** While much happens, now and then. */
  private async seen(): Promise<void> {
    if (performance.now() - this.told < GLIMPSE_MS) return
    await this.tell(false)
  }

  /** Tells every reader what has changed; `looks`: at the engine's rows, too. */
  private async tell(looks: boolean): Promise<void> {
    const { session } = this
    await session.settle()
    if (looks) await session.look()
    this.told = performance.now()
    const { cards, gone } = session.cards.take()
    const after = ribbonOf(session)
    const days = changedDays(this.ribbon, after)
    this.ribbon = after
    const state = await stateOf(session, { busy: this.busy > 0, playing: this.playing })
    const shared: Change = {
      ...state,
      ...(looks ? { clients: phonesOf(session), firstSteps: firstStepsOf(session) } : {}),
      ...(days.length > 0 ? { days } : {}),
      ...(gone.length > 0 ? { gone } : {}),
    }
    for (const { who, send } of this.readers) {
      const theirs = cards.filter((card: Card) => card.side === 'coach' || liesBefore(card, who))
      send('change', theirs.length > 0 ? { ...shared, cards: theirs } : shared)
    }
  }
}

/** As they came: at one instant the order of the lists alone would not tell what led to what. */
function inOrder({ cards }: Session, chosen: readonly Card[]): Card[] {
  const ids = new Set(chosen.map(({ id }) => id))
  return [...cards.all.values()].filter(({ id }) => ids.has(id))
}
