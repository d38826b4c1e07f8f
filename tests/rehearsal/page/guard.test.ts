import { request } from 'node:http'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { emptyPractice } from '../../../src/rehearsal/page/session.ts'
import { type Living, liveIn } from './living.ts'

/** A request with headers that a browser would not let a page choose. */
function ask(
  url: string,
  headers: Record<string, string>,
  method = 'GET',
): Promise<{ status: number; headers: object }> {
  return new Promise((resolve, reject) => {
    request(url, { method, headers }, (response) => {
      response.resume()
      resolve({ status: response.statusCode ?? 0, headers: response.headers })
    })
      .once('error', reject)
      .end()
  })
}

describe('the page’s server', () => {
  let living: Living
  beforeAll(async () => {
    living = await liveIn(emptyPractice('2026-03-02', 'Europe/Lisbon'))
  }, 60_000)
  afterAll(() => living.server.close())

  it('answers to nobody without the token', async () => {
    const { url } = living.server
    const { origin, pathname } = new URL(url)
    const wrong = pathname.replace(/^\/./, (start) => (start === '/A' ? '/B' : '/A'))
    for (const path of [
      '/',
      '/events',
      '/act',
      '/index.html',
      wrong,
      `${wrong}events`,
      pathname.slice(0, -1),
    ])
      expect((await ask(origin + path, {})).status).toBe(403)
    expect((await ask(url, {})).status).toBe(200)
  })

  it('answers to no other name of the host, and to no other site', async () => {
    const { url } = living.server
    const { port } = new URL(url)
    expect((await ask(url, { host: `rebound.example:${port}` })).status).toBe(403)
    expect((await ask(url, { origin: 'http://elsewhere.example' })).status).toBe(403)
    expect((await ask(url, { 'sec-fetch-site': 'cross-site' })).status).toBe(403)
    expect((await ask(url, { host: `localhost:${port}` })).status).toBe(200)
  })

  it('sends strict headers with everything', async () => {
    for (const path of ['', 'page.css', 'cards?who=coach', 'nothing-here']) {
      const { headers } = await ask(living.server.url + path, {})
      expect(headers).toMatchObject({
        'content-security-policy': expect.stringMatching(
          /^default-src 'none'; script-src 'self'; style-src 'self'/,
        ),
        'x-content-type-options': 'nosniff',
        'referrer-policy': 'no-referrer',
        'cache-control': 'no-store',
      })
    }
  })

  it('reads no file but the page’s own, and takes acts as JSON alone', async () => {
    const { url } = living.server
    for (const path of ['../server.ts', '%2e%2e/server.ts', 'site/', 'attached/../../x', 'server.ts'])
      expect((await ask(`${url}${path}`, {})).status).not.toBe(200)
    expect((await ask(`${url}act`, { 'content-type': 'text/plain' }, 'POST')).status).toBe(415)
    expect((await ask(`${url}act`, {})).status).toBe(405)
    expect((await ask(`${url}events`, {}, 'POST')).status).toBe(405)
  })
})
