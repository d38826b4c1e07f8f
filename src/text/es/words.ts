import { daysBetween } from '../../domain/day.ts'
import type { Texts } from '../index.ts'
import { date, weekdayName } from './dates.ts'
import { REACH } from './reach.ts'

const STATUS: Readonly<Record<string, string>> = {
  invited: 'con invitación',
  screening: 'primeras preguntas',
  parked: 'a la espera de un profesional de salud',
  active: 'activo',
  locked: 'parado: hay una señal urgente abierta',
  paused: 'en pausa',
  discharged: 'terminado',
  left: 'se fue',
}

/** Single words and short forms that the sentences are made of. */
export const words: Texts['words'] = {
  yes: 'Sí',
  no: 'No',
  filledLater: 'anotado después',
  reach: (reach) => REACH[reach],
  side: (side) => ({ left: 'izquierda', right: 'derecha', both: 'las dos piernas' })[side],
  status: (status) => STATUS[status] ?? status,
  date,
  day: (day, today) => {
    const ago = daysBetween(day, today)
    if (ago === 0) return 'hoy'
    if (ago === 1) return 'ayer'
    return ago > 1 && ago < 7 ? weekdayName(day) : date(day)
  },
  values: ({ sessions, reach, pain }) =>
    [
      sessions === null ? '' : `${sessions} ${sessions === 1 ? 'sesión' : 'sesiones'}`,
      reach === null ? '' : REACH[reach],
      pain === null ? '' : `dolor ${pain}`,
    ]
      .filter((part) => part !== '')
      .join(', '),
}
