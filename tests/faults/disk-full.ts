import { execFileSync } from 'node:child_process'
import { closeSync, fsyncSync, mkdtempSync, openSync, rmSync, writeSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type Service, startService } from '../../src/service.ts'
import { oneClient } from './live.ts'

/** A small disk of its own that really fills up. */
export interface SmallDisk {
  readonly folder: string
  fill(): void
  free(): void
  unmount(): void
}

/** @returns null where this user may not mount one */
export function smallDisk(megabytes: number): SmallDisk | null {
  const folder = mkdtempSync(join(tmpdir(), 'ebbline-disk-'))
  try {
    execFileSync('mount', ['-t', 'tmpfs', '-o', `size=${megabytes}m,mode=0700`, 'tmpfs', folder], {
      stdio: 'ignore',
    })
  } catch {
    rmSync(folder, { recursive: true })
    return null
  }
  const filler = join(folder, 'filler')
  return {
    folder,
    fill() {
      const file = openSync(filler, 'a')
      for (const size of [65_536, 4_096, 1])
        try {
          for (;;) {
            writeSync(file, Buffer.alloc(size, 'x'))
            fsyncSync(file)
          }
        } catch (error) {
          if ((error as NodeJS.ErrnoException).code !== 'ENOSPC') throw error
        }
      closeSync(file)
    },
    free: () => rmSync(filler, { force: true }),
    unmount() {
      execFileSync('umount', [folder])
      rmSync(folder, { recursive: true })
    },
  }
}

/** What became of replies that were said while the disk was full. */
export interface Outcome {
  readonly said: number
  /** The disk was really full: the sign went the short way. */
  readonly wasFull: boolean
  /** Ids of messages that are in the database afterwards. */
  readonly applied: number
  readonly urgentReplies: number
  readonly alerts: number
  readonly openSigns: readonly string[]
  /** Milliseconds from the sign to the reply. */
  readonly ms: number
}

/**
 * A day on a disk that is full: check-ins and a sign; where asked, a kill in the middle of it; then room again.
 * @param checkIns said one after another before the sign
 */
export async function dayOnFullDisk(disk: SmallDisk, checkIns: number, killed: boolean): Promise<Outcome> {
  const live = await oneClient(`file:${join(disk.folder, 'live.db')}`)
  const { heron, platform, until, toHeron, inAlerts } = live
  const parts = { ...live.parts, spoolFolder: disk.folder }
  let service: Service = await startService(parts)
  disk.fill()
  const ids: string[] = []
  for (let n = 0; n < checkIns; n += 1) ids.push(await heron.say(`2 calf ${n % 8}`))
  // one kind line, or a receipt where there was still room
  await until(() => toHeron().length > 0)
  const before = inAlerts().length
  const urgent = () => toHeron().filter(({ content }) => content.includes('112'))
  ids.push(await heron.say("I can't pee since this morning"))
  const ms = await until(() => urgent().length > 0 && inAlerts().length > before)
  await service.chat.idle()
  if (killed) {
    service.abandon()
    await service.client.destroy()
  }
  disk.free()
  if (killed) service = await startService(parts)
  for (let n = 0; n < 3; n += 1) await service.bot.tick()
  await service.bot.idle()
  const { store } = service.store
  const [applied, file] = await store.transaction(async (tx) => {
    const seen = await Promise.all(ids.map((id) => tx.seen(id)))
    return [seen.filter(Boolean).length, await tx.client('c:heron')] as const
  })
  await service.stop()
  await platform.stop()
  return {
    ...{ said: ids.length, applied, ms, wasFull: live.logs.some((line) => line.includes('short way')) },
    urgentReplies: urgent().length,
    alerts: inAlerts().length,
    openSigns: file!.signs.filter(({ state }) => state === 'open').map(({ sign }) => sign),
  }
}
