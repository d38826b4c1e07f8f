import type { Message } from '../../src/engine/message.ts'
import type { Outcome, Posting } from '../../src/engine/ports.ts'
import type { Change, CheckInRow, ClientRow, PracticeRow, Rows, Table } from '../../src/engine/rows.ts'

export const at = (text: string): Date => new Date(text)
const NOON = at('2026-03-08T12:00:00.123Z')

export const practice: PracticeRow = {
  id: 'p:boathouse',
  guild: '100000000000000001',
  name: 'The boathouse',
  zone: 'Europe/Lisbon',
  region: 'PT',
  language: 'en',
  digest: 'Sun 18:00',
  coachRole: '100000000000000002',
  coachChannel: '100000000000000003',
  alertChannel: null,
  deputy: null,
  window: 10,
  quote: true,
  policyConfirmed: '2026-03-01',
  retentionDays: 365,
  regions: ['PT', 'ES'],
  createdAt: NOON,
}

export const client = (ref: string, more: Partial<ClientRow> = {}): ClientRow => ({
  id: `c:${ref}`,
  practiceId: practice.id,
  ref,
  user: `user-${ref}`,
  zone: 'America/New_York',
  region: null,
  language: 'en',
  prompt: '08:00',
  reminder: '19:00',
  off: ['Sat', 'Sun'],
  side: 'left',
  stage: 'enrolled',
  wordsOnly: false,
  start: '2026-03-02',
  coach: '<@100000000000000005>',
  remind: null,
  endedAt: null,
  createdAt: NOON,
  ...more,
})

export const checkIn = (clientId: string, day: string, more: Partial<CheckInRow> = {}): CheckInRow => ({
  id: `${clientId}/${day}`,
  clientId,
  day,
  sessions: 2,
  planned: 2,
  reach: 'calf',
  pain: 4,
  side: 'left',
  signs: [],
  denied: 'all',
  care: 'none',
  filled: day,
  late: false,
  comfort: null,
  settled: null,
  updatedAt: NOON,
  ...more,
})

const own = { id: 'x', clientId: 'c:heron', day: '2026-03-08', at: NOON }

/** One row of every table, with something in every field that may hold something. */
export const samples: { [T in Table]: Rows[T] } = {
  practice,
  client: client('heron'),
  consent: { id: 'x', clientId: 'c:heron', answer: 'yes', at: NOON, version: '1', sexualQuestions: true },
  screening: {
    id: 'x',
    clientId: 'c:heron',
    answers: { age: 41, onset: '2026-02-10', risks: [], activities: { rowing: 7 } },
    startedAt: NOON,
    doneAt: at('2026-03-08T12:05:00Z'),
  },
  plan: {
    ...own,
    sessions: 2,
    loads: { lift: '8 kg' },
    gate: { checkIns: 5, days: 5, share: 0.8, painAtMost: 5, apart: 2 },
    checked: ['anchor'],
    by: 'coach',
  },
  rung: { ...own, ladder: 'extension', from: 1, to: 2, why: 'advance', by: 'coach' },
  checkIn: checkIn('c:heron', '2026-03-08', {
    signs: ['night-pain'],
    denied: ['saddle-numbness'],
    care: 'soon',
    comfort: true,
    settled: false,
  }),
  version: {
    ...own,
    zone: 'America/New_York',
    via: 'words',
    words: 'did both,\n"calf" – about 4 🦵',
    reading: { sessions: 2, reach: 'calf', nested: { list: [1, null, 'a'] } },
    lexicon: 'en-1',
  },
  sign: {
    ...own,
    sign: 'bladder-change',
    care: 'emergency',
    state: 'cleared',
    words: 'can not start',
    until: at('2026-03-08T12:10:00Z'),
    endedAt: at('2026-03-13T09:00:00Z'),
    endedBy: 'emergency physician',
  },
  hold: {
    ...own,
    kind: 'rest',
    ladder: 'glide',
    reason: 'reach-spread',
    by: 'rule',
    endedAt: NOON,
    endedBy: 'rule',
  },
  flag: {
    id: 'x',
    clientId: 'c:heron',
    rule: 'reach-spread',
    level: 'ease-back',
    day: '2026-03-08',
    figures: { sum: 1.75, path: ['calf', 'foot'], open: true, usual: null },
    openedAt: NOON,
    closedAt: at('2026-03-20T12:00:00Z'),
  },
  decision: {
    ...own,
    by: 'coach',
    decision: 'advance',
    ladder: 'extension',
    reason: 'moves well',
    proposal: 'advance',
    rules: ['gate'],
  },
  alert: {
    id: 'x',
    clientId: 'c:heron',
    signs: ['bladder-change'],
    care: 'emergency',
    openedAt: NOON,
    takenBy: 'coach',
    takenAt: at('2026-03-08T12:03:00Z'),
    outcome: 'reached',
    closedAt: at('2026-03-08T12:04:00Z'),
    had: [{ by: 'other coach', at: '2026-03-08T12:02:00.000Z' }],
  },
  alertStep: { id: 'x', alertId: 'x', clientId: 'c:heron', step: 0, at: NOON },
  asked: {
    ...own,
    ask: 'screening:age',
    message: 'ask/heron/1',
    pressing: true,
    options: [
      { name: 'none', label: 'None of these', act: { do: 'answer', value: 0, none: true, of: null } },
    ],
  },
  due: {
    id: 'x',
    practiceId: practice.id,
    clientId: 'c:heron',
    kind: 'prompt',
    at: NOON,
    data: { day: '2026-03-08' },
  },
  inbound: { id: '100000000000000009', clientId: 'c:heron', at: NOON },
  note: { id: 'x', clientId: 'c:heron', at: NOON, by: 'coach', text: 'Rows again on Monday.' },
  activity: { ...own, scores: { rowing: 7, sitting: 5 } },
  question: {
    id: 'x',
    clientId: 'c:heron',
    at: NOON,
    words: 'May I row?',
    answeredAt: null,
    answeredBy: null,
    answer: null,
  },
  cover: {
    id: 'x',
    practiceId: practice.id,
    coach: '<@100000000000000005>',
    cover: '<@100000000000000006>',
    from: '2026-03-10',
    until: '2026-03-17',
  },
}

export const put = <T extends Table>(table: T, row: Rows[T]): Change => ({ put: table, row }) as Change

export const message = (key: string, more: Partial<Message> = {}): Message => ({
  key,
  address: { to: 'client', user: 'user-heron' },
  about: 'heron',
  kind: 'prompt',
  asks: 'sessions',
  care: 'none',
  text: 'How did it go?',
  drills: ['extension:1'],
  buttons: [{ name: 'take-a-break', label: 'Take a break', act: { do: 'pause' } }],
  pick: null,
  picture: null,
  files: [],
  mentions: { roles: [], users: [] },
  ...more,
})

export const posting = (key: string, more: Partial<Posting> = {}): Posting => ({
  message: message(key),
  clientId: 'c:heron',
  practiceId: practice.id,
  priority: 3,
  notBefore: NOON,
  expires: null,
  ...more,
})

export const outcome = (changes: readonly Change[], postings: readonly Posting[] = []): Outcome => ({
  changes,
  postings,
})

/** The practice and a client, on which all other rows stand. */
export const ground = (...refs: string[]): Outcome =>
  outcome([put('practice', practice), ...refs.map((ref) => put('client', client(ref)))])
