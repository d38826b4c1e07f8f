import type { Client } from 'discord.js'
import { within } from './in-flight.ts'

// Of the 5 s that a stop may take, what is left for closing the line.
const LEAVE_MS = 1_000

/** What of a line's inside is touched here; of @discordjs/ws, pinned with discord.js. */
interface Line {
  timeoutAbortControllers?: Map<string, unknown>
  internalConnect?: () => Promise<void>
}
type Inside = { _ws?: { strategy?: { shards?: Map<number, Line> } } | null }

/**
 * Closes a client's line for good, within a second. The client's own end does not suffice while it waits for a hello
 * or a greeting, or for another try (seen in discord.js 14.28): it never resolves, and the line comes back by itself
 * half a second later. So what it waits for is taken from it first, and so is the way back.
 */
export async function leave(client: Client): Promise<void> {
  const { _ws } = client.ws as unknown as Inside
  for (const line of _ws?.strategy?.shards?.values() ?? []) {
    line.timeoutAbortControllers?.clear()
    line.internalConnect = async () => {}
  }
  await within(client.destroy(), LEAVE_MS, undefined)
}
