import type { Day } from '../../domain/day.ts'
import {
  type AttentionReason,
  attention,
  type RollCall,
  type RollCallEntry,
} from '../../domain/digest/attention.ts'
import type { RungFact, Standing, WeekFacts } from '../../domain/digest/facts.ts'
import type { Direction, Flag, RuleId } from '../../domain/rules/assessment.ts'
import { harmless } from '../harmless.ts'
import { cutLines, paged, rows } from '../lines.ts'
import { count, date, number } from './dates.ts'
import { CARE, LEVEL, ladderName, PROPOSAL, TREND } from './names.ts'
import { REACH } from './reach.ts'
import { SIGN_WORDS } from './signs.ts'
import { words } from './words.ts'

const LIST_MOST = 8

export const DIRECTION: Readonly<Record<Direction, string>> = {
  centralising: 'se centraliza, hacia la espalda',
  peripheralising: 'se aleja, lejos de la espalda',
  steady: 'estable',
  unclear: 'dirección no clara',
}
export const RULE: Readonly<Record<RuleId, string>> = {
  sign: 'señal de alarma abierta',
  'reach-spread': 'el alcance se aleja de la espalda',
  'below-knee': 'primer día por debajo de la rodilla',
  'pain-up': 'dolor por encima de lo habitual',
  'pain-severe': 'dolor de 8 o más dos veces seguidas',
  flare: 'brote después de las sesiones',
  'trend-pain': 'el dolor tiene tendencia en 28 días',
  'trend-reach': 'el alcance tiene tendencia en 28 días',
  meaningful: 'mejora que importa',
  adherence: 'menos del 60 % de las sesiones',
  quiet: 'sin respuestas',
  plateau: 'sin cambio que importe en seis semanas',
  gate: 'se cumple lo que pide el peldaño siguiente',
  regain: 'otra vez por debajo de la rodilla',
}
const REASON: Readonly<Record<Exclude<AttentionReason, 'quiet'>, string>> = {
  'alert-open': 'nadie ha tomado la alerta',
  urgent: 'señal urgente abierta',
  spreading: 'los síntomas se alejan de la espalda',
  'severe-pain': 'dolor fuerte',
  refer: 'se propone derivar',
  parked: 'una respuesta de riesgo espera a un profesional de salud',
  'soon-sign': 'una señal que se debe mirar en los próximos días',
  worsening: 'un empeoramiento que mirar',
}
const BARRIER: Readonly<Record<string, string>> = {
  time: 'tiempo',
  pain: 'dolor',
  unsure: 'no sabe cómo',
  'no-kit': 'sin material',
  other: 'otra cosa',
}

const dates = (days: readonly Day[]): string => listed(days.map(date))
const listed = (items: readonly string[]): string =>
  items.length > LIST_MOST
    ? `${items.slice(0, LIST_MOST).join(', ')} y ${items.length - LIST_MOST} más`
    : items.join(', ')

/** One client's week for the coach's channel, at most 1,800 characters, facts in the order a coach scans them. */
export function digestCard(facts: WeekFacts): string {
  const lines = [
    `**${harmless(facts.ref)}** · semana ${facts.week}, ${date(facts.first)} a ${date(facts.on)}${standing(facts)}`,
    needs(facts),
    signs(facts),
    `Respuestas ${facts.replies.answered}/${facts.replies.days} · ${sessions(facts)}`,
    reach(facts),
    pain(facts),
    facts.flags.length === 0 ? '' : `Avisos: ${listed(facts.flags.map(flag))}`,
    facts.rungs.length === 0 ? '' : `Peldaños: ${listed(facts.rungs.map(rung))}`,
    facts.barrier === null ? '' : `Lo impide: ${BARRIER[facts.barrier] ?? harmless(facts.barrier, 200)}`,
    facts.filledLater.length === 0 ? '' : `Anotado después: ${dates(facts.filledLater)}`,
    facts.signsNotSaid.length === 0
      ? ''
      : `Señales de alarma sin respuesta (que no es “ninguna”): ${dates(facts.signsNotSaid)}`,
    proposal(facts),
  ]
  return cutLines(lines.filter((line) => line !== ''))
}

const standingWords = (standing: Standing): string => words.status(standing)
const standing = (facts: WeekFacts): string =>
  facts.standing === 'active' ? '' : ` · ${standingWords(facts.standing)}`

function needs(facts: WeekFacts): string {
  const { group } = attention(facts)
  if (group === 'needs') return `**Te necesita:** ${attentionWords({ facts, ...attention(facts) })}`
  return group === 'move' ? '**Puede avanzar**' : ''
}

function signs({ signs, cleared, urgentOpen }: WeekFacts): string {
  const open = signs.map(
    ({ sign, care, day }) => `${SIGN_WORDS[sign].short} (${CARE[care]}) desde ${date(day)}`,
  )
  const stopped = urgentOpen
    ? 'Los ejercicios están parados hasta que se registre el visto bueno de un profesional de salud.'
    : ''
  const past = cleared.map(
    (one) =>
      `${SIGN_WORDS[one.sign].short} (${CARE[one.care]}) del ${date(one.day)}, visto bueno el ${date(one.cleared)}`,
  )
  return [
    open.length === 0 ? '' : `Señales abiertas: ${listed(open)}.`,
    past.length === 0 ? '' : `Señales con visto bueno: ${listed(past)}.`,
    stopped,
  ]
    .filter(Boolean)
    .join(' ')
}

function sessions({ replies, sessions: { done, planned, percent, low, high } }: WeekFacts): string {
  if (replies.answered === 0) return 'sesiones sin dato'
  if (planned === 0)
    return done === 0
      ? 'sin sesiones en el plan de los días respondidos'
      : `sesiones ${done}, ninguna en el plan`
  const shares = percent === null ? '' : `${Math.round(percent)} %`
  const interval = low === null || high === null ? '' : `, probable ${Math.round(low)}-${Math.round(high)} %`
  return `sesiones ${done}/${planned} de los días respondidos${shares && ` (${shares}${interval})`}`
}

function reach({ reach: { path, direction, baseline } }: WeekFacts): string {
  const weeks = path.map((zone) => (zone === null ? 'sin respuesta' : REACH[zone])).join(', ')
  const from = baseline === null ? '' : ` (al inicio ${REACH[baseline]})`
  return `Alcance por semanas${from}: ${weeks || 'sin respuesta'}: ${DIRECTION[direction]}`
}

function pain({ pain }: WeekFacts): string {
  const known = (value: number | null): string => (value === null ? 'sin dato' : number(value))
  const medians = `${known(pain.now)} ahora, ${known(pain.weekAgo)} hace una semana, ${known(pain.baseline)} al inicio`
  const worst = pain.worst === null ? '' : `; peor ${pain.worst.pain} el ${date(pain.worst.day)}`
  return `Dolor, mediana de 7 días: ${medians}${change(pain)}${worst}`
}

function change({ change, percent, meaningful }: WeekFacts['pain']): string {
  if (change === null) return ''
  if (change === 0) return ', sin cambio'
  const share = percent === null ? '' : ` (${Math.abs(Math.round(percent))} %)`
  const points = Math.abs(change)
  const size = `${number(points)} ${points === 1 ? 'punto' : 'puntos'}${share} ${change < 0 ? 'mejor' : 'peor'}`
  if (change > 0) return `, ${size}`
  if (meaningful === null) return `, ${size}: faltan respuestas para saber si importa`
  return `, ${size}: ${meaningful ? 'suficiente para que importe' : 'menos de lo que importa'} (2 puntos y 30 %)`
}

/** What a rule found, in a few words. */
export function flagWords({ rule, figures }: Pick<Flag, 'rule' | 'figures'>): string {
  const trend = TREND[String(figures.word)] ?? String(figures.word)
  if (rule === 'trend-pain') return `el dolor ${trend} en 28 días`
  if (rule === 'trend-reach') return `el alcance ${trend} en 28 días`
  if (rule === 'pain-up' && figures.centralising === true) return 'más dolor mientras el alcance se acerca'
  if (rule !== 'meaningful') return RULE[rule]
  const better = [...('painTo' in figures ? ['dolor'] : []), ...('reachTo' in figures ? ['alcance'] : [])]
  return `mejora que importa en ${better.join(' y ')}`
}

const flag = ({ rule, level, day, figures }: Flag): string =>
  `${flagWords({ rule, figures })} (${level === 'note' ? '' : `${LEVEL[level]}, `}desde ${date(day)})`
const rung = ({ ladder, rung, last, resting }: RungFact): string =>
  `${harmless(ladderName(ladder), 30)} ${last === null ? rung : `${rung}/${last}`}${resting ? ' (en descanso)' : ''}`

function proposal({ proposal, ladder, reasons }: WeekFacts): string {
  if (proposal === 'none') return 'Propuesta: ninguna'
  const said = PROPOSAL[proposal]
  const what = ladder === null ? said : `${said}, ${harmless(ladderName(ladder), 30)}`
  const because = reasons.map(({ rule, day }) => RULE[rule] + (day === null ? '' : ` desde ${date(day)}`))
  return `**Propuesta: ${what}**${because.length === 0 ? '' : `, por ${listed(because)}`}`
}

/** Why a client needs the coach, and who has the alert where somebody does. */
export function attentionWords({ facts, reasons }: RollCallEntry): string {
  const said = reasons.map(({ reason, since }) => {
    if (reason === 'quiet') return `sin respuesta desde hace ${count(facts.silentDays, 'día')}`
    const word = reason === 'alert-open' ? 'del' : 'desde'
    return REASON[reason] + (since === null ? '' : ` ${word} ${date(since)}`)
  })
  return [...said, ...takenWords(facts)].join('; ')
}

export const takenWords = ({ taken }: WeekFacts): string[] =>
  taken === null ? [] : [`${taken.by} la tiene desde ${date(taken.day)} ${taken.time}`]

/** The line of counts, then names by group, in messages of at most 1,800 characters (one, for most practices). */
export function rollCallText({ needs, move, rest }: RollCall, on: Day): string[] {
  const all = needs.length + move.length + rest.length
  if (all === 0) return [`**Recuento, ${date(on)}** · ahora no hay clientes`]
  const head =
    `**Recuento, ${date(on)}** · ${count(all, 'cliente')}: ` +
    `${needs.length} ${needs.length === 1 ? 'te necesita' : 'te necesitan'}, ` +
    `${move.length} ${move.length === 1 ? 'puede' : 'pueden'} avanzar, ${rest.length} más`
  return paged([
    head,
    ...(needs.length === 0 ? [] : ['**Te necesita**', ...needs.map(waiting)]),
    ...(move.length === 0 ? [] : ['**Puede avanzar**', ...rows(move.map(ready))]),
    ...(rest.length === 0 ? [] : ['**Los demás**', ...rows(rest.map(other))]),
  ])
}

const waiting = (entry: RollCallEntry): string => `• ${harmless(entry.facts.ref)}: ${attentionWords(entry)}`
const ready = ({ facts: { ref, ladder } }: RollCallEntry): string =>
  harmless(ref) + (ladder === null ? '' : ` (${harmless(ladderName(ladder), 30)})`)
const other = ({ facts: { ref, standing } }: RollCallEntry): string =>
  harmless(ref) + (standing === 'active' ? '' : ` (${standingWords(standing)})`)
