import { createHash } from 'node:crypto'
import type { Side } from '../../domain/checkin.ts'
import type { Texts } from '../../text/index.ts'
import type { Desk } from '../command.ts'
import { Draft } from '../draft.ts'
import type { Command } from '../event.ts'
import type { ClientFile, Tx } from '../ports.ts'
import type { Change, ClientRow, PracticeRow } from '../rows.ts'
import { hasEnded, isLocked, isPressing } from '../status.ts'
import { emptyFile } from './empty-file.ts'
import { invite } from './enrol.ts'
import { isServed } from './served.ts'
import { readTimes, type Times } from './times.ts'

/** Whom a coach wishes to invite, and as what. */
interface Wish {
  /** Platform id of the person. */
  readonly user: string
  readonly alias: string
  readonly side: Side | null
  /** The practice's own where null. */
  readonly language: string | null
  readonly wordsOnly: boolean
  /** "<@id>" of the coach who looks after them. */
  readonly coach: string
  /** Prompt, reminder, zone, days off and region as typed. */
  readonly times: Command['options']
}

/**
 * Invites a client, unless they are here already, the alias is somebody else's, or a wish cannot be.
 * @param cause id of the command, applied once
 * @returns what the coach reads; the alias given, null where nobody is invited
 */
export async function enrolNew(
  desk: Desk,
  wish: Wish,
  cause: string,
): Promise<{ text: string; ref: string | null }> {
  const { tx, now, texts, textsFor } = desk
  const practice = desk.practice!
  const own = (await tx.clientsOfUser(wish.user)).filter((file) => file.practice.id === practice.id)
  const read =
    notReady(practice, wish.alias, texts) ?? inTheWay(own, texts) ?? (await readWish(desk, wish, own))
  if (typeof read === 'string') return { text: read, ref: null }
  const { user, side, wordsOnly, coach } = wish
  const client: ClientRow = {
    id: createHash('sha256').update(`${practice.id}/${cause}`).digest('hex').slice(0, 16),
    practiceId: practice.id,
    user,
    ...read,
    side,
    stage: 'invited',
    wordsOnly,
    start: null,
    coach,
    remind: null,
    endedAt: null,
    createdAt: now,
  }
  const draft = new Draft(emptyFile(practice, client), now, cause, textsFor)
  draft.put('client', client)
  invite(draft)
  await tx.apply(draft.outcome)
  await tx.apply({ changes: own.flatMap(noMoreComeBack), postings: [] })
  const again = read.ref === wish.alias ? '' : `\n${texts.courseForCoach.aliasAgain(wish.alias, read.ref)}`
  return { text: `${texts.commands.invited(read.ref)}${again}`, ref: read.ref }
}

/** Why this practice can invite nobody yet, or nobody under this alias. */
function notReady(
  { coachChannel, policyConfirmed }: PracticeRow,
  alias: string,
  { commands, setUp }: Texts,
): string | null {
  if (!coachChannel) return commands.setUpLacks
  if (!policyConfirmed) return setUp.enrolNeedsPolicy
  return /^[\p{L}\d-]{1,30}$/u.test(alias) ? null : commands.badAlias
}

/** Why a person with these records in the practice is not invited anew. */
function inTheWay(own: readonly ClientFile[], { commands }: Texts): string | null {
  const here = own.find(({ client }) => !hasEnded(client))
  if (here) return commands.enrolledAlready(here.client.ref)
  // a new record knows nothing of it, and would bring drills
  const locked = own.find((file) => isLocked(file) || isPressing(file))
  return locked ? commands.enrolLocked(locked.client.ref) : null
}

/** Alias, language and times that the client gets; a sentence where one of them cannot be. */
async function readWish(
  { tx, practice, texts, textsFor }: Desk,
  wish: Wish,
  own: readonly ClientFile[],
): Promise<(Times & Pick<ClientRow, 'ref' | 'language'>) | string> {
  const ref = await freeAlias(tx, practice!.id, wish.alias, own)
  if (ref === null) return texts.commands.aliasTaken(wish.alias)
  const language = (wish.language ?? practice!.language).toLowerCase()
  if (textsFor(language).language !== language) return texts.courseForCoach.badLanguage(language)
  const times = timesServed(wish.times, practice!, texts)
  return typeof times === 'string' ? times : { ref, language, ...times }
}

/** Where and when the client is prompted, the practice's own where left out; a sentence where that cannot be. */
function timesServed(options: Command['options'], practice: PracticeRow, texts: Texts): Times | string {
  const { zone, region } = practice
  const times = readTimes(options, { prompt: '08:00', reminder: null, zone, region, off: [] }, texts)
  if (typeof times === 'string') return times
  if (practice.regions.length > 0 && times.region === null) return texts.courseForCoach.regionNeeded
  return isServed(practice, times.region) ? times : texts.courseForCoach.regionNotServed(times.region!)
}

/** The alias wished; with a number where an earlier record of the same person holds it; null: somebody else's. */
async function freeAlias(
  tx: Tx,
  practiceId: string,
  wished: string,
  own: readonly ClientFile[],
): Promise<string | null> {
  for (let n = 1; ; n += 1) {
    const ref = n === 1 ? wished : `${wished}-${n}`
    const holder = await tx.clientByRef(practiceId, ref)
    if (!holder) return ref
    if (!own.some((file) => file.client.id === holder.client.id)) return null
  }
}

/** The word that was to come some weeks after the end has no place once the way goes on. */
const noMoreComeBack = ({ dues, asked }: ClientFile): Change[] => [
  ...dues.filter((due) => due.kind === 'come-back').map(({ id }): Change => ({ drop: 'due', id })),
  ...asked
    .filter((row) => row.ask === 'come-back' || row.ask === 'remind')
    .map(({ id }): Change => ({ drop: 'asked', id })),
]
