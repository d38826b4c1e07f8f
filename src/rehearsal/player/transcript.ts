import { createHash } from 'node:crypto'
import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Care } from '../../domain/care.ts'
import type { Weeks } from '../../domain/digest/weeks.ts'
import { dayAt, timeAt } from '../../domain/local-time.ts'
import type { Address, Message, MessageKind, Picture } from '../../engine/message.ts'
import { drawWeeks } from '../../picture/index.ts'
import { textsFor } from '../../text/index.ts'

/** One message as it reached somebody; the order of the keys is that of the output. */
export interface Delivered {
  readonly at: string
  readonly local: string
  readonly day: string
  readonly to: string
  readonly about: string | null
  readonly kind: MessageKind
  readonly asks: string | null
  readonly care: Care
  readonly text: string
  readonly drills: readonly string[]
  readonly buttons: readonly { readonly name: string; readonly label: string }[]
  /** Path below the folder of pictures. */
  readonly picture: string | null
}

export type Said = Pick<Message, 'about' | 'kind' | 'asks' | 'care' | 'drills' | 'picture'> & {
  readonly text: string
  readonly buttons: Message['buttons']
}

/** One message as it is listed. */
export function delivered(at: Date, to: string, zone: string, said: Said, picture: string | null): Delivered {
  const day = dayAt(at, zone)
  return {
    at: at.toISOString(),
    local: `${day}T${timeAt(at, zone)}`,
    day,
    to,
    about: said.about,
    kind: said.kind,
    asks: said.asks,
    care: said.care,
    text: said.text,
    drills: [...said.drills],
    buttons: said.buttons.map(({ name, label }) => ({ name, label })),
    picture,
  }
}

/** "client:heron", "coach" or "alerts". */
export const recipient = (address: Address, who: (user: string) => string | null): string =>
  address.to === 'client' ? `client:${who(address.user) ?? address.user}` : address.to

/** Draws and keeps the pictures of messages; another picture under the same name gets a number. */
export function pictureShelf(folder: string) {
  const kept = new Map<string, string>()
  return (picture: Picture): string => {
    const { png } = drawWeeks(picture.facts as Weeks, {
      theme: 'light',
      words: textsFor('en').digest.picture,
    })
    const hash = createHash('sha256').update(png).digest('hex')
    let name = `${picture.name}.png`
    for (let n = 2; kept.has(name) && kept.get(name) !== hash; n += 1) name = `${picture.name}-${n}.png`
    if (!kept.has(name)) {
      mkdirSync(folder, { recursive: true })
      writeFileSync(join(folder, name), png)
      kept.set(name, hash)
    }
    return name
  }
}
