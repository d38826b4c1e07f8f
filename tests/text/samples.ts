import type { Texts } from '../../src/text/index.ts'

const move = { day: '2026-03-11', ladder: 'glide', from: 41, to: 43, why: 'plan', by: 'BY' }
const page = { number: 41, of: 43 }
const conflicts = [{ id: 'no-load', ladder: 'lift', rung: 41 }]
const wish = { sessions: 47, rungs: { glide: 41 }, loads: {}, from: null, off: null }
const takenUp = [{ rule: 'flare', taken: 41, down: 43, nothing: 47 }]

/** What a parameter of that name is given, so that it can be told again in the sentence. */
const BY_NAME: Readonly<Record<string, unknown>> = {
  // numbers that stand in no sentence by themselves
  n: 41,
  days: 43,
  sessions: 47,
  planned: 53,
  rung: 41,
  step: 41,
  steps: 43,
  minutes: 59,
  seconds: 61,
  pictures: 67,
  clients: 71,
  weeks: 73,
  percent: 79,
  rows: 83,
  answered: 41,
  planWeek: 89,
  pain: 47,
  count: 41,
  // dates
  day: '2026-03-11',
  today: '2026-03-19',
  on: '2026-03-12',
  from: '2026-03-13',
  until: '2026-03-17',
  first: '2026-03-16',
  last: '2026-03-18',
  posted: '2026-03-12',
  // codes that each language has its own word for
  reach: 'calf',
  side: 'left',
  status: 'active',
  slot: 'sessions',
  detail: 'short',
  care: 'same-day',
  proposal: 'refer',
  direction: 'steady',
  decision: 'advance',
  via: 'edit',
  which: 'coach',
  group: 'needs',
  ladder: 'glide',
  // several
  signs: ['SIGN-A', 'SIGN-B'],
  sources: ['SOURCE'],
  lines: ['LINE-A', 'LINE-B'],
  entries: ['ENTRY'],
  refs: ['REF-A', 'REF-B'],
  known: ['KNOWN'],
  risks: ['RISK'],
  flags: ['FLAG'],
  lacks: ['LACKS'],
  roles: ['ROLE'],
  names: ['NAME-A', 'NAME-B'],
  labels: ['LABEL-A', 'LABEL-B'],
  more: ['MORE'],
  off: ['Sun'],
  drills: ['glide:2'],
  ladders: ['glide', 'open'],
  rested: ['open'],
  rungs: { glide: 41 },
  loads: { 'glide:2': 'LOADED' },
  eased: [move],
  moves: [move],
  had: [{ by: 'HAD-BY', at: 'HAD-AT' }],
  paths: [{ name: 'ACTIVITY', from: 41, now: 43 }],
  activities: [{ name: 'ACTIVITY', from: 41, now: 43 }],
  list: [{ ref: 'REF', words: 'WORDS', day: '2026-03-11' }],
  answers: { age: 41, onset: 'ONSET', lift: 'LIFT', activities: { ACTIVITY: 43 } },
  conflicts,
  although: conflicts,
  wish,
  lately: takenUp,
  ever: takenUp,
  move,
  page,
  part: page,
  counts: { needs: 41, move: 43, rest: 47 },
  // yes or no
  yes: true,
  locked: true,
  easier: true,
  cauda: true,
  selfHarm: true,
  outOfHours: true,
  urgent: false,
  shown: true,
  started: true,
  later: true,
  same: true,
  lowered: true,
}

const REVISED = {
  day: '2026-03-11',
  before: { sessions: 41, reach: 'calf', pain: 43 },
  now: { sessions: 47, reach: 'knee', pain: 53 },
}

/** Where the same name stands for something else. */
const BY_PATH: Readonly<Record<string, readonly unknown[]>> = {
  'digestAgain.revised': ['2026-03-12', [REVISED]],
  'plan.saveAnyway': [conflicts],
  'roster.head': [{ needs: 41, move: 43, rest: 47 }, '2026-03-12', page],
  'words.day': ['2026-03-11', '2026-03-19'],
  'courseForCoach.more': [41],
  'courseForCoach.covers': [[{ coach: 'COACH', cover: 'COVER', from: '2026-03-11', until: '2026-03-18' }]],
  'digest.picture.worst': [47],
  'ownDataForCoach.importedSigns': ['REF', [{ day: '2026-03-11', names: ['NAME'] }]],
  'setUp.settings': [
    {
      coachRole: 'ROLE',
      coachChannel: 'COACH-CHANNEL',
      alertChannel: 'ALERT-CHANNEL',
      deputy: 'DEPUTY',
      zone: 'ZONE',
      digest: 'DIGEST',
      region: 'REGION',
      emergency: 'EMERGENCY',
      regions: ['REGIONS'],
      retentionDays: 41,
      name: 'NAME',
      language: 'LANGUAGE',
      window: 43,
      quote: true,
      policyConfirmed: 'POLICY',
    },
  ],
  'decisions.decided': [
    {
      ref: 'REF',
      decision: 'advance',
      ladder: 'glide',
      by: 'BY',
      reason: 'REASON',
      shown: true,
      started: true,
    },
  ],
  'decisions.already': [{ ref: 'REF', decision: 'advance', ladder: 'glide', by: 'BY', at: 'AT' }],
  'decisions.stale': [{ ref: 'REF', day: '2026-03-11', values: 'VALUES', proposal: 'refer', same: true }],
  'record.head': [
    {
      ref: 'REF',
      status: 'STATUS',
      week: 'WEEK',
      first: '2026-03-16',
      last: '2026-03-18',
      planWeek: 89,
      part: page,
    },
  ],
  'record.alert': [
    {
      opened: 'OPENED',
      signs: ['SIGN'],
      takenBy: 'TAKEN-BY',
      takenAt: 'TAKEN-AT',
      had: [{ by: 'HAD-BY', at: 'HAD-AT' }],
      outcome: 'OUTCOME',
      closed: 'CLOSED',
    },
  ],
  'record.version': [{ at: 'AT', via: 'edit', words: 'WORDS', later: true }],
  'record.decision': [{ at: 'AT', decision: 'hold', ladder: 'glide', by: 'BY', reason: 'REASON' }],
}

const given = (name: string): unknown => BY_NAME[name] ?? name.toUpperCase()

/** "ref,{sessions,off},at=''" as its parts; names alone, which is all that the compiled source keeps. */
function parameters(fn: (...args: never[]) => unknown): string[] {
  const source = fn.toString()
  const single = /^(\w+)\s*=>/.exec(source)
  if (single) return [single[1]!]
  const inside = /^(?:async\s+)?(?:function\s*\w*\s*)?\(([\s\S]*?)\)\s*(?:=>|\{)/.exec(source)?.[1] ?? ''
  return inside.replace(/\s+/g, '').match(/\{[^}]*\}|[^,{}]+/g) ?? []
}

const argument = (parameter: string): unknown =>
  parameter.startsWith('{')
    ? Object.fromEntries(
        parameter
          .slice(1, -1)
          .split(',')
          .map((part) => part.split(/[:=]/)[0]!)
          .map((name) => [name, given(name)]),
      )
    : given(parameter.split('=')[0]!)

/** The arguments with which the sentence of that path is tried, made of the names of its parameters in English. */
export const argumentsOf = (path: string, fn: (...args: never[]) => unknown): readonly unknown[] =>
  BY_PATH[path] ?? parameters(fn).map(argument)

export interface Leaf {
  readonly path: string
  readonly value: unknown
}

/** Everything in the sentences of a language, with where it stands. */
export const leaves = (value: unknown, path = ''): Leaf[] =>
  value !== null && typeof value === 'object' && !Array.isArray(value)
    ? Object.entries(value).flatMap(([key, inner]) => leaves(inner, path ? `${path}.${key}` : key))
    : [{ path, value }]

/** Sentences that are made of a client's whole record; they have tests of their own. */
export const OF_FACTS =
  /^(digest\.(card|alt|rollCall)|digest\.picture\.mark|report\.(page|alt)|roster\.line|rules\.why|rehearsal\.client)$/

/** Words that were given, and how a language writes each. */
export function marksIn(args: readonly unknown[]): (string | number)[] {
  const found = args.flatMap((arg): (string | number)[] => {
    if (typeof arg === 'string' || typeof arg === 'number') return [arg]
    if (arg === null || typeof arg !== 'object') return []
    return marksIn(Object.values(arg))
  })
  // codes are said in each language's own words
  return [...new Set(found)].filter((mark) => typeof mark === 'number' || !/^[a-z-]+$/.test(mark))
}

const isDay = (mark: string): boolean => /^\d{4}-\d\d-\d\d$/.test(mark)

export function tells(text: string, mark: string | number, texts: Texts): boolean {
  if (typeof mark === 'number') return new RegExp(`(?<!\\d)${mark}(?!\\d)`).test(text)
  const { picture } = texts.digest
  const ways = isDay(mark) ? [mark, texts.words.date(mark), picture.date(mark)] : [mark]
  return ways.some((way) => text.includes(way))
}
