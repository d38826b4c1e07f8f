import { EventEmitter, once } from 'node:events'
import type { AddressInfo } from 'node:net'
import { Builder } from './builder.ts'
import type { Context } from './context.ts'
import { type Fault, Faults } from './faults.ts'
import { Forger } from './forger.ts'
import { Gateway } from './gateway.ts'
import { HttpApi } from './http.ts'
import { Interactions } from './interactions.ts'
import { Limits, PLATFORM_RATES, type Rates } from './limits.ts'
import { Person } from './person.ts'
import { type PostedEvent, type PostedMessage, postedMessage } from './posted.ts'
import { World } from './world.ts'

/** How a platform is made. */
export interface PlatformOptions {
  /** Clock for timestamps, ids, nonces and the life of interaction tokens, in ms since 1970; the host's by default. */
  now?: () => number
  /** Rate limits, in real time; off by default, and then no headers are sent. */
  limits?: 'off' | 'platform' | Rates
  /** Port on 127.0.0.1; a free one by default. */
  port?: number
  token?: string
  /** Real milliseconds between heartbeats that clients are told to keep. */
  heartbeatMs?: number
  /** Real milliseconds within which an interaction must be answered: 3000 on the platform. */
  answerWindowMs?: number
  /** Privileged intents that are switched on (bits of `Intent`); none by default. */
  privilegedIntents?: number
  /** Lines that the gateway asks a bot to open; 1 by default, as for a bot in fewer than 2,500 servers. */
  shards?: number
}

const DEFAULT_TOKEN = 'rehearsal.token.loopback'
const DEFAULT_HEARTBEAT_MS = 41_250

/** A chat platform on this machine: servers, people, messages, the HTTP API and the gateway. */
export class Platform {
  readonly world: World
  readonly build: Builder
  readonly forger: Forger
  private readonly gateway: Gateway
  private readonly api: HttpApi
  private readonly faults = new Faults()
  private readonly emitter = new EventEmitter()
  private readonly context: Context
  private readonly people = new Map<string, Person>()
  private revoked = false

  constructor(private readonly options: PlatformOptions = {}) {
    this.world = new World(options.now ?? Date.now)
    this.world.privilegedIntents = options.privilegedIntents ?? 0
    const token = () => (this.revoked ? null : this.token)
    this.gateway = new Gateway({
      world: this.world,
      token,
      url: () => this.context.gatewayUrl,
      heartbeatMs: options.heartbeatMs ?? DEFAULT_HEARTBEAT_MS,
    })
    this.context = {
      world: this.world,
      publish: this.gateway.publish,
      interactions: new Interactions(() => this.context, options.answerWindowMs),
      posted: (event) => this.emitter.emit('message', event),
      url: '',
      gatewayUrl: '',
      shards: options.shards ?? 1,
    }
    this.forger = new Forger(this.context)
    this.build = new Builder(this.world, this.gateway.publish)
    const { limits: rates = 'off' } = options
    const limits = new Limits(rates === 'off' ? null : rates === 'platform' ? PLATFORM_RATES : rates)
    this.api = new HttpApi({ context: this.context, faults: this.faults, limits, token })
    this.api.server.on('upgrade', (request, socket, head) => this.gateway.upgrade(request, socket, head))
  }

  /** Listens on 127.0.0.1. */
  async start(): Promise<void> {
    this.api.server.listen(this.options.port ?? 0, '127.0.0.1')
    await once(this.api.server, 'listening')
    const { port } = this.api.server.address() as AddressInfo
    this.context.url = `http://127.0.0.1:${port}`
    this.context.gatewayUrl = `ws://127.0.0.1:${port}`
  }

  /** Cuts every line and closes the port. */
  async stop(): Promise<void> {
    this.context.interactions.stop()
    this.gateway.stop()
    const closed = once(this.api.server, 'close')
    this.api.server.close()
    this.api.server.closeAllConnections()
    await closed
  }

  /** Where it listens, for example `http://127.0.0.1:40001`; empty before `start`. */
  get url(): string {
    return this.context.url
  }

  /** What discord.js takes as `rest.api`. */
  get apiUrl(): string {
    return `${this.url}/api`
  }

  get token(): string {
    return this.options.token ?? DEFAULT_TOKEN
  }

  /** Id of the application and of its bot. */
  get appId(): string {
    return this.world.bot.id
  }

  /** Number of the last event sent to the live session: a client whose raw `s` has come so far knows everything. */
  get sequence(): number {
    return this.gateway.sequence
  }

  /** Whether a client is logged in and on the line. */
  get connected(): boolean {
    return this.gateway.connected
  }

  /** How many sessions were begun anew, and how many resumed. */
  get sessions(): { identified: number; resumed: number } {
    return { ...this.gateway.counts }
  }

  /** HTTP requests in hand, and interactions that wait for a first answer. */
  get busy(): { requests: number; interactions: number } {
    return { requests: this.api.inFlight, interactions: this.context.interactions.pending }
  }

  /** Every HTTP request so far. */
  get requests() {
    return this.api.requests
  }

  /** Requests that the published API does not allow; a test fails where there is any. */
  get violations() {
    return this.api.violations
  }

  /** Messages that may call somebody, and paths of attachments that were fetched. */
  get effects() {
    return { calls: this.api.calls, fetched: this.api.fetched }
  }

  /** How often chat commands were declared: for everybody, or for one server. */
  registrations(guildId?: string): number {
    return this.world.registrations.get(guildId ?? 'global') ?? 0
  }

  /** Hears every message of the bot that comes, changes or goes, private replies too. Gives a way to stop. */
  on(_event: 'message', listener: (event: PostedEvent) => void): () => void {
    this.emitter.on('message', listener)
    return () => this.emitter.off('message', listener)
  }

  /** A message that is there, whoever wrote it; null where there is none. */
  message(id: string): PostedMessage | null {
    const stored = this.world.messages.get(id)
    return stored ? postedMessage(this.world, stored) : null
  }

  /** A new person with an account. */
  addUser(name: string, options: { locale?: string } = {}): Person {
    return this.person(this.build.addAccount(name, options.locale).id)
  }

  /** The person with this id. */
  person(id: string): Person {
    const account = this.world.users.get(id)
    if (!account || account.bot) throw new Error(`there is no person ${id}`)
    const person = this.people.get(id) ?? new Person(this.context, account)
    this.people.set(id, person)
    return person
  }

  /** Direct messages from the bot are refused by this person (50007), or taken again. */
  closeDms(userId: string, closed = true): void {
    if (closed) this.world.dmsClosed.add(userId)
    else this.world.dmsClosed.delete(userId)
  }

  /** Lets requests go wrong. */
  fault(fault: Fault): void {
    this.faults.add(fault)
  }

  /** Takes back the faults that have not struck yet. */
  clearFaults(): void {
    this.faults.clear()
  }

  /** Every HTTP answer takes so many real milliseconds longer; 0 ends it. */
  slow(ms: number): void {
    this.api.slowMs = ms
  }

  /** Cuts every connection, HTTP and gateway, and takes no new one; false ends it. */
  chatDown(down: boolean): void {
    this.api.down = down
    this.gateway.down = down
    if (!down) return
    this.gateway.drop()
    this.api.server.closeAllConnections()
  }

  /** Cuts the gateway's lines without a word. */
  dropGateway(): void {
    this.gateway.drop()
  }

  /** Refuses the next attempt to resume. */
  refuseResume(): void {
    this.gateway.refuseNextResume = true
  }

  /** Asks clients to come back on a new line (op 7). */
  reconnect(): void {
    this.gateway.reconnect()
  }

  /** Tells clients that their session is over (op 9). */
  invalidSession(): void {
    this.gateway.invalidateSession()
  }

  /** Closes the gateway's lines with a close code. */
  closeWith(code: number): void {
    this.gateway.closeWith(code)
  }

  /** The token is worth nothing any more: 401, and the gateway closes with 4004. */
  revokeToken(): void {
    this.revoked = true
    this.gateway.closeWith(4004)
  }

  /** The token is good again. */
  restoreToken(): void {
    this.revoked = false
  }
}
