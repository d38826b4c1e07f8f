import { harmless } from '../harmless.ts'
import type { Texts } from '../index.ts'
import { date } from './dates.ts'
import { CARE, DECISION, ladderName } from './names.ts'

const VIA: Readonly<Record<string, string>> = {
  edit: 'cambiado a ',
  deleted: 'mensaje retirado',
  import: 'importado ',
}

/** What a coach reads of one client's week, in private. */
export const record: Texts['record'] = {
  head: ({ ref, status, week, first, last, planWeek, part }) => {
    const plan = planWeek === null ? '' : `, semana ${planWeek} del plan`
    const parts = part.of > 1 ? ` · parte ${part.number} de ${part.of}` : ''
    return `**${harmless(ref)}** · ${status} · ${week}, ${date(first)} a ${date(last)}${plan}${parts}`
  },
  inCharge: (coach) => `A cargo: ${coach}`,
  alert: ({ opened, signs, takenBy, takenAt, had, outcome, closed }) => {
    const hands = had.map(({ by, at }) => `${by} desde ${at}`)
    return [
      `Alerta de ${opened}${signs.length > 0 ? ` (${signs.join('; ')})` : ''}`,
      takenBy === null ? 'nadie la ha tomado' : `${takenBy} la tiene desde ${takenAt}`,
      hands.length > 0 ? `antes: ${hands.join(', luego ')}` : '',
      closed === null ? 'abierta' : `cerrada ${closed}${outcome ? `: ${outcome}` : ''}`,
    ]
      .filter((part) => part !== '')
      .join('; ')
  },
  day: (day, values, more) => `**${date(day)}** ${[values || 'nada anotado', ...more].join('; ')}`,
  noReply: (day) => `**${date(day)}** sin registro`,
  later: (on) => `anotado después, ${date(on)}`,
  signsDenied: 'señales: ninguna',
  signsNotSaid: 'señales sin respuesta',
  version: ({ at, via, words, later }) => {
    const said = words ? `“${harmless(words, 200)}”` : ''
    return `  ${at} ${VIA[via] ?? ''}${said || (VIA[via] ? '' : 'respondido')}${later ? ' (anotado después)' : ''}`
  },
  sign: (short, care, day, end) =>
    `Señal: ${short} (${CARE[care]}), ${date(day)}${end === null ? ': abierta' : `: ${end}`}`,
  signEnd: {
    asked: 'preguntada, aún sin respuesta',
    open: 'abierta',
    denied: 'negada al preguntar',
    cleared: 'con visto bueno',
    noted: 'anotada',
  },
  ended: (how, by, on) => `${how} ${on}${by ? ` (${harmless(by, 80)})` : ''}`,
  decision: ({ at, decision, ladder, by, reason }) => {
    const done = DECISION[decision] ?? decision
    const what = ladder === null ? done : `${done}, ${ladderName(ladder)}`
    return `Decisión ${at}: ${what}, por ${by}${reason ? `: ${harmless(reason, 300)}` : ''}`
  },
  step: (day, ladder, from, to) => `Paso ${date(day)}: ${ladderName(ladder)} ${from} → ${to}`,
  flag: (day, words) => `Aviso ${date(day)}: ${words}`,
  notes: '**Notas de los coaches** (los clientes nunca las ven)',
  note: (at, by, text) => `${at}, ${by}: ${harmless(text, 800)}`,
  before: '◀ Semana anterior',
  after: 'Semana siguiente ▶',
  more: 'Más de esta semana',
  badWeek: (text) =>
    `“${harmless(text, 40)}” no es una semana. Escríbela como 2026-W12, o como fecha: 2026-03-16.`,
  noWeek: (ref, week) => `${harmless(ref)} no estaba aquí en ${week}. No se guarda nada de esa semana.`,
}
