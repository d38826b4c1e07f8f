import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import pino from 'pino'
import { Permission, Platform, type PostedEvent } from '../../src/rehearsal/platform/index.ts'
import type { ServiceParts } from '../../src/service.ts'
import { putOnFile } from './on-file.ts'

/** A practice with one client on the stand-in, and what a bot in service needs, in real time. */
export async function oneClient(databaseUrl?: string) {
  const folder = mkdtempSync(join(tmpdir(), 'ebbline-live-'))
  const path = join(folder, 'live.db')
  const url = databaseUrl ?? `file:${path}`
  const platform = new Platform()
  const coach = platform.addUser('coach')
  const heron = platform.addUser('heron')
  const stranger = platform.addUser('plover')
  const guild = platform.build.addGuild('boathouse', { ownerId: coach.id })
  const role = platform.build.addRole(guild.id, 'coach').id
  platform.build.addMember(guild.id, coach.id, [role])
  for (const { id } of [heron, stranger]) platform.build.addMember(guild.id, id)
  const room = {
    everyoneCanView: false,
    overwrites: [{ id: role, type: 'role' as const, allow: Permission.viewChannel, deny: 0n }],
  }
  const alerts = platform.build.addChannel(guild.id, 'alerts', room)
  await platform.start()
  const people = { guild: guild.id, role, alerts: alerts.id, coach: coach.id, heron: heron.id }
  await putOnFile(url, people, null)
  const posted: PostedEvent[] = []
  platform.on('message', (event) => void posted.push(event))
  const logs: string[] = []
  const log = pino({ level: 'debug', base: null }, { write: (line) => void logs.push(line) })
  const { token, apiUrl: api } = platform
  const parts: ServiceParts = {
    ...{ databaseUrl: url, token, api, log, spoolFolder: folder },
    now: () => new Date(),
  }
  /** Milliseconds until something is so. */
  const until = async (isSo: () => boolean | Promise<boolean>, most = 60_000): Promise<number> => {
    const begun = performance.now()
    while (!(await isSo())) {
      if (performance.now() - begun > most) throw new Error('waited in vain')
      await new Promise((resolve) => setTimeout(resolve, 10))
    }
    return performance.now() - begun
  }
  const toHeron = () => posted.filter((event) => event.recipient === heron.id)
  const inAlerts = () => posted.filter((event) => event.channelId === alerts.id)
  return {
    ...{ folder, path, platform, heron, coach, stranger, alerts },
    ...{ posted, logs, parts, until, toHeron, inAlerts },
  }
}
