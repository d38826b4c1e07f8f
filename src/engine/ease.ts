import { easeBack, lastAdvanced } from '../domain/ladder/ease-back.ts'
import { LADDERS } from '../domain/ladder/ladders.ts'
import type { Draft } from './draft.ts'
import { rest } from './rest.ts'
import { moveRung, restingOn, rungsOn } from './rungs.ts'
import { drillsWithheld } from './status.ts'

/**
 * The safer move that does not wait for the coach: the ladder last advanced goes down a rung, or rests where it
 * is at its first. The client hears what changes; the coach can undo it.
 */
export function easeDown(draft: Draft): void {
  const rungs = rungsOn(draft.file, draft.today)
  const target = easeBack(rungs, lastAdvanced(draft.file.rungs), LADDERS, restingOn(draft.file))
  if (!target) return
  const { client } = draft.texts
  const { ladder, from, to } = target
  if (target.rests) rest(draft, ladder, draft.id('hold', 'rest', ladder, draft.cause))
  else moveRung(draft, { ladder, from, to, day: draft.today, why: 'ease-back', by: 'rules' })
  if (drillsWithheld(draft.file)) return
  draft.toClient({ kind: 'decision', text: target.rests ? client.rests(ladder) : client.eased(ladder, to) })
}
