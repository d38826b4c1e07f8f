import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import pino from 'pino'
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import type { Message } from '../../src/engine/message.ts'
import { Permission, Platform, type PostedEvent } from '../../src/rehearsal/platform/index.ts'
import { type Service, startService } from '../../src/service.ts'
import { openStore } from '../../src/store/open.ts'
import * as samples from '../store/samples.ts'

const TEN_MINUTES = 600_000
const log = pino({ enabled: false })

describe('a bot ended between the post and the mark, and started again after ten minutes', () => {
  const folder = mkdtempSync(join(tmpdir(), 'ebbline-nonce-'))
  const databaseUrl = `file:${join(folder, 'bot.db')}`
  let ms = Date.parse('2026-03-08T12:00:00Z')
  const now = () => new Date(ms)
  const platform = new Platform({ now: () => ms })
  const heron = platform.addUser('heron')
  const coach = platform.addUser('coach')
  const guild = platform.build.addGuild('boathouse', { ownerId: coach.id })
  const role = platform.build.addRole(guild.id, 'coach').id
  platform.build.addMember(guild.id, coach.id, [role])
  platform.build.addMember(guild.id, heron.id)
  const room = platform.build.addChannel(guild.id, 'digests', {
    everyoneCanView: false,
    overwrites: [{ id: role, type: 'role', allow: Permission.viewChannel, deny: 0n }],
  })
  let posted: PostedEvent[] = []
  let service: Service
  let onPosted: () => void = () => {}

  const start = (): Promise<Service> =>
    startService({ databaseUrl, token: platform.token, api: platform.apiUrl, now, log })
  const end = async (): Promise<void> => {
    service.abandon()
    await service.client.destroy()
  }

  beforeAll(async () => {
    await platform.start()
    const store = await openStore(databaseUrl)
    const practice = { ...samples.practice, guild: guild.id, coachRole: role, coachChannel: room.id }
    const client = samples.client('heron', { user: heron.id })
    await store.store.transaction((tx) =>
      tx.apply(
        samples.outcome(
          [
            { put: 'practice', row: practice },
            { put: 'client', row: client },
          ],
          [],
        ),
      ),
    )
    await store.close()
    platform.on('message', (event) => {
      posted.push(event)
      onPosted()
    })
    service = await start()
  })
  afterAll(async () => {
    await service.stop()
    await platform.stop()
    rmSync(folder, { recursive: true })
  })
  beforeEach(() => {
    ms += TEN_MINUTES
    posted = []
  })

  let written = 0
  const write = async (more: Partial<Message>, priority: 0 | 2 = 2): Promise<void> => {
    written += 1
    const key = `answer/${written}`
    const message = {
      ...samples.message(key),
      ...{ address: { to: 'client', user: heron.id }, kind: 'receipt', buttons: [], pick: null },
      ...{ picture: null, files: [], mentions: { roles: [], users: [] }, text: 'Noted: 2 sessions, calf.' },
      ...more,
    } as Message
    const posting = samples.posting(key, { notBefore: now(), priority, message })
    await service.store.store.transaction((tx) => tx.apply(samples.outcome([], [posting])))
  }
  const forget = (): void => {
    for (const { wire } of platform.world.messages.values()) delete wire.nonce
  }
  /** Ended as soon as the platform has stored so many messages. */
  const endAfter = async (count: number): Promise<void> => {
    const ended = new Promise<void>((resolve) => {
      onPosted = () => {
        if (posted.length < count) return
        onPosted = () => {}
        void end().then(resolve)
      }
    })
    await Promise.allSettled([service.bot.tick(), ended])
  }
  const again = async (): Promise<void> => {
    ms += TEN_MINUTES
    service = await start()
    await service.bot.tick()
    await service.bot.tick()
  }
  const waiting = () => service.store.outbox.waiting(now(), 10)

  const buttons = [{ name: 'yes', label: 'Yes', act: { do: 'yes' } }]
  it.each<[string, Partial<Message>, () => void]>([
    ['the nonce given back', {}, () => {}],
    ['words alone', {}, forget],
    ['a button', { buttons }, forget],
    ['a file', { files: [{ name: 'heron.csv', text: 'day,pain\n' }] }, forget],
    ['words for more than one message', { text: 'word '.repeat(900) }, forget],
  ])('knows its message again by %s, and marks it', async (_, more, forgets) => {
    await write(more)
    const parts = more.text ? 3 : 1
    await endAfter(parts)
    forgets()
    await again()
    expect(posted).toHaveLength(parts)
    expect(await waiting()).toEqual([])
  })

  it('sends the part of a long message that was not sent', async () => {
    await write({ text: 'word '.repeat(900) })
    await endAfter(2)
    forget()
    await again()
    expect(posted).toHaveLength(3)
  })

  it('sends what was not sent, though the same was said and marked before', async () => {
    await write({})
    await service.bot.tick()
    ms += 60_000
    await write({})
    await end()
    forget()
    await again()
    expect(posted).toHaveLength(2)
    expect(await waiting()).toEqual([])
  })

  it('sends something urgent where nothing can be looked up', async () => {
    await write({}, 0)
    await end()
    platform.fault({ match: /^GET .*messages$/, status: 500, times: 20 })
    await again()
    platform.clearFaults()
    expect(posted).toHaveLength(1)
  })

  it('tries again later where nothing can be looked up and nothing is urgent', async () => {
    await write({})
    await endAfter(1)
    forget()
    platform.fault({ match: /^GET .*messages$/, status: 500, times: 20 })
    await again()
    platform.clearFaults()
    ms += TEN_MINUTES
    await service.bot.tick()
    expect(posted).toHaveLength(1)
    expect(await waiting()).toEqual([])
  })

  it('knows a message again whose answer was lost long ago, without a start between', async () => {
    await write({})
    const match = /^POST .*messages$/
    platform.fault({ match, drop: true, afterApply: true })
    platform.fault({ match, status: 500, times: 7 })
    await service.bot.tick()
    forget()
    platform.clearFaults()
    ms += TEN_MINUTES
    await service.bot.tick()
    expect(posted).toHaveLength(1)
    expect(await waiting()).toEqual([])
  })
})
