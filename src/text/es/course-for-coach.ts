import type { ActivityPath } from '../en/course.ts'
import { harmless } from '../harmless.ts'
import type { Texts } from '../index.ts'
import { count, fullDate } from './dates.ts'
import { questionsForCoach } from './questions.ts'

const path = ({ name, from, now }: ActivityPath): string =>
  now === null ? `${harmless(name, 30)} ${from}` : `${harmless(name, 30)} ${from} → ${now}`
const matters = (paths: readonly ActivityPath[]): string =>
  `Le importa (0-10, primera → ahora): ${paths.map(path).join(', ')}`

/** The course of a client as coach and keeper read it. */
export const courseForCoach: Texts['courseForCoach'] = {
  ...questionsForCoach,
  regionNotServed: (code) =>
    `La práctica no trabaja con personas en ${code}. No se ha enviado nada. La lista de países es parte de /set-up.`,
  regionNeeded: 'La práctica trabaja solo en algunos países: di cuál con region, como PT.',
  badLanguage: (code) => `Aún no hablo “${harmless(code, 12)}”.`,
  aliasAgain: (before, now) =>
    `El alias “${before}” es de su registro anterior, así que desde ahora es “${now}”.`,
  regionRefused: (ref, code) =>
    `**${harmless(ref)}** está en ${code}, donde la práctica no trabaja, y recibió un no amable.`,
  regionAway: (ref, code) =>
    `**${harmless(ref)}** está ahora en ${code}, donde la práctica no trabaja. Los mensajes diarios se han parado; decide cómo seguir, por favor.`,
  regionBack: (ref, code) =>
    `**${harmless(ref)}** está ahora en ${code}, donde la práctica trabaja. La pausa terminó y los mensajes siguen.`,
  activities: matters,
  lift: (wanted, load) =>
    `Quiere recuperar: ${harmless(wanted, 60)}${load ? ` · carga ahora: ${harmless(load, 60)}` : ''}`,
  discharged: (ref, lines) => [`**${harmless(ref)}** ha terminado, con el alta.`, ...lines].join('\n'),
  signStillOpen:
    '**Sigue abierta una señal urgente: contacta con la persona, por favor.** La alerta sigue hasta que alguien la tome, y la pregunta de cada mañana hasta que registres el visto bueno con /clear.',
  writtenLocked:
    'Hay una señal urgente abierta, así que añadí que los ejercicios siguen parados y que la atención va primero.',
  courseLines: ({ weeks, began, now, activities, percent }) => [
    `${count(weeks, 'semana')} · empezó en ${began || 'sin dato'} · ahora en ${now || 'sin dato'}`,
    ...(activities.length > 0 ? [matters(activities)] : []),
    ...(percent === null ? [] : [`Sesiones: ${percent} % del plan, en los días respondidos`]),
  ],
  endsOn: (day) => `Se borra después del ${fullDate(day)}, si no lo borras antes.`,
  dischargedAlready: (ref) =>
    `**${harmless(ref)}** ya no está en un plan. Para empezar otra vez, invita con /enrol.`,
  notBegun: (ref) =>
    `**${harmless(ref)}** no ha empezado, así que no hay nada que resumir. Para terminar la invitación y lo respondido hasta ahora, usa /erase-client. No se ha cambiado nada.`,
  notUnderWay: (ref) =>
    `**${harmless(ref)}** no está en curso, así que no hay mensajes que parar. No se ha cambiado nada.`,
  saysLocked: (ref, words) =>
    `**${harmless(ref)}**, con el plan cerrado, ${words === null ? 'ha escrito (palabras en el registro)' : `escribe: “${harmless(words, 800)}”`}.`,
  remind: (ref) => `**${harmless(ref)}** quiere un mensaje dentro de cuatro semanas; pregunto entonces.`,
  comeBack: (ref, words) =>
    `**${harmless(ref)}**, cuatro semanas después del final: ${words === null ? 'ha respondido (palabras en el registro)' : `“${harmless(words, 800)}”`}. Para empezar otra vez, invita con /enrol.`,
  moved: (ref, from, to) =>
    `**${harmless(ref)}** está desde ahora con ${to} (antes: ${from}). Ya recibió el aviso.`,
  movedAlready: (ref, to) => `**${harmless(ref)}** ya está con ${to}.`,
  nobody: 'nadie con nombre',
  timeIsUp: (until) =>
    `Se ha borrado 1 registro: su tiempo terminó. Las copias de seguridad hechas antes pueden guardarlo hasta el ${fullDate(until)}.`,
  retentionWaits: (ref) =>
    `El tiempo del registro de **${harmless(ref)}** terminó, pero hay una señal urgente abierta. Se borra cuando se cierre: habla con la persona y regístralo con /clear, por favor.`,
  erased: (rows, until) =>
    `${rows} ${rows === 1 ? 'fila borrada' : 'filas borradas'}. Las copias de seguridad hechas antes pueden guardarlas hasta el ${fullDate(until)}, cuando por tu propia regla se quita la última. A ellas no llego, ni a las copias del propio chat.`,
}
