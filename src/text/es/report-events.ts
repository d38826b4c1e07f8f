import type { Event } from '../../domain/report/facts.ts'
import type { Item } from '../../domain/report/page.ts'
import { oneLine } from '../en/report-words.ts'
import { shortDate } from './dates.ts'
import { ladderName } from './names.ts'
import { who } from './report-words.ts'

const DECIDED = {
  advance: 'avanza',
  hold: 'mantiene',
  'ease-back': 'afloja',
  refer: 'deriva',
  stop: 'para los ejercicios',
} as const
const CHANGED = {
  plan: 'cambia el plan',
  advance: 'avanza',
  'ease-back': 'se afloja por las reglas',
  rest: 'descansa, por las reglas',
  return: 'un paso menos tras una ausencia',
  clearance: 'empieza otra vez tras el visto bueno, un paso menos',
  undo: 'cambio deshecho por el coach',
} as const
const STOPPED = {
  lock: 'ejercicios parados por una señal de alarma',
  park: 'a la espera de un profesional de salud por un riesgo',
  pause: 'en pausa',
} as const

const ladders = (ids: readonly string[]): string => ids.map((id) => oneLine(ladderName(id), 30)).join(', ')

/** One decision or change, with its day. */
export function eventItem(event: Event): Item {
  return { lead: shortDate(event.day), words: eventWords(event), most: 2 }
}

function eventWords(event: Event): string {
  if (event.kind === 'decision') {
    const what = `el coach ${DECIDED[event.decision]}${event.ladder === null ? '' : ` ${ladders([event.ladder])}`}`
    return event.reason === '' ? what : `${what} (“${oneLine(event.reason, 100)}”)`
  }
  if (event.kind === 'rungs') return `${CHANGED[event.why]}: ${ladders(event.ladders)}`
  const until =
    event.until === null
      ? ', aún así'
      : event.until === event.day
        ? ''
        : ` hasta el ${shortDate(event.until)}`
  return `${STOPPED[event.why]}${until}${event.by === null ? '' : ` (${who(event.by)})`}`
}
