import { harmless } from '../harmless.ts'
import type { Texts } from '../index.ts'
import { date } from './dates.ts'
import { nameOfDrill } from './drills.ts'
import { screening } from './enrol.ts'
import { ladderName } from './names.ts'
import { REACH } from './reach.ts'
import { SIGN_WORDS } from './signs.ts'

const KEEP =
  'Son datos de salud: guárdalo donde solo tú puedas abrirlo. Las notas propias de tu coach no están.'

// the latest days matter; a message holds about so many lines
const MOST_NAMED = 20

/** What a client reads about their own data. */
export const ownData: Texts['ownData'] = {
  fhir: {
    language: 'es',
    pain: 'Peor dolor desde el último registro, espalda o pierna, de 0 a 10',
    reach: 'El punto más lejano de la columna donde se notan síntomas, desde el último registro',
    sessions: 'Sesiones hechas ese día',
    planned: 'Sesiones previstas ese día',
    rank: 'Orden de la zona: 0 nada, 1 espalda, 2 nalga, 3 muslo, 4 rodilla, 5 pantorrilla, 6 pie',
    activity: 'Una actividad que importa: cuánto cuesta, de 0 fácil a 10',
    signs: 'Señales de alarma',
    screening: 'Preguntas antes del plan',
    plan: 'Plan del coach',
    zone: (reach) => REACH[reach as keyof typeof REACH] ?? reach,
    sign: (id) => SIGN_WORDS[id as keyof typeof SIGN_WORDS]?.label ?? id,
    question: (id) => screening.question[id] ?? id,
    drill: (ladder, rung) => nameOfDrill(`${ladder}:${rung}`) ?? `${ladderName(ladder)} ${rung}`,
    timesADay: (sessions) => (sessions === 1 ? 'una vez al día' : `${sessions} veces al día`),
  },
  button: 'Mis datos',
  asked: [
    'mis datos',
    'mi registro',
    'exportar',
    'exportar mis datos',
    'ver mis datos',
    'ver mi registro',
    'dame mis datos',
    'todos mis datos',
  ],
  onItsWay: 'Te he enviado el archivo en privado.',
  sent: {
    json: `Aquí está todo lo que se guarda de ti, en un archivo (JSON). ${KEEP}`,
    csv: `Aquí están tus días en una tabla (CSV); se abre en una hoja de cálculo. ${KEEP}`,
    fhir: `Aquí está tu camino en la forma que lee el sistema de una clínica (FHIR R4). ${KEEP}`,
  },
  how: 'Para cambiar un día, escríbelo otra vez: vale lo último. Para tenerlo todo en un archivo: /my-data. Para parar: “pausa” o “salir”. Para borrarlo todo: /erase-me.',
}

/** The same for the coach. */
export const ownDataForCoach: Texts['ownDataForCoach'] = {
  done: 'Publicado en el canal del coach.',
  posted: (ref, words) =>
    `Todo lo que se guarda de **${harmless(ref)}**, en un archivo${words ? '' : ' (sin las palabras propias, como lo has fijado)'}. Una vez guardado en otra parte está fuera de este lugar privado y de mi alcance: allí no puedo borrarlo. Entrégalo solo si ${harmless(ref)} está de acuerdo. Tus notas no están.`,
  importedSigns: (ref, days) =>
    [
      `Se ha tomado un diario anterior de **${harmless(ref)}**. Nombra señales de alarma, por las que no se ha dado aviso. Pregunta si siguen o si alguien las ha visto, por favor:`,
      ...days.slice(-MOST_NAMED).map(({ day, names }) => `${date(day)}: ${names.join(', ')}`),
      ...(days.length > MOST_NAMED ? [`y ${days.length - MOST_NAMED} días anteriores`] : []),
    ].join('\n'),
}
