import { addDays } from '../../domain/day.ts'
import { instantOf } from '../../domain/local-time.ts'
import type { Answer } from '../../engine/message.ts'
import type { OutboxRow } from '../../engine/rows.ts'
import type { Script } from '../scenario/index.ts'
import type { Board } from './board.ts'
import { type Cast, readable, whoIs } from './cast.ts'
import type { VirtualClock } from './clock.ts'
import type { Hooks, Stage } from './stage.ts'
import { type Delivered, delivered, pictureShelf, recipient } from './transcript.ts'

/** What somebody did, for the transcript that is read by people. */
export interface Deed {
  readonly at: Date
  readonly zone: string
  readonly who: string
  readonly what: string
}
export interface Line {
  readonly message: Delivered
  /** Milliseconds since the client's own last message or press; null where there was none. */
  readonly sinceMs: number | null
}

/** Keeps all that is delivered and done, in order. */
export interface Log {
  readonly hooks: Hooks
  readonly lines: readonly Line[]
  readonly story: readonly (Deed | Delivered)[]
  /** What went wrong and must not be passed over. */
  readonly troubles: readonly string[]
  /** Hears of a message to a client that asks something. */
  onAsked: (ref: string, row: OutboxRow) => void
  begin(stage: Stage): void
  /** Lists the answers that the last act was given. */
  settle(): void
  deed(who: string, what: string): void
  trouble(what: string): void
  zoneOf(who: string): string
  moved(ref: string, zone: string): void
  /** Midnight after a client's last local day; null for the practice: the end of the run. */
  endOf(ref: string): Date
  endOfRun(): Date
}

interface LogParts {
  readonly script: Script
  readonly clock: VirtualClock
  readonly board: Board
  readonly folder: string
}

const HOUR = 3_600_000

export function createLog({ script, clock, board, folder }: LogParts): Log {
  const lines: Line[] = []
  const story: (Deed | Delivered)[] = []
  const troubles: string[] = []
  const zones = new Map(script.clients.map(({ ref, zone }) => [ref, zone]))
  const lastDeed = new Map<string, Date>()
  const shelf = pictureShelf(folder)
  let answers: { who: string; answer: Answer }[] = []
  let cast: Cast | null = null

  const zoneOf = (who: string): string => zones.get(who.replace(/^client:/, '')) ?? script.practice.zone

  const endOf = (ref: string): Date => {
    const midnight = instantOf(addDays(script.start, script.days), '00:00', zoneOf(ref))
    const last = script.steps.findLast(({ act }) => act.who === 'client' && act.ref === ref)?.at
    return last && last >= midnight ? new Date(last.getTime() + HOUR) : midnight
  }

  const add = (to: string, said: Parameters<typeof delivered>[3]): void => {
    const at = clock.world()
    const ref = to.startsWith('client:') ? to.slice('client:'.length) : null
    // for a client the run is over with their own last day, though others live on
    if (ref !== null && script.clients.some((client) => client.ref === ref) && at >= endOf(ref)) return
    const picture = said.picture ? shelf(said.picture) : null
    const text = cast ? readable(said.text, cast) : said.text
    const message = delivered(at, to, zoneOf(to), { ...said, text }, picture)
    const cause = lastDeed.get(said.about ?? ref ?? '')
    lines.push({ message, sinceMs: cause ? at.getTime() - cause.getTime() : null })
    story.push(message)
  }

  const log: Log = {
    lines,
    story,
    troubles,
    zoneOf,
    endOf,
    onAsked: () => {},
    begin(stage) {
      cast = stage.cast
    },
    deed(who, what) {
      lastDeed.set(who, clock.world())
      story.push({ at: clock.world(), zone: zoneOf(who), who, what })
    },
    trouble: (what) => void troubles.push(what),
    moved: (ref, zone) => void zones.set(ref, zone),
    settle() {
      for (const { who, answer } of answers) {
        add(who === 'coach' ? 'coach' : `client:${who}`, { ...answer, buttons: [] })
      }
      answers = []
    },
    endOfRun() {
      const practice = instantOf(addDays(script.start, script.days), '00:00', script.practice.zone)
      const last = script.steps.at(-1)
      const ends = [
        practice,
        ...script.clients.map(({ ref }) => endOf(ref)),
        last ? new Date(last.at.getTime() + 1) : practice,
      ]
      return new Date(Math.max(...ends.map((end) => end.getTime())))
    },
    hooks: {
      onSent(row) {
        const to = recipient(row.body.address, (user) => (cast ? whoIs(cast, user) : null))
        board.add(to, row)
        add(to, row.body)
        if (row.body.asks !== null && to.startsWith('client:')) log.onAsked(to.slice('client:'.length), row)
      },
      onHandled(event, { answer }) {
        if (!answer) return
        if (event.kind === 'command' && cast) {
          answers.push({ who: whoIs(cast, event.actor.user) ?? event.actor.user, answer })
        }
        if (event.kind === 'choice' && !answer.privately) board.settle(event.outbox, event.act)
      },
      onTrouble: (what) => void troubles.push(what),
    },
  }
  return log
}
