import { dayAt } from '../../domain/local-time.ts'
import type { OpenQuestion } from '../../text/en/questions.ts'
import type { Draft } from '../draft.ts'
import type { Button, Form } from '../message.ts'
import type { ClientFile } from '../ports.ts'
import type { QuestionRow } from '../rows.ts'
import { isLocked } from '../status.ts'
import { withCare } from '../urgent/with-care.ts'

/** A question without an answer for so long is named in the roll-call. */
const OVERDUE_MS = 2 * 24 * 3_600_000
/** Characters of an answer: with the question before it, it fits one message. */
const ANSWER_MOST = 1500

/**
 * A question in words is kept and carried to the coach's channel, with a form for the answer. Changed by its writer
 * before it is answered it stays one question, and the coach reads how it is put now.
 */
export function askCoach(draft: Draft, words: string): void {
  const { ref } = draft.client
  // the id of an edit goes on behind that of its message
  const asked = draft.id('question', draft.cause.split(':')[0]!)
  const before = draft.file.questions.find(({ id }) => id === asked)
  const isOpen = before?.answeredAt === null
  const row: QuestionRow = {
    id: before && !isOpen ? draft.id('question', draft.cause) : asked,
    clientId: draft.client.id,
    at: draft.written,
    words,
    answeredAt: null,
    answeredBy: null,
    answer: null,
  }
  draft.put('question', row)
  const quoted = draft.file.practice.quote ? words : null
  const { courseForCoach } = draft.forCoach
  draft.toCoach({
    kind: 'notice',
    text: isOpen ? courseForCoach.asksAnew(ref, quoted) : courseForCoach.asks(ref, quoted),
    buttons: [answerButton(draft, row)],
  })
}

function answerButton({ client, forCoach: { courseForCoach } }: Draft, { id }: QuestionRow): Button {
  const form: Form = {
    name: 'answer',
    title: courseForCoach.answerTitle(client.ref),
    fields: [{ name: 'text', label: courseForCoach.answerField, kind: 'lines', required: true }],
  }
  const act = { do: 'answer-question', question: id }
  return { name: 'answer', label: courseForCoach.answerButton, act, style: 'main', form }
}

/** The coach's answer to one question. Gives what the coach sees. */
export function answerQuestion(draft: Draft, id: string, words: string, by: string): string {
  const text = words.trim().slice(0, ANSWER_MOST)
  const { courseForCoach } = draft.forCoach
  const row = draft.file.questions.find((question) => question.id === id)
  if (!row) return courseForCoach.noQuestion
  if (draft.client.stage === 'left') return courseForCoach.hasLeft(draft.client.ref)
  if (row.answeredAt !== null) return courseForCoach.answeredAlready(row.answeredBy ?? '')
  if (text === '') return courseForCoach.emptyAnswer
  draft.put('question', { ...row, answeredAt: draft.now, answeredBy: by, answer: text })
  return wordsToClient(draft, draft.texts.course.answered(row.words, text), courseForCoach.answeredBy(by))
}

/** A coach's word where no question waits. Gives what the coach sees. */
export function writeToClient(draft: Draft, words: string): string {
  const { courseForCoach, commands } = draft.forCoach
  if (draft.client.stage === 'left') return courseForCoach.hasLeft(draft.client.ref)
  const text = draft.texts.commands.fromCoach(words.trim().slice(0, ANSWER_MOST))
  return wordsToClient(draft, text, commands.answered)
}

/** What a coach writes may be about drills: while care is sought it ends with that, and the coach is told so. */
function wordsToClient(draft: Draft, text: string, done: string): string {
  draft.toClient({ kind: 'notice', text: withCare(draft, text) })
  return isLocked(draft.file) ? `${done}\n${draft.forCoach.courseForCoach.writtenLocked}` : done
}

/** The question that has waited longest, or null. */
export const firstOpen = ({ questions }: ClientFile): QuestionRow | null =>
  questions.find((row) => row.answeredAt === null) ?? null

/** Every question of a practice that waits, the oldest first; those alone that have waited long where asked so. */
export function openQuestions(
  files: readonly ClientFile[],
  now: Date,
  which: 'all' | 'overdue',
): OpenQuestion[] {
  const open = files.flatMap((file) =>
    file.questions
      .filter((row) => row.answeredAt === null)
      .filter((row) => which === 'all' || now.getTime() - row.at.getTime() >= OVERDUE_MS)
      .map((row) => ({ file, row })),
  )
  return open
    .sort((a, b) => a.row.at.getTime() - b.row.at.getTime())
    .map(({ file: { client, practice }, row }) => ({
      ref: client.ref,
      // asked for by a coach the answer is private; the roll-call stands in the channel
      words: which === 'all' || practice.quote ? row.words : null,
      day: dayAt(row.at, practice.zone),
    }))
}
