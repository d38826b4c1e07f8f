import { stringify } from 'yaml'
import { addDays } from '../../src/domain/day.ts'
import { type Draw, drawOf, timeIn } from './draw.ts'
import { WORDS } from './words.ts'

type Item = Record<string, unknown>

const NAMES = ['heron', 'dipper', 'curlew', 'plover', 'wren']
const HOMES = [
  { zone: 'Europe/Lisbon', region: 'PT' },
  { zone: 'Europe/Oslo', region: 'NO' },
  { zone: 'America/New_York', region: 'US' },
  { zone: 'America/Toronto', region: 'CA' },
  { zone: 'Pacific/Auckland', region: 'NZ' },
  { zone: 'Australia/Lord_Howe', region: 'AU' },
  { zone: 'Asia/Kolkata', region: 'IN' },
]
// two of them hold a change of the clocks in many zones
const STARTS = ['2026-03-02', '2026-03-23', '2026-10-19', '2026-06-01']
const LADDERS = ['settle', 'extension', 'unload', 'glide', 'open', 'rotator', 'extend-hip']

/** A scenario of a whole practice under random replies, decisions and faults, as the text of its file. */
export function practiceOf(seed: number): string {
  const draw = drawOf(seed)
  const days = draw.whole(5, 12)
  const start = draw.one(STARTS)
  const names = NAMES.slice(0, draw.whole(2, 4))
  return stringify({
    title: `Shaken, seed ${seed}`,
    practice: { ...draw.one(HOMES), quote: draw.chance(80), window: draw.chance(20) ? 10 : 0 },
    start,
    days,
    clients: names.map((ref) => client(draw, ref, days)),
    coach: perDay(days, () => coachDay(draw, names, start, days)),
    faults: perDay(days, () => faultsOf(draw)),
  })
}

const perDay = (days: number, of: (day: number) => Item[]): Record<number, Item[]> =>
  Object.fromEntries(
    Array.from({ length: days }, (_, n) => [n + 1, of(n + 1)] as const).filter(
      ([, items]) => items.length > 0,
    ),
  )

function client(draw: Draw, ref: string, days: number): Item {
  const rungs = Object.fromEntries(LADDERS.filter(() => draw.chance(35)).map((ladder) => [ladder, 1]))
  return {
    ref,
    ...(draw.chance(60) ? draw.one(HOMES) : {}),
    language: draw.chance(15) ? 'es' : 'en',
    prompt: timeIn(draw, 6, 10),
    ...(draw.chance(50) ? { reminder: timeIn(draw, 18, 21) } : {}),
    ...(draw.chance(30) ? { off: ['Sun'] } : {}),
    side: draw.one(['left', 'right', 'both']),
    consent: draw.chance(92),
    hands: draw.chance(25) ? 'words' : 'buttons',
    screening: {
      age: draw.whole(19, 80),
      baseline: { reach: draw.one(['buttock', 'thigh', 'calf', 'foot']), pain: draw.whole(2, 8) },
      risks: draw.chance(15) ? ['anticoagulants'] : [],
    },
    plan: { sessions: draw.whole(1, 3), rungs: Object.keys(rungs).length > 0 ? rungs : { extension: 1 } },
    answers: answers(draw),
    days: Object.fromEntries(
      Array.from({ length: days }, (_, n) => [n + 1, draw.chance(12) ? 'none' : clientDay(draw)]),
    ),
  }
}

const answers = (draw: Draw): Item => ({
  ...(draw.chance(60) ? { signs: 'none' } : {}),
  ...(draw.chance(60) ? { comfort: draw.chance(70) } : {}),
  ...(draw.chance(50) ? { settled: draw.chance(60) } : {}),
  ...(draw.chance(50) ? { side: draw.one(['same', 'other', 'both']) } : {}),
  ...(draw.chance(40) ? { barrier: draw.one(['time', 'pain']) } : {}),
})

function clientDay(draw: Draw): Item[] {
  const kind = draw.weighed({
    plain: 55,
    odd: 10,
    hint: 4,
    urgent: 3,
    question: 4,
    coming: 3,
    form: 10,
    more: 11,
  })
  if (kind === 'form') return [{ form: form(draw) }]
  if (kind !== 'more') return [{ say: draw.one(WORDS[kind]) }]
  const first = { say: draw.one(WORDS.plain) }
  const then = draw.weighed({ edit: 30, delete: 15, say: 30, command: 15, press: 5, travel: 5 })
  if (then === 'edit') return [first, { after: '2m', edit: draw.one([...WORDS.plain, ...WORDS.urgent]) }]
  if (then === 'delete') return [first, { after: '2m', delete: true }]
  if (then === 'say') return [first, { after: '1m', say: draw.one([...WORDS.plain, ...WORDS.odd]) }]
  if (then === 'press') return [first, { after: '5m', press: 'take-a-break' }]
  if (then === 'travel') return [first, { after: '3h', ...draw.one(HOMES) }]
  return [first, { after: '2m', command: draw.one(['/today', '/my-record', '/my-data', '/help', '/leave']) }]
}

const form = (draw: Draw): Item => ({
  sessions: draw.whole(0, 1),
  reach: draw.one(['none', 'back', 'buttock', 'thigh', 'knee', 'calf', 'foot']),
  pain: draw.whole(0, 10),
  ...(draw.chance(70) ? { signs: draw.chance(92) ? [] : ['saddle-numbness'] } : {}),
})

function coachDay(draw: Draw, names: readonly string[], start: string, days: number): Item[] {
  if (draw.chance(40)) return []
  const seen = addDays(start, draw.whole(0, days - 1))
  return Array.from({ length: draw.whole(1, 3) }, () => ({
    at: timeIn(draw, 7, 23),
    ...coachAct(draw, draw.one(names), seen),
  }))
}

function coachAct(draw: Draw, client: string, on: string): Item {
  const by = 'general practitioner'
  const kind = draw.weighed({
    ...{ decide: 25, up: 20, clear: 15, note: 5, rest: 8 },
    ...{ look: 12, end: 3, erase: 2, release: 6, noted: 4 },
  })
  switch (kind) {
    case 'decide':
      return { decide: { client, do: draw.one(['hold', 'ease-back', 'refer']), reason: 'shaken' } }
    case 'up':
      return { 'take-up': { client, ...(draw.chance(50) ? { outcome: 'reached' } : {}) } }
    case 'clear':
      return { clear: { client, by, on } }
    case 'release':
      return { release: { client, by, on } }
    case 'note':
      return { note: { client, text: 'looked in' } }
    case 'rest':
      return { [draw.one(['pause', 'resume'])]: client }
    case 'noted':
      return { noted: client }
    case 'end':
      return { discharge: client }
    case 'erase':
      return { erase: client }
    case 'look':
      return {
        command: draw.one(['/roster', `/client-record client:${client}`, `/why client:${client}`, '/digest']),
      }
  }
}

/** At most one fault a day that lasts, and perhaps a restart apart from it. */
function faultsOf(draw: Draw): Item[] {
  if (draw.chance(45)) return []
  const at = timeIn(draw, 5, 22)
  const lasts = `${draw.one([5, 20, 45])}m`
  switch (draw.weighed({ chat: 30, line: 15, database: 25, restart: 25, clock: 5 })) {
    case 'chat':
      return [{ at, chat: draw.one(['down', '500', 'lost-answer', 'revoked']), for: lasts }]
    case 'line':
      return [{ at, chat: draw.one(['429', 'gateway-drop', 'no-resume', 'lost-answer']) }]
    case 'database':
      return [{ at, database: draw.one(['locked', 'full', 'read-only', 'gone']), for: lasts }]
    case 'restart':
      return [{ at, restart: draw.one(['kill', 'kill', 'stop']) }]
    case 'clock':
      return [
        { at: '11:00', clock: '+3m' },
        { at: '11:30', clock: '-3m' },
      ]
  }
}
