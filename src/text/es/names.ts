import type { Care } from '../../domain/care.ts'
import type { LadderId } from '../../domain/ladder/plan.ts'
import type { Level, Proposal } from '../../domain/rules/assessment.ts'
import { ownLadderName } from '../own-ladders.ts'
import { LADDER_NAMES } from './drills.ts'

export const CARE: Readonly<Record<Care, string>> = {
  none: 'nada',
  soon: 'en los próximos días',
  'same-day': 'hoy',
  emergency: 'emergencia',
}
export const LEVEL: Readonly<Record<Level, string>> = {
  note: 'nota',
  hold: 'mantener',
  'ease-back': 'aflojar',
  'same-day': 'hoy',
  emergency: 'emergencia',
}
export const PROPOSAL: Readonly<Record<Proposal, string>> = {
  stop: 'parar',
  refer: 'derivar',
  'ease-back': 'aflojar',
  hold: 'mantener',
  advance: 'avanzar',
  none: 'ninguna',
}
/** The same said out in full. */
export const PROPOSAL_IN_FULL: Readonly<Record<Proposal, string>> = {
  stop: 'parar: hay una señal urgente abierta',
  refer: 'derivar a un profesional de salud',
  'ease-back': 'aflojar',
  hold: 'mantener',
  advance: 'avanzar',
  none: 'nada que cambiar',
}
export const DECISION: Readonly<Record<string, string>> = {
  advance: 'avanzar',
  hold: 'mantener',
  'ease-back': 'aflojar',
  refer: 'derivar',
  stop: 'parar',
  clear: 'visto bueno',
}
/** What a value has done over four weeks. */
export const TREND: Readonly<Record<string, string>> = {
  improving: 'mejora',
  worsening: 'empeora',
  steady: 'sigue estable',
}

export const ladderName = (ladder: LadderId): string =>
  LADDER_NAMES[ladder] ?? ownLadderName(ladder) ?? ladder
