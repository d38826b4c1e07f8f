import { afterAll, describe, expect, it } from 'vitest'
import { readCustomId } from '../../src/chat/custom-id.ts'
import { messageFrom, wordsFrom } from '../../src/chat/direct-messages.ts'
import { UnreadableDiary } from '../../src/domain/history-csv/diary.ts'
import { readDiary } from '../../src/domain/history-csv/history.ts'
import { readReply } from '../../src/domain/reply/read.ts'
import { loadScenario, ScenarioProblems } from '../../src/rehearsal/scenario/index.ts'
import { drawOf } from '../shake/draw.ts'
import { WORDS } from '../shake/words.ts'
import { oddFields, spoiled } from './spoil.ts'

/** Cases of each kind, always the same ones. */
const CASES = 100_000
const isAll = process.env.EBBLINE_FUZZ === 'all'
/** A scenario file takes two milliseconds: the usual run tries a part of them. */
const SCENARIO_CASES = isAll ? CASES : CASES / 10
const LEFT_OUT = isAll
  ? ''
  : ` (${SCENARIO_CASES} of ${CASES} cases, all take minutes: EBBLINE_FUZZ=all npm test tries them)`
if (!isAll) console.warn(`fuzz of scenario files${LEFT_OUT}`)
const SEED = 20261125
/** Nothing that comes from outside may hold up the bot: the longest that one case may take on a busy machine. */
const LONGEST_MS = 1_000

const table: { what: string; cases: number; refused: number; 'longest ms': number }[] = []

/** The process's own time for it: a busy machine makes nothing look like a hang. Too dear to be asked for each case. */
function ownMs(work: () => unknown): number {
  const began = process.cpuUsage()
  work()
  return Math.round(process.cpuUsage(began).user / 1_000)
}

/** Runs the cases; `refused` counts those that were kindly turned down. Throws where one throws anything else. */
function fuzz(
  what: string,
  next: () => string,
  run: (text: string) => 'taken' | 'refused',
  cases = CASES,
): void {
  const row = { what, cases: 0, refused: 0, 'longest ms': 0 }
  table.push(row)
  for (let n = 0; n < cases; n += 1) {
    const text = next()
    const began = performance.now()
    try {
      if (run(text) === 'refused') row.refused += 1
    } catch (error) {
      throw new Error(`${what}, case ${n}: ${JSON.stringify(text).slice(0, 500)}`, { cause: error })
    }
    const ms = Math.round(performance.now() - began)
    row['longest ms'] = Math.max(row['longest ms'], ms < LONGEST_MS ? ms : ownMs(() => run(text)))
    row.cases += 1
  }
  expect(row['longest ms']).toBeLessThan(LONGEST_MS)
}

const SCENARIOS = [
  'title: t\npractice: { zone: Europe/Lisbon }\nstart: 2026-03-02\ndays: 3\nclients:\n  - ref: heron\n    days: { 1: "2 calf 4", 2-3: none }\nexpect:\n  - { end: heron, status: active }\n',
  'start: 2026-03-02\ndays: 2\npractice: { zone: UTC, digest: "Sun 18:00" }\nclients: [ &one { ref: wren, side: left, days: { 1: [ "2 calf 4", { after: 5m, edit: "2 calf 5" } ] } } ]\ncoach: { 2: { at: "09:00", take-up: wren } }\nfaults: { 1: { at: "08:00", chat: down, for: 5m } }\n',
]
const DIARY = [
  '# side: left\n# baseline: calf 6\ndate,sessions,planned,reach,pain,signs,note\n2026-03-02,2,2,calf,6,none,"a, b"\n',
  'date,pain,reach,rungs,comfort,settled,filled,cleared,noted\n2026-03-02,4,knee,extension:2;glide:1,yes,no,2026-03-03,,\n',
  '[{"date":"2026-03-02","pain":4,"reach":"calf","signs":["none"]}]',
]
const MESSAGE = {
  id: '1477900763136000001',
  channel_id: '1477900763136000002',
  type: 0,
  author: { id: '1477900763136000003', username: 'heron', bot: false },
  content: '2 calf 4',
  timestamp: '2026-03-02T08:30:00.000000+00:00',
  edited_timestamp: null,
  attachments: [],
  sticker_items: [],
  flags: 0,
}

describe('what comes from outside, spoiled at random', () => {
  afterAll(() => console.table(table))

  it('replies: every one is read, and no value is out of its scale', () => {
    const draw = drawOf(SEED)
    const samples = Object.values(WORDS)
      .flat()
      .filter((text) => text.length < 500)
    const context = {
      planned: 2,
      today: '2026-03-04',
      promptDay: '2026-03-04',
      locale: 'en',
      asked: null,
    } as const
    fuzz(
      'replies',
      () => spoiled(draw, samples),
      (text) => {
        const { sessions, pain } = readReply(text, { ...context, locale: draw.chance(20) ? 'es' : 'en' })
        if (pain !== null && (pain < 0 || pain > 10 || !Number.isInteger(pain)))
          throw new Error(`pain ${pain}`)
        if (sessions !== null && (sessions < 0 || sessions > 8)) throw new Error(`sessions ${sessions}`)
        return 'taken'
      },
    )
  }, 300_000)

  it(`scenario files: played, or refused with line and mend${LEFT_OUT}`, () => {
    const draw = drawOf(SEED + 1)
    fuzz(
      'scenario files',
      () => spoiled(draw, SCENARIOS),
      (text) => {
        try {
          loadScenario('spoiled.yaml', text)
          return 'taken'
        } catch (error) {
          if (!(error instanceof ScenarioProblems)) throw error
          return 'refused'
        }
      },
      SCENARIO_CASES,
    )
  }, 300_000)

  it('diaries to import: taken line by line, or refused as a whole', () => {
    const draw = drawOf(SEED + 2)
    fuzz(
      'diaries',
      () => spoiled(draw, DIARY),
      (text) => {
        try {
          return readDiary(text).problems.length > 0 ? 'refused' : 'taken'
        } catch (error) {
          if (!(error instanceof UnreadableDiary)) throw error
          return 'refused'
        }
      },
    )
  }, 300_000)

  it("custom ids: ours, or nobody's", () => {
    const draw = drawOf(SEED + 3)
    const samples = ['a1b2c3d4e5f60718.2', 'a1b2c3d4e5f60718.p', 'a1b2c3d4e5f60718.f0', 'x.p1']
    fuzz(
      'custom ids',
      () => spoiled(draw, samples),
      (text) => {
        const ref = readCustomId(text)
        if (ref && !(Number.isInteger(ref.index) && ref.index >= 0 && ref.index < 100))
          throw new Error('index')
        return ref ? 'taken' : 'refused'
      },
    )
  }, 300_000)

  it('gateway events with missing or odd fields: words with a person and a time, or passed over', () => {
    const draw = drawOf(SEED + 4)
    const samples = [MESSAGE, { ...MESSAGE, edited_timestamp: '2026-03-02T08:40:00.000000+00:00' }]
    let odd: unknown
    const next = (): string => {
      odd = oddFields(draw, draw.one(samples))
      return String(JSON.stringify(odd)).slice(0, 500)
    }
    fuzz('gateway events', next, () => {
      const message = messageFrom(odd)
      if (!message) return 'refused'
      const words = wordsFrom(message)
      if (typeof words.text !== 'string' || Number.isNaN(words.at.getTime()) || !words.actor.user)
        throw new Error('no words')
      return 'taken'
    })
  }, 300_000)
})
