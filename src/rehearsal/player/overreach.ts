import type { Platform } from '../platform/index.ts'
import type { Cast } from './cast.ts'

/**
 * What no message of the bot may do, whatever stands in it: leave open whom it calls, call anybody outside the
 * coaches' two channels or anybody else there, or have a file fetched that somebody attached.
 */
export function overreach({ effects }: Platform, cast: Cast): string[] {
  const rooms = [cast.coachChannel, cast.alertChannel].map((room) => `/channels/${room}/messages`)
  const mayBeCalled = [cast.role, cast.coach]
  const calls = effects.calls.flatMap(({ request, open, users, roles }) => {
    if (open) return [`${request} leaves open whom it calls`]
    const called = [...users, ...roles]
    const isMeant =
      rooms.some((room) => request.endsWith(room)) && called.every((one) => mayBeCalled.includes(one))
    return isMeant ? [] : [`${request} calls ${called.join(', ')}`]
  })
  return [...calls, ...effects.fetched.map((path) => `an attachment was fetched: ${path}`)]
}
