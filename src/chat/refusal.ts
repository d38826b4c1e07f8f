import { DiscordAPIError } from 'discord.js'
import { Undeliverable } from '../engine/ports.ts'

// Codes of the platform's documentation ("JSON Error Codes"); 50278 is from memory: no server in common.
const REASONS: Readonly<Record<number, Undeliverable['reason']>> = {
  50007: 'closed',
  50278: 'closed',
  50001: 'no-access',
  50013: 'no-access',
  10003: 'gone',
  10004: 'gone',
  10013: 'gone',
  50033: 'gone',
}

// The token (401), the time (408) or the pace (429) was wrong, not the message: it may go later.
const LATER = [401, 408, 429]

/** The final refusal behind an error; null where another try may work. */
export function refusalOf(error: unknown): Undeliverable | null {
  if (!(error instanceof DiscordAPIError)) return null
  const reason = REASONS[Number(error.code)]
  if (reason) return new Undeliverable(reason)
  const final = error.status >= 400 && error.status < 500 && !LATER.includes(error.status)
  return final ? new Undeliverable('refused') : null
}
