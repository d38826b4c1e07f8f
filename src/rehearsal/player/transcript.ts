import { createHash } from 'node:crypto'
import { mkdirSync, writeFileSync } from 'node:fs'
import { join, parse } from 'node:path'
import type { Care } from '../../domain/care.ts'
import type { Weeks } from '../../domain/digest/weeks.ts'
import { dayAt, timeAt } from '../../domain/local-time.ts'
import type { Address, Attached, Message, MessageKind, Picture } from '../../engine/message.ts'
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

export type Said = Pick<Message, 'about' | 'kind' | 'asks' | 'care' | 'drills' | 'picture' | 'files'> & {
  readonly text: string
  readonly buttons: Message['buttons']
}

/** A message, and the files that came with it beside the picture, by their paths below the folder. */
export interface Shown {
  readonly message: Delivered
  readonly files: readonly string[]
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

/** Keeps pictures and files of messages in a folder; another one under the same name gets a number. */
export function shelf(folder: string) {
  const kept = new Map<string, string>()
  const keep = (name: string, data: Uint8Array): string => {
    const hash = createHash('sha256').update(data).digest('hex')
    const { name: stem, ext } = parse(name)
    let free = name
    for (let n = 2; kept.has(free) && kept.get(free) !== hash; n += 1) free = `${stem}-${n}${ext}`
    if (!kept.has(free)) {
      mkdirSync(folder, { recursive: true })
      writeFileSync(join(folder, free), data)
      kept.set(free, hash)
    }
    return free
  }
  return {
    picture({ name, facts }: Picture): string {
      const words = textsFor('en').digest.picture
      return keep(`${name}.png`, drawWeeks(facts as Weeks, { theme: 'light', words }).png)
    },
    file: ({ name, text }: Attached): string => keep(name, Buffer.from(text, 'utf8')),
  }
}
