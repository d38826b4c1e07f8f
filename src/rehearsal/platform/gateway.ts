import type { IncomingMessage } from 'node:http'
import type { Duplex } from 'node:stream'
import { type RawData, type WebSocket, WebSocketServer } from 'ws'
import { CloseCode, Opcode, PRIVILEGED_INTENTS } from './codes.ts'
import { greet, type Identify, type MembersRequest, membersChunk, type Resume } from './greeting.ts'
import { eventForAll, type Published } from './publish.ts'
import { Session } from './session.ts'
import { comesBy, THE_ONLY } from './shards.ts'
import type { World } from './world.ts'

/** Largest message that a client may send, in bytes (Discord documentation, "Sending Events"). */
const PAYLOAD_MAX = 4096

/** What the gateway needs to know from the rest, and what is asked of it. */
export interface GatewaySettings {
  world: World
  /** Null while no token is accepted. */
  token: () => string | null
  url: () => string
  /** Milliseconds between heartbeats that the client is told to keep. */
  heartbeatMs: number
}

interface Payload {
  op: number
  d: unknown
}

/** The gateway: says hello, takes sessions in, numbers and replays events, and can misbehave when told to. */
export class Gateway {
  /** The next resume is refused with an invalid session. */
  refuseNextResume = false
  /** No upgrade is accepted and nobody is on the line. */
  down = false
  /** How many sessions were begun anew, and how many resumed. */
  readonly counts = { identified: 0, resumed: 0 }
  private readonly server = new WebSocketServer({ noServer: true, maxPayload: PAYLOAD_MAX })
  private readonly sockets = new Map<WebSocket, Session | null>()
  private readonly sessions = new Map<string, Session>()

  constructor(private readonly settings: GatewaySettings) {}

  /** Hands an event to every session, whether or not somebody is on the line just now. */
  readonly publish = (published: Published): void => {
    for (const session of this.sessions.values())
      if (comesBy(session.shard, published)) session.deliver(published)
  }

  /** Number of the last event of the live session, of all lines together; 0 without one. */
  get sequence(): number {
    return this.liveSessions().reduce((sum, { sequence }) => sum + sequence, 0)
  }

  /** Whether a client is logged in and on every line. */
  get connected(): boolean {
    const live = this.liveSessions()
    return live.length > 0 && live.length === live[0]!.shard[1]
  }

  upgrade(request: IncomingMessage, socket: Duplex, head: Buffer): void {
    if (this.down) {
      socket.destroy()
      return
    }
    this.server.handleUpgrade(request, socket, head, (ws) => this.welcome(ws))
  }

  /** Cuts every line without a word, as a broken network does. */
  drop(): void {
    for (const ws of this.sockets.keys()) ws.terminate()
  }

  /** Asks the client to come back on a new line and resume. */
  reconnect(): void {
    this.sendToAll({ op: Opcode.reconnect, d: null })
  }

  /** Tells the client that its session is over; it has to identify anew. */
  invalidateSession(): void {
    for (const [ws, session] of this.sockets) {
      if (session) this.sessions.delete(session.id)
      this.send(ws, { op: Opcode.invalidSession, d: false })
    }
  }

  /** Closes every line with a close code. */
  closeWith(code: number): void {
    for (const ws of this.sockets.keys()) ws.close(code)
  }

  stop(): void {
    this.drop()
    this.server.close()
  }

  /** The latest of each line. */
  private liveSessions(): Session[] {
    const live = [...this.sessions.values()].filter((session) => session.live)
    return [...new Map(live.map((session) => [session.shard[0], session])).values()]
  }

  private welcome(ws: WebSocket): void {
    this.sockets.set(ws, null)
    ws.on('close', () => this.sockets.delete(ws))
    ws.on('error', () => ws.terminate())
    ws.on('message', (raw) => this.receive(ws, raw))
    this.send(ws, { op: Opcode.hello, d: { heartbeat_interval: this.settings.heartbeatMs } })
  }

  private receive(ws: WebSocket, raw: RawData): void {
    const payload = parse(raw)
    const answer = payload ? this.answer(ws, payload) : CloseCode.decodeError
    if (typeof answer === 'number') ws.close(answer)
    else if (answer) this.send(ws, answer)
  }

  /** What a payload is answered with: another payload, a close code, or nothing. */
  private answer(ws: WebSocket, { op, d }: Payload): Payload | number | null {
    switch (op) {
      case Opcode.heartbeat:
        return { op: Opcode.heartbeatAck, d: null }
      case Opcode.identify:
        return this.identify(ws, d as Identify)
      case Opcode.resume:
        return this.resume(ws, d as Resume)
      case Opcode.presence:
        return null
      case Opcode.requestMembers:
        return this.sendMembers(ws, d as MembersRequest)
      default:
        return CloseCode.unknownOpcode
    }
  }

  private identify(ws: WebSocket, d: Identify): number | null {
    const { world, url } = this.settings
    if (this.sockets.get(ws)) return CloseCode.alreadyAuthenticated
    if (!this.accepts(d.token)) return CloseCode.authenticationFailed
    const intents = d.intents ?? 0
    if (intents & PRIVILEGED_INTENTS & ~world.privilegedIntents) return CloseCode.disallowedIntents
    for (const [id, session] of this.sessions) if (!session.live) this.sessions.delete(id)
    this.counts.identified += 1
    // ids of sessions stay out of the snowflakes, so that reconnects do not move the ids of messages
    const session = new Session(`session-${this.counts.identified}`, intents, d.shard ?? THE_ONLY, ws)
    this.sessions.set(session.id, session)
    this.sockets.set(ws, session)
    greet(world, session, url())
    return null
  }

  private resume(ws: WebSocket, d: Resume): Payload | number | null {
    if (!this.accepts(d.token)) return CloseCode.authenticationFailed
    const session = this.sessions.get(d.session_id ?? '')
    const refused = this.refuseNextResume
    this.refuseNextResume = false
    if (session) session.socket = ws
    if (!session || refused || !session.replay(d.seq ?? 0)) {
      if (session) this.sessions.delete(session.id)
      return { op: Opcode.invalidSession, d: false }
    }
    this.sockets.set(ws, session)
    this.counts.resumed += 1
    session.deliver(eventForAll('RESUMED', {}))
    return null
  }

  private sendMembers(ws: WebSocket, d: MembersRequest): number | null {
    const session = this.sockets.get(ws)
    if (!session) return CloseCode.notAuthenticated
    const guild = this.settings.world.guilds.get(d.guild_id)
    if (!guild) return CloseCode.decodeError
    session.deliver(eventForAll('GUILD_MEMBERS_CHUNK', membersChunk(this.settings.world, guild, d)))
    return null
  }

  private accepts(token: string | undefined): boolean {
    const valid = this.settings.token()
    return valid !== null && token === valid
  }

  private sendToAll(payload: Payload): void {
    for (const ws of this.sockets.keys()) this.send(ws, payload)
  }

  private send(ws: WebSocket, payload: Payload): void {
    if (ws.readyState === ws.OPEN) ws.send(JSON.stringify(payload))
  }
}

function parse(raw: RawData): Payload | null {
  try {
    const payload = JSON.parse(String(raw)) as Partial<Payload> | null
    return typeof payload?.op === 'number' ? { op: payload.op, d: payload.d } : null
  } catch {
    return null
  }
}
