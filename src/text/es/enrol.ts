import { UNNAMED } from '../../domain/unnamed.ts'
import { harmless } from '../harmless.ts'
import type { Texts } from '../index.ts'

/** Invitation, consent and screening, as a client reads them. */
export const enrol = {
  welcome: (practice, days) =>
    `¡Hola! Tu coach de ${practice === UNNAMED ? 'la práctica' : harmless(practice, 40)} te invita a contar aquí, una vez al día, cómo vas.\n` +
    '**Qué es:** pregunto por tus sesiones, hasta dónde lo notas, el dolor y unas señales de alarma. Tu coach lo lee y pone tu plan.\n' +
    '**Qué no es:** soy un programa. No diagnostico ni hago de médico.\n' +
    `**Qué se guarda:** tus respuestas, hasta ${days} días tras el final. Solo las ve el equipo de tu coach. El chat guarda sus propias copias, fuera de nuestro alcance.\n` +
    '**Para irte:** escribe “salir” cuando quieras. Con /erase-me se borra todo.\n¿Aceptas?',
  consentYes: 'Sí, acepto',
  consentNo: 'No, gracias',
  consentUnclear:
    'Responde sí o no, por favor: ¿te pregunto una vez al día y guardo tus respuestas para tu coach?',
  consented: 'Gracias. Antes, unas preguntas.',
  declined:
    'De acuerdo. No se guarda ninguna respuesta tuya, solo que dijiste que no. Tu coach recibe el aviso.',
  screeningIntro:
    'Antes de cualquier plan, unas preguntas. Son unos cinco minutos, y puedes parar y seguir después.',
  screened: 'Gracias, eso es todo. Tu coach lo mira y te envía tu plan.',
  parked:
    'Gracias, eso es todo. Por una de tus respuestas, antes debe estar de acuerdo un médico u otro profesional. Pregúntale, por favor; tu coach lo anota y empezamos.',
  minor:
    'Lo siento: solo puedo trabajar con personas de 18 años o más. No pregunto nada más. Habla con tu coach, por favor.',
} satisfies Partial<Texts['client']>

/** The form before any plan. */
export const screening: Texts['screening'] = {
  title: (step, steps) => `Primeras preguntas, ${step} de ${steps}`,
  fillIn: 'Pulsa el botón para rellenar la parte siguiente.',
  again: (labels) =>
    `No he podido leer la respuesta a ${labels.map((label) => `“${label}”`).join(', ')}. Responde otra vez, por favor.`,
  label: {
    signs: '¿Algo de esto es nuevo o ha cambiado?',
    age: 'Tu edad en años',
    onset: '¿Cuándo empezó este episodio?',
    earlier: '¿Episodios antes, o cirugía?',
    seen: '¿Te ha visto un profesional de salud?',
    risks: '¿Algo de esto va contigo?',
    known: 'Viejo, sin cambios, lo sabe tu médico',
    reach: '¿Hasta dónde desde la columna lo notas?',
    pain: 'Peor dolor desde ayer, 0 a 10',
    side: '¿Qué pierna?',
    eases: '¿Qué lo alivia?',
    activities: 'Tres cosas que te importan, 0-10',
    lift: 'El levantamiento que quieres recuperar',
  },
  question: {
    signs: '¿Algo de esto es nuevo o ha cambiado? Responde con los números.',
    age: '¿Cuántos años tienes?',
    onset: '¿Cuándo empezó este episodio? Una fecha como 2026-02-10, o con palabras.',
    earlier: '¿Has tenido antes otros episodios, o cirugía de espalda?',
    seen: '¿Te ha visto por esto un médico u otro profesional?',
    risks: '¿Algo de esto va contigo? Responde con los números.',
    known: '¿Algo de esto es viejo, no ha cambiado y lo sabe tu médico? Responde con los números.',
    reach: '¿Hasta dónde desde la columna lo notas?',
    pain: 'Tu peor dolor desde ayer, de 0 (nada) a 10.',
    side: '¿Qué pierna es?',
    eases: '¿Qué lo alivia?',
    activities:
      '¿Qué cosas te importan, y cuánto te cuesta cada una, de 0 (fácil) a 10? Así: remar 7, sentarme 5.',
    lift: '¿Qué levantamiento quieres recuperar? Escribe “ninguno” si no hay.',
  },
  earlier: { no: 'No', episode: 'Sí, otro episodio', surgery: 'Sí, con cirugía' },
  seen: { yes: 'Sí', no: 'No' },
  risk: {
    cancer: 'Cáncer ahora o antes',
    osteoporosis: 'Huesos frágiles (osteoporosis)',
    'long-steroids': 'Corticoides durante meses',
    immune: 'Defensas bajas',
    pregnancy: 'Embarazo',
    'recent-fall': 'Una caída o un choque hace poco',
    anticoagulants: 'Anticoagulantes',
  },
  eases: { flexion: 'Doblarse adelante', extension: 'Arquearse atrás', neither: 'Ninguno' },
}
