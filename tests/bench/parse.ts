import { readFileSync } from 'node:fs'
import nlp from 'compromise'
import { readReply } from '../../src/domain/reply/read.ts'
import type { ReadingContext } from '../../src/domain/reply/reading.ts'
import { type Bench, figureOf, inRounds, type Measured } from './measure.ts'

/** Every language the bot reads; what clients reply, and what they write when something is wrong. */
const CORPORA = ['reply/corpus/en', 'reply/corpus/es', 'signs/corpus/en', 'signs/corpus/es']
const GOAL = 10
/** A second, on one core that does nothing else: a figure of our own. */
const GOAL_A_SECOND = 20_000
const TIMES = 2

interface Line {
  readonly text: string
  readonly planned?: number
  readonly asked?: ReadingContext['asked']
  readonly locale?: string
}
interface Reply {
  readonly text: string
  readonly context: ReadingContext
}

const mixedCorpus = (): Reply[] =>
  CORPORA.flatMap((name) => {
    const file = new URL(`../domain/${name}.jsonl`, import.meta.url)
    const lines = readFileSync(file, 'utf8').trim().split('\n')
    return lines.map((line): Reply => {
      const { text, planned = 2, asked = null, locale = name.slice(-2) } = JSON.parse(line) as Line
      return { text, context: { planned, asked, locale, today: '2026-03-04', promptDay: '2026-03-04' } }
    })
  })

function run(rounds: number): Measured {
  const corpus = mixedCorpus()
  const times = inRounds(rounds, {
    ours: () => {
      for (let time = 0; time < TIMES; time += 1)
        for (const { text, context } of corpus) readReply(text, context)
    },
    compromise: () => {
      for (const { text } of corpus) nlp(text)
    },
  })
  const ours = times.ours.map((ms) => (corpus.length * TIMES * 1000) / ms)
  const theirs = times.compromise.map((ms) => (corpus.length * 1000) / ms)
  const faster = figureOf(ours.map((rate, round) => rate / theirs[round]!))
  const rate = figureOf(ours.map((rate) => rate / GOAL_A_SECOND))
  const bytes = corpus.reduce((sum, { text }) => sum + text.length, 0)
  return {
    figures: {
      'read and screened': { ...figureOf(ours), unit: 'replies a second of processor' },
      'compromise, tagged': { ...figureOf(theirs), unit: 'replies a second of processor' },
      'length of a reply': { ...figureOf([bytes / corpus.length]), unit: 'characters, mean' },
    },
    ratios: {
      'ours / compromise': { ...faster, goal: `>= ${GOAL}`, met: faster.median >= GOAL },
      'ours / 20,000 a second': { ...rate, goal: '>= 1 on a quiet core', met: rate.median >= 1 },
    },
  }
}

export const parse: Bench = {
  id: 'parse',
  what: 'replies read and screened for signs on one core, beside a general language library tagging the same text',
  run,
}
