import { readCustomId } from '../../chat/custom-id.ts'
import { daysBetween } from '../../domain/day.ts'
import { dayAt, timeAt } from '../../domain/local-time.ts'
import type { Event } from '../../engine/event.ts'
import type { Answer, MessageKind } from '../../engine/message.ts'
import type { Handled } from '../../engine/ports.ts'
import type { OutboxRow } from '../../engine/rows.ts'
import type { PostedAttachment, PostedEvent, PostedMessage } from '../platform/index.ts'
import { type Cast, readable, whoIs } from '../player/cast.ts'
import { controlsOf } from './controls.ts'
import type { Card } from './wire.ts'

interface Frame {
  readonly cast: Cast
  readonly start: string
  readonly practiceZone: () => string
  readonly zoneOf: (who: string) => string
}
type Meta = Pick<OutboxRow['body'] | Answer, 'kind' | 'care' | 'about' | 'asks'>

/** Which kinds a flag or a proposal may stand behind. */
const EXPLAINED: readonly MessageKind[] = [
  'proposal',
  'digest',
  'roll-call',
  'alert',
  'alert-repeat',
  'decision',
  'receipt',
  'urgent',
]

/** Every message on the stand-in, and what people did otherwise, as cards; the latest state of each. */
export class Cards {
  readonly all = new Map<string, Card>()
  readonly attached = new Map<string, PostedAttachment>()
  /** Cards that came or changed, and that went, since `take` was called last. */
  private fresh = new Set<string>()
  private gone = new Set<string>()
  private readonly rows = new Map<string, OutboxRow>()
  private readonly answers = new Map<string, Answer>()
  private waiting: PostedEvent[] = []
  private deeds = 0

  constructor(private readonly frame: Frame) {}

  sent(row: OutboxRow): void {
    this.rows.set(row.id, row)
  }

  handled(event: Event, { answer }: Handled): void {
    if (answer && 'id' in event) this.answers.set(event.id, answer)
    if (answer && event.kind === 'choice' && !answer.privately) this.rows.get(event.outbox)
  }

  posted(event: PostedEvent): void {
    this.waiting.push(event)
  }

  /** Makes cards of what has come, once all is quiet; `rowOf` reads a row that was shown and never sent. */
  async settle(rowOf: (id: string) => Promise<OutboxRow | null>): Promise<void> {
    const events = this.waiting
    this.waiting = []
    for (const event of events) {
      if (event.change === 'deleted') this.drop(event.id)
      else await this.show(event, rowOf)
    }
  }

  /** A message that a person wrote, as it stands on the platform; null: taken back. */
  own(who: string, message: PostedMessage | null, id: string): void {
    if (!message) return this.drop(id)
    const before = this.all.get(id)
    this.put({
      ...this.bare(who, new Date(message.at)),
      id,
      kind: 'words',
      text: message.content,
      edited: editedAt(message),
      explains: who !== 'coach',
      ...(before ? { at: before.at, local: before.local, day: before.day } : {}),
    })
  }

  /** Something that a person did otherwise. */
  deed(who: string, text: string, at: Date): string {
    this.deeds += 1
    const id = `deed-${this.deeds}`
    this.put({ ...this.bare(who, at), id, kind: 'act', text, explains: false })
    return id
  }

  /** What is new since the last time. */
  take(): { cards: Card[]; gone: string[] } {
    const cards = [...this.fresh].flatMap((id) => this.all.get(id) ?? [])
    const gone = [...this.gone]
    this.fresh = new Set()
    this.gone = new Set()
    return { cards, gone }
  }

  /** The name under which a component is known, and whether it opens a form. */
  opensForm(customId: string): boolean {
    const ref = readCustomId(customId)
    return ref?.part === 'button' && this.rows.get(ref.outbox)?.body.buttons[ref.index]?.form !== undefined
  }

  private async show(event: PostedEvent, rowOf: (id: string) => Promise<OutboxRow | null>): Promise<void> {
    for (const id of controlsOf(event.components, () => false)
      .flat()
      .map((one) => readCustomId(one.id)?.outbox)) {
      if (id === undefined || this.rows.has(id)) continue
      const row = await rowOf(id)
      if (row) this.rows.set(id, row)
    }
    const before = this.all.get(event.id)
    const meta = this.metaOf(event)
    const place = this.placeOf(event)
    for (const one of event.attachments) this.attached.set(one.id, one)
    const { cast, start, practiceZone, zoneOf } = this.frame
    const at = new Date(event.at)
    const zone = place.side === 'client' ? zoneOf(place.owner) : practiceZone()
    this.put({
      id: event.id,
      side: place.side,
      place: place.place,
      from: 'bot',
      at: at.toISOString(),
      local: `${dayAt(at, zone)}T${timeAt(at, zone)}`,
      day: daysBetween(start, dayAt(at, practiceZone())) + 1,
      kind: meta?.kind ?? before?.kind ?? 'reply',
      care: meta?.care ?? before?.care ?? 'none',
      about: meta?.about ?? before?.about ?? (place.side === 'client' ? place.owner : null),
      asks: meta?.asks ?? null,
      text: readable(event.content, cast),
      isPrivate: event.ephemeral,
      edited: editedAt(event),
      rows: controlsOf(event.components, (id) => this.opensForm(id)),
      pictures: event.attachments
        .filter(isPicture)
        .map((one) => ({ url: urlOf(one), alt: one.description ?? '', ...sizeOf(one.data) })),
      files: event.attachments
        .filter((one) => !isPicture(one))
        .map((one) => ({ url: urlOf(one), name: one.filename })),
      explains: meta !== null && EXPLAINED.includes(meta.kind) && meta.about !== null,
    })
  }

  private metaOf({ nonce, interactionId }: PostedEvent): Meta | null {
    const row = nonce === null ? undefined : this.rows.get(nonce.replace(/\+\d+$/, ''))
    if (row) return row.body
    return (interactionId === null ? undefined : this.answers.get(interactionId)) ?? null
  }

  private placeOf({ guildId, channelId, recipient }: PostedMessage): {
    side: Card['side']
    place: string
    owner: string
  } {
    const { cast } = this.frame
    const owner = recipient === null ? 'coach' : (whoIs(cast, recipient) ?? 'coach')
    const side = owner === 'coach' ? 'coach' : 'client'
    if (guildId === null)
      return { side, owner, place: owner === 'coach' ? 'coach-private' : `client:${owner}` }
    const room =
      channelId === cast.coachChannel ? 'coach' : channelId === cast.alertChannel ? 'alerts' : 'hall'
    return { side, owner, place: room }
  }

  private bare(who: string, at: Date): Omit<Card, 'id' | 'kind' | 'text' | 'explains'> {
    const { start, practiceZone, zoneOf } = this.frame
    const isCoach = who === 'coach'
    const zone = isCoach ? practiceZone() : zoneOf(who)
    return {
      side: isCoach ? 'coach' : 'client',
      place: isCoach ? 'coach' : `client:${who}`,
      from: isCoach ? 'coach' : 'client',
      at: at.toISOString(),
      local: `${dayAt(at, zone)}T${timeAt(at, zone)}`,
      day: daysBetween(start, dayAt(at, practiceZone())) + 1,
      care: 'none',
      about: isCoach ? null : who,
      asks: null,
      isPrivate: false,
      edited: null,
      rows: [],
      pictures: [],
      files: [],
    }
  }

  private put(card: Card): void {
    this.all.set(card.id, card)
    this.fresh.add(card.id)
  }

  private drop(id: string): void {
    if (!this.all.delete(id)) return
    this.fresh.delete(id)
    this.gone.add(id)
  }
}

const editedAt = ({ editedAt: at }: PostedMessage): string | null =>
  at === null ? null : new Date(at).toISOString()
const isPicture = ({ contentType }: PostedAttachment): boolean => contentType.startsWith('image/png')
/** Width and height stand in a PNG's first chunk (PNG specification, "IHDR"), so that nothing moves while it loads. */
const sizeOf = (png: Buffer): { width: number; height: number } => ({
  width: png.readUInt32BE(16),
  height: png.readUInt32BE(20),
})
const urlOf = ({ id, filename }: PostedAttachment): string => `attached/${id}/${encodeURIComponent(filename)}`
