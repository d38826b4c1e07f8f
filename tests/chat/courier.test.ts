import { DiscordAPIError, REST } from 'discord.js'
import pino from 'pino'
import { describe, expect, it } from 'vitest'
import { createCourier } from '../../src/chat/courier.ts'
import { refusalOf } from '../../src/chat/refusal.ts'
import type { Attached } from '../../src/engine/message.ts'
import { safeError } from '../../src/safe-error.ts'
import { message, row } from './outbox.ts'

const refused = (status: number, code: number): DiscordAPIError =>
  new DiscordAPIError({ code, message: 'numb since Monday' }, code, status, 'POST', '/x', {
    body: {},
    files: undefined,
  })

const drawFile = async () => new Uint8Array([2])

function setUp(answer: (path: string, n: number) => Error | null = () => null) {
  const rest = new REST()
  const posts: { path: string; body: Record<string, unknown>; files: number }[] = []
  rest.post = async (path, options = {}) => {
    posts.push({ path, body: options.body as Record<string, unknown>, files: options.files?.length ?? 0 })
    const error = answer(path, posts.length)
    if (error) throw error
    return { id: `${posts.length}` }
  }
  const draw = async () => ({ png: new Uint8Array([1]) })
  return { posts, rest, courier: createCourier({ rest, draw, drawFile, log: pino({ enabled: false }) }) }
}

describe('the courier', () => {
  it('opens direct messages once a person', async () => {
    const { courier, posts } = setUp()
    expect(await courier.deliver(row())).toEqual({ channel: '1', platformId: '2' })
    await courier.deliver(row())
    expect(posts.map((post) => post.path)).toEqual([
      '/users/@me/channels',
      '/channels/1/messages',
      '/channels/1/messages',
    ])
  })

  it('goes on with a long message where another try begins', async () => {
    const { courier, posts } = setUp((_, n) => (n === 2 ? new Error('fetch failed') : null))
    const long = row({ body: message({ address: { to: 'coach', channel: '9' }, text: 'word '.repeat(900) }) })
    await expect(courier.deliver(long)).rejects.toThrow('fetch failed')
    await courier.deliver(long)
    expect(posts.map((post) => post.body.nonce)).toEqual([
      long.id,
      `${long.id}+1`,
      `${long.id}+1`,
      `${long.id}+2`,
    ])
  })

  it('sends the words alone where the picture cannot be drawn', async () => {
    const { rest, posts } = setUp()
    const draw = async () => {
      throw new Error('no font')
    }
    const courier = createCourier({ rest, draw, drawFile, log: pino({ enabled: false }) })
    const picture = { name: 'heron', alt: 'pain fell', facts: {} }
    await courier.deliver(row({ body: message({ address: { to: 'coach', channel: '9' }, picture }) }))
    expect(posts[0]).toMatchObject({ files: 0 })
    expect(posts[0]?.body).not.toHaveProperty('attachments')
  })
})

describe('files of a message', () => {
  const files = (count: number, text = 'day,pain\n') =>
    Array.from({ length: count }, (_, n) => ({ name: `heron-${n}.csv`, text }))
  const toCoach = (given: Attached[]) =>
    row({ body: message({ address: { to: 'coach', channel: '9' }, files: given }) })

  it('go after the picture, ten a message', async () => {
    const { courier, posts } = setUp()
    const picture = { name: 'heron', alt: 'pain fell', facts: {} }
    const body = message({ address: { to: 'coach', channel: '9' }, picture, files: files(12) })
    await courier.deliver(row({ body }))
    expect(posts.map((post) => post.files)).toEqual([10, 3])
    expect(posts[0]?.body.attachments).toMatchObject([
      { id: '0', filename: 'heron.png', description: 'pain fell' },
      { id: '1', filename: 'heron-0.csv' },
      ...files(8).map(() => ({})),
    ])
  })

  it('are drawn at delivery where they are facts, and left out where they cannot be', async () => {
    const { rest, courier, posts } = setUp()
    const drawn: Attached = { name: 'report-heron.pdf', draw: 'report', facts: {} }
    await courier.deliver(toCoach([drawn, ...files(1)]))
    const broken = async () => {
      throw new Error('no font')
    }
    const log = pino({ enabled: false })
    const other = createCourier({ rest, draw: broken, drawFile: broken, log })
    await other.deliver(toCoach([drawn, ...files(1)]))
    expect(posts.map((post) => post.files)).toEqual([2, 1])
  })

  it('are split where a request would be too big', async () => {
    const { courier, posts } = setUp()
    await courier.deliver(toCoach(files(3, 'x'.repeat(9 * 2 ** 20))))
    expect(posts.map((post) => post.files)).toEqual([2, 1])
  })

  it('are refused, not tried for ever, where one is bigger than the platform takes', async () => {
    const { courier, posts } = setUp()
    const tooBig = toCoach(files(1, 'x'.repeat(10 * 2 ** 20 + 1)))
    await expect(courier.deliver(tooBig)).rejects.toMatchObject({ reason: 'refused' })
    expect(posts).toEqual([])
  })
})

describe('a refusal', () => {
  it.each([
    [403, 50007, 'closed'],
    [403, 50001, 'no-access'],
    [403, 50013, 'no-access'],
    [404, 10003, 'gone'],
    [400, 50035, 'refused'],
    [404, 0, 'refused'],
  ])('%i with code %i is final: %s', (status, code, reason) => {
    expect(refusalOf(refused(status, code))?.reason).toBe(reason)
  })

  it.each([401, 408, 429, 500, 503])('%i may work later', (status) => {
    expect(refusalOf(refused(status, 0))).toBeNull()
  })

  it('is logged without what it says', () => {
    const logged = JSON.stringify(safeError(refused(400, 50035)))
    expect(logged).toContain('50035')
    expect(logged).not.toContain('numb')
  })
})
