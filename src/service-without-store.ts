import { connect, createClient } from './chat/client.ts'
import { createCourier } from './chat/courier.ts'
import { draw, drawFile } from './drawing.ts'
import type { ServiceParts } from './service.ts'
import { knownFile } from './short-way.ts'
import { outboxId } from './store/apply.ts'
import { byLocale, LANGUAGE_CODES, textsFor } from './text/index.ts'
import { openWithoutStore } from './without-store/index.ts'

const away = (): Promise<never> => Promise.reject(new Error('the store is away'))
async function* unread(): AsyncGenerator<never> {
  yield await away()
}

/**
 * The bot while its database cannot be opened: urgent signs are answered and told of, whatever else is said in private
 * is kept for later. Nothing is read from the database, and nothing is due.
 * @throws ChatProblem where the platform cannot be reached
 */
export async function serveWithoutStore(parts: ServiceParts): Promise<{ stop(): Promise<void> }> {
  const { token, api, now, log } = parts
  const { places, people: known } = knownFile(parts)
  const client = createClient(token, api, parts.perSecond)
  const directOf = (user: string) => known.find(user)?.direct ?? null
  const way = await openWithoutStore({
    ...{
      spool: places.spool,
      seal: parts.seal ?? null,
      known,
      textsFor,
      now,
      log,
      languages: LANGUAGE_CODES,
      idOf: outboxId,
    },
    store: { transaction: away },
    engineOn: () => ({ handle: away }),
    courier: createCourier({ rest: client.rest, directOf, draw, drawFile, log }),
    readKnown: unread,
    probe: away,
    onSent: parts.onSent ?? (() => {}),
  })
  try {
    const chat = await connect({
      ...{ client, token, draw, drawFile, log },
      bot: { handle: (event) => way.engine.handle(event, now()) },
      outbox: async (id) => way.lately(id),
      aliases: async () => [],
      knownDms: { all: async function* () {}, of: away },
      texts: textsFor('en').chat,
      otherTexts: byLocale(({ chat }) => chat),
      ...(parts.lost ? { lost: parts.lost } : {}),
    })
    return {
      async stop() {
        await chat.close()
        await way.close()
      },
    }
  } catch (error) {
    await way.close()
    throw error
  }
}
