import { isSignId, type SignId } from '../../domain/signs/catalogue.ts'
import { ROUTINE_SIGNS } from '../check-in/asking.ts'
import type { Choice, FormFilled } from '../event.ts'

/** The signs that a press or a form tells of by itself, without a look at any record. */
export const signsToldBy = (event: Choice | FormFilled): readonly SignId[] =>
  event.kind === 'form' ? ticked(event) : chosen(event)

/** Of every form the field that asks for signs; what is known and old is asked for in another one. */
function ticked({ filled }: FormFilled): SignId[] {
  const { signs = [] } = filled
  return (typeof signs === 'string' ? [signs] : signs).filter(isSignId)
}

function chosen({ act, values }: Choice): readonly SignId[] {
  if (act.do === 'sign')
    return act.value === 'yes' && isSignId(String(act.sign)) ? [String(act.sign) as SignId] : []
  if (act.do !== 'answer') return []
  if (act.ask === 'side') return act.value === 'both' ? ['both-legs'] : []
  if (act.ask !== 'signs' || act.value === 'none') return []
  const named = [...values, String(act.chosen ?? '')].filter(isSignId)
  // "one of these" and not which: as graver ones are among them, it counts as those that are asked for every day
  return named.length > 0 ? named : ROUTINE_SIGNS
}
