import { isDay } from '../../domain/day.ts'
import type { ReportFacts, SignRow } from '../../domain/report/facts.ts'
import type { Item, ListBlock, Page, TableBlock } from '../../domain/report/page.ts'
import { oneLine } from '../en/report-words.ts'
import type { Texts } from '../index.ts'
import { count, fullDate, number, shortDate } from './dates.ts'
import { DIRECTION } from './digest.ts'
import { screening } from './enrol.ts'
import { CARE, ladderName } from './names.ts'
import { REACH } from './reach.ts'
import { eventItem } from './report-events.ts'
import { FOOT } from './report-foot.ts'
import { who } from './report-words.ts'
import { SIGN_WORDS } from './signs.ts'
import { words } from './words.ts'

const NOT_ANSWERED = 'sin respuesta'
const NOT_KNOWN = 'sin dato'

/** Everything on the one page for a clinician, in words. */
function reportPage(facts: ReportFacts): Page {
  return {
    title: 'Informe para un profesional de salud',
    name: oneLine(facts.ref, 36),
    made: `Hecho el ${fullDate(facts.made)}, para los días del ${fullDate(facts.begun)} al ${fullDate(facts.on)}`,
    notice: 'Es un registro de lo que la persona contó de sí misma, no un diagnóstico.',
    left: [
      list('Cliente', about(facts)),
      list('Antes y ahora', change(facts)),
      {
        ...list('Señales de alarma', signs(facts)),
        least: 8,
        more: (n) => `y ${n} más, anteriores o menos urgentes: ver el registro`,
      },
      {
        ...list('Decisiones y cambios', events(facts)),
        drop: 'first',
        least: 4,
        more: (n) => `y ${n} anteriores, ver el registro`,
      },
      list('Contado antes del plan', told(facts)),
    ],
    right: [
      { kind: 'picture', weeks: facts.picture },
      weeks(facts),
      list('Actividades que importan, 0 fácil a 10', activities(facts)),
    ],
    foot: FOOT,
  }
}

/** A list that is short by its nature: others give way before it does. */
const list = (title: string, items: readonly Item[]): ListBlock => ({
  kind: 'list',
  title,
  items,
  drop: 'last',
  least: items.length,
  more: (n) => `y ${n} más`,
})

const item = (lead: string, text: string, most = 2): Item => ({ lead, words: text, most })

function about({ side, standing, told, rungs, ...facts }: ReportFacts): Item[] {
  const age = told.age === null ? '' : `, ${told.age} años`
  const steps = rungs.map(
    ({ ladder, rung, last, resting }) =>
      `${oneLine(ladderName(ladder), 30)} ${last === null ? rung : `${rung} de ${last}`}${resting ? ' (en descanso)' : ''}`,
  )
  return [
    item('Lado', `${side === null ? NOT_KNOWN : words.side(side)}${age}`),
    item('Inicio del episodio', onset(told.onset)),
    item('Plan desde', `${fullDate(facts.begun)}; ahora ${words.status(standing)}`),
    item('Escaleras (paso)', steps.join(', ') || 'ninguna', 3),
  ]
}

const onset = (given: string | null): string =>
  given === null ? NOT_ANSWERED : isDay(given) ? fullDate(given) : `“${oneLine(given, 100)}”`

const zone = (reach: ReportFacts['reach']['now']): string => (reach === null ? NOT_KNOWN : REACH[reach])
const known = (value: number | null): string => (value === null ? NOT_KNOWN : number(value))

function change({ reach, pain, adherence, replies }: ReportFacts): Item[] {
  const later =
    replies.later === 0 ? 'ninguna anotada después' : `${replies.later} de ellas anotadas después del día`
  const items = [
    item(
      'Alcance',
      `${zone(reach.baseline)} al inicio, ${zone(reach.now)} ahora: ${DIRECTION[reach.direction]}`,
    ),
    item(
      'Dolor',
      `${known(pain.baseline)} al inicio, ${known(pain.now)} ahora (mediana de 7 días)${changeWords(pain)}`,
      3,
    ),
    item('Sesiones', sessions(adherence)),
    item('Respuestas', `${replies.answered} de ${count(replies.days, 'día')}; ${later}`),
  ]
  if (replies.signsNotSaid === 0) return items
  const days = count(replies.signsNotSaid, 'día respondido', 'días respondidos')
  return [...items, item('Señales sin decir', `en ${days}, que no es lo mismo que ninguna`)]
}

function changeWords({ change, percent, meaningful }: ReportFacts['pain']): string {
  if (change === null) return ''
  if (change === 0) return ': sin cambio'
  const share = percent === null ? '' : ` (${Math.abs(Math.round(percent))} %)`
  const points = Math.abs(change)
  const size = `${number(points)} ${points === 1 ? 'punto' : 'puntos'}${share}`
  if (change > 0) return `: ${size} peor`
  if (meaningful === null) return `: ${size} mejor, faltan respuestas para saber si importa`
  return `: ${size} mejor, ${meaningful ? 'al menos' : 'menos que'} el menor cambio que importa`
}

function sessions({ done, planned, percent, low, high }: ReportFacts['adherence']): string {
  if (planned === 0) return 'ninguna en el plan de los días respondidos'
  const interval =
    low === null || high === null ? '' : `, intervalo del 95 %: ${Math.round(low)} a ${Math.round(high)} %`
  const share = percent === null ? '' : ` (${Math.round(percent)} %${interval})`
  return `${done} de ${planned} del plan en los días respondidos${share}`
}

function signs({ signs }: ReportFacts): Item[] {
  if (signs.length === 0)
    return [{ words: 'No contó ninguna. Nadie las ha explorado; esto no descarta nada.', most: 2 }]
  return signs.map((row) =>
    item(
      `${SIGN_WORDS[row.sign].short} (${CARE[row.care]}), ${fullDate(row.day)}`,
      `${cameOf(row)}${row.words ? ` “${oneLine(row.words, 120)}”` : ''}`,
      4,
    ),
  )
}

function cameOf({ state, ended, by }: SignRow): string {
  const on = ended === null ? '' : ` el ${fullDate(ended)}`
  if (state === 'open') return 'Sigue abierta.'
  if (state === 'asked') return 'Preguntada, aún sin respuesta.'
  if (state === 'denied') return `Preguntada, y respondió que no${on}.`
  const whom = by === null ? '' : ` (${who(by)})`
  return state === 'cleared' ? `Con visto bueno${on}${whom}.` : `Anotada por el coach${on}.`
}

function told({ told }: ReportFacts): Item[] {
  const named = (labels: Readonly<Record<string, string>>, id: string | null): string =>
    id === null ? NOT_ANSWERED : (labels[id] ?? oneLine(id, 60)).toLowerCase()
  const risks =
    told.risks === null
      ? NOT_ANSWERED
      : told.risks.map((risk) => named(screening.risk, risk)).join(', ') || 'ninguno de los preguntados'
  return [
    item('Riesgos', risks, 3),
    item(
      'Antes',
      `${named(screening.earlier, told.earlier)}; visto por un profesional de salud: ${named(screening.seen, told.seen)}`,
    ),
    item('Viejo y conocido', told.known.map((sign) => SIGN_WORDS[sign].short).join(', ') || 'nada', 3),
    item('Se alivia con', named(screening.eases, told.eases)),
  ]
}

function activities({ activities, told }: ReportFacts): Item[] {
  const scores = activities.map(({ name, first, last, day }) =>
    item(
      oneLine(name, 60),
      day === null
        ? `${first} al inicio, sin preguntar desde entonces`
        : `${first} al inicio, ${last} el ${fullDate(day)}`,
    ),
  )
  const lift = told.lift === null ? [] : [item('Quiere recuperar', `“${oneLine(told.lift, 100)}”`)]
  if (scores.length + lift.length === 0) return [{ words: 'Ninguna nombrada.', most: 1 }]
  return [...scores, ...lift]
}

function weeks({ weeks }: ReportFacts): TableBlock {
  const two = (middle: string | null, far: string | null): string =>
    middle === null ? '–' : `${middle} (${far})`
  return {
    kind: 'table',
    title: 'Por semanas: mediana (más lejos, peor)',
    columns: [0.13, 0.41, 0.13, 0.13, 0.2],
    head: ['desde', 'alcance', 'dolor', 'ses.', 'respuestas'],
    rows: weeks.map(({ first, reach, farthest, pain, worst, sessions, replies }) => [
      shortDate(first),
      two(reach && REACH[reach], farthest && REACH[farthest]),
      two(pain === null ? null : number(pain), String(worst)),
      sessions.planned === 0 ? '–' : `${sessions.done}/${sessions.planned}`,
      `${replies.answered}/${replies.days}${replies.later === 0 ? '' : ` (${replies.later} desp.)`}`,
    ]),
    drop: 'first',
    least: 6,
    more: (n) => `${count(n, 'semana anterior', 'semanas anteriores')}, ver el registro`,
  }
}

function events({ events }: ReportFacts): Item[] {
  return events.length === 0 ? [{ words: 'Aún nada.', most: 1 }] : events.map(eventItem)
}

/** The message with the report, and what is said around it. */
export const report: Texts['report'] = {
  page: reportPage,
  message: (ref) =>
    `**Informe para un profesional de salud: ${ref}**\nUna página, en PDF y como imagen. Tiene datos de salud: entrégalo solo si ${ref} está de acuerdo.`,
  alt: (facts) => alt(reportPage(facts)),
  button: 'Informe para profesional de salud',
  posted: 'El informe va de camino al canal de coaches.',
}

/** The page as text, in its order, as far as a description of a picture may go. */
const alt = ({ title, name, made, notice, left }: Page): string =>
  [
    `${title}: ${name}. ${made}. ${notice} Los mismos datos están en el PDF, como texto.`,
    ...left.flatMap((block) =>
      block.kind === 'list'
        ? [
            `${block.title}: ${block.items.map(({ lead, words }) => `${lead ? `${lead}: ` : ''}${words}`).join('; ')}`,
          ]
        : [],
    ),
  ].join('\n')
