import type { Message } from '../../src/engine/message.ts'
import type { OutboxStore } from '../../src/engine/ports.ts'
import type { OutboxRow } from '../../src/engine/rows.ts'

export const message = (more: Partial<Message> = {}): Message => ({
  key: 'prompt/heron/2026-03-08',
  address: { to: 'client', user: '200' },
  about: 'heron',
  kind: 'prompt',
  asks: null,
  care: 'none',
  text: 'Good morning.',
  drills: [],
  buttons: [],
  pick: null,
  picture: null,
  files: [],
  mentions: { roles: [], users: [] },
  ...more,
})

let written = 0
export const row = (more: Partial<OutboxRow> = {}): OutboxRow => {
  written += 1
  return {
    id: `row-${written}`,
    key: `key-${written}`,
    practiceId: 'p:boathouse',
    clientId: 'c:heron',
    kind: 'prompt',
    body: message(),
    priority: 3,
    seq: written,
    state: 'waiting',
    notBefore: new Date(0),
    expires: null,
    attempts: 0,
    sentAt: null,
    channel: null,
    platformId: null,
    reason: null,
    ...more,
  }
}

/** An outbox in memory; `broken` makes every write fail. */
export function fakeOutbox(rows: OutboxRow[]): OutboxStore & { rows: OutboxRow[]; broken: boolean } {
  const set = async (id: string, data: Partial<OutboxRow>): Promise<void> => {
    if (outbox.broken) throw new Error('database is locked')
    Object.assign(rows.find((r) => r.id === id)!, data)
  }
  const tries = (id: string) => rows.find((r) => r.id === id)!.attempts + 1
  const outbox: OutboxStore & { rows: OutboxRow[]; broken: boolean } = {
    rows,
    broken: false,
    waiting: async (now: Date, most: number) =>
      rows
        .filter((r) => r.state === 'waiting' && r.notBefore <= now)
        .sort((a, b) => a.priority - b.priority || a.seq - b.seq)
        .slice(0, most)
        .map((r) => ({ ...r })),
    claim: async (now, most, leastPressing) =>
      (await outbox.waiting(now, most)).filter((r) => r.priority <= leastPressing),
    sent: (id: string, sentAt: Date, channel: string, platformId: string) =>
      set(id, { state: 'sent', sentAt, channel, platformId, attempts: tries(id) }),
    failed: (id: string, reason: string) => set(id, { state: 'failed', reason, attempts: tries(id) }),
    dropped: (id: string, reason: string) => set(id, { state: 'dropped', reason }),
    retry: (id: string, notBefore: Date) => set(id, { notBefore, attempts: tries(id) }),
    marked: async (ids: readonly string[]) =>
      new Set(ids.filter((id) => rows.some((r) => r.platformId === id))),
    nextDue: async () =>
      rows
        .filter((r) => r.state === 'waiting')
        .map((r) => r.notBefore)
        .sort((a, b) => Number(a) - Number(b))[0] ?? null,
  }
  return outbox
}
