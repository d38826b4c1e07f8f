import type { Day } from '../../domain/day.ts'
import { assess } from '../../domain/rules/assess.ts'
import type { Assessment, Flag } from '../../domain/rules/assessment.ts'
import { hasRisen, toldAtOnce } from '../../domain/rules/told.ts'
import type { Draft } from '../draft.ts'
import { historyOf } from '../history.ts'
import { type Eased, easeDown } from '../plan/ease.ts'
import { endRests, restWhereNoNearer } from '../plan/rest.ts'
import { undoButton } from '../plan/step-change.ts'
import type { FlagRow } from '../rows.ts'
import { statusOf } from '../status.ts'
import { decisionButtons } from './decide.ts'

const NOTHING_EASED: Eased = { moved: [], rested: [] }

export const assessOn = (draft: Draft, day: Day): Assessment =>
  assess(historyOf(draft.file), day, draft.ladders)

/**
 * Runs the shared rules on a day and acts on what is new: the safer move at once, the coach told the same day,
 * everything else proposed.
 */
export function watch(draft: Draft, day: Day): Assessment {
  const assessment = assessOn(draft, day)
  const fresh = syncFlags(draft, assessment)
  if (statusOf(draft.file) === 'locked' || !draft.file.plan) return assessment
  const eased = fresh.some((flag) => flag.rule === 'reach-spread') ? easeDown(draft) : NOTHING_EASED
  if (fresh.some((flag) => flag.rule === 'pain-severe'))
    draft.toClient({ kind: 'notice', text: draft.texts.client.severe })
  endRests(draft, day)
  restWhereNoNearer(draft, assessment, day)
  tellCoach(draft, assessment, fresh, eased)
  return assessment
}

/** Opens and closes the rows of flags; gives the episodes that are new or now hold. Signs have their own rows. */
function syncFlags(draft: Draft, assessment: Assessment): Flag[] {
  const flags = assessment.flags.filter((flag) => flag.rule !== 'sign')
  const open = draft.file.flags.filter((row) => row.closedAt === null)
  for (const row of open)
    if (!flags.some((flag) => flag.rule === row.rule)) draft.put('flag', { ...row, closedAt: draft.now })
  return flags.filter((flag) => {
    const before = open.find((row) => row.rule === flag.rule)
    if (before) {
      const risen = hasRisen(before.level, flag.level)
      if (risen) draft.put('flag', { ...before, level: flag.level, figures: flag.figures })
      return risen
    }
    const row: FlagRow = {
      id: draft.id('flag', flag.rule, flag.day),
      clientId: draft.client.id,
      rule: flag.rule,
      level: flag.level,
      day: flag.day,
      figures: flag.figures,
      openedAt: draft.now,
      closedAt: null,
    }
    const again = draft.file.flags.some((other) => other.id === row.id)
    draft.put('flag', row)
    // an episode that flickers within its first day is not news twice
    return !again
  })
}

/** One message for all that is new, with the proposal, its reasons and the buttons to decide. */
function tellCoach(draft: Draft, assessment: Assessment, fresh: readonly Flag[], eased: Eased): void {
  const news = fresh.filter(toldAtOnce)
  if (news.length === 0) return
  draft.toCoach({
    kind: 'proposal',
    text: draft.forCoach.coach.proposal({
      ref: draft.client.ref,
      flags: news.map((flag) => draft.forCoach.rules.why(flag)),
      proposal: assessment.proposal,
      ladder: assessment.ladder,
      direction: assessment.direction,
      eased: eased.moved,
      rested: eased.rested.map((hold) => hold.ladder!),
    }),
    buttons: [...decisionButtons(draft, assessment), ...undoButton(draft, eased.moved, eased.rested)],
  })
}
