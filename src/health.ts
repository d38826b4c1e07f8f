import { createServer, type Server } from 'node:http'
import { SettingsError } from './config.ts'
import type { Heart } from './heartbeat.ts'

/**
 * Answers GET /health on this machine alone: 200 while the bot works, 503 where its last tick is too long ago or it has
 * not started yet (no heart). Says nothing of anybody.
 * @throws SettingsError with the mend where the port cannot be had
 */
export function serveHealth(port: number, heart: () => Heart | null): Promise<Server> {
  const server = createServer((request, response) => {
    if (request.method !== 'GET' || request.url !== '/health') return void response.writeHead(404).end()
    const now = heart()
    const ok = now?.isWell() === true
    const body = JSON.stringify({ ok, beat: now?.latest()?.toISOString() ?? null })
    response.writeHead(ok ? 200 : 503, { 'content-type': 'application/json' }).end(`${body}\n`)
  })
  return new Promise((resolve, reject) => {
    server.once('error', () => reject(new SettingsError(notHad(port))))
    server.listen(port, '127.0.0.1', () => resolve(server))
  })
}

const notHad = (port: number): string =>
  `Port ${port} of EBBLINE_HEALTH_PORT is taken or not allowed: name another, or leave it out.`
