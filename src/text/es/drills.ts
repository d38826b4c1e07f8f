import type { Drill, DrillProse, KitId, Need } from '../../domain/ladder/ladders.ts'
import { ownDrill } from '../own-ladders.ts'
import { DRILLS } from './drill-prose.ts'

/** Said once below every list of drills; it goes before any number. */
export const STOP_RULE =
  'Para al momento si el dolor, el hormigueo o el adormecimiento baja más por la pierna, o si notas ' +
  'adormecimiento nuevo o debilidad. No hagas más y escríbelo aquí. Pregunta a tu coach cuánto dolor se admite.'

/** What each ladder is called in front of clients and coaches. */
export const LADDER_NAMES: Readonly<Record<string, string>> = {
  settle: 'Calma',
  extension: 'Hacia atrás',
  unload: 'Descarga',
  glide: 'Deslizar',
  open: 'Abrir caderas',
  rotator: 'Cadera profunda',
  'extend-hip': 'Elevar cadera',
  lift: 'Volver a cargar',
}

const KIT: Readonly<Record<KitId, string>> = {
  mat: 'una colchoneta',
  'low-prop': 'una toalla doblada',
  'high-prop': 'una almohada firme',
  band: 'una banda cerrada',
  wall: 'una pared',
  chair: 'una silla firme',
  'light-weight': 'un peso ligero',
  weight: 'un peso',
}

const NEED_LINES: Readonly<Record<Need, string>> = {
  'anchor-check': 'Antes mira: la banda sin cortes, y el anclaje aguanta un tirón fuerte.',
  'coach-load': 'No uses peso hasta que tu coach diga cuánto.',
}

const time = (seconds: number): string => {
  if (seconds === 60) return '1 minuto'
  return seconds >= 60 && seconds % 60 === 0 ? `${seconds / 60} minutos` : `${seconds} segundos`
}
const SIDE_WORDS = { none: '', sore: ' con el lado que duele', each: ' con cada pierna' } as const
const often = (times: number): string => (times === 1 ? 'Una vez' : `${times} veces`)

/** The dose in one line. `sessions` is the plan's sessions a day; the drill's own ceiling goes before it. */
export function doseLine({ dose, side }: Drill, sessions: number): string {
  const { reps, holdSeconds, easeSeconds, sets, timesADay } = dose
  const held = `${reps} veces ${time(holdSeconds)}`
  const ease =
    reps > 1 && holdSeconds > 0 && easeSeconds > 0 ? `, ${time(easeSeconds)} de descanso entre ellas` : ''
  const once =
    reps === 1 && holdSeconds > 0 ? time(holdSeconds) : holdSeconds > 0 ? held : `${reps} veces despacio`
  const all = sets === 1 ? once : `${sets} series: ${once}`
  return `${all}${SIDE_WORDS[side]}${ease}. ${often(Math.min(sessions, timesADay))} al día.`
}

const proseOf = (id: string): DrillProse | undefined => DRILLS[id] ?? ownDrill(id)?.prose

export const nameOfDrill = (id: string): string | undefined => proseOf(id)?.name

/**
 * One drill as a client reads it, in lines. A drill that has no words anywhere throws, since a drill must not be shown
 * without its stop rule. `load`: the coach's, in words.
 */
export function drillText(drill: Drill, sessions: number, load: string | null = null): string {
  const prose = proseOf(drill.id)
  if (prose === undefined) throw new Error(`drill ${drill.id} has no words`)
  const kit = drill.kit.map((id) => (KIT as Record<string, string>)[id] ?? id).join(', ')
  const needs = drill.needs.filter((need) => need !== 'coach-load' || !load).map((need) => NEED_LINES[need])
  const lines = [
    prose.name,
    doseLine(drill, sessions),
    kit && `Necesitas ${kit}.`,
    load && `Carga: ${load}.`,
    ...needs,
  ]
  return [...lines, prose.how, prose.cautions, prose.stopIf].filter(Boolean).join('\n')
}
