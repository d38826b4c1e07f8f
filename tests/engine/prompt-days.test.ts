import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Day, daysFrom } from '../../src/domain/day.ts'
import { dayAt, instantOf, timeAt } from '../../src/domain/local-time.ts'
import {
  promptDue,
  promptHandled,
  reschedulePrompt,
  schedulePrompt,
} from '../../src/engine/check-in/schedule-prompt.ts'
import { Draft } from '../../src/engine/draft.ts'
import type { ClientFile } from '../../src/engine/ports.ts'
import type { ClientRow, PracticeRow } from '../../src/engine/rows.ts'
import { textsFor } from '../../src/text/index.ts'

const START: Day = '2026-03-02'
// neighbours of the clock changes of March 2026, and zones far apart; none so far that a date is never lived
const ZONES = ['Europe/Lisbon', 'America/New_York', 'Asia/Kolkata', 'Europe/Madrid', 'America/Sao_Paulo']
const HOUR = 3_600_000

function draftAt(file: ClientFile, now: Date): Draft {
  return new Draft(file, now, now.toISOString(), textsFor)
}

function begin(window: number, prompt: string, zone: string): ClientFile {
  const client = { id: 'heron', practiceId: 'p', zone, prompt, language: 'en', start: START } as ClientRow
  const practice = { id: 'p', window, language: 'en' } as PracticeRow
  const empty = { rungs: [], checkIns: [], signs: [], holds: [], flags: [], decisions: [], alerts: [] }
  const none = { consent: null, screening: null, plan: null, activities: [], questions: [], covers: [] }
  const file: ClientFile = { practice, client, ...empty, ...none, asked: [], dues: [] }
  const draft = draftAt(file, instantOf(START, '00:00', zone))
  schedulePrompt(draft, START)
  return draft.file
}

interface Sent {
  readonly day: Day
  readonly at: Date
  readonly zone: string
}

interface Lived {
  readonly zone: string
  readonly prompt: string
  readonly from: Date
  readonly until: Date
  /** The latest day prompted before; null before the first. */
  readonly last: Day | null
}

/**
 * True where the day's prompt time came, or had passed on that day already when this zone and time began. A day
 * come back to by a move to the west, after a later one was prompted, is not asked for: prompts never go backwards.
 */
function hadItsTime({ zone, prompt, from, until, last }: Lived, day: Day): boolean {
  if (last !== null && day < last) return false
  const at = instantOf(day, prompt, zone)
  const passed = dayAt(from, zone) === day && from >= at
  return passed || (at >= from && at <= until)
}

/** Runs to an instant; every prompt is handled when it is due. */
function run(file: ClientFile, until: Date, sent: Sent[]): ClientFile {
  let now = file
  for (let due = promptDue(draftAt(now, until)); due && due.at <= until; ) {
    const draft = draftAt(now, due.at)
    sent.push({ day: due.data.day as Day, at: due.at, zone: now.client.zone })
    promptHandled(draft, due.data.day as Day)
    now = draft.file
    due = promptDue(draft)
  }
  return now
}

describe('one prompt a local day', () => {
  it('through any changes of zone and time: never two for one day, in order, none left out whose time came', () => {
    const change = fc.record({
      after: fc.integer({ min: 1, max: 40 }),
      zone: fc.constantFrom(...ZONES),
      prompt: fc.constantFrom('06:30', '08:00', '12:15', '21:45'),
    })
    fc.assert(
      fc.property(fc.array(change, { maxLength: 12 }), fc.constantFrom(...ZONES), (changes, zone) => {
        const sent: Sent[] = []
        const lived: Lived[] = []
        let file = begin(0, '08:00', zone)
        let now = instantOf(START, '00:00', zone)
        const liveTo = (until: Date): void => {
          const last = sent.at(-1)?.day ?? null
          lived.push({ zone: file.client.zone, prompt: file.client.prompt, from: now, until, last })
          file = run(file, until, sent)
          now = until
        }
        for (const { after, zone: to, prompt } of changes) {
          liveTo(new Date(now.getTime() + after * HOUR))
          const draft = draftAt(file, now)
          draft.put('client', { ...draft.client, zone: to, prompt })
          reschedulePrompt(draft)
          file = draft.file
        }
        liveTo(new Date(now.getTime() + 60 * HOUR))
        const days = sent.map((one) => one.day)
        expect(days).toEqual([...new Set(days)].sort())
        // the day of each is the date on the client's own calendar
        for (const { day, at, zone: there } of sent) expect(dayAt(at, there)).toBe(day)
        // left out is only a day that a move to the east ended, or skipped for a later one, before its time had come
        for (const day of daysFrom(START, dayAt(now, file.client.zone)))
          if (!days.includes(day)) expect(lived.filter((one) => hadItsTime(one, day))).toEqual([])
      }),
      { numRuns: 300 },
    )
  })

  it('spread over a window it stays within its day', () => {
    const id = fc.string({ minLength: 1, maxLength: 12 })
    fc.assert(
      fc.property(id, fc.constantFrom('23:10', '23:58', '23:59', '08:00'), (name, prompt) => {
        const file = begin(60, prompt, 'Europe/Lisbon')
        const draft = draftAt(
          { ...file, client: { ...file.client, id: name } },
          new Date('2026-03-02T00:00Z'),
        )
        schedulePrompt(draft, START)
        const { at } = draft.file.dues.at(-1)!
        expect(dayAt(at, 'Europe/Lisbon')).toBe(START)
        expect(timeAt(at, 'Europe/Lisbon') >= prompt).toBe(true)
      }),
    )
  })
})
