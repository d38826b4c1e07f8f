import { createHmac, randomBytes } from 'node:crypto'
import { closeSync, existsSync, fsyncSync, mkdirSync, openSync, readFileSync, writeSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { z } from 'zod'
import type { Address } from './address.ts'
import { codeOf } from './problem.ts'
import { syncPath } from './sync.ts'

/**
 * One erasure as it is remembered: which client, as an HMAC-SHA256 of the client's id under a random salt of its own,
 * and when.
 *
 * What that keeps from whoever holds the ledger alone: an id is itself a hash of the practice and of the `/enrol` that
 * made it; it holds neither the alias nor the platform id of the person, so trying every platform id finds nobody, and
 * the salt keeps tables made beforehand and two ledgers from being compared. What it cannot keep: whoever also holds an
 * older copy of the database can try its ids and learn which of those clients were erased, and when. Restoring has to
 * do just that.
 */
export interface Erasure {
  readonly hash: string
  readonly salt: string
  /** ISO instant. */
  readonly at: string
}

const Line = z.object({
  hash: z.string().regex(/^[0-9a-f]{64}$/),
  salt: z.string().regex(/^[0-9a-f]{32}$/),
  at: z.iso.datetime(),
})

const SALT_BYTES = 16

export function erasureOf(clientId: string, at: Date): Erasure {
  const salt = randomBytes(SALT_BYTES).toString('hex')
  return { hash: hashOf(salt, clientId), salt, at: at.toISOString() }
}

export const isOf = ({ salt, hash }: Erasure, clientId: string): boolean => hashOf(salt, clientId) === hash

const hashOf = (salt: string, clientId: string): string =>
  createHmac('sha256', Buffer.from(salt, 'hex')).update(clientId).digest('hex')

/**
 * Where the ledger of a database lies: beside a SQLite file; for a server in a folder of the bot, or nowhere where
 * none is named.
 */
export function ledgerPlace(address: Address, folder: string | null): string | null {
  if (address.kind === 'sqlite') return `${address.path}-erased.jsonl`
  return folder === null ? null : join(folder, 'ebbline-erased.jsonl')
}

/** A ledger as it was read. */
export interface Ledger {
  readonly isThere: boolean
  readonly erasures: readonly Erasure[]
  /** Lines that cannot be read; one cut off by a power cut stands in the database too. */
  readonly unreadable: number
}

/** @throws an error of the file system where it is there and cannot be read */
export function readLedger(path: string): Ledger {
  if (!existsSync(path)) return { isThere: false, erasures: [], unreadable: 0 }
  const lines = readFileSync(path, 'utf8').split('\n').filter(Boolean)
  const erasures = lines.flatMap((line) => readLine(line) ?? [])
  return { isThere: true, erasures, unreadable: lines.length - erasures.length }
}

function readLine(line: string): Erasure | null {
  try {
    return Line.parse(JSON.parse(line))
  } catch {
    return null
  }
}

/**
 * Adds lines to the ledger (mode 0600, made where it is missing) and waits until they are on the disk.
 * @throws an error of the file system where that fails
 */
export function appendLedger(path: string, erasures: readonly Erasure[]): void {
  mkdirSync(dirname(path), { recursive: true, mode: 0o700 })
  const isNew = !existsSync(path)
  const file = openSync(path, 'a', 0o600)
  try {
    // a line that was cut off must not swallow the one after it
    const before = isNew || endsWhole(path) ? '' : '\n'
    const text = erasures.map((erasure) => `${JSON.stringify(erasure)}\n`).join('')
    if (text !== '') writeSync(file, before + text)
    fsyncSync(file)
  } finally {
    closeSync(file)
  }
  if (isNew) syncPath(dirname(path))
}

function endsWhole(path: string): boolean {
  const text = readFileSync(path, 'utf8')
  return text === '' || text.endsWith('\n')
}

/** Those of a list that another does not hold. */
export function without(list: readonly Erasure[], others: readonly Erasure[]): Erasure[] {
  const held = new Set(others.map(({ hash }) => hash))
  return list.filter(({ hash }) => !held.has(hash))
}

/** Says what is wrong with a ledger, and the mend. */
export const ledgerProblem = (error: unknown, path: string): string =>
  `The list of erasures ${path} cannot be read or written (${codeOf(error) || 'unknown reason'}): give this user access to it and free some space; the database keeps what is missing in it until then.`
