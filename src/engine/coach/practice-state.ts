import { emergencyNumber, regionOf } from '../../domain/region.ts'
import type { Texts } from '../../text/index.ts'
import type { Server } from '../event.ts'
import type { PracticeRow } from '../rows.ts'

/** What stands between a practice and its work: it does not go on without, or it goes on worse. */
export interface Lacking {
  /** No client can be invited, or nothing can be posted, until it is mended. */
  readonly missing: readonly string[]
  /** Worth a look; nothing stops for it. */
  readonly notes: readonly string[]
}

/**
 * What a practice still needs, each with its mend.
 * @param server what the chat sees of it; null where it cannot be looked at, and then only the settings are judged
 */
export function lackingOf(practice: PracticeRow, server: Server | null, { setUp }: Texts): Lacking {
  const { coachRole, coachChannel, region, policyConfirmed } = practice
  const places = server
    ? channelsOf(practice).map(({ option, id }) => placeOf(option, id, server, setUp))
    : []
  const roleGone = server && coachRole !== null && server.role(coachRole) === null
  return {
    missing: [
      ...(coachRole ? [] : [setUp.lacksRole]),
      ...(roleGone ? [setUp.roleGone] : []),
      ...(coachChannel ? [] : [setUp.lacksChannel]),
      ...places.flatMap((problem) => problem ?? []),
      ...(policyConfirmed ? [] : [setUp.policyOpen]),
    ],
    notes: [
      ...(region === null ? [setUp.noRegion] : []),
      ...(region !== null && regionOf(region)?.emergency.seen === 'M' ? [setUp.fromMemory(region)] : []),
      ...(server ? notesOn(practice, server, setUp) : []),
    ],
  }
}

/** The channels that a practice posts to, by the option that names them. */
export function channelsOf({ coachChannel, alertChannel }: PracticeRow): { option: string; id: string }[] {
  const named = [
    { option: 'coach-channel', id: coachChannel },
    { option: 'alert-channel', id: alertChannel === coachChannel ? null : alertChannel },
  ]
  return named.flatMap(({ option, id }) => (id === null ? [] : [{ option, id }]))
}

/** What is wrong with a channel, with the mend; null where the bot can post there and everyone is kept out. */
export function placeOf(option: string, id: string, server: Server, setUp: Texts['setUp']): string | null {
  const seen = server.channel(id)
  if (!seen) return setUp.channelGone(option)
  if (seen.open) return setUp.channelOpen(option)
  return seen.lacks.length > 0 ? setUp.channelLacks(option, seen.lacks) : null
}

function notesOn(practice: PracticeRow, server: Server, setUp: Texts['setUp']): string[] {
  const { coachRole, coachChannel, alertChannel } = practice
  const others = channelsOf(practice).flatMap(({ option, id }) => {
    const readers = (server.channel(id)?.readers ?? []).filter((role) => role !== coachRole)
    return readers.length > 0 ? [setUp.readers(option, readers)] : []
  })
  const alerts = server.channel(alertChannel ?? coachChannel ?? '')
  const role = server.role(coachRole ?? '')
  const silent = alerts && role && !alerts.callsRoles && !role.mentionable
  return [...others, ...(silent ? [setUp.cannotCall] : [])]
}

/** Every setting of a practice as it stands, a line each, then what is missing. */
export function practiceState(practice: PracticeRow, server: Server | null, texts: Texts): string {
  const { setUp } = texts
  const { missing, notes } = lackingOf(practice, server, texts)
  const emergency = emergencyNumber(practice)
  return [
    missing.length === 0 ? setUp.done : setUp.notDone,
    ...setUp.settings({ ...practice, emergency }),
    ...(missing.length > 0 ? ['', setUp.stillMissing, ...missing.map((line) => `- ${line}`)] : []),
    ...(notes.length > 0 ? ['', setUp.worthALook, ...notes.map((line) => `- ${line}`)] : []),
  ].join('\n')
}
