import type { Cover } from '../../domain/cover.ts'
import type { Day } from '../../domain/day.ts'
import { asWritten } from '../as-written.ts'
import { harmless } from '../harmless.ts'
import { paged } from '../lines.ts'
import { date } from './dates.ts'

/** A question that waits, in a line. */
export interface OpenQuestion {
  readonly ref: string
  readonly words: string | null
  readonly day: Day
}

const line = ({ ref, words, day }: OpenQuestion): string =>
  `• **${harmless(ref)}**, ${date(day)}: ${words === null ? '(words kept in the record)' : `“${harmless(words, 160)}”`}`

/** A client's question and the answer to it, as the client reads them. */
export const questions = {
  answered: (question: string, answer: string): string =>
    `You asked: “${harmless(question, 120)}”\nYour coach answers: ${asWritten(answer)}`,
  mine: (words: string, answer: string | null): string =>
    `You asked: “${harmless(words, 400)}”. ${answer === null ? 'Not answered yet.' : `Answer: ${harmless(answer, 400)}`}`,
}

/** The same for the coach, with cover for a coach who is away. */
export const questionsForCoach = {
  asks: (ref: string, words: string | null): string =>
    `**${harmless(ref)}** asks: ${words === null ? '(words kept in the record: see /questions)' : `“${harmless(words, 800)}”`}`,
  asksAnew: (ref: string, words: string | null): string =>
    `**${harmless(ref)}** puts the question differently: ${words === null ? '(words kept in the record: see /questions)' : `“${harmless(words, 800)}”`}`,
  answerButton: 'Answer',
  answerTitle: (ref: string): string => `Answer ${ref}`,
  answerField: 'Your answer, as the client reads it',
  answeredBy: (by: string): string => `Answered by ${by}.`,
  answeredAlready: (by: string): string => `${by} has answered this already; nothing was sent.`,
  emptyAnswer: 'The answer was empty, so nothing was sent.',
  hasLeft: (ref: string): string =>
    `**${harmless(ref)}** has left and is not written to any more; nothing was sent.`,
  noQuestion: 'This question is not there any more.',
  openQuestions: (list: readonly OpenQuestion[]): string[] =>
    paged(['**Questions without an answer** (answer with /answer, or the button)', ...list.map(line)]),
  noQuestions: 'No question waits for an answer.',
  more: (n: number): string => `… and ${n} more.`,
  coverSet: (coach: string, cover: string, from: Day, until: Day): string =>
    `${cover} covers for ${coach} from ${date(from)} to ${date(until)}. Alerts call ${cover} first in those days.`,
  coverDates: 'The last day must not lie before the first, nor in the past.',
  coverParts:
    'A cover needs all three: from, until and by. Without any of them I list who stands in for whom.',
  covers: (list: readonly Cover[]): string =>
    [
      '**Who stands in for whom**',
      ...list.map((row) => `• ${row.cover} for ${row.coach}, ${date(row.from)} to ${date(row.until)}`),
    ].join('\n'),
  noCovers: 'Nobody stands in for anybody, today or later. To name somebody: /cover from until by.',
  coverEnded: 'You are back: nobody covers for you from now on.',
}
