import type { Day } from '../../domain/day.ts'
import { noNearer, restAll } from '../../domain/ladder/ease-back.ts'
import type { Assessment } from '../../domain/rules/assessment.ts'
import { restOver } from '../../domain/rules/rest.ts'
import { decisionButtons } from '../coach/decide.ts'
import type { Draft } from '../draft.ts'
import { historyOf } from '../history.ts'
import type { HoldRow } from '../rows.ts'
import { STOP } from '../status.ts'
import { restingOn, rungsOn } from './rungs.ts'
import { tellChange, undoButton } from './step-change.ts'

/** Takes a ladder out of the day's work; it keeps its rung. */
export function rest(draft: Draft, ladder: string, id: string): HoldRow {
  const row: HoldRow = {
    id,
    clientId: draft.client.id,
    kind: 'rest',
    ladder,
    reason: 'reach-spread',
    by: 'rules',
    at: draft.now,
    day: draft.today,
    endedAt: null,
    endedBy: null,
  }
  draft.put('hold', row)
  return row
}

/** A resting ladder comes back at its rung after three answered days without an open alarm. */
export function endRests(draft: Draft, day: Day): void {
  const history = historyOf(draft.file)
  const over = draft.file.holds.filter(
    (hold) =>
      hold.kind === 'rest' &&
      hold.endedAt === null &&
      // what the coach has stopped waits for the coach
      hold.reason !== STOP &&
      restOver(history, hold.day, day),
  )
  for (const hold of over) draft.put('hold', { ...hold, endedAt: draft.now, endedBy: 'rules' })
  // by ladder number, as they stand in the plan; one that has been taken out of it meanwhile does not come back
  const back = Object.entries(rungsOn(draft.file, draft.today)).filter(([ladder]) =>
    over.some((hold) => hold.ladder === ladder),
  )
  if (back.length > 0)
    tellChange(draft, {
      text: draft.texts.client.restOver(back.map(([ladder]) => ladder)),
      drills: back.map(([ladder, rung]) => `${ladder}:${rung}`),
    })
}

/** Eased back, and after three answered days no nearer: all ladders but `settle` rest, and the coach decides. */
export function restWhereNoNearer(draft: Draft, assessment: Assessment, day: Day): void {
  const spread = assessment.flags.find((flag) => flag.rule === 'reach-spread')
  if (!spread) return
  const checkIns = draft.file.checkIns
    .filter((row) => row.day <= day)
    .sort((a, b) => (a.day < b.day ? -1 : 1))
  if (!noNearer(checkIns, spread.day)) return
  const idOf = (ladder: string) => draft.id('hold', 'rest-all', ladder, spread.day)
  const resting = restingOn(draft.file)
  const rested = restAll(rungsOn(draft.file, day))
    .filter(
      (ladder) => !resting.includes(ladder) && !draft.file.holds.some((hold) => hold.id === idOf(ladder)),
    )
    .map((ladder) => rest(draft, ladder, idOf(ladder)))
  if (rested.length === 0) return
  const calm = rungsOn(draft.file, day).settle !== undefined
  tellChange(draft, {
    text: calm ? draft.texts.client.allButCalmRest : draft.texts.client.allRestNow,
    drills: [],
  })
  draft.toCoach({
    kind: 'proposal',
    text: draft.forCoach.coach.allRest(draft.client.ref),
    buttons: [...decisionButtons(draft, assessment), ...undoButton(draft, [], rested)],
  })
}
