import type { Answer } from '../../engine/message.ts'
import type { OutboxRow } from '../../engine/rows.ts'
import type { Script } from '../scenario/index.ts'
import type { Board } from './board.ts'
import { type Cast, readable, whoIs } from './cast.ts'
import type { VirtualClock } from './clock.ts'
import { endOf } from './ends.ts'
import type { Hooks, Stage } from './stage.ts'
import { type Delivered, delivered, recipient, type Said, type Shown, shelf } from './transcript.ts'

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
interface LogParts {
  readonly script: Script
  readonly clock: VirtualClock
  readonly board: Board
  /** Folder for pictures and files. */
  readonly folder: string
}

/** Keeps all that is delivered and done, in order. */
export class Log {
  readonly lines: Line[] = []
  readonly story: (Deed | Shown)[] = []
  /** What went wrong and must not be passed over. */
  readonly troubles: string[] = []
  /** The bot's own log, a line of JSON each. */
  readonly logged: string[] = []
  /** Lists also what comes after the last day, for a play that is lived on. */
  isOpenEnded = false
  /** Hears of a message to a client that asks something. */
  onAsked: (ref: string, row: OutboxRow) => void = () => {}

  private readonly zones: Map<string, string>
  private readonly lastDeed = new Map<string, Date>()
  private readonly shelf: ReturnType<typeof shelf>
  private answers: { readonly who: string; readonly answer: Answer }[] = []
  private cast: Cast | null = null

  constructor(private readonly parts: LogParts) {
    this.zones = new Map(parts.script.clients.map(({ ref, zone }) => [ref, zone]))
    this.shelf = shelf(parts.folder)
  }

  get hooks(): Hooks {
    return {
      onSent: (row) => this.sent(row),
      onHandled: (event, { answer }) => {
        if (!answer) return
        if (event.kind === 'command') this.answers.push({ who: this.nameOf(event.actor.user), answer })
        if (event.kind === 'choice' && !answer.privately) this.parts.board.settle(event.outbox, event.act)
      },
      onTrouble: (what) => this.trouble(what),
      onLogged: (line) => void this.logged.push(line),
    }
  }

  begin(stage: Stage): void {
    this.cast = stage.cast
  }

  deed(who: string, what: string): void {
    const at = this.parts.clock.world()
    this.lastDeed.set(who, at)
    this.story.push({ at, zone: this.zoneOf(who), who, what })
  }

  trouble(what: string): void {
    this.troubles.push(what)
  }

  /** A client has gone to another zone. */
  moved(ref: string, zone: string): void {
    this.zones.set(ref, zone)
  }

  zoneOf(who: string): string {
    return this.zones.get(who) ?? this.parts.script.practice.zone
  }

  /** Lists the answers that the last act was given: after the messages that it led to, as they are shown. */
  settle(): void {
    for (const { who, answer } of this.answers)
      this.list(who === 'coach' ? 'coach' : `client:${who}`, {
        ...answer,
        buttons: answer.choices?.buttons ?? [],
      })
    this.answers = []
  }

  /** Resolves when every picture and file so far lies in the folder. */
  written(): Promise<void> {
    return this.shelf.written()
  }

  private sent(row: OutboxRow): void {
    const to = recipient(row.body.address, (user) => this.nameOf(user))
    this.parts.board.add(to, row)
    this.list(to, row.body)
    if (row.body.asks !== null && to.startsWith('client:')) this.onAsked(refOf(to)!, row)
  }

  private list(to: string, said: Said): void {
    const { script, clock } = this.parts
    const at = clock.world()
    const ref = refOf(to)
    // for a client the run is over with their own last day, though others live on
    if (
      !this.isOpenEnded &&
      ref !== null &&
      this.zones.has(ref) &&
      at >= endOf(script, ref, this.zoneOf(ref))
    )
      return
    const text = this.cast ? readable(said.text, this.cast) : said.text
    const picture = said.picture ? this.shelf.picture(said.picture) : null
    const message = delivered(at, to, this.zoneOf(ref ?? to), { ...said, text }, picture)
    const cause = this.lastDeed.get(said.about ?? ref ?? '')
    this.lines.push({ message, sinceMs: cause ? at.getTime() - cause.getTime() : null })
    this.story.push({ message, files: said.files.map((file) => this.shelf.file(file)) })
  }

  private nameOf(user: string): string {
    return (this.cast && whoIs(this.cast, user)) ?? user
  }
}

const refOf = (to: string): string | null => (to.startsWith('client:') ? to.slice('client:'.length) : null)
