import type { RevisedDay } from '../../domain/digest/revised.ts'
import { harmless } from '../harmless.ts'
import type { Texts } from '../index.ts'
import { date } from './dates.ts'
import { words } from './words.ts'

const change = ({ day, before, now }: RevisedDay): string => {
  const [was, is] = [words.values(before), words.values(now)]
  return was === '' ? `${date(day)} llegó después: ${is}` : `${date(day)} era ${was}, es ${is || 'vacío'}`
}

/** What is said about a digest that was asked for. */
export const digestAgain: Texts['digestAgain'] = {
  posted: (what) => `${what} va de camino al canal de coaches.`,
  present: 'El resumen',
  week: (week) => `El resumen de ${week}`,
  ofClient: (digest, ref) => `${digest} de ${harmless(ref)}`,
  again: (week) => `*${week} otra vez, según el registro de ahora.*`,
  revised: (posted, days) =>
    `**Revisado** desde que se publicó el ${date(posted)}: ${days.map(change).join('; ')}`,
  futureWeek: (week) => `${week} aún no ha llegado. Nombra una semana que ya haya empezado.`,
  nobody: (week) => `Nadie tenía un plan en ${week}, así que no hay nada que publicar.`,
}
