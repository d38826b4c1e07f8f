import { type APIDMChannel, type APIMessage, type RawFile, type REST, Routes } from 'discord.js'
import type { Logger } from 'pino'
import type { Address, Picture } from '../engine/message.ts'
import { type Courier, Undeliverable } from '../engine/ports.ts'
import type { OutboxRow } from '../engine/rows.ts'
import { refusalOf } from './refusal.ts'
import { type Body, fileName, renderMessage } from './render.ts'
import { safeError } from './safe-error.ts'

export type Draw = (picture: Picture) => Promise<{ png: Uint8Array }>

export interface CourierParts {
  readonly rest: REST
  readonly draw: Draw
  readonly log: Logger
}

/** Brings messages to the platform over its HTTP API; it needs no gateway. */
export function createCourier({ rest, draw, log }: CourierParts): Courier {
  const directs = new Map<string, string>()
  // how many parts of a long message are there already: another try goes on where the last one failed
  const begun = new Map<string, number>()

  const channelOf = async (address: Address): Promise<string> => {
    if (address.to !== 'client') return address.channel
    const known = directs.get(address.user)
    if (known) return known
    const opened = (await rest.post(Routes.userChannels(), {
      body: { recipient_id: address.user },
    })) as APIDMChannel
    directs.set(address.user, opened.id)
    return opened.id
  }

  const post = async (row: OutboxRow): Promise<{ channel: string; platformId: string }> => {
    const channel = await channelOf(row.body.address)
    const bodies = renderMessage(row.id, row.body)
    const files = row.body.picture ? await filesOf(row.body.picture, draw, log) : []
    let platformId = ''
    for (const [n, body] of bodies.entries()) {
      if (n < (begun.get(row.id) ?? 0)) continue
      const sent = await rest.post(Routes.channelMessages(channel), request(body, files))
      platformId = (sent as APIMessage).id
      if (n < bodies.length - 1) begun.set(row.id, n + 1)
    }
    begun.delete(row.id)
    return { channel, platformId }
  }

  return {
    async deliver(row) {
      try {
        return await post(row)
      } catch (error) {
        // a message that cannot even be written down for the platform will not be better next time
        const final = error instanceof RangeError ? new Undeliverable('refused') : refusalOf(error)
        if (final) begun.delete(row.id)
        throw final ?? error
      }
    },
  }
}

function request(body: Body, files: RawFile[]): { body: Body; files?: RawFile[] } {
  const { attachments, ...plain } = body
  return attachments && files.length > 0 ? { body, files } : { body: plain }
}

/** The drawn picture; none where it cannot be drawn, as the words of the message hold the same facts. */
export async function filesOf(picture: Picture, draw: Draw, log: Logger): Promise<RawFile[]> {
  try {
    const { png } = await draw(picture)
    return [{ key: 'files[0]', name: fileName(picture), data: Buffer.from(png), contentType: 'image/png' }]
  } catch (error) {
    log.error({ error: safeError(error) }, 'a picture could not be drawn; its message goes without it')
    return []
  }
}
