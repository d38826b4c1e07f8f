import type { WebSocket } from 'ws'
import { Opcode } from './codes.ts'
import type { Published } from './publish.ts'
import type { Shard } from './shards.ts'

/** How many past events a session keeps for a resume; one that missed more must start anew. */
const BUFFER_MAX = 20_000

/** A line to one client, which outlives its socket so that it can be resumed. */
export class Session {
  sequence = 0
  socket: WebSocket | null
  private buffer: { s: number; text: string }[] = []

  constructor(
    readonly id: string,
    readonly intents: number,
    readonly shard: Shard,
    socket: WebSocket,
  ) {
    this.socket = socket
  }

  /** Numbers an event, keeps it, and sends it where somebody is on the line. */
  deliver(event: Published): void {
    const data = event.forIntents(this.intents)
    if (data === null) return
    this.sequence += 1
    // written out now: a session that resumes later hears what was true at this moment
    const text = JSON.stringify({ op: Opcode.dispatch, t: event.name, s: this.sequence, d: data })
    this.buffer.push({ s: this.sequence, text })
    if (this.buffer.length > BUFFER_MAX) this.buffer.shift()
    if (this.live) this.socket?.send(text)
  }

  /** Sends again all that came after `sequence`; false where that is no longer kept. */
  replay(sequence: number): boolean {
    const oldest = this.buffer[0]?.s ?? this.sequence + 1
    if (sequence > this.sequence || sequence < oldest - 1) return false
    for (const { s, text } of this.buffer) if (s > sequence) this.socket?.send(text)
    return true
  }

  get live(): boolean {
    return this.socket !== null && this.socket.readyState === this.socket.OPEN
  }
}
