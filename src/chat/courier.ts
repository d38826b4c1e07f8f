import { type APIDMChannel, type APIMessage, type REST, Routes } from 'discord.js'
import type { Address } from '../engine/message.ts'
import { type Courier, type Sent, Undeliverable } from '../engine/ports.ts'
import type { OutboxRow } from '../engine/rows.ts'
import { type FileParts, filesOf, rawOf } from './files.ts'
import type { LookBack } from './look-back.ts'
import { refusalOf } from './refusal.ts'
import { renderMessage } from './render.ts'
import { whileKnown } from './while-known.ts'

export interface CourierParts extends FileParts {
  readonly rest: REST
  /** The private channel of a person where it is known already. */
  readonly directOf?: (user: string) => string | null
  /** Where left out, only the platform tells whether a message is there already, by its nonce. */
  readonly lookBack?: LookBack
}

/** Brings messages to the platform over its HTTP API; it needs no gateway. */
export function createCourier({ rest, directOf, lookBack, ...drawing }: CourierParts): Courier {
  const directs = new Map<string, string>()
  // how many parts of a long message are there already: another try goes on where the last one failed
  const begun = new Map<string, number>()

  const channelOf = async (address: Address): Promise<string> => {
    if (address.to !== 'client') return address.channel
    const known = directs.get(address.user) ?? directOf?.(address.user)
    if (known) return known
    const opened = (await rest.post(Routes.userChannels(), {
      body: { recipient_id: address.user },
    })) as APIDMChannel
    directs.set(address.user, opened.id)
    return opened.id
  }

  const post = async (row: OutboxRow): Promise<Sent> => {
    const channel = await channelOf(row.body.address)
    const requests = renderMessage(row.id, row.body, await filesOf(row.body, drawing))
    const there = (await lookBack?.there(row, channel, requests)) ?? []
    let platformId = ''
    for (const [n, { body, files }] of requests.entries()) {
      platformId = there[n] ?? platformId
      if (there[n] || n < (begun.get(row.id) ?? 0)) continue
      const sent = await rest.post(Routes.channelMessages(channel), {
        body,
        signal: whileKnown(),
        ...(files.length > 0 ? { files: rawOf(files) } : {}),
      })
      platformId = (sent as APIMessage).id
      if (n < requests.length - 1) begun.set(row.id, n + 1)
    }
    begun.delete(row.id)
    lookBack?.over(row)
    return { channel, platformId }
  }

  return {
    async deliver(row) {
      try {
        return await post(row)
      } catch (error) {
        // a message that cannot even be written down for the platform will not be better next time
        const final = error instanceof RangeError ? new Undeliverable('refused') : refusalOf(error)
        if (final) {
          begun.delete(row.id)
          lookBack?.over(row)
        }
        throw final ?? error
      }
    },
  }
}
