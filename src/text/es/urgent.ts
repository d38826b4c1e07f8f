import type { Care } from '../../domain/care.ts'
import type { Texts } from '../index.ts'
import { SAY_CAUDA_EQUINA } from './signs.ts'

const STOPPED = 'Para ya todos tus ejercicios; siguen parados hasta que te vea un profesional de salud.'
const NOT_WAIT = 'No esperes a tu coach.'
const call = ({ emergency }: { readonly emergency: string | null }): string =>
  emergency ? `llama al ${emergency}` : 'llama al número de emergencias local'

function ifYes(care: Care, emergency: string | null): string {
  if (care === 'soon')
    return 'haz que lo mire un médico o una enfermera en los próximos días, y antes si empeora rápido.'
  return `para, y ${care === 'emergency' ? `${call({ emergency })} o ve a urgencias` : 've hoy al médico'}; no me esperes.`
}

/** What a client hears when a sign is there or hinted at. Short; what to do comes first. */
export const urgent = {
  emergency: ({ emergency, cauda }) =>
    `**Esto necesita atención ahora mismo.** Por favor, ${call({ emergency })} o ve ya a urgencias de un hospital. No conduzcas tú.\n` +
    `${cauda ? SAY_CAUDA_EQUINA : 'Di allí lo que me acabas de contar, y desde cuándo.'}\n` +
    `${NOT_WAIT} También le aviso. ${STOPPED}\nEste es un mensaje de un programa, no una opinión médica.`,
  sameDay: ({ emergency, advice, outOfHours }) =>
    `**Por favor, haz que te vea hoy un médico o un centro de salud.** ${
      outOfHours
        ? `Es tarde: usa ahora el servicio fuera de horario${advice ? ` (${advice})` : ''}.`
        : 'Llama ahora y pide cita para hoy.'
    }\nSi empeora, o si aparece adormecimiento, debilidad o problemas al orinar, ${call({ emergency })}.\n` +
    `Di allí lo que me has contado. ${NOT_WAIT} También le aviso. ${STOPPED}`,
  selfHarm: ({ emergency, crisis }) =>
    'Qué bien que lo escribas. No tienes que cargar con esto a solas.\n' +
    `Por favor, habla ahora con una persona: ${crisis ? `la línea de crisis en el ${crisis}, o ` : ''}${call({ emergency })}. Si crees que puedes hacerlo, llama ya o ve a urgencias.\n` +
    'Tu coach recibe el aviso y va a intentar hablar contigo. Los ejercicios pueden esperar.',
  leftUrgent:
    '**Lo que escribes puede necesitar atención ahora mismo.** Por favor, llama al número de emergencias local o ve a urgencias de un hospital. No conduzcas tú.\nHas dejado este bot: no se guarda nada y tu coach no recibe aviso. Por favor, no esperes una respuesta aquí.',
  soonBefore:
    'Lo que escribes lo debe mirar un médico o una enfermera en los próximos días. Si empeora rápido, ve antes.',
  strangerUrgent:
    '**Lo que escribes puede necesitar atención ahora mismo.** Por favor, llama al número de emergencias local o ve a urgencias de un hospital. No conduzcas tú.\nEste bot no te conoce, y nadie más recibe aviso. Por favor, no esperes una respuesta aquí.',
  soon: (signs) =>
    `Gracias por contarme esto: ${signs.join(', ')}. Por favor, haz que lo mire un médico o una enfermera en los próximos días. Si empeora rápido, ve antes. Tu coach recibe el aviso.`,
  severe:
    'Es mucho dolor, dos veces seguidas. Hoy ve con calma. Si ninguna postura ayuda, o si aparece adormecimiento, debilidad o problemas al orinar o al hacer caca, haz que te vean hoy; y ya mismo si es de golpe.',
  hintedSign: (question, care, emergency) =>
    `Quiero entenderte bien. ${question}\nSi es que sí: ${ifYes(care, emergency)} Si no sé nada de ti en 10 minutos, lo tomo como un sí.`,
  hintedSelfHarm: (question) =>
    `Quiero entenderte bien, y me alegra que escribas. ${question}\nSi es que sí: llama ahora a una línea de crisis o al número de emergencias local, o ve con alguien de confianza. Si no sé nada de ti en 10 minutos, lo tomo como un sí y aviso a tu coach.`,
  routineSigns:
    '¿Hay algo nuevo? Di si notas dormida la zona entre las piernas, o algo raro al orinar o al hacer caca. Di también si notas algo en las dos piernas, debilidad, o una zona dormida nueva.',
  whichSign:
    '¿Cuál de estas es? Para tus ejercicios por ahora. Si es fuerte o ha llegado de golpe, busca ayuda ya y no me esperes. Si no sé nada de ti en 10 minutos, lo tomo como urgente.',
  pickSigns: 'Elige todas las que notes',
  noneOfThese: 'Ninguna de estas',
  oneOfThese: 'Una de estas',
  ticked: 'lo marcó en el formulario',
  notNamed: 'dijo “una de estas” y no dijo cuál',
  otherLegNamed: 'nombró la otra pierna y no respondió cuál',
  signsNone:
    'Anotado. Si notas adormecido entre las piernas, problemas al orinar o al hacer caca, debilidad o algo en las dos piernas, busca ayuda al momento.',
  signsSome: 'Gracias por decirlo.',
  signsKept: 'Gracias por contármelo. Lee ahora mi mensaje sobre eso, por favor.',
  signsHeard: 'Gracias por contármelo.',
  signOpen: 'Ya lo tengo anotado, y lo que te escribí sigue en pie. Si empeora, busca ayuda al momento.',
  signKnown: 'Anotado como antes. Si cambia de algún modo, busca ayuda al momento y dímelo.',
  formKept: 'Tu formulario está guardado.',
  signNo: 'Anotado. Si llega a pasar, busca ayuda al momento y no me esperes.',
  alreadyAnswered: 'Esto ya tiene respuesta. Escríbeme si algo ha cambiado.',
  drillsStopped: 'Tus ejercicios están parados por ahora.',
  drillsLocked:
    'Sin ejercicios por ahora: siguen parados hasta que te vea un profesional de salud y tu coach lo anote. Busca atención si aún no lo has hecho, por favor.',
  drillsWait:
    'Sin ejercicios hasta que respondas a mi pregunta sobre las señales de alarma. Respóndela primero, por favor.',
  parkedWait:
    'Aún sin ejercicios: antes debe estar de acuerdo un médico u otro profesional, y tu coach lo anota.',
  changesLater:
    'Tu coach y yo hemos mirado tus pasos. Lo que cambia está en tu próximo mensaje. Hasta entonces, descansa de ellos.',
  stillLocked:
    'Lo he anotado. Tus ejercicios siguen parados hasta que te vea un profesional de salud y tu coach lo anote. Busca atención si aún no lo has hecho, por favor.',
  heardLocked: (emergency) =>
    `He pasado tus palabras a tu coach. Tus ejercicios siguen parados hasta que te vea un profesional de salud y tu coach lo anote. Si algo empeora, ${call({ emergency })}.`,
  careFirst:
    'Tus ejercicios siguen parados. Busca atención si aún no lo has hecho, por favor; no esperes a nadie de aquí.',
  notTold: 'Gracias. Con eso no sé cómo estás, así que pregunto otra vez.',
  onTheWay: '¿Vas de camino a que te atiendan? Por favor, no esperes a nadie de aquí.',
  onTheWayYes: 'Sí, o ya estoy allí',
  onTheWayNo: 'Aún no',
  onTheWayThanks:
    'Qué bien que buscas ayuda. No lo dejes para después, por favor, y di allí lo que me contaste.',
  goNow: (emergency) =>
    `Por favor, ve ahora, o ${call({ emergency })}. Pide a alguien que te lleve. No conduzcas tú.`,
  untaken:
    'Nadie ha respondido aún al aviso que mandé a tu coach. Por favor, no nos esperes: busca atención ahora si no lo has hecho.',
  takenUp:
    'Un coach ha visto tu mensaje y se ocupa de él. Aun así, busca atención como te escribí; no esperes una llamada.',
  morning:
    'Buenos días. Tus ejercicios siguen parados hasta que tu coach anote quién te vio. ¿Te ha visto ya un médico o un hospital? ¿Y hay algo nuevo: adormecido entre las piernas, al orinar, al hacer caca, las dos piernas, debilidad?',
  morningSelfHarm:
    'Buenos días. Espero que hayas hablado con alguien. Si los pensamientos siguen ahí, llama ahora a la línea de crisis o a tu número de emergencias. ¿Ha cambiado algo más: adormecimiento, al orinar, al hacer caca, las piernas?',
  withSomebody: '¿Estás con alguien, o hablas con alguien, ahora? Por favor, no te quedes a solas con esto.',
  seenYes: 'Ya me han visto',
  seenNo: 'Aún no',
  nothingNew: 'Nada nuevo',
  somethingNew: 'Algo nuevo',
  seenThanks: 'Gracias. Tu coach te va a preguntar quién te vio, y después abre tu plan otra vez.',
  seenNotYet: (emergency) => `Por favor, haz que te vean ahora. Si está peor, ${call({ emergency })}.`,
  cleared: (prompt, easier) =>
    [
      'Tu coach ha anotado que te ha visto un profesional de salud y que está de acuerdo en que sigas.',
      easier ? 'Empezamos un paso más fácil.' : '',
      prompt
        ? `Tu próximo mensaje llega a las ${prompt}; responde a su pregunta sobre las señales de alarma.`
        : '',
      'Si llega algo nuevo, para y busca ayuda al momento.',
    ]
      .filter((part) => part !== '')
      .join(' '),
  clearedSpoken: (prompt) =>
    `Tu coach ha anotado que habló contigo. ${prompt ? `Tu próximo mensaje llega a las ${prompt}. ` : ''}Si vuelven los pensamientos, llama al momento a la línea de crisis o a tu número de emergencias, y díselo a alguien.`,
  releasedLocked:
    'Tu coach ha anotado que un profesional de salud está de acuerdo con ejercicios suaves. Siguen parados hasta que la señal que contaste tenga también el visto bueno. Si aún no te han visto, busca atención, por favor.',
  released:
    'Tu coach ha anotado que un profesional de salud está de acuerdo con ejercicios suaves. Podemos seguir.',
} satisfies Partial<Texts['client']>
