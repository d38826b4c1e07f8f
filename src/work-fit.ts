import type { Address } from './store/address.ts'
import { secondsAhead } from './store/clock.ts'
import { inspectDatabase } from './store/inspect.ts'
import { StoreProblem } from './store/problem.ts'

// A claim holds two minutes: a clock that is further off takes over what another is sending, or drops as too old what
// is not.
const CLOCK_MOST_S = 60

type Server = Extract<Address, { kind: 'postgresql' }>

/**
 * Whether a process may send beside the others: the same tables, and the same time.
 * @throws StoreProblem where it may not, with the mend, or where the server cannot be reached
 */
export async function mustFit({ url, server }: Server, now: () => Date): Promise<void> {
  const ahead = await secondsAhead(url, server, now)
  if (Math.abs(ahead) > CLOCK_MOST_S)
    throw new StoreProblem(
      `The clock of this machine is ${Math.abs(ahead).toFixed(0)} s ${ahead > 0 ? 'ahead of' : 'behind'} that of PostgreSQL at ${server}: let both set theirs by NTP, then start ebb work again.`,
    )
  // the bot itself changes tables, when nobody works on them
  if ((await inspectDatabase(url)).pending > 0)
    throw new StoreProblem(
      'The tables of the database are not up to date: start the bot first, with npm start.',
    )
}

/** The same later on, when others may have been started anew; a server that cannot be asked now is no reason to end. */
export async function noLongerFits(server: Server, now: () => Date): Promise<StoreProblem | null> {
  try {
    await mustFit(server, now)
    return null
  } catch (error) {
    return error instanceof StoreProblem && error.cause === undefined ? error : null
  }
}
