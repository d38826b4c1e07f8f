import { randomBytes, timingSafeEqual } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import { extname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { textsFor } from '../../text/index.ts'
import { actionOf } from './action-schema.ts'
import { explain } from './explain.ts'
import type { Hub } from './hub.ts'
import { cardsBefore } from './view.ts'

const SITE = fileURLToPath(new URL('./site/', import.meta.url))
const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.svg': 'image/svg+xml',
}
// Far more than the longest scenario file that is played.
const BODY_MOST = 2_000_000
const SAFE = {
  'content-security-policy':
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self'; form-action 'none'; frame-ancestors 'none'; base-uri 'none'",
  'x-content-type-options': 'nosniff',
  'x-frame-options': 'DENY',
  'referrer-policy': 'no-referrer',
  'cross-origin-resource-policy': 'same-origin',
  'cross-origin-opener-policy': 'same-origin',
  'cache-control': 'no-store',
}
const { page } = textsFor('en').rehearsal

export interface PageServer {
  /** The link to be opened, with its token. */
  readonly url: string
  close(): Promise<void>
}

/** Serves the page on 127.0.0.1, on a free port; every address lies behind a token drawn anew each time. */
export async function servePage(hub: Hub): Promise<PageServer> {
  const token = randomBytes(24).toString('base64url')
  const files = siteFiles()
  const server = createServer((request, response) => {
    const path = pathOf(request, token, portOf(server))
    if (path === null) return refuse(response, 403)
    answer({ hub, files, request, response, ...path }).catch(() => refuse(response, 500))
  })
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject)
    server.listen(0, '127.0.0.1', resolve)
  })
  return {
    url: `http://127.0.0.1:${portOf(server)}/${token}/`,
    async close() {
      server.close()
      server.closeAllConnections()
      await hub.close()
    },
  }
}

const portOf = (server: Server): number => (server.address() as AddressInfo | null)?.port ?? 0

/** The files of the page by name: nothing else is ever read from the disk for it. */
const siteFiles = (): ReadonlyMap<string, Buffer> =>
  new Map(
    readdirSync(SITE, { recursive: true, encoding: 'utf8' })
      .filter((name) => TYPES[extname(name)] !== undefined)
      .map((name) => [name, readFileSync(join(SITE, name))]),
  )

interface Asked {
  readonly path: string
  readonly query: URLSearchParams
}

/** What is asked for below the token; null where the token or the name of the host is another, or another site asks. */
function pathOf({ url = '', headers }: IncomingMessage, token: string, port: number): Asked | null {
  const hosts = [`127.0.0.1:${port}`, `localhost:${port}`]
  if (!hosts.includes(headers.host ?? '')) return null
  if (headers.origin !== undefined && !hosts.some((host) => headers.origin === `http://${host}`)) return null
  const site = headers['sec-fetch-site']
  if (site !== undefined && site !== 'same-origin' && site !== 'none') return null
  const [path = '', query = ''] = url.split('?')
  const given = Buffer.from(path.slice(1, 1 + token.length))
  if (given.length !== token.length || !timingSafeEqual(given, Buffer.from(token))) return null
  if (path[1 + token.length] !== '/') return null
  return { path: path.slice(2 + token.length), query: new URLSearchParams(query) }
}

interface Request extends Asked {
  readonly hub: Hub
  readonly files: ReadonlyMap<string, Buffer>
  readonly request: IncomingMessage
  readonly response: ServerResponse
}

async function answer(asked: Request): Promise<void> {
  const { hub, path, query, request, response } = asked
  if (path === 'act') return request.method === 'POST' ? act(asked) : refuse(response, 405)
  if (request.method !== 'GET') return refuse(response, 405)
  if (path === 'events') return events(asked)
  if (path === 'cards')
    return json(response, 200, cardsBefore(hub.session, query.get('who'), query.get('before')))
  if (path === 'explain') {
    const found = await hub.inTurn(() => explain(hub.session, query.get('card') ?? ''))
    return found ? json(response, 200, found) : json(response, 404, { ok: false, problem: page.gone })
  }
  if (path === 'scenario') return scenario(asked)
  if (path.startsWith('attached/')) return attached(asked)
  const name = path === '' ? 'index.html' : path
  const file = asked.files.get(name)
  if (!file) return refuse(response, 404)
  send(response, 200, TYPES[extname(name)]!, file)
}

async function act({ hub, request, response }: Request): Promise<void> {
  if (!(request.headers['content-type'] ?? '').startsWith('application/json')) return refuse(response, 415)
  const body = await bodyOf(request)
  if (body === null) return refuse(response, 413)
  const action = actionOf(body)
  if (!action) return json(response, 400, { ok: false, problem: page.notAsked })
  // what the practice refuses was asked for rightly: the page says its sentence, and the browser reports no error
  json(response, 200, await hub.act(action))
}

async function bodyOf(request: IncomingMessage): Promise<string | null> {
  const chunks: Buffer[] = []
  let size = 0
  for await (const chunk of request) {
    size += (chunk as Buffer).length
    if (size > BODY_MOST) return null
    chunks.push(chunk as Buffer)
  }
  return Buffer.concat(chunks).toString('utf8')
}

async function events({ hub, query, request, response }: Request): Promise<void> {
  response.writeHead(200, { ...SAFE, 'content-type': 'text/event-stream; charset=utf-8' })
  let stop = (): void => {}
  let isOver = false
  request.once('close', () => {
    isOver = true
    stop()
  })
  stop = await hub.listen(query.get('who'), (event, data) => {
    response.write(`event: ${event}\ndata: ${JSON.stringify(data)}\n\n`)
  })
  if (isOver) stop()
}

function scenario({ hub, response }: Request): void {
  const { session } = hub
  if (session.doc.clients.length === 0) return json(response, 409, { ok: false, problem: page.noClient })
  response.setHeader('content-disposition', 'attachment; filename="rehearsal.yaml"')
  send(response, 200, 'application/yaml; charset=utf-8', Buffer.from(session.saved()))
}

function attached({ hub, path, response }: Request): void {
  const found = hub.session.cards.attached.get(path.split('/')[1] ?? '')
  if (!found) return refuse(response, 404)
  if (found.contentType.startsWith('image/png')) return send(response, 200, 'image/png', found.data)
  response.setHeader(
    'content-disposition',
    `attachment; filename*=UTF-8''${encodeURIComponent(found.filename)}`,
  )
  send(response, 200, 'application/octet-stream', found.data)
}

function json(response: ServerResponse, status: number, value: unknown): void {
  send(response, status, 'application/json; charset=utf-8', Buffer.from(JSON.stringify(value)))
}

function send(response: ServerResponse, status: number, type: string, body: Buffer): void {
  response.writeHead(status, { ...SAFE, 'content-type': type, 'content-length': body.length }).end(body)
}

function refuse(response: ServerResponse, status: number): void {
  if (response.headersSent) return void response.end()
  response.writeHead(status, SAFE).end()
}
