import { readFileSync } from 'node:fs'
import { type FileHandle, open } from 'node:fs/promises'
import type { ChatEvent } from '../engine/event.ts'
import type { Sent } from '../engine/ports.ts'
import { Altered, isSealed, type Seal, SealProblem } from '../seal.ts'
import { makeFolder } from './files.ts'
import type { Heard } from './heard.ts'

// So many bytes are kept for it from the start: where the disk is full, writing inside a file still works.
const RESERVED = 256 * 1024
/** What its lines are sealed for. */
const PLACE = 'spool'

/** An event that the store could not take. */
export interface Entry {
  readonly event: ChatEvent
  /** When it came, by the host's clock. */
  readonly at: Date
  /** The signs that were answered; null for an event without. */
  readonly heard: Heard | null
}

type Line =
  | { readonly take: Entry }
  | { readonly sent: string; readonly to: Sent }
  | { readonly done: string }

export interface Spool {
  /** What waits for the store, in the order in which it came. */
  entries(): readonly Entry[]
  has(event: string): boolean
  /** Where a message (by its outbox id) went already; null where it did not. */
  sentTo(outbox: string): Sent | null
  /** Each resolves when it is on the disk; rejects where that fails, and is remembered all the same. */
  take(entry: Entry): Promise<void>
  sent(outbox: string, to: Sent): Promise<void>
  done(event: string): Promise<void>
  close(): Promise<void>
}

/**
 * Opens the spool (mode 0600): lines of JSON, each synced to the disk, written over with zeros once nothing waits
 * any more. A line that was cut off by a power cut is passed over.
 * @throws SealProblem
 */
export async function openSpool(path: string, seal: Seal | null = null): Promise<Spool> {
  makeFolder(path)
  const found = read(path, seal)
  const waiting = new Map(found.waiting.map((entry) => [entry.event.id, entry]))
  const sent = new Map(found.sent)
  const file = await open(path, found.exists ? 'r+' : 'w+', 0o600)
  await file.chmod(0o600)
  // on a disk that is full already there is no room to reserve; what there is serves
  if (found.bytes < RESERVED) await zeros(file, found.end, RESERVED).catch(() => {})
  let end = found.end
  let last: Promise<unknown> = Promise.resolve()

  const inTurn = (work: () => Promise<void>): Promise<void> => {
    const turn = last.then(work)
    last = turn.catch(() => {})
    return turn
  }
  const write = (line: Line): Promise<void> =>
    inTurn(async () => {
      const text = JSON.stringify(line)
      const bytes = Buffer.from(`${seal === null ? text : seal.close(text, PLACE)}\n`)
      await file.write(bytes, 0, bytes.length, end)
      await file.datasync()
      end += bytes.length
    })
  const clear = (): Promise<void> =>
    inTurn(async () => {
      if (waiting.size > 0) return
      await zeros(file, 0, end)
      end = 0
      sent.clear()
    })

  return {
    entries: () => [...waiting.values()],
    has: (event) => waiting.has(event),
    sentTo: (outbox) => sent.get(outbox) ?? null,
    take(entry) {
      waiting.set(entry.event.id, entry)
      return write({ take: entry })
    },
    sent(outbox, to) {
      sent.set(outbox, to)
      return write({ sent: outbox, to })
    },
    async done(event) {
      waiting.delete(event)
      await (waiting.size > 0 ? write({ done: event }) : clear())
    },
    async close() {
      await last
      await file.close()
    },
  }
}

async function zeros(file: FileHandle, from: number, to: number): Promise<void> {
  if (to <= from) return
  await file.write(Buffer.alloc(to - from), 0, to - from, from)
  await file.sync()
}

interface Found {
  readonly exists: boolean
  readonly bytes: number
  /** Where the next line goes. */
  readonly end: number
  readonly waiting: readonly Entry[]
  readonly sent: readonly [string, Sent][]
}

function read(path: string, seal: Seal | null): Found {
  const bytes = contentsOf(path)
  if (!bytes) return { exists: false, bytes: 0, end: 0, waiting: [], sent: [] }
  const zero = bytes.indexOf(0)
  const used = bytes.subarray(0, zero < 0 ? bytes.length : zero)
  const end = used.lastIndexOf(10) + 1
  const waiting = new Map<string, Entry>()
  const sent: [string, Sent][] = []
  for (const text of used.subarray(0, end).toString('utf8').split('\n')) {
    const line = parsed(opened(text, seal, path))
    if (!line) continue
    if ('take' in line) waiting.set(line.take.event.id, revived(line.take))
    else if ('sent' in line) sent.push([line.sent, line.to])
    else waiting.delete(line.done)
  }
  return { exists: true, bytes: bytes.length, end, waiting: [...waiting.values()], sent }
}

/** @throws SealProblem where the line needs a key that is not given: what waits in it must not be lost */
function opened(text: string, seal: Seal | null, path: string): string {
  const plain = seal === null ? text : openedOrNothing(text, seal)
  if (isSealed(plain))
    throw new SealProblem(
      `What waits in ${path} is sealed with a key that is not given: add it to the file that EBBLINE_KEY_FILE names.`,
    )
  return plain
}

/** A sealed line that was damaged is passed over, as a plain one is. */
function openedOrNothing(text: string, seal: Seal): string {
  try {
    return seal.open(text, PLACE)
  } catch (error) {
    if (error instanceof Altered) return ''
    throw error
  }
}

function contentsOf(path: string): Buffer | null {
  try {
    return readFileSync(path)
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null
    throw error
  }
}

function parsed(text: string): Line | null {
  try {
    return text === '' ? null : (JSON.parse(text) as Line)
  } catch {
    return null
  }
}

/** Instants come back from the file as text. */
function revived({ event, at, heard }: Entry): Entry {
  const whole = event.kind === 'words' ? { ...event, at: new Date(event.at) } : event
  return { event: whole, at: new Date(at), heard }
}
