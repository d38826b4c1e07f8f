import { readCustomId } from '../../chat/custom-id.ts'
import type { OutboxRow } from '../../engine/rows.ts'
import { ComponentType, compareSnowflakes, type Platform } from '../platform/index.ts'
import { walkComponents } from '../platform/wire.ts'
import type { StoredMessage } from '../platform/world.ts'
import type { Use } from '../scenario/index.ts'
import { type Cast, userOf } from './cast.ts'

/** A button or list on a message, as somebody sees it. */
export interface Usable {
  readonly message: string
  readonly customId: string
  readonly isList: boolean
  readonly name: string
}
type RowOf = (outbox: string) => Promise<OutboxRow | null>

/** What somebody can use of what lies before them, by its name. */
export class Shown {
  private readonly names = new Map<string, string | null>()

  constructor(
    private readonly platform: Platform,
    private readonly cast: Cast,
    private readonly rowOf: RowOf,
  ) {}

  /** The newest of this name but for `back` of them; null where there are not so many. */
  async find(who: string, { name, back }: Pick<Use, 'name' | 'back'>): Promise<Usable | null> {
    let left = back
    for (const message of this.visible(who))
      for (const one of await this.usableOn(message)) {
        if (one.name !== name) continue
        if (left === 0) return one
        left -= 1
      }
    return null
  }

  /** How a component is told from the others: its name, and how many of that name are newer. */
  async placeOf(who: string, message: string, customId: string): Promise<Pick<Use, 'name' | 'back'> | null> {
    const name = await this.nameOf(customId)
    if (name === null) return null
    let back = 0
    for (const other of this.visible(who))
      for (const one of await this.usableOn(other)) {
        if (other.wire.id === message && one.customId === customId) return { name, back }
        if (one.name === name) back += 1
      }
    return null
  }

  /** Messages before somebody, newest first. */
  private visible(who: string): StoredMessage[] {
    const { world } = this.platform
    const user = userOf(this.cast, who)
    const { coachChannel, alertChannel, hall } = this.cast
    const rooms = who === 'coach' ? [coachChannel, alertChannel, hall] : [hall]
    const lists = [world.dmChannel(user), ...rooms.map((id) => world.channels.get(id)!)]
    return lists
      .flatMap(({ messages }) => messages)
      .filter(({ onlyFor }) => onlyFor === null || onlyFor === user)
      .sort((a, b) => compareSnowflakes(b.wire.id, a.wire.id))
  }

  private async usableOn({ wire }: StoredMessage): Promise<Usable[]> {
    const found: Usable[] = []
    const parts: { customId: string; isList: boolean }[] = []
    walkComponents(wire.components, ({ custom_id: customId, type, disabled }) => {
      if (customId && !disabled) parts.push({ customId, isList: type === ComponentType.stringSelect })
    })
    for (const part of parts) {
      const name = await this.nameOf(part.customId)
      if (name !== null) found.push({ message: wire.id, name, ...part })
    }
    return found
  }

  private async nameOf(customId: string): Promise<string | null> {
    const known = this.names.get(customId)
    if (known !== undefined) return known
    const ref = readCustomId(customId)
    const row = ref && (await this.rowOf(ref.outbox))
    const name =
      !ref || !row ? null : ref.part === 'pick' ? row.body.pick?.name : row.body.buttons[ref.index]?.name
    if (row) this.names.set(customId, name ?? null)
    return name ?? null
  }
}
