import { createHash } from 'node:crypto'
import type { Operation } from './validate.ts'

/** Rates: requests a second over all routes, and requests in 5 s on one route of one channel, server or webhook. */
export interface Rates {
  global: number
  perChannel: number
}

/** 50 a second overall is the documented limit; 5 in 5 s per channel is what its headers commonly show. */
export const PLATFORM_RATES: Rates = { global: 50, perChannel: 5 }

const GLOBAL_MS = 1000
const ROUTE_MS = 5000
// the documented parameters that make limits apart: channel, server, webhook with its token
const MAJOR = /\{(channel_id|guild_id|webhook_id|webhook_token)\}/

/** What a limit says about one request. */
export interface Ruling {
  headers: Record<string, string>
  /** Set where the request is refused with 429. */
  refused: { message: string; retry_after: number; global: boolean } | null
}

interface Bucket {
  resetsAt: number
  used: number
}

/** Counts requests in windows of real time that open with their first request. */
export class Limits {
  private global: Bucket = { resetsAt: 0, used: 0 }
  private readonly routes = new Map<string, Bucket>()

  constructor(private readonly rates: Rates | null) {}

  /** Counts a request; null where limits are off. */
  rule(operation: Operation): Ruling | null {
    if (!this.rates) return null
    const now = Date.now()
    // interaction answers do not count against the global limit (Discord documentation)
    const bound = !/ \/(interactions|webhooks)\//.test(operation.name)
    if (bound && !take(this.global, this.rates.global, GLOBAL_MS, now)) return this.overGlobal(now)
    return MAJOR.test(operation.name) && !operation.name.includes('/interactions/')
      ? this.ruleRoute(operation, this.rates.perChannel, now)
      : { headers: {}, refused: null }
  }

  private ruleRoute(operation: Operation, limit: number, now: number): Ruling {
    const names = [...operation.name.matchAll(/\{[a-z_]+\}/g)].map((m) => m[0])
    const major = operation.params.filter((_, i) => MAJOR.test(names[i] ?? ''))
    const key = [operation.name, ...major].join(' ')
    const bucket = this.routes.get(key) ?? { resetsAt: 0, used: 0 }
    this.routes.set(key, bucket)
    const granted = take(bucket, limit, ROUTE_MS, now)
    const seconds = secondsLeft(bucket, now)
    const headers = {
      'x-ratelimit-limit': String(limit),
      'x-ratelimit-remaining': String(Math.max(0, limit - bucket.used)),
      'x-ratelimit-reset': (bucket.resetsAt / 1000).toFixed(3),
      'x-ratelimit-reset-after': seconds.toFixed(3),
      'x-ratelimit-bucket': createHash('sha256').update(operation.name).digest('hex').slice(0, 32),
    }
    return granted ? { headers, refused: null } : refusal(seconds, 'user', headers)
  }

  private overGlobal(now: number): Ruling {
    return refusal(secondsLeft(this.global, now), 'global', { 'x-ratelimit-global': 'true' })
  }
}

function take(bucket: Bucket, limit: number, windowMs: number, now: number): boolean {
  if (now >= bucket.resetsAt) Object.assign(bucket, { resetsAt: now + windowMs, used: 0 })
  if (bucket.used >= limit) return false
  bucket.used += 1
  return true
}

const secondsLeft = (bucket: Bucket, now: number) => Math.max(1, bucket.resetsAt - now) / 1000

function refusal(seconds: number, scope: 'user' | 'global', headers: Record<string, string>): Ruling {
  const body = { message: 'You are being rate limited.', retry_after: seconds, global: scope === 'global' }
  return {
    headers: { ...headers, 'retry-after': String(Math.ceil(seconds)), 'x-ratelimit-scope': scope },
    refused: body,
  }
}
