import type { LadderId } from '../../domain/ladder/plan.ts'
import type { Level, Proposal } from '../../domain/rules/assessment.ts'
import { ownLadderName } from '../own-ladders.ts'
import { LADDER_NAMES } from './drills.ts'

/** "ease-back" is a name in files; a coach reads "ease back". */
export const inWords = (name: Level | Proposal): string => (name === 'ease-back' ? 'ease back' : name)

export const ladderName = (ladder: LadderId): string =>
  LADDER_NAMES[ladder] ?? ownLadderName(ladder) ?? ladder
