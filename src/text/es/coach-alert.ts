import type { Care } from '../../domain/care.ts'
import { oneLine } from '../en/coach.ts'
import { harmless } from '../harmless.ts'
import type { Texts } from '../index.ts'
import { count } from './dates.ts'
import { urgent } from './urgent.ts'

const CARE: Readonly<Record<Care, string>> = {
  none: '',
  soon: 'ver en los próximos días',
  'same-day': 'ver hoy',
  emergency: 'emergencia',
}
const name = (ref: string): string => `**${harmless(ref)}**`
const ago = (minutes: number): string =>
  minutes < 120 ? count(minutes, 'minuto') : count(Math.round(minutes / 60), 'hora')

/** What the bot itself notes of how a sign was told; all else is the client's own words. */
const NOTED: readonly string[] = [urgent.ticked, urgent.notNamed, urgent.otherLegNamed]

const said = (words: string): string =>
  NOTED.includes(words) ? `La persona ${words}.` : `Dijo: “${harmless(words, 400)}”`

/** What a coach reads of an alert. */
export const coachAlert = {
  alert: ({ ref, care, signs, sources, words, at, told, selfHarm }) =>
    [
      `**Señal urgente: ${harmless(ref)}** (${CARE[care]}), ${at}`,
      signs.length > 0
        ? `Señal: ${signs.join('; ')}`
        : 'Escrito antes de decir que sí: las palabras no se guardan.',
      words === null || words === '' ? '' : said(words),
      signs.length > 0
        ? `A las ${at} recibió el aviso de parar y buscar atención; ejercicios parados, plan cerrado:`
        : `A las ${at} recibió el aviso de buscar atención:`,
      `> ${(told.split('\n')[0] ?? '').replaceAll('**', '')}`,
      sources.length > 0 ? `Por qué cuenta: ${oneLine(sources)}` : '',
      selfHarm
        ? 'Por favor, tómala y habla ahora con la persona, de viva voz si puedes. Cuando hayas hablado, regístralo con /spoken-with.'
        : 'Por favor, tómala y contacta con la persona. No se te pide que lo juzgues: eso lo hace un profesional de salud.',
    ]
      .filter((line) => line !== '')
      .join('\n'),
  alertRepeat: ({ ref, care, signs, minutes }) =>
    `**Sigue abierta: ${harmless(ref)}** (${CARE[care]})${signs.length > 0 ? `: ${signs.join('; ')}` : ''}. Hace ${ago(minutes)}, y nadie la ha tomado.`,
  takeUp: 'La tomo',
  taken: (by, at = '') =>
    `La tiene ${by}. El cliente recibió el aviso.${at && ` Desde ${at}; para pasarla: /hand-over.`}`,
  alertHad: (by, at = '') =>
    `Ya la tiene ${by}${at && `, desde ${at}`}. Para tomarla tú: /hand-over a tu nombre.`,
  alertClosed: 'Esta alerta ya está cerrada.',
  noAlert: (ref) => `No hay alerta abierta de ${name(ref)}.`,
  whatCame: (ref, by) =>
    `${name(ref)}, la tiene ${by}. ¿Qué pasó? Esto cierra la alerta, nunca el bloqueo del plan.`,
  outcome: {
    reached: 'Contacto por teléfono',
    hospital: 'Va al hospital',
    seen: 'Le vio un profesional de salud',
    'no-answer': 'No responde',
    'false-alarm': 'Falsa alarma',
  },
  closed: (outcome) =>
    `Alerta cerrada: ${outcome}. El plan sigue cerrado hasta que registres el visto bueno con /clear.`,
  saysSeen: (ref) =>
    `${name(ref)} dice que le ha visto un profesional de salud. El plan sigue cerrado hasta que registres el visto bueno con /clear.`,
} satisfies Partial<Texts['coach']>
