import type { ActivityPath } from '../en/course.ts'
import { harmless } from '../harmless.ts'
import type { Texts } from '../index.ts'
import { LANGUAGE_WORDS } from '../language-words.ts'
import { count, fullDate } from './dates.ts'
import { questions } from './questions.ts'

const safe = (name: string): string => harmless(name, 30)
const path = ({ name, from, now }: ActivityPath): string =>
  now === null ? `${safe(name)} ${from}` : `${safe(name)} ${from} → ${now}`

/** What a client reads from the first yes to the last word, besides the ordinary day. */
export const course: Texts['course'] = {
  ...questions,
  sexual:
    'Un sí o un no más. Una de las señales de alarma es un cambio nuevo de sensación o función en el sexo. Puede querer decir que necesitas ayuda rápido. ¿Puedo preguntarlo en el formulario? Si dices que no, lo dejo fuera. Si lo cuentas con tus palabras, lo atiendo igual.',
  sexualNoted: (yes) => (yes ? 'Gracias. Lo pregunto.' : 'Gracias. Lo dejo fuera.'),
  screeningWaits: 'Tus primeras preguntas no están completas. ¿Seguimos? Son unos minutos.',
  screeningGoesOn: 'Seguimos aquí.',
  goOn: [
    'seguir',
    'sigue',
    'seguimos',
    'sigamos',
    'sí, sigamos',
    'continuar',
    'continúa',
    'continuemos',
    'adelante',
    'siguiente',
    'listo',
    'lista',
    'hola',
    'buenas',
  ],
  regionRefused:
    'Lo siento: tu coach no puede trabajar con personas en ese país. No pregunto nada más. Para algo urgente, llama al número de emergencias local.',
  regionAway:
    'Lo siento: tu coach no puede trabajar con personas que están en ese país, así que tus ejercicios quedan en pausa. Tu coach recibe el aviso. Guardo el país para decirte el número de emergencias correcto.',
  elsewhere:
    'Ya escribes aquí para otra práctica, y tus palabras solo pueden ir a una de las dos. Escribe “quiero dejarlo” para terminar allí primero y pulsa sí otra vez. No se ha cambiado nada, y ningún coach lo sabe.',
  regionStays:
    'Tu pausa sigue: puede que tu coach no pueda trabajar con personas que están en ese país. Cuando estés en otro, dime cuál con /my-times region. Si llega una señal de alarma, busca ayuda al momento.',
  askActivities: (names) =>
    `Cada dos semanas pregunto por lo que te importa. ¿Cuánto te cuesta ahora, de 0 (fácil) a 10? Así: “${names.map((name, n) => `${safe(name)} ${[5, 3, 4][n] ?? 4}`).join(', ')}”.`,
  activitiesButton: '¿Cuánto cuesta ahora?',
  activitiesTitle: 'Lo que te importa',
  activityField: (name) => `${name}: de 0 (fácil) a 10`,
  activitiesNoted: (paths) => `Anotado: ${paths.map(path).join(', ')} (primera respuesta → ahora).`,
  activitiesUnread: 'No lo he podido leer. Escribe un número de 0 a 10 para cada cosa, por favor.',
  summary: ({ weeks, began, now, activities, percent }) =>
    [
      `${count(weeks, 'semana')}. Empezaste en ${began || 'un lugar sin dato'} y ahora estás en ${now || 'un lugar sin dato'}.`,
      activities.length > 0 ? `Cuánto cuesta: ${activities.map(path).join(', ')}.` : '',
      percent === null ? '' : `En los días que respondiste, hiciste el ${percent} % de tus sesiones.`,
    ]
      .filter(Boolean)
      .join('\n'),
  discharged: (summary, breathing) =>
    `Aquí termina nuestro camino juntos. ¡Buen trabajo!\n${summary}\nSi vuelve: ${breathing ? 'vuelve a la respiración en calma, ' : ''}afloja y pregunta a tu coach. Si notas adormecido entre las piernas, o problemas al orinar o al hacer caca, debilidad o algo en las dos piernas, busca ayuda al momento.`,
  dischargedLocked: (summary, emergency) =>
    `Aquí termina nuestro camino juntos.\n${summary}\nLo que escribí sobre buscar atención sigue en pie: no esperes, por favor. Si algo empeora, llama al ${emergency ?? 'número de emergencias local'}.`,
  askRemind: '¿Te pregunto una vez, dentro de cuatro semanas, cómo va?',
  remindYes: 'Sí, pregúntame',
  remindNo: 'No, gracias',
  remindNoted: (yes) =>
    yes ? 'Te pregunto una vez, dentro de cuatro semanas.' : 'Entonces no vuelvo a escribir.',
  comeBack:
    'Han pasado cuatro semanas desde que terminó nuestro camino. ¿Cómo va? Dímelo en pocas palabras, o pulsa. Tu coach lo lee. Si hay una señal de alarma nueva, dime eso primero o busca ayuda al momento.',
  comeBackGood: 'Va a mejor',
  comeBackWorse: 'Ha vuelto',
  comeBackThanks: 'Gracias. Se lo he pasado a tu coach.',
  comeBackWorseThanks:
    'Lo siento. Se lo he pasado a tu coach, que puede empezar otra vez contigo. Si notas adormecido entre las piernas, o problemas al orinar o al hacer caca, o debilidad, busca ayuda al momento.',
  movedTo: 'Desde ahora te acompaña otro coach de tu práctica. Tu plan y tu registro siguen como están.',
  language: 'Desde ahora te escribo en español.',
  languageWords: LANGUAGE_WORDS,
  erased: (rows, until) =>
    `${rows} ${rows === 1 ? 'dato borrado' : 'datos borrados'}. Las copias de seguridad hechas antes pueden guardarlos hasta el ${fullDate(until)}. A ellas no llego.`,
}
