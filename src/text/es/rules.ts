import { REACHES, type Reach } from '../../domain/reach.ts'
import type { Figures, RuleId } from '../../domain/rules/assessment.ts'
import type { SignId } from '../../domain/signs/catalogue.ts'
import type { Texts } from '../index.ts'
import { date, number as written } from './dates.ts'
import { CARE, ladderName, TREND } from './names.ts'
import { REACH } from './reach.ts'
import { CLIENT, COACH } from './rules-heard.ts'
import { SIGN_WORDS } from './signs.ts'

type Value = Figures[string] | undefined

const number = (value: Value): number => (typeof value === 'number' ? value : Number.NaN)
const text = (value: Value): string => (typeof value === 'string' ? value : '')
/** One decimal at most: "4", "4,5". */
const round = (value: Value): string => written(number(value))
const whole = (value: Value): string => String(Math.round(number(value)))
/** The zone of a rank; an average goes to the nearest, since no decimals of a zone are ever shown. */
const zone = (value: Value): string => REACH[REACHES[Math.round(number(value))] ?? 'none']
const zoneNamed = (value: Value): string => REACH[text(value) as Reach] ?? 'sin dato'
const day = (value: Value): string => date(text(value))
const things = (n: Value, one: string, many = `${one}s`): string =>
  `${whole(n)} ${number(n) === 1 ? one : many}`
const ladder = (id: Value): string => ladderName(text(id))

function whySign({ sign, care, days }: Figures): string {
  const said = SIGN_WORDS[text(sign) as SignId]?.short ?? text(sign)
  const since = number(days) === 0 ? 'dicho ese día' : `dicho ${things(days, 'día')} antes`
  if (care !== 'soon')
    return `Señal de alarma (${CARE[text(care) as keyof typeof CARE] ?? text(care)}): ${said}, ${since}, aún sin el visto bueno de un profesional de salud.`
  return `Mirar en los próximos días: ${said}, ${since}, aún sin anotar.`
}

function whyPainUp({ pain, usual, rise, centralising, latest }: Figures): string {
  const up = `Dolor ${whole(pain)} el ${day(latest)} sobre un nivel habitual de ${round(usual)}, sumado en varios días.`
  if (centralising !== true) return up
  return `${up} El alcance se acerca a la espalda y la mediana semanal cambió solo ${round(rise)}: la espalda puede quejarse más mientras la pierna se despeja, así que esto informa y no frena nada.`
}

function whyTrend(what: string, unit: string, { word, slopePerWeek, p, n }: Figures): string {
  const slope = written(Math.abs(number(slopePerWeek)), 2)
  const chance = number(p) < 0.001 ? 'p menor que 0,001' : `p ${number(p).toFixed(3).replace('.', ',')}`
  return `${what} de 28 días ${TREND[text(word)] ?? text(word)}: ${slope} ${unit} por semana, de ${things(n, 'respuesta')} (${chance}).`
}

function whyMeaningful(f: Figures): string {
  const parts: string[] = []
  if ('painTo' in f) {
    const size = f.substantial === true ? ' (la mitad o más se ha ido)' : ''
    parts.push(`dolor de ${round(f.painFrom)} a ${round(f.painTo)}${size}`)
  }
  if ('reachTo' in f) parts.push(`alcance de ${zone(f.reachFrom)} a ${zone(f.reachTo)}`)
  return `Mejora al menos lo que importa a una persona: ${parts.join(' y ')} (mediana semanal frente al inicio).`
}

function whyPlateau({ start, answers, painFrom, painTo, reachFrom, reachTo }: Figures): string {
  const pain = painTo === null ? '' : `dolor ${round(painFrom)} entonces, ${round(painTo)} ahora`
  const reach = reachTo === null ? '' : `alcance ${zone(reachFrom)} entonces, ${zone(reachTo)} ahora`
  const both = [pain, reach].filter((part) => part !== '').join('; ')
  return `Seis semanas desde el ${day(start)} con ${whole(answers)} días respondidos y sin cambio que importe: ${both}.`
}

function whyGate(f: Figures): string {
  const from = number(f.rung) === 0 ? 'puede empezar' : `peldaño ${whole(f.rung)} a ${whole(f.next)}`
  return `${ladder(f.ladder)}, ${from}: ${things(f.checkIns, 'respuesta')} desde el ${day(f.began)}, ${whole(f.done)} de ${whole(f.planned)} sesiones, dolor ${whole(f.worstPain)} como mucho, alcance ${zoneNamed(f.reachNow)} (empezó en ${zoneNamed(f.reachBegan)}), y resulta cómodo.`
}

/** One sentence for each rule, made of the figures behind its flag. */
const WHY: Readonly<Record<RuleId, (figures: Figures) => string>> = {
  sign: whySign,
  'reach-spread': (f) =>
    `Alcance ${zone(f.reach)} el ${day(f.latest)}, más lejos de la espalda que lo habitual (cerca de ${zone(f.usual)}), sumado en varios días.`,
  'below-knee': (f) =>
    `Alcance ${zone(f.reach)} el ${day(f.latest)}: por debajo de la rodilla, cuando lo habitual es cerca de ${zone(f.usual)}.`,
  'pain-up': whyPainUp,
  'pain-severe': (f) =>
    `Dolor ${whole(f.pain)} el ${day(f.latest)} y ${whole(f.before)} en la respuesta anterior (${day(f.dayBefore)}).`,
  flare: (f) =>
    `Dolor ${whole(f.pain)} el ${day(f.flareDay)} tras ${things(f.sessions, 'sesión', 'sesiones')}, nivel habitual ${round(f.usual)}, y al día siguiente aún no estaba como antes.`,
  'trend-pain': (f) => whyTrend('El dolor', 'puntos', f),
  'trend-reach': (f) => whyTrend('El alcance', 'zonas', f),
  meaningful: whyMeaningful,
  adherence: (f) =>
    `${whole(f.done)} de ${whole(f.planned)} sesiones en los días respondidos (${whole(f.percent)} %, ${whole(f.low)}-${whole(f.high)} %); respuestas ${whole(f.replies)} de ${whole(f.days)} días.`,
  quiet: (f) => `Sin respuesta desde hace ${things(f.days, 'día')}.`,
  plateau: whyPlateau,
  gate: whyGate,
  regain: (f) =>
    `Alcance ${zone(f.reach)} el ${day(f.latest)}, segundo día por debajo de la rodilla (el primero, ${day(f.firstDay)}) tras dos semanas o más por encima.`,
}

export const ruleTexts: Texts['rules'] = {
  why: ({ rule, figures }) => WHY[rule](figures),
  coach: COACH,
  client: CLIENT,
}
