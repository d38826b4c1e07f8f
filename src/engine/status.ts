import type { ClientFile } from './ports.ts'
import type { ClientRow, HoldRow, SignRow } from './rows.ts'

export const STATUSES = [
  'invited',
  'screening',
  'parked',
  'active',
  'locked',
  'paused',
  'discharged',
  'left',
] as const
export type Status = (typeof STATUSES)[number]

export const openHold = (file: ClientFile, kind: HoldRow['kind']): HoldRow | undefined =>
  file.holds.find((hold) => hold.kind === kind && hold.endedAt === null)

/** The reason of a rest by which the coach has stopped all drills. */
export const STOP = 'stopped by the coach'

/** The coach has stopped all drills until they decide again. */
export const isStopped = (file: ClientFile): boolean =>
  file.holds.some((hold) => hold.kind === 'rest' && hold.reason === STOP && hold.endedAt === null)

export const hasEnded = ({ stage }: Pick<ClientRow, 'stage'>): boolean =>
  stage === 'left' || stage === 'discharged'

export const isLocked = (file: ClientFile): boolean => openHold(file, 'lock') !== undefined

export const openSigns = (file: ClientFile): SignRow[] => file.signs.filter((sign) => sign.state === 'open')

/** Signs somebody hinted at, still waiting for yes or no. */
export const askedSigns = (file: ClientFile): SignRow[] => file.signs.filter((sign) => sign.state === 'asked')

/** A question waits whose answer by silence is yes: a sign hinted at, which sign, or which leg. */
export const isPressing = (file: ClientFile): boolean =>
  askedSigns(file).length > 0 || file.asked.some((asked) => asked.pressing)

/** Lock, parking and pause are kept apart; the one shown is locked > parked > paused > active. */
export function statusOf(file: ClientFile): Status {
  const { stage } = file.client
  if (stage === 'left' || stage === 'discharged') return stage
  if (isLocked(file)) return 'locked'
  if (stage === 'invited' || stage === 'screening') return stage
  if (openHold(file, 'park')) return 'parked'
  if (openHold(file, 'pause')) return 'paused'
  return 'active'
}

/** No message may name a drill while a sign is open or has been asked about, or a clinician's word is waited for. */
export const drillsWithheld = (file: ClientFile): boolean =>
  isLocked(file) || isPressing(file) || openHold(file, 'park') !== undefined
