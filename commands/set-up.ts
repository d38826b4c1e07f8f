import { WEEKDAYS } from '../src/domain/day.ts'
import { dayAt, isClockTime, isZone } from '../src/domain/local-time.ts'
import { regionOf } from '../src/domain/region.ts'
import { plain } from '../src/engine/answer.ts'
import type { PracticeCommand } from '../src/engine/command.ts'
import { digestDue } from '../src/engine/digest.ts'
import type { Command } from '../src/engine/event.ts'
import type { PracticeRow } from '../src/engine/rows.ts'
import type { Texts } from '../src/text/index.ts'

const CHANNELS = ['coach-channel', 'alert-channel'] as const

/** Sets the practice up, or changes one setting of it; a channel that everyone can read is refused. */
export const setUp: PracticeCommand = {
  name: 'set-up',
  who: 'keeper',
  options: [
    { name: 'coach-role', kind: 'role', required: false },
    { name: 'coach-channel', kind: 'channel', required: false },
    { name: 'alert-channel', kind: 'channel', required: false },
    { name: 'deputy', kind: 'person', required: false },
    { name: 'zone', kind: 'text', required: false },
    { name: 'digest', kind: 'text', required: false },
    { name: 'region', kind: 'text', required: false },
    { name: 'regions', kind: 'text', required: false },
    { name: 'retention', kind: 'number', required: false, least: 30, most: 3650 },
    { name: 'language', kind: 'text', required: false },
    { name: 'window', kind: 'number', required: false, least: 0, most: 60 },
    { name: 'quote', kind: 'yes-no', required: false },
    { name: 'policy-settled', kind: 'yes-no', required: false },
  ],
  async run({ tx, practice, now, texts, textsFor }, command) {
    const problem = channelProblem(command, texts)
    if (problem) return plain(problem, null)
    const { language } = command.options
    if (language !== undefined && textsFor(String(language)).language !== language)
      return plain(texts.courseForCoach.badLanguage(String(language)), null)
    const before = practice ?? newPractice(command.actor.guild!, now)
    const wished = readPractice(command.options, before, texts, now)
    if (typeof wished === 'string') return plain(wished, null)
    await tx.apply({
      changes: [
        { put: 'practice', row: wished },
        { put: 'due', row: digestDue(wished, now) },
      ],
      postings: [],
    })
    const done =
      wished.coachRole && wished.coachChannel ? texts.commands.setUpDone : texts.commands.setUpLacks
    return plain(wished.policyConfirmed ? done : `${done}\n${texts.commands.policyOpen}`, null)
  },
}

function channelProblem({ options, channels }: Command, { commands }: Texts): string | null {
  for (const option of CHANNELS) {
    const seen = options[option] === undefined ? undefined : channels?.[option]
    if (seen?.open) return commands.channelOpen(option)
    if (seen && seen.lacks.length > 0) return commands.channelLacks(option, seen.lacks)
  }
  return null
}

const newPractice = (guild: string, now: Date): PracticeRow => ({
  id: guild,
  guild,
  name: 'the practice',
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

function readPractice(
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
    zone,
    region,
    regions,
    retentionDays: options.retention === undefined ? before.retentionDays : Number(options.retention),
    digest: `${day} ${time}`,
    language: word('language') ?? before.language,
    coachRole: word('coach-role') ?? before.coachRole,
    coachChannel: word('coach-channel') ?? before.coachChannel,
    alertChannel: word('alert-channel') ?? before.alertChannel,
    deputy: word('deputy') ?? before.deputy,
    window: options.window === undefined ? before.window : Number(options.window),
    quote: options.quote === undefined ? before.quote : options.quote === true,
    policyConfirmed: options['policy-settled'] === true ? dayAt(now, zone) : before.policyConfirmed,
  }
}
