import { createHash } from 'node:crypto'
import { mkdirSync, writeFileSync } from 'node:fs'
import { join, parse } from 'node:path'
import type { Care } from '../../domain/care.ts'
import { dayAt, timeAt } from '../../domain/local-time.ts'
import { draw, drawFile } from '../../drawing.ts'
import type { Address, Attached, Message, MessageKind, Picture } from '../../engine/message.ts'

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

/**
 * Keeps pictures and files of messages in a folder, each under a path that is known at once; another one under the
 * same name gets a number.
 */
export function shelf(folder: string) {
  const kept = new Map<string, string>()
  let drawing: Promise<void> = Promise.resolve()
  const keep = (name: string, made: unknown, bytes: () => Promise<Uint8Array>): string => {
    const hash = createHash('sha256').update(JSON.stringify(made)).digest('hex')
    const { name: stem, ext } = parse(name)
    let free = name
    for (let n = 2; kept.has(free) && kept.get(free) !== hash; n += 1) free = `${stem}-${n}${ext}`
    if (kept.has(free)) return free
    kept.set(free, hash)
    drawing = drawing.then(async () => {
      mkdirSync(folder, { recursive: true, mode: 0o700 })
      writeFileSync(join(folder, free), await bytes(), { mode: 0o600 })
    })
    return free
  }
  return {
    picture: (picture: Picture): string =>
      keep(`${picture.name}.png`, picture.facts, async () => (await draw(picture)).png),
    file: (file: Attached): string =>
      keep(file.name, file, async () =>
        'text' in file ? Buffer.from(file.text, 'utf8') : await drawFile(file),
      ),
    /** Resolves when all of them are drawn and written. */
    written: (): Promise<void> => drawing,
  }
}
