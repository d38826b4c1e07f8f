import { UNNAMED } from '../../domain/unnamed.ts'
import { harmless } from '../harmless.ts'
import type { Texts } from '../index.ts'

/** What the keeper reads at set-up. */
export const setUp: Texts['setUp'] = {
  done: 'Configurado, no falta nada. Invita a un cliente con /enrol.',
  notDone: 'Aún falta algo: mira abajo.',
  unchanged: 'No se ha cambiado nada.',
  stillMissing: '**Aún falta**',
  worthALook: '**Para revisar**',
  settings: (s) => [
    `name: ${s.name === UNNAMED ? 'la práctica' : harmless(s.name, 60)}`,
    `coach-role: ${s.coachRole ? `<@&${s.coachRole}>` : 'ninguno aún'}`,
    `coach-channel: ${s.coachChannel ? `<#${s.coachChannel}>` : 'ninguno aún'}`,
    `alert-channel: ${s.alertChannel ? `<#${s.alertChannel}>` : 'el canal de coaches'}`,
    `deputy: ${s.deputy ? `<@${s.deputy}>` : 'nadie'}`,
    `zone: ${s.zone}`,
    `digest: ${s.digest}`,
    `region: ${s.region ? `${s.region}, número de emergencias ${s.emergency ?? 'desconocido'}` : 'ninguna aún'}`,
    `regions: ${s.regions.length > 0 ? s.regions.join(' ') : 'sin límite'}`,
    `language: ${s.language}`,
    `retention: ${s.retentionDays} días tras el final`,
    `window: ${s.window} minutos`,
    `quote: ${s.quote ? 'sí, el coach lee las palabras del cliente' : 'no, las palabras del cliente se dejan fuera'}`,
    `policy-settled: ${s.policyConfirmed ? `confirmado el ${s.policyConfirmed}` : 'sin confirmar'}`,
  ],
  lacksRole: 'coach-role: nombra el rol de los coaches con /set-up coach-role.',
  lacksChannel: 'coach-channel: nombra un canal privado con /set-up coach-channel.',
  roleGone:
    'El rol de coaches ya no está en este servidor, así que nadie puede ver los registros. Nombra otro con /set-up coach-role.',
  everyoneNoCoach: 'El rol de coaches no puede ser todo el mundo: crea un rol para los coaches y nómbralo.',
  policyOpen:
    'policy-settled: la política para desarrolladores del chat limita lo que las aplicaciones pueden hacer con datos de salud. Acláralo para tu práctica y usa /set-up policy-settled: True. Hasta entonces no se puede invitar a nadie.',
  channelGone: (option) =>
    `No encuentro el canal de “${option}”: ya no está, o me falta allí “Ver canal”. Déjame verlo, o nombra otro con /set-up ${option}.`,
  channelOpen: (option) =>
    `Todo el servidor puede leer el canal de “${option}”. Quita allí “Ver canal” a @everyone, o nombra otro con /set-up ${option}.`,
  channelLacks: (option, lacks) =>
    `En el canal de “${option}” me falta: ${lacks.join(', ')}. Da esto a mi rol allí, o nombra otro con /set-up ${option}.`,
  readers: (option, roles) =>
    `Estos roles también pueden leer el canal de “${option}”: ${roles.map((id) => `<@&${id}>`).join(', ')}. Si no son coaches, quítales allí “Ver canal”.`,
  cannotCall:
    'No puedo llamar al rol de coaches cuando una alerta se amplía: permite que cualquiera mencione ese rol, o dame “Mencionar @everyone, @here y todos los roles” en el canal de alertas.',
  noRegion:
    'Sin región solo puedo decir “el número de emergencias local”. Nombra el país con /set-up region, como ES.',
  fromMemory: (region) =>
    `El número de emergencias de ${region} se escribió de memoria: compruébalo en una página oficial antes de empezar.`,
  cannotPost: (which, reason) => {
    const why =
      reason === 'gone'
        ? 'ya no está'
        : reason === 'open'
          ? 'todo el servidor puede leerlo'
          : 'no me dejan escribir allí'
    const channel = which === 'coach' ? 'de coaches' : 'de alertas'
    return `No puedo escribir en el canal ${channel}: ${why}. Quien puede gestionar el servidor usa /set-up.`
  },
  lostThere: 'Lo que iba allí no ha llegado; /digest y /roster muestran cómo están las cosas.',
  alertInPrivate: (ref) =>
    `Una alerta sobre ${ref} te llega aquí porque no puedo escribir en los canales de la práctica. Contacta ahora con la persona y luego usa /take-up en el servidor.`,
  trouble: (server) => `Algo ha cambiado en el servidor ${server} y allí no puedo trabajar como antes:`,
  enrolNeedsPolicy:
    'Aún no se puede invitar a nadie. La política para desarrolladores del chat limita lo que las aplicaciones pueden hacer con datos de salud: quien puede gestionar el servidor lo aclara y usa /set-up policy-settled: True.',
}
