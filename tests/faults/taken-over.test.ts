import pino from 'pino'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { renderMessage } from '../../src/chat/render.ts'
import { addMessage } from '../../src/rehearsal/platform/messages.ts'
import { readAddress } from '../../src/store/address.ts'
import { openStore } from '../../src/store/open.ts'
import { startWork } from '../../src/work.ts'
import { type House, openHouse } from './workers-house.ts'

const SERVER = process.env.EBBLINE_TEST_POSTGRES
if (!SERVER) console.warn('taken over: skipped, EBBLINE_TEST_POSTGRES names no server')
const minutesAgo = (minutes: number): Date => new Date(Date.now() - minutes * 60_000)

describe.skipIf(!SERVER)(
  `what another process had claimed${SERVER ? '' : ' (skipped: EBBLINE_TEST_POSTGRES names no server)'}`,
  () => {
    let house: House
    beforeAll(async () => {
      house = await openHouse(SERVER!, { clients: 2, perSecond: 50 })
    })
    afterAll(() => house.close())

    const states = () =>
      house.query<{ key: string; state: string; platformId: string | null }>(
        `SELECT "key", "state", "platformId" FROM "Outbox" ORDER BY "key"`,
      )

    it('is looked for before it is sent, though the platform has forgotten its nonce', async () => {
      await house.write(1, minutesAgo(10))
      const stopped = await openStore(house.databaseUrl, null, 'stopped')
      const claimed = await stopped.outbox.claim(minutesAgo(5), 9, 4)
      expect(claimed.map(({ key }) => key)).toEqual(['client-0/0', 'client-1/0'])
      await stopped.close()
      // the first of them has been sent, and nobody wrote that down
      const { world } = house.platform
      const [{ id, body }] = claimed as [(typeof claimed)[0]]
      const { nonce: _, ...rest } = renderMessage(id, body)[0]!.body
      const channel = world.dmChannel(house.people[0]!.id)
      const { content = '', components = [] } = rest
      const there = addMessage(world, {
        ...{ channel, author: world.bot, files: [], baseUrl: '' },
        body: { content, components: components as never },
      })

      const address = readAddress(house.databaseUrl)
      if (address.kind !== 'postgresql') throw new Error('no PostgreSQL')
      const work = await startWork({
        ...{ address, token: house.platform.token, api: house.platform.apiUrl },
        ...{ ladders: [], seal: null, now: () => new Date(), log: pino({ enabled: false }), unfit: () => {} },
      })
      try {
        await expect
          .poll(async () => (await states()).map(({ state }) => state), { timeout: 20_000 })
          .toEqual(['sent', 'sent'])
      } finally {
        await work.stop()
      }
      expect((await states())[0]).toMatchObject({ key: 'client-0/0', platformId: there.wire.id })
      expect(house.posted.map(({ recipient }) => recipient)).toEqual([house.people[1]!.id])
    }, 60_000)
  },
)
