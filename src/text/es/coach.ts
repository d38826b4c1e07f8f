import { harmless } from '../harmless.ts'
import type { Texts } from '../index.ts'
import { coachAlert } from './coach-alert.ts'
import { count, date } from './dates.ts'
import { DIRECTION } from './digest.ts'
import { ladderName, PROPOSAL_IN_FULL } from './names.ts'
import { REACH } from './reach.ts'

const name = (ref: string): string => `**${harmless(ref)}**`
const steps = (moves: readonly { ladder: string; from: number; to: number }[]): string =>
  moves.map(({ ladder, from, to }) => `${ladderName(ladder)} ${from} → ${to}`).join(', ')

/** The short answers of the first questions, as ids. */
const ANSWER: Readonly<Record<string, string>> = {
  ...REACH,
  yes: 'sí',
  no: 'no',
  episode: 'otro episodio',
  surgery: 'cirugía',
  left: 'izquierda',
  right: 'derecha',
  both: 'las dos piernas',
  flexion: 'doblarse adelante',
  extension: 'arquearse atrás',
  neither: 'ninguno',
}
const said = (value: unknown, none: string): string =>
  value === undefined || value === null ? none : (ANSWER[String(value)] ?? String(value))

/** Everything a coach reads besides digest and rules. */
export const coach: Texts['coach'] = {
  ...coachAlert,
  soon: (ref, signs, sources) =>
    `${name(ref)} me ha contado: ${signs.join('; ')}. Se le pidió que lo mire un profesional de salud en los próximos días; mientras tanto no se avanza.\nFuente: ${[...new Set(sources)].join('; ')}`,
  noted: (sign) => `Anotado: ${sign}`.slice(0, 80),
  notedBy: (by) => `Anotado por ${by}.`,
  nothingToNote: 'No hay nada abierto que anotar.',
  declined: (ref) => `${name(ref)} dijo que no. No se guarda nada más que eso.`,
  minor: (ref) => `${name(ref)} dio una edad menor de 18 y recibió un no amable.`,
  screened: (ref, answers, risks, known) => {
    const activities = Object.entries((answers.activities ?? {}) as Record<string, number>)
      .map(([what, hard]) => `${harmless(what)} ${hard}`)
      .sort()
    return [
      `${name(ref)} ha respondido a las primeras preguntas.`,
      `Inicio: ${harmless(said(answers.onset, 'sin dato'), 60)} · edad ${said(answers.age, 'sin dato')} · antes: ${said(answers.earlier, 'sin dato')} · visto por un profesional de salud: ${said(answers.seen, 'sin dato')}`,
      `Al inicio: ${said(answers.reach, '?')}, dolor ${said(answers.pain, '?')}, lado ${said(answers.side, '?')}; se alivia con ${said(answers.eases, '?')}`,
      known.length > 0 ? `Viejo, sin cambios, lo sabe un profesional de salud: ${known.join('; ')}` : '',
      activities.length > 0 ? `Le importa (0-10): ${activities.join(', ')}` : '',
      answers.lift ? `Quiere recuperar: ${harmless(String(answers.lift), 60)}` : '',
      risks.length > 0
        ? `**En espera:** ${risks.join('; ')}. Registra con /release que un profesional de salud está de acuerdo.`
        : 'Pon el plan con /plan.',
    ]
      .filter((line) => line !== '')
      .join('\n')
  },
  barrier: (ref, barrier) => `${name(ref)} dice lo que impide las sesiones: ${barrier.toLowerCase()}.`,
  quiet: (ref, days) =>
    `${name(ref)} no anota nada desde hace ${count(days, 'día')}. El día 3 salió un recordatorio.`,
  lapse: (ref, days) =>
    `${name(ref)} no anota nada desde hace ${count(days, 'día')} y queda en pausa. Con cualquier respuesta empieza otra vez.`,
  returned: (ref, days, moves) =>
    `${name(ref)} vuelve tras ${count(days, 'día')} sin responder.${moves.length > 0 ? ` Cada escalera empieza un peldaño más abajo: ${steps(moves)}.` : ' Todas las escaleras están en su primer peldaño.'}`,
  left: (ref, sign) =>
    `${name(ref)} se ha ido. Los mensajes diarios han terminado.${sign === 'open' ? ' Hay una señal urgente abierta: habla con la persona, por favor.' : sign === 'asked' ? ' He preguntado por una señal urgente y aún no hay respuesta: habla con la persona, por favor.' : ''}`,
  unreachable: (ref, reason, urgent) =>
    urgent
      ? `**${harmless(ref)} no ha recibido mi mensaje urgente** (${reason}). Contacta por otra vía, ahora.`
      : reason === 'closed'
        ? `No llego a ${name(ref)}: tiene cerrados los mensajes privados. Pídele que acepte mensajes privados de miembros de este servidor.`
        : `No llego a ${name(ref)} (${reason}). Escríbele por otra vía, por favor.`,
  proposal: ({ ref, flags, proposal, ladder, direction, eased, rested }) =>
    [
      `${name(ref)}: propuesta **${PROPOSAL_IN_FULL[proposal]}**${ladder ? ` (${ladderName(ladder)})` : ''} · ${DIRECTION[direction]}`,
      ...flags.map((flag) => `• ${flag}`),
      eased.length > 0 ? `Ya hecho, el paso más prudente: ${steps(eased)}.` : '',
      rested.length > 0
        ? `Ya hecho, el paso más prudente: ${rested.map(ladderName).join(', ')} en descanso.`
        : '',
    ]
      .filter((line) => line !== '')
      .join('\n'),
  allRest: (ref) =>
    `${name(ref)}: se aflojó, y tras 3 días respondidos el alcance no está más cerca. Descansan todas las escaleras menos la de calma; decide, por favor.`,
  decision: {
    advance: 'Avanzar',
    hold: 'Mantener',
    'ease-back': 'Aflojar',
    refer: 'Derivar',
    stop: 'Parar',
    clear: 'Visto bueno',
  },
  why: '¿Por qué?',
  record: 'Registro',
  undo: 'Deshacer',
  undone: 'Devuelto; el cliente recibió el aviso.',
  cannotUndo: 'Aquí ya no queda nada que deshacer.',
  source: (source) => `(Fuente: ${source})`,
  whyText: (ref, on, proposal, lines) =>
    [
      `${name(ref)}, ${date(on)}: ${PROPOSAL_IN_FULL[proposal]}`,
      ...(lines.length > 0 ? lines.map((line) => `• ${line}`) : ['Ninguna regla destaca.']),
    ]
      .join('\n')
      .slice(0, 1900),
  unknownClient: (ref, known) =>
    `Aquí no hay un cliente “${harmless(ref)}”. ${known.length > 0 ? `Conozco a: ${known.map((one) => harmless(one)).join(', ')}.` : 'Invita con /enrol.'}`.slice(
      0,
      1900,
    ),
  unknownLadder: (id) => `No hay una escalera “${harmless(id)}”.`,
  noSuchRung: (id, rung, last) => `${ladderName(id)} tiene los peldaños 1 a ${last}, no ${rung}.`,
  emptyPlan: 'Un plan necesita al menos una escalera, como “extension:1 glide:1”.',
  notScreened: (ref) => `${name(ref)} aún no ha respondido a las primeras preguntas.`,
  lockedNoPlan: (ref) =>
    `Una señal urgente cierra el plan de ${name(ref)}. Registra antes el visto bueno con /clear.`,
  lockedNoDecision: (ref) =>
    `Una señal urgente cierra el plan de ${name(ref)}: no se puede decidir nada sobre ejercicios. Registra antes el visto bueno con /clear.`,
  askedNoDecision: (ref) =>
    `A ${name(ref)} se le está preguntando por una señal de alarma; los ejercicios esperan la respuesta (10 minutos como mucho). Decide después, por favor.`,
  parkedNoDecision: (ref) =>
    `${name(ref)} está en espera: registra con /release que un profesional de salud está de acuerdo, y decide luego.`,
  planPast: 'Un plan no puede empezar en un día que ya pasó.',
  paused: (ref) => `${name(ref)} ya está en pausa.`,
  notPaused: (ref) => `${name(ref)} no está en pausa.`,
  noPlan: (ref) => `${name(ref)} aún no tiene plan. Ponlo con /plan.`,
  whichLadder: (known) => `Nombra la escalera: ${known.join(', ')}.`,
  notInPlan: (ladder) => `${ladderName(ladder)} no está en el plan.`,
  lastRung: (ladder) => `${ladderName(ladder)} ya está en su último peldaño.`,
  firstRung: (ladder) => `${ladderName(ladder)} ya está en su primer peldaño.`,
  notLocked: (ref) => `El plan de ${name(ref)} no está cerrado; no hay nada que abrir.`,
  noClinician:
    'yo, yo mismo, yo misma, mi, coach, el coach, la coach, cliente, el cliente, la cliente, nadie, ninguno',
  whoCleared:
    'Di quién ha visto al cliente; basta la profesión: medicina general, medicina de urgencias, medicina de hospital, cirugía, fisioterapia, enfermería, u otro profesional de salud con palabras.',
  clearDate: (first, today) => `La fecha debe estar entre ${first} y ${today}.`,
  notYet: (today) => `La fecha no puede ser posterior al ${today}.`,
  useSpokenWith: 'Para esto usa /spoken-with cuando hayas hablado con el cliente.',
}
