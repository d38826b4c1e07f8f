import { WEEKDAYS } from '../../domain/day.ts'
import { dayAt, isClockTime, isZone } from '../../domain/local-time.ts'
import { regionOf } from '../../domain/region.ts'
import { UNNAMED } from '../../domain/unnamed.ts'
import type { Texts } from '../../text/index.ts'
import type { Command } from '../event.ts'
import type { PracticeRow } from '../rows.ts'

const NAME_MOST = 60

/** A practice of which nothing has been said yet. */
export const newPractice = (guild: string, now: Date): PracticeRow => ({
  id: guild,
  guild,
  name: UNNAMED,
  zone: 'UTC',
  region: null,
  language: 'en',
  digest: 'Sun 18:00',
  coachRole: null,
  coachChannel: null,
  alertChannel: null,
  deputy: null,
  window: 0,
  quote: true,
  policyConfirmed: null,
  retentionDays: 365,
  regions: [],
  createdAt: now,
})

/** The settings named in a command put over those before, all others as they were; or what is wrong with one. */
export function readPractice(
  options: Command['options'],
  before: PracticeRow,
  { commands }: Texts,
  now: Date,
): PracticeRow | string {
  const word = (name: string): string | null =>
    options[name] === undefined ? null : String(options[name]).trim()
  const zone = word('zone') ?? before.zone
  const region = word('region')?.toUpperCase() ?? before.region
  const digest = word('digest') ?? before.digest
  if (!isZone(zone)) return commands.badZone(zone)
  if (region !== null && !regionOf(region)) return commands.badRegion(region)
  const regions = readRegions(word('regions')) ?? before.regions
  const unknown = regions.find((code) => !regionOf(code))
  if (unknown !== undefined) return commands.badRegions(unknown)
  const [day, time] = digest.split(/\s+/)
  if (!(WEEKDAYS as readonly string[]).includes(day ?? '') || !isClockTime(time ?? ''))
    return commands.badDigest(digest)
  return {
    ...before,
    name: readName(word('name')) ?? before.name,
    zone,
    region,
    regions,
    retentionDays: options.retention === undefined ? before.retentionDays : Number(options.retention),
    digest: `${day} ${time}`,
    language: word('language')?.toLowerCase() ?? before.language,
    coachRole: word('coach-role') ?? before.coachRole,
    coachChannel: word('coach-channel') ?? before.coachChannel,
    alertChannel: word('alert-channel') ?? before.alertChannel,
    deputy: word('deputy') ?? before.deputy,
    window: options.window === undefined ? before.window : Number(options.window),
    quote: options.quote === undefined ? before.quote : options.quote === true,
    policyConfirmed: policy(options['policy-settled'], before, dayAt(now, zone)),
  }
}

/** In one line; null where nothing was said. */
const readName = (said: string | null): string | null =>
  said?.replace(/\s+/g, ' ').slice(0, NAME_MOST).trim() || null

/** Confirmed as of today; "no" takes it back. */
function policy(said: unknown, before: PracticeRow, today: string): PracticeRow['policyConfirmed'] {
  if (said === undefined) return before.policyConfirmed
  return said === true ? today : null
}

/** "PT ES" as codes, "any" as no limit; null where nothing was said. */
function readRegions(said: string | null): string[] | null {
  if (said === null) return null
  return /^any$/i.test(said)
    ? []
    : said
        .toUpperCase()
        .split(/[\s,;]+/)
        .filter(Boolean)
}
