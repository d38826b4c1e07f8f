import { asWritten } from '../as-written.ts'
import { harmless } from '../harmless.ts'
import type { Texts } from '../index.ts'
import { DESCRIBE, OPTION } from './command-descriptions.ts'

/** What commands answer. */
export const commands: Texts['commands'] = {
  describe: DESCRIBE,
  option: OPTION,
  helpForCoach: [
    '**Quién te necesita:** /roster. Un cliente: /client-record, y /why para las razones. Una semana: /digest.',
    '**Una señal urgente:** los botones bajo la alerta, o /take-up; /hand-over a otro coach. Cuando un profesional de salud haya visto a la persona: /clear.',
    '**Otras señales y riesgos:** /noted, /release, /spoken-with.',
    '**El plan:** /plan, /decide, /plan-history, /proposals.',
    '**Palabras:** /questions y /answer; /note es solo para los coaches.',
    '**Un cliente empieza, descansa, termina:** /enrol, /pause-client, /resume-client, /report, /discharge.',
    '**Cuando no estás:** /cover, /move-client.',
    '**Sus datos:** /export-client, /erase-client.',
    '**Ajustes:** /set-up, para quien puede administrar el servidor.',
    'Lo que me escriben los clientes queda entre ellos y tu equipo. Cada comando dice qué necesita mientras lo escribes.',
  ].join('\n'),
  invited: (ref) => `Invitación enviada a ${ref}. Recibe un mensaje privado y dice sí o no.`,
  aliasTaken: (ref) => `El alias “${ref}” ya lo tiene otra persona. Elige otro, como “${ref}-2”.`,
  badAlias: 'Un alias tiene de 1 a 30 letras, cifras o guiones, como “garza”.',
  enrolledAlready: (ref) => `Esta persona ya es cliente aquí, como “${ref}”.`,
  enrolLocked: (ref) =>
    `Sigue abierta una señal urgente de “${ref}”, la misma persona. Registra antes el visto bueno con /clear, y luego invita.`,
  badZone: (zone) =>
    `No conozco la zona horaria “${harmless(zone)}”. Usa un nombre como Europe/Madrid o America/Bogota.`,
  badTime: (time) => `“${harmless(time)}” no es una hora. Escríbela como 08:00.`,
  badDay: (day) => `“${harmless(day)}” no es una fecha. Escríbela como 2026-03-13.`,
  badDigest: (text) => `“${harmless(text)}” no es un día con una hora. Escríbelo como “Sun 18:00”.`,
  badOff: (text) => `“${harmless(text)}” no son días de la semana. Escríbelos como “Sat Sun”.`,
  badRegion: (code) =>
    `No conozco la región “${harmless(code)}”, así que diría “el número de emergencias local”. Usa dos letras, como ES, o déjala fuera.`,
  badRegions: (code) =>
    `No conozco el país “${harmless(code)}”. Escribe códigos de dos letras, como “ES CO”, o “any”. No se ha cambiado nada.`,
  badLadders: (text) =>
    `No he podido leer “${harmless(text)}”. Escribe las escaleras con su peldaño, como “extension:1 glide:1”.`,
  setUpLacks: 'Aún faltan: coach-role y coach-channel. Usa /set-up otra vez con ellos.',
  timesChanged: (prompt, zone, off) =>
    `Anotado: mensaje a las ${prompt} (${zone})${off ? `, días libres: ${off}` : ''}.`,
  askCountry:
    '¿Estás ahora en otro país? Dime cuál, con /my-times region, para que nombre el número de emergencias correcto. Hasta entonces digo “el número de emergencias local”.',
  done: 'Hecho.',
  cleared: (ref, lowered) =>
    lowered === null
      ? `Anotado. La señal de ${ref} tiene el visto bueno.`
      : `Anotado. El plan de ${ref} se abre otra vez, ${lowered ? 'cada escalera un peldaño más abajo (un primer peldaño se queda)' : 'cada escalera en su primer peldaño, como antes'}; el primer mensaje pregunta por las señales.`,
  released: (ref) => `Anotado. ${ref} ya no está en espera.`,
  notParked: (ref) => `${ref} no está en espera.`,
  noteKept: 'Guardado. El cliente no lo ve.',
  answered: 'Enviado al cliente.',
  fromCoach: (text) => `Tu coach escribe: ${asWritten(text)}`,
  pausedByCoach:
    'Tu coach te ha puesto una pausa: por ahora no te escribo. Si llega una señal de alarma, busca ayuda al momento.',
  sureErase: (ref) => `Esto borra todo lo guardado de ${ref}, para siempre. Úsalo otra vez con sure: True.`,
  eraseWithSign:
    'Hay una señal urgente abierta: el cliente recibió el aviso de buscar atención, y eso sigue en pie.',
  eraseWithSignMe:
    'Una señal de alarma que me contaste sigue abierta: busca atención y no esperes, por favor; eso sigue en pie.',
  erasedByCoach: (emergency) =>
    `Aquí terminan tus mensajes, y tu coach ha borrado todo lo guardado de ti. No vuelvo a escribir; si quieres saber por qué, pregunta a tu coach. Si llega una señal de alarma, llama al ${emergency ?? 'número de emergencias local'}.`,
  erasedWithSign: (ref) =>
    `${ref} se ha borrado con una señal urgente abierta. Recibió el aviso de buscar atención; contacta con la persona, por favor.`,
  erased: (ref) => `Todo lo guardado de ${ref} está borrado.`,
  sureEraseMe:
    'Esto borra todo lo que se guarda de ti aquí, para siempre, y no te vuelvo a escribir. El chat guarda sus propias copias de nuestros mensajes. Úsalo otra vez con sure: True.',
  erasedMe: 'Todo lo que se guardaba de ti aquí está borrado. Cuídate.',
  formSent: 'Te he enviado el formulario.',
  formHere: 'Aquí está el formulario de hoy.',
  discharged: (ref) => `${ref} ha terminado con el alta, con un resumen.`,
  noClients: 'Aún no hay clientes. Invita con /enrol.',
  notSetUpChannel: 'Aún no hay canal de coaches. Usa /set-up.',
}
