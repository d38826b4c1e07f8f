import type { AddressInfo } from 'node:net'
import { afterEach, describe, expect, it } from 'vitest'
import { serveHealth } from '../src/health.ts'

let end = (): void => {}
afterEach(() => end())

async function asked(isWell: boolean, path = '/health', method = 'GET') {
  const beat = new Date('2026-03-02T08:00:00Z')
  const heart = { isWell: () => isWell, latest: () => beat, awake: async () => {}, beat: async () => {} }
  const server = await serveHealth(0, () => heart)
  end = () => void server.close()
  const { address, port } = server.address() as AddressInfo
  expect(address).toBe('127.0.0.1')
  const response = await fetch(`http://127.0.0.1:${port}${path}`, { method })
  return { status: response.status, body: await response.text() }
}

describe('/health', () => {
  it('answers 200 while the bot works and 503 where it does not, with the latest beat and nothing else', async () => {
    expect(await asked(true)).toEqual({
      status: 200,
      body: '{"ok":true,"beat":"2026-03-02T08:00:00.000Z"}\n',
    })
    end()
    expect((await asked(false)).status).toBe(503)
  })

  it('answers 503 before the bot has started', async () => {
    const server = await serveHealth(0, () => null)
    end = () => void server.close()
    const response = await fetch(`http://127.0.0.1:${(server.address() as AddressInfo).port}/health`)
    expect(response.status).toBe(503)
    expect(await response.json()).toEqual({ ok: false, beat: null })
  })

  it('names the mend where the port is taken', async () => {
    const server = await serveHealth(0, () => null)
    end = () => void server.close()
    const { port } = server.address() as AddressInfo
    await expect(serveHealth(port, () => null)).rejects.toThrow(
      `Port ${port} of EBBLINE_HEALTH_PORT is taken or not allowed: name another, or leave it out.`,
    )
  })

  it('knows no other path or method', async () => {
    expect((await asked(true, '/')).status).toBe(404)
    end()
    expect((await asked(true, '/health', 'POST')).status).toBe(404)
  })
})
