import { createServer, type IncomingMessage, type ServerResponse } from 'node:http'
import { setTimeout as wait } from 'node:timers/promises'
import { readBody } from './body.ts'
import { type Call, callOf } from './calls.ts'
import type { Context } from './context.ts'
import type { Fault, Faults } from './faults.ts'
import type { Limits } from './limits.ts'
import { Refusal, refuse } from './refusal.ts'
import { ROUTES } from './routes/index.ts'
import type { Reply } from './routes/route.ts'
import { checkRequest, findOperation, type Operation } from './validate.ts'

/** One request that came, for tests and counts. */
export interface SeenRequest {
  method: string
  /** Without `/api/v10` and query. */
  path: string
  /** Null while it is in hand, and where the answer was cut off. */
  status: number | null
}

/** A request that the published API does not allow, or that the stand-in has no route for. */
export interface Violation {
  request: string
  reason: string
  errors?: unknown
}

// an invalid body and an empty message: mistakes of the bot, whatever the world is like
const INVALID = new Set([50035, 50006])

/** What the HTTP side works with. */
export interface HttpSettings {
  context: Context
  faults: Faults
  limits: Limits
  token: () => string | null
}

/** Answers the HTTP API: faults, token, limits, published schemas, then the route. */
export class HttpApi {
  readonly requests: SeenRequest[] = []
  readonly violations: Violation[] = []
  readonly calls: Call[] = []
  /** Paths of attachments that were fetched. */
  readonly fetched: string[] = []
  readonly server = createServer((request, response) => void this.receive(request, response))
  /** Requests in hand. */
  inFlight = 0
  /** Every answer waits so long, in real milliseconds. */
  slowMs = 0
  /** Every connection is cut. */
  down = false

  constructor(private readonly settings: HttpSettings) {}

  private async receive(request: IncomingMessage, response: ServerResponse): Promise<void> {
    if (this.down) {
      request.socket.destroy()
      return
    }
    this.inFlight += 1
    try {
      await this.serve(request, response)
    } catch {
      request.socket.destroy() // the client went away in the middle
    } finally {
      this.inFlight -= 1
    }
  }

  private async serve(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const url = new URL(request.url ?? '/', 'http://loopback')
    if (url.pathname.startsWith('/attachments/')) return this.serveFile(url.pathname, response)
    const path = url.pathname.replace(/^\/api\/v10/, '')
    const seen: SeenRequest = { method: request.method ?? 'GET', path, status: null }
    this.requests.push(seen)
    const raw = await readRaw(request)
    if (this.slowMs > 0) await wait(this.slowMs)
    const fault = this.settings.faults.take(`${seen.method} ${path}`)
    const work = () => this.work(request, seen, url, raw)
    const reply = fault ? await suffer(fault, work) : await work()
    if (reply === 'drop' || this.down) {
      request.socket.destroy()
      return
    }
    seen.status = reply.status
    send(response, reply)
  }

  private async work(request: IncomingMessage, seen: SeenRequest, url: URL, raw: Buffer): Promise<Reply> {
    let headers: Record<string, string> = {}
    try {
      this.checkToken(request, seen.path)
      const operation = this.operationOf(seen)
      const ruling = this.settings.limits.rule(operation)
      headers = ruling?.headers ?? {}
      if (ruling?.refused) return { status: 429, body: ruling.refused, headers }
      const reply = await this.route(operation, request, url, raw)
      return { ...reply, headers: { ...headers, ...reply.headers } }
    } catch (error) {
      if (!(error instanceof Refusal)) return this.failed(seen, error)
      const { status, code, message, errors } = error
      if (INVALID.has(code)) {
        this.violations.push({ request: `${seen.method} ${seen.path}`, reason: message, errors })
      }
      return { status, body: { code, message, ...(errors ? { errors } : {}) }, headers }
    }
  }

  // a mistake of our own must not look like one of the bot's connection
  private failed(seen: SeenRequest, error: unknown): Reply {
    const reason = `the stand-in failed: ${error instanceof Error ? error.stack : String(error)}`
    this.violations.push({ request: `${seen.method} ${seen.path}`, reason })
    return { status: 500, body: { code: 0, message: '500: Internal Server Error' } }
  }

  private async route(operation: Operation, request: IncomingMessage, url: URL, raw: Buffer): Promise<Reply> {
    const { body, files } = await readBody(request.headers['content-type'] ?? '', raw)
    checkRequest(operation, body)
    const call = callOf(`${request.method} ${url.pathname}`, body)
    if (call) this.calls.push(call)
    const run = ROUTES[operation.name]
    if (!run) {
      this.violations.push({ request: operation.name, reason: 'the stand-in has no such route' })
      throw refuse.notFound()
    }
    return run(this.settings.context, { params: operation.params, query: url.searchParams, body, files })
  }

  private operationOf(seen: SeenRequest): Operation {
    const operation = findOperation(seen.method, seen.path)
    if (operation) return operation
    this.violations.push({ request: `${seen.method} ${seen.path}`, reason: 'not in the published API' })
    throw refuse.notFound()
  }

  private checkToken(request: IncomingMessage, path: string): void {
    if (/^\/(interactions|webhooks)\//.test(path)) return // these carry a token of their own in the path
    const token = this.settings.token()
    if (token === null || request.headers.authorization !== `Bot ${token}`) throw refuse.unauthorized()
  }

  private serveFile(path: string, response: ServerResponse): void {
    this.fetched.push(path)
    const file = this.settings.context.world.files.get(path.split('/')[3] ?? '')
    if (!file) response.writeHead(404).end()
    else response.writeHead(200, { 'content-type': file.contentType }).end(file.data)
  }
}

async function readRaw(request: IncomingMessage): Promise<Buffer> {
  const chunks: Buffer[] = []
  for await (const chunk of request) chunks.push(chunk as Buffer)
  return Buffer.concat(chunks)
}

async function suffer(fault: Fault, work: () => Promise<Reply>): Promise<Reply | 'drop'> {
  const done = fault.afterApply ? await work() : null
  if (fault.delayMs) await wait(fault.delayMs)
  if (fault.drop) return 'drop'
  if (fault.status === undefined) return done ?? work()
  const body = fault.body ?? { message: 'The request met a fault.', code: 0 }
  return { status: fault.status, body, headers: fault.headers ?? {} }
}

function send(response: ServerResponse, reply: Reply): void {
  const body = reply.body === undefined ? undefined : JSON.stringify(reply.body)
  const type = body === undefined ? {} : { 'content-type': 'application/json' }
  response.writeHead(reply.status, { ...type, ...reply.headers }).end(body)
}
