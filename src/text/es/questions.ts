import { asWritten } from '../as-written.ts'
import type { OpenQuestion } from '../en/questions.ts'
import { harmless } from '../harmless.ts'
import type { Texts } from '../index.ts'
import { paged } from '../lines.ts'
import { date } from './dates.ts'

const line = ({ ref, words, day }: OpenQuestion): string =>
  `• **${harmless(ref)}**, ${date(day)}: ${words === null ? '(palabras en el registro)' : `“${harmless(words, 160)}”`}`

/** A client's question and the answer to it, as the client reads them. */
export const questions: Pick<Texts['course'], 'answered' | 'mine'> = {
  answered: (question, answer) =>
    `Preguntaste: “${harmless(question, 120)}”\nTu coach responde: ${asWritten(answer)}`,
  mine: (words, answer) =>
    `Preguntaste: “${harmless(words, 400)}”. ${answer === null ? 'Aún sin respuesta.' : `Respuesta: ${harmless(answer, 400)}`}`,
}

/** The same for the coach, with cover for a coach who is away. */
export const questionsForCoach = {
  asks: (ref, words) =>
    `**${harmless(ref)}** pregunta: ${words === null ? '(palabras en el registro: mira /questions)' : `“${harmless(words, 800)}”`}`,
  asksAnew: (ref, words) =>
    `**${harmless(ref)}** plantea la pregunta de otro modo: ${words === null ? '(palabras en el registro: mira /questions)' : `“${harmless(words, 800)}”`}`,
  answerButton: 'Responder',
  answerTitle: (ref) => `Responder a ${ref}`,
  answerField: 'Tu respuesta, tal como se leerá',
  answeredBy: (by) => `Respondió ${by}.`,
  answeredAlready: (by) => `${by} ya ha respondido a esto; no se ha enviado nada.`,
  emptyAnswer: 'La respuesta estaba vacía, así que no se ha enviado nada.',
  hasLeft: (ref) => `**${harmless(ref)}** se ha ido y ya no recibe mensajes; no se ha enviado nada.`,
  noQuestion: 'Esta pregunta ya no está.',
  openQuestions: (list) =>
    paged(['**Preguntas sin respuesta** (responde con /answer, o con el botón)', ...list.map(line)]),
  noQuestions: 'No hay preguntas por responder.',
  more: (n) => `… y ${n} más.`,
  coverSet: (coach, cover, from, until) =>
    `${cover} cubre a ${coach} del ${date(from)} al ${date(until)}. En esos días las alertas llaman primero a ${cover}.`,
  coverDates: 'El último día no puede ser anterior al primero ni estar en el pasado.',
  coverParts:
    'Para una cobertura hacen falta los tres datos: from, until y by. Sin ninguno, digo quién cubre a quién.',
  covers: (list) =>
    [
      '**Quién cubre a quién**',
      ...list.map((row) => `• ${row.cover} a ${row.coach}, del ${date(row.from)} al ${date(row.until)}`),
    ].join('\n'),
  noCovers: 'Nadie cubre a nadie, ni hoy ni más adelante. Para nombrar a alguien: /cover from until by.',
  coverEnded: 'Ya estás de vuelta: desde ahora nadie te cubre.',
} satisfies Partial<Texts['courseForCoach']>
