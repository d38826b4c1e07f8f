import { existsSync } from 'node:fs'
import type { Client } from 'discord.js'
import { createCourier } from './chat/courier.ts'
import { paceOf } from './chat/delivery-pace.ts'
import { keptPrivate } from './chat/kept-private.ts'
import { createLookBack } from './chat/look-back.ts'
import { isUrgent } from './chat/retry-at.ts'
import { draw, drawFile } from './drawing.ts'
import type { Engine, Store } from './engine/ports.ts'
import type { OutboxRow } from './engine/rows.ts'
import type { ServiceParts } from './service.ts'
import { fileOf, readAddress } from './store/address.ts'
import { outboxId } from './store/apply.ts'
import { driverProblem } from './store/driver-problem.ts'
import type { OpenStore } from './store/open.ts'
import { CAN_WAIT } from './store/outbox-claims.ts'
import { codeOf, StoreProblem } from './store/problem.ts'
import { LANGUAGE_CODES, textsFor } from './text/index.ts'
import { type Places, placesFor } from './without-store/files.ts'
import { openWithoutStore, type WithoutStore } from './without-store/index.ts'
import { type KnownPeople, openKnown } from './without-store/known.ts'

export interface KnownFile {
  readonly places: Places
  readonly people: KnownPeople
}

type FileParts = Pick<ServiceParts, 'databaseUrl' | 'spoolFolder' | 'seal'>

/** Who was known when the bot last ran. */
export function knownFile({ databaseUrl, spoolFolder = null, seal = null }: FileParts): KnownFile {
  const places = placesFor(fileOf(readAddress(databaseUrl)), spoolFolder)
  return { places, people: openKnown(places.known, seal) }
}

/**
 * The same, before the database is opened.
 * @throws StoreProblem where somebody was known, and their database file is not there: a new and empty one in its
 * place would know nobody
 */
export function knownBefore(parts: FileParts): KnownFile {
  const known = knownFile(parts)
  const { database, known: list } = known.places
  if (database !== null && !known.people.isEmpty && !existsSync(database))
    throw new StoreProblem(
      `The database ${database} is gone, though clients were on file: put it back, or put back a backup with ebb restore FILE; to begin anew, remove ${list}.`,
    )
  return known
}

/**
 * Among several processes it is known who had claimed a message, so that not all that waited at the start is looked up;
 * but what is urgent may go unclaimed.
 */
const maybeSent =
  ({ takenOver }: OpenStore['outbox'], started: Date) =>
  ({ id, priority, notBefore }: OutboxRow): boolean =>
    takenOver(id) || (priority < CAN_WAIT && notBefore < started)

/**
 * Beside the store a short way for urgent signs, which must be answered though it be away.
 * @throws StoreProblem where its folder cannot be written
 */
export async function shortWay(
  {
    now,
    log,
    several,
    seal = null,
    onSent = () => {},
  }: Pick<ServiceParts, 'now' | 'log' | 'onSent' | 'seal' | 'several'>,
  { places, people }: KnownFile,
  { store, client }: { store: OpenStore; client: Client },
  engineOn: (store: Store) => Engine,
): Promise<WithoutStore> {
  const directOf = (user: string) => people.find(user)?.direct ?? null
  const lookBack = createLookBack({
    ...{ rest: client.rest, now, marked: store.outbox.marked },
    ...(several ? { mayBeThere: maybeSent(store.outbox, now()) } : {}),
    ownId: () => client.user?.id ?? null,
  })
  const courier = createCourier({ rest: client.rest, directOf, lookBack, draw, drawFile, log })
  try {
    return await openWithoutStore({
      ...{
        spool: places.spool,
        seal,
        known: people,
        store: store.store,
        engineOn,
        textsFor,
        onSent,
        now,
        log,
      },
      courier: keptPrivate(courier, client),
      // what can wait, the fetching of what was written meanwhile among it, leaves room for these
      onPast: (row) => paceOf(client.rest).count(isUrgent(row)),
      idOf: outboxId,
      languages: LANGUAGE_CODES,
      problemOf: (error) => (places.database === null ? null : driverProblem(error, places.database)),
      readKnown: (concerned) => store.knownPeople(now(), concerned),
      probe: () => store.settings.set('last-probe', now().toISOString()),
    })
  } catch (error) {
    await store.close()
    if (codeOf(error) === '') throw error
    throw new StoreProblem(
      `The file ${places.spool} cannot be written (${codeOf(error)}): give this user write access, or name another folder in EBBLINE_SPOOL_DIR.`,
      { cause: error },
    )
  }
}
