import { stopsDrills } from '../care.ts'
import { type Day, daysBetween } from '../day.ts'
import { easeBack } from '../ladder/ease-back.ts'
import { rungsNow } from '../ladder/gate.ts'
import type { Ladder } from '../ladder/ladders.ts'
import type { LadderId } from '../ladder/plan.ts'
import type { Flag, OpenSign, Proposal, RuleId } from './assessment.ts'
import { lastAdvancedLadder } from './last-advanced.ts'
import { daysOf, type View } from './view.ts'

/** A `soon` sign open for longer than this is one to refer with. */
const SOON_DAYS = 7

export interface Proposed {
  readonly proposal: Proposal
  /** The rules behind it, each once. */
  readonly reasons: readonly RuleId[]
  readonly ladder: LadderId | null
}

const rulesOf = (flags: readonly Flag[]): RuleId[] => [...new Set(flags.map((flag) => flag.rule))]

/** The flags behind each proposal, in the fixed order: the first with any is proposed. */
function grounds(flags: readonly Flag[], open: readonly OpenSign[], on: Day): readonly [Proposal, Flag[]][] {
  const signs = flags.filter((flag) => flag.rule === 'sign')
  const stops = open.some((sign) => stopsDrills(sign.care))
  const oldSoon = signs.filter((flag) => daysBetween(flag.day, on) > SOON_DAYS)
  const level = (wanted: Flag['level']) => flags.filter((flag) => flag.level === wanted)
  return [
    ['stop', stops ? signs.filter((flag) => flag.level !== 'hold') : []],
    ['refer', [...oldSoon, ...flags.filter((flag) => flag.rule === 'plateau')]],
    ['ease-back', level('ease-back')],
    ['hold', level('hold')],
    ['advance', flags.filter((flag) => flag.rule === 'gate')],
  ]
}

/** Which ladder a proposal is about; a hold is about one only where nothing but a flare stands behind it. */
function ladderFor(
  proposal: Proposal,
  behind: readonly Flag[],
  view: View,
  ladders: readonly Ladder[],
): LadderId | null {
  if (proposal === 'advance') return String(behind[0]!.figures.ladder)
  const flareOnly = proposal === 'hold' && behind.every((flag) => flag.rule === 'flare')
  if (proposal !== 'ease-back' && !flareOnly) return null
  const rungs = rungsNow(daysOf(view))
  return rungs === null ? null : (easeBack(rungs, lastAdvancedLadder(view), ladders)?.ladder ?? null)
}

/** stop > refer > ease-back > hold > advance > none: the first that applies. */
export function propose(
  flags: readonly Flag[],
  open: readonly OpenSign[],
  view: View,
  ladders: readonly Ladder[],
): Proposed {
  const found = grounds(flags, open, view.on).find(([, behind]) => behind.length > 0)
  if (found === undefined) return { proposal: 'none', reasons: [], ladder: null }
  const [proposal, behind] = found
  return { proposal, reasons: rulesOf(behind), ladder: ladderFor(proposal, behind, view, ladders) }
}
