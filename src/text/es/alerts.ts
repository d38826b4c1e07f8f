import { harmless } from '../harmless.ts'
import type { Texts } from '../index.ts'

const name = (ref: string): string => `**${harmless(ref)}**`

/** What coaches read about who has an alert, and how it ends. */
export const alerts: Texts['alerts'] = {
  offered: (ref, from, to, signs) =>
    [
      `${name(ref)}: ${to}, por favor toma esta alerta${signs.length > 0 ? ` (${signs.join('; ')})` : ''} y pulsa cuando la tengas.`,
      from === null
        ? 'Nadie la tiene todavía, y se repite hasta que alguien la tome.'
        : `Hasta entonces sigue con ${from}.`,
    ].join(' '),
  takeOver: 'La tomo yo',
  offeredTo: (ref, to, from) =>
    `Se ha pedido a ${to} en el canal de alertas que tome la de ${name(ref)}. ${from === null ? 'Nadie la tiene todavía.' : `Hasta que pulse, sigue con ${from}.`}`,
  takenOver: (by, from, at) => `${by} la tiene desde ${at}, después de ${from}.`,
  hasAlready: (ref, who) => `${who} ya tiene la alerta de ${name(ref)}.`,
  noCoach: (who) =>
    `${who} no tiene aquí el rol de coach, así que no puede ver registros. Dale antes el rol o nombra a otra persona. No se ha cambiado nada.`,
  closedBy: (ref, by, outcome) => `${by} ha cerrado la alerta sobre ${name(ref)}: ${outcome}.`,
  endedAway: (ref) =>
    `${name(ref)} ya no está en la práctica, y en un día nadie ha tomado la alerta. Dejo de llamar. Se le dijo que buscara atención y que no esperara.`,
  declinedOpen:
    '**Antes había escrito una señal urgente** y se le dijo que buscara atención. La alerta sigue un día, hasta que alguien la tome.',
  spoken: (ref) =>
    `Anotado: has hablado con ${name(ref)}. Lo que estaba cerrado se abre otra vez, cada escalera un peldaño más abajo (un primer peldaño se queda); el primer mensaje pregunta por las señales.`,
  spokenStill: (ref, signs) =>
    `Anotado: has hablado con ${name(ref)}. **El plan sigue cerrado**: ${signs.join('; ')}. Eso necesita el visto bueno de un profesional de salud: regístralo con /clear.`,
  resumed: (ref, prompt) =>
    `La pausa de ${name(ref)} ha terminado; el próximo mensaje llega a las ${prompt}.`,
  resumedLocked: (ref) =>
    `La pausa de ${name(ref)} ha terminado, pero una señal urgente cierra el plan: no hay mensaje diario hasta que registres el visto bueno con /clear.`,
  resumedParked: (ref) =>
    `La pausa de ${name(ref)} ha terminado, pero está en espera: no hay mensaje diario hasta que registres con /release que un profesional de salud está de acuerdo.`,
}

/** What a client reads whose break ends while drills still wait. */
export const backAgain: Texts['backAgain'] = {
  locked:
    'Qué bien que vuelves. Tus ejercicios siguen parados hasta que te vea un profesional de salud y tu coach lo anote. Cada mañana te pregunto cómo va.',
  parked:
    'Qué bien que vuelves. Tus ejercicios esperan hasta que un médico u otro profesional esté de acuerdo y tu coach lo anote. Entonces te escribo.',
}
