import { addDays, type Day } from '../day.ts'
import type { Figures } from './assessment.ts'
import { type AgainstBaseline, againstBaseline, betterThanBaseline } from './meaningful.ts'
import type { StateRule } from './rule.ts'
import { answersOf, beginOf, knownDays, onceOf } from './view.ts'

const SIX_WEEKS = 42
const FEWEST_ANSWERS = 20

interface SixWeeks {
  readonly start: Day
  /** First day after them. */
  readonly over: Day
  /** Answered days in them; all of them lie behind wherever it is looked at. */
  readonly answers: number
}

const sixWeeksOf = onceOf(({ history }): SixWeeks | null => {
  const start = history.start ?? beginOf(history)
  if (start === null) return null
  const over = addDays(start, SIX_WEEKS)
  return { start, over, answers: answersOf(knownDays(history.days, start, addDays(over, -1))).length }
})

const figuresOf = ({ start, answers }: SixWeeks, { pain, reach }: AgainstBaseline): Figures => ({
  start,
  answers,
  painFrom: pain?.baseline ?? null,
  painTo: pain?.now ?? null,
  reachFrom: reach?.baseline ?? null,
  reachTo: reach?.now ?? null,
})

// a few better days in a long plateau are noise: told again only after two weeks without it
const BRIDGES = 14

export const plateau: StateRule = {
  kind: 'state',
  bridges: BRIDGES,
  id: 'plateau',
  title: 'Six weeks without a change that matters',
  looksAt:
    'the median of the last 7 days (4 values) against the baseline; answered days of the first six weeks',
  // the six weeks hang on the plan's start, the comparison on a week
  looksBack: 7,
  condition:
    'six weeks from the start of the plan, at least 20 of their days answered, neither pain nor reach better by the least that matters',
  level: 'note',
  source: 'Koes 2007, BMJ 334:1313 (conservative care for the first 6-8 weeks); Ostelo 2008, Spine 33:90',
  falseAlarms: 0.43,
  holds(view) {
    const six = sixWeeksOf(view)
    if (six === null || view.on < six.over || six.answers < FEWEST_ANSWERS) return null
    const against = againstBaseline(view)
    const { pain, reach } = against
    if (pain === null && reach === null) return null
    const better = betterThanBaseline(against)
    // nothing left that could get better (Kamper 2010, Eur Spine J 19:1495: recovered is pain 0)
    const recovered = pain?.now === 0 && reach?.now === 0
    if (better.pain || better.reach || recovered) return null
    return { level: 'note', figures: () => figuresOf(six, against) }
  },
}
