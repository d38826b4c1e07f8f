import type { SignId } from '../signs/catalogue.ts'
import type { Drill, Ladder } from './ladders.ts'
import { LADDER_IDS } from './plan.ts'

/** The answers before any plan that bear on which drills suit. */
export interface Screened {
  /** The direction that eases: flexion (bending forward), extension (arching back), neither; null: not said. */
  readonly eases: string | null
  readonly risks: readonly string[]
  /** True after an operation on the back. */
  readonly surgery: boolean
  /** Old, unchanged trouble that a clinician knows of. */
  readonly known: readonly SignId[]
}

/** Why the screening speaks against a drill. */
export const ADVICE_IDS = [
  'eases-forward',
  'pregnancy-prone',
  'pregnancy-supine',
  'pregnancy-load',
  'bone',
  'cancer-load',
  'fall-load',
  'surgery',
  'blood-band',
  'numb-band',
  'weak-leg',
  'own-ladder',
] as const
export type AdviceId = (typeof ADVICE_IDS)[number]

interface Advice {
  readonly id: AdviceId
  when(screened: Screened): boolean
  at(drill: Drill, ladder: Ladder): boolean
}

const within =
  (...ladders: string[]) =>
  (_: Drill, { id }: Ladder): boolean =>
    ladders.includes(id)
const risk =
  (...wanted: string[]) =>
  ({ risks }: Screened): boolean =>
    wanted.some((one) => risks.includes(one))
const isLoaded = (drill: Drill): boolean => drill.needs.includes('coach-load')
const hasBand = (drill: Drill): boolean => drill.needs.includes('anchor-check')
const isOwn = ({ id }: Ladder): boolean => !(LADDER_IDS as readonly string[]).includes(id)

const NUMB: readonly SignId[] = ['saddle-numbness', 'new-numbness', 'both-legs']
/** Arches the lower back, by the arms or by a prop under the chest. */
const ARCHED = /^(extension:\d+|settle:[23])$/
/** Bends or twists the spine, or may: the hinge, the rock-back, the legs tipped to a side. */
const BENT_OR_TWISTED = /^(lift:\d+|open:1|rotator:2)$/
/** Full range of arching, twist, or load. */
const FULL_RANGE = /^(extension:3|rotator:2|lift:\d+)$/

/**
 * One row a reason. All of it is common practice of the trade, held on the careful side: no trial of these drills in
 * such people is behind it, and a clinician's word about the one client goes before it.
 */
const ADVICE: readonly Advice[] = [
  // who is eased by bending forward is often worse for bending back; a coach tries it knowingly or not at all
  { id: 'eases-forward', when: ({ eases }) => eases === 'flexion', at: ({ id }) => ARCHED.test(id) },
  { id: 'pregnancy-prone', when: risk('pregnancy'), at: within('settle', 'extension', 'extend-hip') },
  // lying flat on the back for long is left out from mid-pregnancy on
  { id: 'pregnancy-supine', when: risk('pregnancy'), at: within('unload', 'glide', 'rotator') },
  { id: 'pregnancy-load', when: risk('pregnancy'), at: isLoaded },
  // thin bone breaks by bending and twisting under load, not by lying
  {
    id: 'bone',
    when: risk('osteoporosis', 'long-steroids'),
    at: (drill) => isLoaded(drill) || BENT_OR_TWISTED.test(drill.id),
  },
  { id: 'cancer-load', when: risk('cancer'), at: isLoaded },
  { id: 'fall-load', when: risk('recent-fall'), at: isLoaded },
  {
    id: 'surgery',
    when: ({ surgery }) => surgery,
    at: (drill) => isLoaded(drill) || FULL_RANGE.test(drill.id),
  },
  // a tight band bruises, and a bruise under blood thinners is no small thing
  { id: 'blood-band', when: risk('anticoagulants'), at: hasBand },
  { id: 'numb-band', when: ({ known }) => NUMB.some((sign) => known.includes(sign)), at: hasBand },
  { id: 'weak-leg', when: ({ known }) => known.includes('leg-weakness'), at: within('lift') },
  // how a practice's own drill lies, bends or loads is known to the coach alone
  {
    id: 'own-ladder',
    when: ({ risks, surgery }) => surgery || risks.length > 0,
    at: (_, ladder) => isOwn(ladder),
  },
]

/** Why the screening speaks against a drill, if it does. */
export const advised = (screened: Screened, ladder: Ladder, drill: Drill): AdviceId[] =>
  ADVICE.filter(({ when, at }) => when(screened) && at(drill, ladder)).map(({ id }) => id)
