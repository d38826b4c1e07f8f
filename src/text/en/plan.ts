import type { Day } from '../../domain/day.ts'
import type { AdviceId } from '../../domain/ladder/advice.ts'
import type { Conflict, PlanConflictId } from '../../domain/ladder/conflicts.ts'
import type { RungChange } from '../../domain/ladder/plan.ts'
import { harmless } from '../harmless.ts'
import { date, fullDate } from './dates.ts'
import { nameOfDrill } from './drills.ts'
import { ladderName } from './names.ts'

/** What a plan asks for, as the sentences need it. */
interface Wished {
  readonly sessions: number
  readonly rungs: Readonly<Record<string, number>>
  readonly loads: Readonly<Record<string, string>>
  readonly from: Day | null
  readonly off: readonly string[] | null
}

const drill = (ladder: string, rung: number): string =>
  `${ladderName(ladder)} ${rung}${nameOfDrill(`${ladder}:${rung}`) ? ` (${nameOfDrill(`${ladder}:${rung}`)})` : ''}`

/** What speaks against a rung; each goes on from its name. All of it common practice, no diagnosis. */
const AGAINST: Readonly<Record<PlanConflictId | AdviceId, string>> = {
  'rung-before':
    'starts above the rung that comes next. Each rung needs the one before; starting higher is yours to decide.',
  'lift-opening':
    'opens when reach is back or none and pain at most 3 for 7 answered days, with bend back and hip lift at their last rung. That does not hold yet.',
  'open-alarm': 'goes up while an alarm is open; see /why. While it is open nothing advances by itself.',
  'anchor-check':
    'works with a band. Has the client shown you the band (no nicks) and an anchor that holds a hard pull? By going on you say yes.',
  'no-load': 'has no load yet. The client is told to use no weight until you name one, like “lift:2 5 kg”.',
  'load-step': 'gets a heavier load within a week of the last plan. One step a week is common practice.',
  'eases-forward':
    'bends the back backward, and this client is eased by bending forward. It may be the wrong way for them.',
  'pregnancy-prone':
    'is done lying on the belly, and the client is pregnant. A way on the side or standing is usual.',
  'pregnancy-supine':
    'is done lying flat on the back, and the client is pregnant. From mid-pregnancy on that is usually left out.',
  'pregnancy-load': 'lifts a load, and the client is pregnant. Has the clinician agreed to loads?',
  bone: 'bends, twists or loads the back, and the client has thin bones or takes steroids. Has the clinician agreed to that?',
  'cancer-load': 'lifts a load, and the client has or had cancer. Has the clinician agreed to loads?',
  'fall-load': 'lifts a load, and the client had a fall or crash. Has the clinician agreed to loads?',
  surgery:
    'loads the back or takes it far, and the client had back surgery. Has the surgeon or clinician agreed?',
  'blood-band':
    'presses with a band, and the client takes blood thinners: it can bruise. Lay it wide, over cloth.',
  'numb-band': 'presses with a band, and the client has numb places on record: they may not feel it cut in.',
  'weak-leg': 'is done standing, and the client has a weak leg on record. Is there something to hold on to?',
  'own-ladder':
    'is your practice’s own, so I do not know how it bends or loads. Does it suit this client’s answers at the start?',
}

const against = ({ id, ladder, rung }: Conflict): string => `• ${drill(ladder, rung)} ${AGAINST[id]}`

const WHY: Readonly<Record<RungChange['why'], string>> = {
  plan: 'plan',
  advance: 'advanced',
  'ease-back': 'eased back',
  rest: 'rests',
  return: 'lower after a gap',
  clearance: 'lower after a clearance',
  undo: 'put back',
}

const loadList = (loads: Readonly<Record<string, string>>): string =>
  Object.entries(loads)
    .map(([key, load]) => `${key} ${harmless(load, 60)}`)
    .sort()
    .join('; ')
const times = (sessions: number): string => `${sessions} ${sessions === 1 ? 'session' : 'sessions'} a day`

/** What a coach reads when setting a plan. */
export const plan = {
  refused: (ref: string): string => `No plan of **${harmless(ref)}** was saved:`,
  parked: (ref: string): string =>
    `**${harmless(ref)}** is parked: record with /release that a clinician has agreed, then set the plan.`,
  asked: (ref: string): string =>
    `**${harmless(ref)}** is being asked about a warning sign; drills wait until that is answered (10 minutes at most). Please set the plan after that.`,
  unknownLadder: (id: string, known: readonly string[]): string =>
    `There is no ladder “${harmless(id)}”. There are: ${known.join(', ')}.`,
  loadOfNothing: (key: string): string =>
    `The load for “${harmless(key, 40)}” belongs to no rung of this plan. Name the rung, like “lift:2 5 kg”.`,
  loadNoNumber: (key: string, load: string): string =>
    `“${harmless(load, 60)}” is no load for ${harmless(key, 40)}: a number from 0.5 to 400 with its unit is needed, like “5 kg” or “10 lb”.`,
  badLoads: (text: string): string =>
    `I could not read the loads in “${harmless(text, 100)}”. Write them like “lift:2 5 kg; lift:3 20 kg”.`,
  conflicts: (ref: string, conflicts: readonly Conflict[]): string =>
    [
      `**Not saved yet: ${harmless(ref)}.** Please look at this first:`,
      ...conflicts.map(against),
      'It is common practice, not a verdict, and the decision is yours.',
    ].join('\n'),
  beforeStep: (ref: string, conflicts: readonly Conflict[]): string =>
    [
      `**Nothing is changed yet: ${harmless(ref)}.** Please look at this before the next rung:`,
      ...conflicts.map(against),
      'It is common practice, not a verdict, and the decision is yours.',
    ].join('\n'),
  saveAnyway: (conflicts: readonly Conflict[]): string =>
    conflicts.every(({ id }) => id === 'anchor-check') ? 'Band and anchor checked: save' : 'Save anyway',
  change: 'Change',
  already: (ref: string): string =>
    `This is the plan of ${harmless(ref)} already. Nothing was changed, and nothing was sent.`,
  changedSince: (ref: string): string =>
    `The plan of **${harmless(ref)}** was changed in between. Nothing was saved; look at /plan-history and send /plan again.`,
  again: (ref: string, { sessions, rungs, loads, from, off }: Wished): string => {
    const ladders = Object.entries(rungs).map(([id, rung]) => `${id}:${rung}`)
    const more = [
      Object.keys(loads).length > 0 ? `loads:${loadList(loads)}` : '',
      from ? `from:${from}` : '',
      off ? `off:${off.join(' ') || 'none'}` : '',
    ].filter(Boolean)
    return `Nothing was saved. To change it, send it again:\n\`${[`/plan client:${ref} sessions:${sessions} ladders:${ladders.join(' ')}`, ...more].join(' ')}\``
  },
  saved: ({
    ref,
    from,
    wish,
    loads,
    off,
    although,
  }: {
    ref: string
    from: Day
    wish: Wished
    loads: Readonly<Record<string, string>>
    off: readonly string[]
    although: readonly Conflict[]
  }): string =>
    [
      `Plan of ${harmless(ref)} saved, from ${date(from)}: ${times(wish.sessions)}${off.length > 0 ? `, days off ${off.join(' ')}` : ''}.`,
      ...Object.entries(wish.rungs).map(([ladder, rung]) => {
        const load = loads[`${ladder}:${rung}`] ?? loads[ladder]
        return `• ${drill(ladder, rung)}${load ? `, load ${harmless(load, 60)}` : ''}`
      }),
      ...(although.length > 0 ? ['Saved although:', ...although.map(against)] : []),
    ].join('\n'),
  gone: (ladders: readonly string[]): string =>
    ladders.length === 0
      ? ''
      : `\nNo longer among this practice’s ladders: ${ladders.map((id) => `“${harmless(id)}”`).join(', ')}. Its drills are shown to nobody, and it rests until its file is back; a plan without it takes it out.`,
  history: (ref: string, entries: readonly string[]): string => {
    const head = `**Plan of ${harmless(ref)}, latest first**`
    const kept: string[] = []
    for (const entry of entries) {
      if ([head, ...kept, entry].join('\n').length > 1_850)
        return [head, ...kept, '… and earlier ones.'].join('\n')
      kept.push(entry)
    }
    return [head, ...(kept.length > 0 ? kept : ['There has been no plan yet.'])].join('\n')
  },
  historyPlan: (day: Day, by: string, sessions: number, loads: Readonly<Record<string, string>>): string =>
    `• ${fullDate(day)}: plan by ${by}, ${times(sessions)}${Object.keys(loads).length > 0 ? `; loads ${loadList(loads)}` : ''}`,
  historyMove: (move: {
    day: Day
    ladder: string
    from: number
    to: number
    why: RungChange['why']
    by: string
  }) => {
    const step =
      move.to === 0
        ? 'out of the plan'
        : move.from === 0
          ? `begins at ${move.to}`
          : `${move.from} → ${move.to}`
    return `• ${fullDate(move.day)}: ${ladderName(move.ladder)} ${step} (${WHY[move.why]}, ${move.by === 'rules' ? 'by the rules' : `by ${move.by}`})`
  },
}
