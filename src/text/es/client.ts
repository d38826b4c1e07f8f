import type { Slot } from '../../domain/reply/reading.ts'
import { drillOf, loadOf } from '../en/drills.ts'
import type { Texts } from '../index.ts'
import { date } from './dates.ts'
import { doseLine, drillText, nameOfDrill, STOP_RULE } from './drills.ts'
import { enrol } from './enrol.ts'
import { ladderName } from './names.ts'
import { steps } from './steps.ts'
import { urgent } from './urgent.ts'

function drillLines(
  drills: readonly string[],
  sessions: number,
  loads: Readonly<Record<string, string>>,
  detail: 'short' | 'full',
): string[] {
  return drills.flatMap((id) => {
    const drill = drillOf(id)
    if (!drill) return []
    const load = loadOf(drill, loads)
    if (detail === 'full') return [`**${drillText(drill, sessions, load).replace('\n', '**\n')}`]
    return [`• ${nameOfDrill(id)}: ${doseLine(drill, sessions)}${load ? ` Carga: ${load}.` : ''}`]
  })
}

const HOW = 'Escribe “hoy” para leer cómo se hace cada ejercicio.'

const ASK: Readonly<Record<Slot, (planned: number) => string>> = {
  sessions: (planned) =>
    planned > 1 ? `¿Cuántas de tus ${planned} sesiones hiciste?` : '¿Cuántas sesiones hiciste?',
  reach: () => '¿Hasta dónde desde la columna lo notaste, como mucho?',
  pain: () => '¿Tu peor dolor, de 0 a 10?',
}
const AGAIN: Readonly<Record<Slot, (planned: number) => string>> = {
  sessions: (planned) => `No me queda claro cuántas sesiones hiciste (0 a ${planned + 2}). ¿Qué número es?`,
  reach: () => 'No me queda claro hasta dónde lo notas. ¿Cuál es el punto más lejano?',
  pain: () => 'No me queda claro el dolor. ¿Qué número es, de 0 a 10?',
}

/** Everything a client reads on an ordinary day. Plain, warm, short. */
export const client: Texts['client'] = {
  ...enrol,
  ...urgent,
  ...steps,
  work: (drills, sessions, loads, detail) =>
    [
      `**Tus ejercicios, ${sessions} ${sessions === 1 ? 'sesión' : 'sesiones'}:**`,
      drillLines(drills, sessions, loads, detail).join(detail === 'full' ? '\n\n' : '\n'),
      STOP_RULE,
    ].join('\n'),
  stepDrills: (drills, sessions, loads, detail) =>
    [
      drillLines(drills, sessions, loads, detail).join(detail === 'full' ? '\n\n' : '\n'),
      ...(detail === 'short' ? [HOW] : []),
      STOP_RULE,
    ].join('\n'),
  noPlanYet: 'Aún no hay un plan para ti. Te lo envía tu coach.',
  dayOff: 'Día libre: sin ejercicios. Contarme en corto cómo vas ayuda igual.',
  allRest: 'Hoy sin ejercicios: tus escaleras descansan. Tu coach lo está mirando.',
  planSet: (from, prompt) =>
    `Tu plan está listo${from ? ` y empieza el ${date(from)}` : ''}. Te escribo cada día a las ${prompt}.`,
  prompt: ({ work, settled }) =>
    [
      settled,
      work,
      '¿Cómo te ha ido desde la última vez? Escríbelo en una línea, como “2 pantorrilla 4”: sesiones, hasta dónde lo notas, peor dolor de 0 a 10.',
      '¿Y hay alguna señal de alarma nueva: adormecido entre las piernas, al orinar, al hacer caca, las dos piernas, debilidad, fiebre? Escribe “sin señales”, o qué es.',
    ]
      .filter((part) => part !== null && part !== '')
      .join('\n\n'),
  reminder:
    '¿Unas palabras sobre hoy? Una línea basta: sesiones, hasta dónde, dolor de 0 a 10. Si te sientes mal o hay algo nuevo, dime eso primero.',
  fillIn: 'Rellenar el formulario',
  takeABreak: 'Hacer una pausa',
  formTitle: (day) => `Cómo vas, ${date(day)}`,
  form: {
    sessions: (planned) => (planned > 0 ? `Sesiones hechas (en el plan: ${planned})` : 'Sesiones hechas'),
    reach: 'Hasta dónde desde la columna, como mucho',
    pain: 'Peor dolor, 0 a 10',
    side: 'Qué pierna, si pasa de la espalda',
    signs: '¿Nuevo o distinto: algo de esto?',
  },
  formEmpty:
    'El formulario llegó vacío, así que no he anotado nada. Puedes rellenarlo otra vez, o escribir una línea.',
  chooseByNumber: (labels) =>
    `Responde con el número:\n${labels.map((label, n) => `${n + 1}: ${label}`).join('\n')}`,
  chooseSeveral: (labels) => labels.map((label, n) => `${n + 1}: ${label}`).join('\n'),
  understood: (lines) =>
    lines.length === 1 ? `Anotado: ${lines[0]}.` : `Anotado:\n${lines.map((line) => `• ${line}`).join('\n')}`,
  putRight: '¿No es así? Cámbialo',
  sameAsBefore: (values) => `Igual: ${values}`,
  askValue: (slot, planned) => ASK[slot](planned),
  askAgain: (slot, planned) => AGAIN[slot](planned),
  askSide: '¿Qué pierna es?',
  askSideAgain:
    '¿Es la misma pierna que antes, la otra, o las dos? Si son las dos, para ya tus ejercicios. Si no sé nada de ti en 10 minutos, lo tomo como las dos.',
  side: { same: 'La misma pierna', other: 'La otra pierna', both: 'Las dos piernas' },
  tooFarBack: 'Solo puedo anotar los últimos tres días. Lo que cuentas de antes no queda anotado.',
  askDay: '¿De qué día hablas? Puedo anotar los últimos tres días.',
  askSettled: 'Ayer quedó molesto después de tus sesiones. ¿Ha vuelto a estar como antes?',
  askBarrier: 'Esta semana faltaron sesiones, y eso pasa. ¿Qué es lo que más lo impidió?',
  barrier: {
    time: 'Tiempo',
    pain: 'Dolor',
    'unsure-how': 'No sé cómo',
    'no-kit': 'Sin material',
    other: 'Otra cosa',
  },
  barrierThanks: 'Gracias, eso ayuda. Tu coach lo ve.',
  notedSessions: (n) => `Anotado: ${n} ${n === 1 ? 'sesión' : 'sesiones'}.`,
  notedReach: (reach) => `Anotado: ${reach}.`,
  notedPain: (n) => `Anotado: dolor ${n}.`,
  notedSide: (side) => `Anotado: ${/pierna/.test(side) ? side : `la pierna ${side}`}.`,
  notKnown: 'No entendí esa respuesta. Escríbela con palabras, por favor.',
  comfortYes: 'Me alegra. Tu coach decide el siguiente paso.',
  comfortNo: 'Gracias. Entonces seguimos en este paso.',
  settledYes: 'Gracias. Bueno es saberlo.',
  settledNo: 'Gracias. Por ahora no añadimos nada, y tu coach recibe el aviso.',
  dayKept: (day) => `Anotado para el ${date(day)}.`,
  dayDropped: 'Entonces lo dejo fuera. Tus palabras quedan en tu registro.',
  paused:
    'De acuerdo, una pausa. No escribo hasta que digas “he vuelto”. Si llega una señal de alarma, busca ayuda al momento; también puedes contármelo.',
  pausedLocked:
    'De acuerdo, una pausa. Mientras tus ejercicios estén parados te pregunto cada mañana cómo va. Busca atención si aún no lo has hecho, por favor.',
  alreadyPaused: 'Ya estás en pausa. Escribe “he vuelto” cuando quieras seguir.',
  resumed: (prompt) => `Qué bien que vuelves. Te escribo otra vez a las ${prompt}.`,
  notPaused: 'No estás en pausa; te escribo cada día.',
  lowerAgain: 'Has estado fuera un tiempo, así que empezamos un paso más fácil.',
  nudge:
    'Llevamos unos días sin hablar. Sin prisa: una línea cuando puedas. Si algo va mal, dímelo o busca ayuda.',
  lapse:
    'No sé nada de ti desde hace dos semanas, así que dejo de escribir por ahora. Con una línea tuya empieza otra vez. Si llega una señal de alarma, busca ayuda al momento.',
  held: 'Tu coach ha mirado tu semana: por ahora seguimos con los mismos pasos.',
  referred:
    'Tu coach quiere que un médico u otro profesional lo mire contigo, y te va a escribir sobre eso. Hasta entonces quédate en lo que sea fácil.',
  help: 'Una línea al día basta: “2 pantorrilla 4” es 2 sesiones, notado hasta la pantorrilla, peor dolor 4. También puedes escribir “hoy” (tus ejercicios), “pausa”, “he vuelto”, “salir”, o una pregunta para tu coach. /erase-me borra todo lo guardado.\nSi llega algo urgente, llama al número de emergencias local y no me esperes. Es urgente: dormido entre las piernas, problemas al orinar o al hacer caca, debilidad, o las dos piernas.',
  tooOld:
    'Esa pregunta es de hace más de tres días, así que no se anota nada. Si hay una señal de alarma nueva, dímelo ahora o busca ayuda al momento.',
  thumb: 'Gracias. No sé a qué responde el pulgar, así que pregunto.',
  howToCorrect:
    'Escribe el día otra vez, como “2 pantorrilla 4”, o “ayer 1 rodilla 3”. Cuenta lo último; se guardan las dos.',
  questionPassedOn:
    'He pasado tu pregunta a tu coach. La respuesta llega aquí. Si es urgente, busca ayuda ahora y no esperes.',
  welcomeBack: 'De nada.',
  notUnderstood:
    'No lo he entendido, así que solo he guardado tus palabras. Una línea basta, como “2 pantorrilla 4”. Si es una pregunta para tu coach, ponla entre signos de pregunta.',
  cannotRead: (attached) =>
    attached === 'voice'
      ? 'No puedo escuchar mensajes de voz. Escríbelo en una línea, por favor. Si es urgente, llama ahora al número de emergencias local.'
      : 'No puedo ver imágenes ni archivos. Escríbelo en una línea, por favor. Si es urgente, llama ahora al número de emergencias local.',
  takenBack:
    'He visto que retiraste un mensaje. Lo que me contaste sigue en tu registro; escribe el día otra vez para cambiarlo.',
  leaveHow:
    'Si quieres irte, escribe “salir” y nada más, y paro al momento. Si no, todo sigue igual. /erase-me borra todo lo guardado.',
  left: (days, asked) =>
    `Te has ido, y no vuelvo a escribir${asked ? ', salvo por mi pregunta sobre una señal de alarma. Respóndela, por favor: sin respuesta cuenta como un sí, y te digo una vez qué hacer' : ''}. Lo guardado se borra tras ${days} días, o ya mismo con /erase-me. Si no querías irte, pide a tu coach que te invite otra vez. Si llega una señal de alarma, llama al número de emergencias local.`,
  notEnrolled:
    'Ahora no estás en un plan, así que no anoto nada. Pregunta a tu coach si quieres empezar otra vez. Para algo urgente, llama al número de emergencias local.',
  stranger:
    '¡Hola! Este bot trabaja con personas a las que ha invitado un coach, y no te conoce. No se guarda nada de lo que escribiste. Para algo urgente, llama al número de emergencias local.',
  notYours: 'Esto no te toca pulsarlo a ti, o es demasiado viejo. Nada ha cambiado.',
  record: ({ status, rungs, lines }) =>
    [
      `Estado: ${status}`,
      `Pasos: ${
        Object.entries(rungs)
          .map(([ladder, rung]) => `${ladderName(ladder)} ${rung}`)
          .join(', ') || 'aún ninguno'
      }`,
      ...(lines.length > 0 ? lines : ['Sin respuestas en las últimas dos semanas.']),
    ].join('\n'),
}
