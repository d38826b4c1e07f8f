import { createServer, type Server } from 'node:http'
import type { Heart } from './heartbeat.ts'

/**
 * Answers GET /health on this machine alone: 200 while the bot works, 503 where its last tick is too long ago. Says
 * nothing of anybody.
 * @throws Error with the mend where the port is taken
 */
export function serveHealth(port: number, heart: Heart): Promise<Server> {
  const server = createServer((request, response) => {
    if (request.method !== 'GET' || request.url !== '/health') return void response.writeHead(404).end()
    const ok = heart.isWell()
    const body = JSON.stringify({ ok, beat: heart.latest()?.toISOString() ?? null })
    response.writeHead(ok ? 200 : 503, { 'content-type': 'application/json' }).end(`${body}\n`)
  })
  return new Promise((resolve, reject) => {
    server.once('error', reject)
    server.listen(port, '127.0.0.1', () => resolve(server))
  })
}
