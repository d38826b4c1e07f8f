import type { Act } from '../../engine/message.ts'
import type { OutboxRow } from '../../engine/rows.ts'

export interface Found {
  readonly row: OutboxRow
  /** Place of the button among those of the message. */
  readonly index: number
}

interface Kept {
  readonly row: OutboxRow
  /** Acts that have been settled by a press: their buttons are gone. */
  readonly settled: Act[]
}

const same = (a: Act, b: Act): boolean => a.do === b.do && a.ask === b.ask

/** The messages that lie before people, with the buttons still on them. */
export class Board {
  private readonly kept = new Map<string, Kept[]>()

  add(to: string, row: OutboxRow): void {
    this.kept.set(to, [...(this.kept.get(to) ?? []), { row, settled: [] }])
  }

  /** The last message before somebody (about a client, where one is named) that has a button of this name. */
  find(to: string, name: string, about: string | null = null): Found | null {
    for (const { row, settled } of [...(this.kept.get(to) ?? [])].reverse()) {
      if (about !== null && row.body.about !== about) continue
      const index = row.body.buttons.findIndex(
        (button) => button.name === name && !settled.some((act) => same(act, button.act)),
      )
      if (index >= 0) return { row, index }
    }
    return null
  }

  /** The last message before somebody that asks something which `which` picks. */
  lastAsking(to: string, which: (asks: string) => boolean): OutboxRow | null {
    const rows = [...(this.kept.get(to) ?? [])].reverse().map(({ row }) => row)
    return rows.find(({ body }) => body.asks !== null && which(body.asks)) ?? null
  }

  /** An answer was shown in place of what was pressed: every choice that answers the same is gone. */
  settle(outbox: string, act: Act): void {
    for (const list of this.kept.values())
      for (const { row, settled } of list) if (row.id === outbox) settled.push(act)
  }
}
