import { easeBack, lastAdvanced } from '../../domain/ladder/ease-back.ts'
import type { Draft } from '../draft.ts'
import type { HoldRow, RungRow } from '../rows.ts'
import { rest } from './rest.ts'
import { moveRung, restingOn, rungsAhead, rungsOn } from './rungs.ts'
import { tellChange } from './step-change.ts'

/** What was changed without the coach, so that it can be told and undone. */
export interface Eased {
  readonly moved: readonly RungRow[]
  readonly rested: readonly HoldRow[]
}

/**
 * The safer move that does not wait for the coach: the ladder last advanced goes down a rung, or rests where it
 * is at its first. The client hears what changes; the coach can undo it.
 */
export function easeDown(draft: Draft): Eased {
  const rungs = rungsOn(draft.file, draft.today)
  const target = easeBack(rungs, lastAdvanced(draft.file.rungs), draft.ladders, restingOn(draft.file))
  if (!target) return { moved: [], rested: [] }
  const { client } = draft.texts
  const { ladder, from, to } = target
  const move = { ladder, from, to, day: draft.today, why: 'ease-back', by: 'rules' } as const
  if (!target.rests) {
    const moved = [moveRung(draft, move)]
    tellChange(draft, { text: client.eased(ladder, to), drills: [`${ladder}:${to}`] })
    return { moved, rested: [] }
  }
  // a step up that was still to come does not come
  const moved = rungsAhead(draft.file)[ladder] === to ? [] : [moveRung(draft, move)]
  const rested = [rest(draft, ladder, draft.id('hold', 'rest', ladder, draft.cause))]
  tellChange(draft, { text: client.rests(ladder), drills: [] })
  return { moved, rested }
}
