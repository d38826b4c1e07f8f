import type { AdviceId } from '../../domain/ladder/advice.ts'
import type { Conflict, PlanConflictId } from '../../domain/ladder/conflicts.ts'
import type { RungChange } from '../../domain/ladder/plan.ts'
import { harmless } from '../harmless.ts'
import type { Texts } from '../index.ts'
import { date, fullDate } from './dates.ts'
import { nameOfDrill } from './drills.ts'
import { ladderName } from './names.ts'

const drill = (ladder: string, rung: number): string =>
  `${ladderName(ladder)} ${rung}${nameOfDrill(`${ladder}:${rung}`) ? ` (${nameOfDrill(`${ladder}:${rung}`)})` : ''}`

/** What speaks against a rung; each goes on from its name. All of it common practice, no diagnosis. */
const AGAINST: Readonly<Record<PlanConflictId | AdviceId, string>> = {
  'rung-before':
    'empieza por encima del peldaño que toca. Cada peldaño necesita el anterior; empezar más arriba lo decides tú.',
  'lift-opening':
    'se abre cuando el alcance es espalda o ninguno y el dolor 3 como mucho durante 7 días respondidos, con Hacia atrás y Elevar cadera en su último peldaño. Eso aún no se cumple.',
  'open-alarm': 'sube con un aviso abierto; mira /why. Mientras esté abierto, nada avanza por sí solo.',
  'anchor-check':
    'usa una banda. ¿Te ha mostrado el cliente la banda (sin cortes) y un anclaje que aguanta un tirón fuerte? Si sigues, dices que sí.',
  'no-load':
    'aún no tiene carga. Se le dice al cliente que no use peso hasta que pongas uno, como “lift:2 5 kg”.',
  'load-step':
    'recibe más carga en menos de una semana desde el último plan. Un paso por semana es lo común.',
  'eases-forward':
    'dobla la espalda hacia atrás, y a este cliente le alivia doblarse adelante. Puede ser el sentido contrario para él.',
  'pregnancy-prone': 'se hace boca abajo, y hay un embarazo. Lo común es hacerlo de lado o de pie.',
  'pregnancy-supine':
    'se hace boca arriba, y hay un embarazo. Desde la mitad del embarazo, lo común es dejarlo fuera.',
  'pregnancy-load':
    'levanta carga, y hay un embarazo. ¿Está de acuerdo con la carga el profesional de salud?',
  bone: 'dobla, gira o carga la espalda, y el cliente tiene huesos frágiles o toma corticoides. ¿Está de acuerdo el profesional de salud?',
  'cancer-load':
    'levanta carga, y el cliente tiene o tuvo cáncer. ¿Está de acuerdo con la carga el profesional de salud?',
  'fall-load':
    'levanta carga, y el cliente tuvo una caída o un choque. ¿Está de acuerdo con la carga el profesional de salud?',
  surgery:
    'carga la espalda o la lleva lejos, y el cliente tuvo cirugía de espalda. ¿Está de acuerdo quien le operó u otro profesional de salud?',
  'blood-band':
    'aprieta con una banda, y el cliente toma anticoagulantes: puede dejar moretones. Ponla ancha, sobre tela.',
  'numb-band':
    'aprieta con una banda, y el cliente tiene zonas adormecidas en el registro: puede no notar que corta.',
  'weak-leg':
    'se hace de pie, y el cliente tiene una pierna débil en el registro. ¿Hay algo a lo que agarrarse?',
  'own-ladder':
    'es propia de tu práctica, así que no sé cómo dobla o carga. ¿Encaja con las respuestas de este cliente al inicio?',
}

const against = ({ id, ladder, rung }: Conflict): string => `• ${drill(ladder, rung)} ${AGAINST[id]}`

const WHY: Readonly<Record<RungChange['why'], string>> = {
  plan: 'plan',
  advance: 'avanza',
  'ease-back': 'se afloja',
  rest: 'descansa',
  return: 'más abajo tras una ausencia',
  clearance: 'más abajo tras el visto bueno',
  undo: 'devuelto',
}

const loadList = (loads: Readonly<Record<string, string>>): string =>
  Object.entries(loads)
    .map(([key, load]) => `${key} ${harmless(load, 60)}`)
    .sort()
    .join('; ')
const times = (sessions: number): string => `${sessions} ${sessions === 1 ? 'sesión' : 'sesiones'} al día`

/** What a coach reads when setting a plan. */
export const plan: Texts['plan'] = {
  refused: (ref) => `No se ha guardado ningún plan de **${harmless(ref)}**:`,
  parked: (ref) =>
    `**${harmless(ref)}** está en espera: registra con /release que un profesional de salud está de acuerdo, y pon luego el plan.`,
  asked: (ref) =>
    `A **${harmless(ref)}** se le está preguntando por una señal de alarma; los ejercicios esperan la respuesta (10 minutos como mucho). Pon el plan después, por favor.`,
  unknownLadder: (id, known) => `No hay una escalera “${harmless(id)}”. Hay: ${known.join(', ')}.`,
  loadOfNothing: (key) =>
    `La carga de “${harmless(key, 40)}” no es de ningún peldaño de este plan. Nombra el peldaño, como “lift:2 5 kg”.`,
  loadNoNumber: (key, load) =>
    `“${harmless(load, 60)}” no es una carga para ${harmless(key, 40)}: hace falta un número de 0,5 a 400 con su unidad, como “5 kg” o “10 lb”.`,
  badLoads: (text) =>
    `No he podido leer las cargas en “${harmless(text, 100)}”. Escríbelas como “lift:2 5 kg; lift:3 20 kg”.`,
  conflicts: (ref, conflicts) =>
    [
      `**Aún sin guardar: ${harmless(ref)}.** Mira antes esto, por favor:`,
      ...conflicts.map(against),
      'Es lo común en la práctica, no un veredicto, y la decisión es tuya.',
    ].join('\n'),
  beforeStep: (ref, conflicts) =>
    [
      `**Aún no ha cambiado nada: ${harmless(ref)}.** Mira esto antes del peldaño siguiente, por favor:`,
      ...conflicts.map(against),
      'Es lo común en la práctica, no un veredicto, y la decisión es tuya.',
    ].join('\n'),
  saveAnyway: (conflicts) =>
    conflicts.every(({ id }) => id === 'anchor-check') ? 'Banda y anclaje vistos: guardar' : 'Guardar igual',
  change: 'Cambiar',
  already: (ref) => `Este ya es el plan de ${harmless(ref)}. No ha cambiado nada, y no se ha enviado nada.`,
  changedSince: (ref) =>
    `El plan de **${harmless(ref)}** ha cambiado mientras tanto. No se ha guardado nada; mira /plan-history y envía /plan otra vez.`,
  again: (ref, { sessions, rungs, loads, from, off }) => {
    const ladders = Object.entries(rungs).map(([id, rung]) => `${id}:${rung}`)
    const more = [
      Object.keys(loads).length > 0 ? `loads:${loadList(loads)}` : '',
      from ? `from:${from}` : '',
      off ? `off:${off.join(' ') || 'none'}` : '',
    ].filter(Boolean)
    return `No se ha guardado nada. Para cambiarlo, envíalo otra vez:\n\`${[`/plan client:${ref} sessions:${sessions} ladders:${ladders.join(' ')}`, ...more].join(' ')}\``
  },
  saved: ({ ref, from, wish, loads, off, although }) =>
    [
      `Plan de ${harmless(ref)} guardado, desde el ${date(from)}: ${times(wish.sessions)}${off.length > 0 ? `, días libres ${off.join(' ')}` : ''}.`,
      ...Object.entries(wish.rungs).map(([ladder, rung]) => {
        const load = loads[`${ladder}:${rung}`] ?? loads[ladder]
        return `• ${drill(ladder, rung)}${load ? `, carga ${harmless(load, 60)}` : ''}`
      }),
      ...(although.length > 0 ? ['Guardado aunque:', ...although.map(against)] : []),
    ].join('\n'),
  gone: (ladders) =>
    ladders.length === 0
      ? ''
      : `\nYa no están entre las escaleras de esta práctica: ${ladders.map((id) => `“${harmless(id)}”`).join(', ')}. Sus ejercicios no se muestran a nadie y descansan hasta que vuelva su archivo; un plan sin ellas las quita.`,
  history: (ref, entries) => {
    const head = `**Plan de ${harmless(ref)}, lo último primero**`
    const kept: string[] = []
    for (const entry of entries) {
      if ([head, ...kept, entry].join('\n').length > 1_850)
        return [head, ...kept, '… y anteriores.'].join('\n')
      kept.push(entry)
    }
    return [head, ...(kept.length > 0 ? kept : ['Aún no ha habido un plan.'])].join('\n')
  },
  historyPlan: (day, by, sessions, loads) =>
    `• ${fullDate(day)}: plan de ${by}, ${times(sessions)}${Object.keys(loads).length > 0 ? `; cargas ${loadList(loads)}` : ''}`,
  historyMove: (move) => {
    const step =
      move.to === 0
        ? 'fuera del plan'
        : move.from === 0
          ? `empieza en ${move.to}`
          : `${move.from} → ${move.to}`
    return `• ${fullDate(move.day)}: ${ladderName(move.ladder)} ${step} (${WHY[move.why]}, ${move.by === 'rules' ? 'por las reglas' : `por ${move.by}`})`
  },
}
