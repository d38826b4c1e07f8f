import type { Day } from '../../src/domain/day.ts'
import { addDays } from '../../src/domain/day.ts'
import { COURSES, diaryOf } from '../../src/domain/diaries/diary.ts'
import { DEFAULT_GATE } from '../../src/domain/ladder/plan.ts'
import { reachAt } from '../../src/domain/reach.ts'
import { assess as assessed } from '../../src/domain/rules/assess.ts'
import type { History, HistoryDay } from '../../src/domain/rules/assessment.ts'
import { type Bench, figureOf, inRounds, type Measured } from './measure.ts'

const FIRST: Day = '2023-01-02'
const LENGTHS = { '28 days': 28, '180 days': 180, '3 years': 1096 } as const
const PEOPLE = 24
const TIMES = 25
const GOAL = 1.5
/** The last advance lies as far back for everybody, whatever the length of the history. */
const SINCE_ADVANCE = 14

/** A day as the store gives it: sessions, a comfort answered each week, rungs in force. */
function dayOf(at: number, pain: number, reach: number, extension: number): HistoryDay {
  const day = addDays(FIRST, at)
  return {
    day,
    checkIn: {
      day,
      sessions: at % 5 === 0 ? 1 : 2,
      planned: 2,
      reach: reachAt(reach),
      pain,
      side: null,
      signs: [],
      denied: at % 3 === 0 ? 'all' : null,
      filled: day,
      late: false,
      comfort: at % 7 === 6 ? true : null,
      settled: null,
    },
    rungs: { extension, glide: 1, open: 1 },
    resting: [],
    cleared: [],
    noted: [],
  }
}

function historyOf(person: number, length: number): History {
  const names = Object.keys(COURSES) as (keyof typeof COURSES)[]
  const { pain, reach } = diaryOf(7, person, COURSES[names[person % names.length]!], length)
  const days = pain.flatMap((value, at) =>
    value === null ? [] : [dayOf(at, value, reach[at]!, at < length - SINCE_ADVANCE ? 1 : 2)],
  )
  const common = { side: 'left', baseline: { reach: 'calf', pain: 6 }, start: FIRST } as const
  return { ...common, known: [], days, decisions: [], gate: DEFAULT_GATE }
}

const historiesOf = (length: number): History[] =>
  Array.from({ length: PEOPLE }, (_, person) => historyOf(person, length))

function run(rounds: number): Measured {
  const cases = Object.fromEntries(
    Object.entries(LENGTHS).map(([name, length]) => {
      const all = historiesOf(length)
      const on = addDays(FIRST, length - 1)
      // a new list of days each time, as the engine builds it: nothing is remembered from the round before
      const eachOnce = () => {
        for (let time = 0; time < TIMES; time += 1)
          for (const history of all) assessed({ ...history, days: history.days.slice() }, on)
      }
      return [name, eachOnce]
    }),
  )
  const times = inRounds(rounds, cases)
  const figures = Object.fromEntries(
    Object.entries(times).map(([name, ms]) => [
      name,
      { ...figureOf(ms.map((all) => (all * 1000) / (PEOPLE * TIMES))), unit: 'us of processor a reply' },
    ]),
  )
  const over = figureOf(times['3 years']!.map((ms, round) => ms / times['28 days']![round]!))
  return {
    figures,
    ratios: { '3 years / 28 days': { ...over, goal: `<= ${GOAL}`, met: over.median <= GOAL } },
  }
}

export const assess: Bench = {
  id: 'assess',
  what: 'full assessment on a daily reply, by length of the history',
  run,
}
