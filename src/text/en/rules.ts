import { REACHES, type Reach } from '../../domain/reach.ts'
import type { Figures, Flag, RuleId } from '../../domain/rules/assessment.ts'
import type { SignId } from '../../domain/signs/catalogue.ts'
import { date } from './dates.ts'
import { ladderName } from './names.ts'
import { REACH } from './reach.ts'
import { SIGN_WORDS } from './signs.ts'

type Value = Figures[string] | undefined

const number = (value: Value): number => (typeof value === 'number' ? value : Number.NaN)
const text = (value: Value): string => (typeof value === 'string' ? value : '')
/** One decimal at most: "4", "4.5". */
const round = (value: Value): string => String(Math.round(number(value) * 10) / 10)
const whole = (value: Value): string => String(Math.round(number(value)))
/** The zone of a rank; an average goes to the nearest, since no decimals of a zone are ever shown. */
const zone = (value: Value): string => REACH[REACHES[Math.round(number(value))] ?? 'none']
const zoneNamed = (value: Value): string => REACH[text(value) as Reach] ?? 'not known'
const day = (value: Value): string => date(text(value))
const things = (n: Value, one: string): string => `${whole(n)} ${number(n) === 1 ? one : `${one}s`}`
const ladder = (id: Value): string => ladderName(text(id))

function whySign({ sign, care, days }: Figures): string {
  const said = SIGN_WORDS[text(sign) as SignId]?.short ?? text(sign)
  const since = number(days) === 0 ? 'said that day' : `said ${things(days, 'day')} before`
  if (care !== 'soon')
    return `Warning sign (${text(care)}): ${said}, ${since}, not cleared by a clinician yet.`
  return `To be looked at in the next days: ${said}, ${since}, not noted yet.`
}

function whyPainUp({ pain, usual, rise, centralising, latest }: Figures): string {
  const up = `Pain ${whole(pain)} on ${day(latest)} over a usual level of ${round(usual)}, added up over days.`
  if (centralising !== true) return up
  return `${up} The reach is drawing in toward the back and the weekly median moved by only ${round(rise)}: the back may complain more while the leg clears, so this informs and holds nothing.`
}

function whyTrend(what: string, unit: string, { word, slopePerWeek, p, n }: Figures): string {
  const slope = Math.abs(Math.round(number(slopePerWeek) * 100) / 100)
  const chance = number(p) < 0.001 ? 'p below 0.001' : `p ${number(p).toFixed(3)}`
  return `${what} of 28 days is ${text(word)}: ${slope} ${unit} a week, from ${things(n, 'answer')} (${chance}).`
}

function whyMeaningful(f: Figures): string {
  const parts: string[] = []
  if ('painTo' in f) {
    const size = f.substantial === true ? ' (half or more of it gone)' : ''
    parts.push(`pain from ${round(f.painFrom)} to ${round(f.painTo)}${size}`)
  }
  if ('reachTo' in f) parts.push(`reach from ${zone(f.reachFrom)} to ${zone(f.reachTo)}`)
  return `Better by at least what matters to a person: ${parts.join(' and ')} (weekly median against the baseline).`
}

function whyPlateau({ start, answers, painFrom, painTo, reachFrom, reachTo }: Figures): string {
  const pain = painTo === null ? '' : `pain ${round(painFrom)} then, ${round(painTo)} now`
  const reach = reachTo === null ? '' : `reach ${zone(reachFrom)} then, ${zone(reachTo)} now`
  const both = [pain, reach].filter((part) => part !== '').join('; ')
  return `Six weeks from ${day(start)} with ${whole(answers)} answered days and no change that matters: ${both}.`
}

function whyGate(f: Figures): string {
  const from = number(f.rung) === 0 ? 'may begin' : `rung ${whole(f.rung)} to ${whole(f.next)}`
  return `${ladder(f.ladder)}, ${from}: ${things(f.checkIns, 'check-in')} since ${day(f.began)}, ${whole(f.done)} of ${whole(f.planned)} sessions, pain at most ${whole(f.worstPain)}, reach ${zoneNamed(f.reachNow)} (began at ${zoneNamed(f.reachBegan)}), and it feels comfortable.`
}

/** One sentence for each rule, made of the figures behind its flag. */
const WHY: Readonly<Record<RuleId, (figures: Figures) => string>> = {
  sign: whySign,
  'reach-spread': (f) =>
    `Reach ${zone(f.reach)} on ${day(f.latest)}, further from the back than the usual level (about ${zone(f.usual)}), added up over days.`,
  'below-knee': (f) =>
    `Reach ${zone(f.reach)} on ${day(f.latest)}: below the knee, where the usual level is about ${zone(f.usual)}.`,
  'pain-up': whyPainUp,
  'pain-severe': (f) =>
    `Pain ${whole(f.pain)} on ${day(f.latest)} and ${whole(f.before)} at the check-in before (${day(f.dayBefore)}).`,
  flare: (f) =>
    `Pain ${whole(f.pain)} on ${day(f.flareDay)} after ${things(f.sessions, 'session')}, usual level ${round(f.usual)}, and not back to how it was before by the next day.`,
  'trend-pain': (f) => whyTrend('Pain', 'points', f),
  'trend-reach': (f) => whyTrend('Reach', 'zones', f),
  meaningful: whyMeaningful,
  adherence: (f) =>
    `${whole(f.done)} of ${whole(f.planned)} sessions on the days answered (${whole(f.percent)} %, ${whole(f.low)}-${whole(f.high)} %); replies ${whole(f.replies)} of ${whole(f.days)} days.`,
  quiet: (f) => `No reply for ${things(f.days, 'day')}.`,
  plateau: whyPlateau,
  gate: whyGate,
  regain: (f) =>
    `Reach ${zone(f.reach)} on ${day(f.latest)}, the second day below the knee (first on ${day(f.firstDay)}) after two weeks or more above it.`,
}

/** What the coach hears of a rule, in one line. */
const COACH: Readonly<Record<RuleId, string>> = {
  sign: 'A warning sign is open: drills stop (or nothing advances) until it is cleared or noted.',
  'reach-spread':
    'Reach is moving away from the back: the ladder last advanced goes a rung lower. A reason to ease off, no doom: in the one trial seen such people did about as well in the end.',
  'below-knee': 'A first day below the knee: nothing advances; look at it the same day.',
  'pain-up': 'Pain is above the usual level: nothing advances.',
  'pain-severe': 'Pain 8 or more twice in a row: nothing advances; look at it the same day.',
  flare: 'A flare after sessions had not settled by the next day: hold the ladder.',
  'trend-pain': 'Pain has a direction over four weeks.',
  'trend-reach': 'Reach has a direction over four weeks.',
  meaningful: 'Better than at the start by more than the least change that matters.',
  adherence: 'Few of the planned sessions were done: the client is asked what gets in the way.',
  quiet: 'No replies: a nudge after 3 days, you hear after 5, a pause after 14.',
  plateau: 'Six weeks without a change that matters: think of referring.',
  gate: 'All of the gate is met: the next rung may come, if you agree.',
  regain: 'Below the knee on two days after two weeks or more above it: check the rung.',
}

/** What the client hears of a rule; null where it is for the coach alone. */
const CLIENT: Readonly<Record<RuleId, string | null>> = {
  sign: null,
  'reach-spread':
    'What you feel has moved further from your back than is usual for you. That is a reason to ease off for some days, no more. Your coach has been told. New numbness or weakness: write it at once.',
  'below-knee':
    'You feel it further down the leg than is usual for you. Your steps stay as they are for now, and your coach has been told. New numbness or weakness: write it at once.',
  'pain-up': 'Your pain has been above its usual level. Your steps stay as they are for now.',
  'pain-severe':
    'Your pain has been very strong twice in a row. If no position eases it, or if it gets worse, see a doctor today. Your coach has been told.',
  flare: 'Thank you. Your steps stay as they are until it has settled.',
  'trend-pain': null,
  'trend-reach': null,
  meaningful: null,
  adherence: 'Some sessions did not happen lately. What gets in the way?',
  quiet: 'It has been quiet for a few days. A short line is enough, whenever it suits you.',
  plateau: null,
  gate: null,
  regain:
    'You have felt it below the knee on more than one day. Your steps stay as they are while your coach looks at it. New numbness or weakness: write it at once.',
}

/** Why a flag is up: one sentence, made of its figures. */
export const why = ({ rule, figures }: Pick<Flag, 'rule' | 'figures'>): string => WHY[rule](figures)

export const ruleTexts = { why, coach: COACH, client: CLIENT }
