import type { Day } from '../../domain/day.ts'
import type { Draft } from '../draft.ts'
import type { FormFilled } from '../event.ts'
import { hearSide } from '../urgent/side.ts'
import { chosenSigns, takeSigns } from '../urgent/sign-reading.ts'
import { afterRecord } from './check-in.ts'
import { readCheckInForm } from './check-in-form.ts'
import { receipt } from './receipt.ts'
import { record, trail } from './record.ts'

/** A filled form is read as the same record that words would make. */
export function checkInFilled(draft: Draft, event: FormFilled): void {
  const { client, words } = draft.texts
  const day = event.act.day as Day
  const read = readCheckInForm(event.filled)
  const { given, side, signs, denied } = read
  const values = Object.keys(given).length
  const { stage } = draft.client
  if (stage === 'left')
    return void draft.toClient({
      kind: 'notice',
      text: signs.length > 0 ? client.leftUrgent : client.notEnrolled,
    })
  if (stage !== 'enrolled' && signs.length === 0)
    return void draft.toClient({ kind: 'notice', text: client.notEnrolled })
  trail(draft, 'form', JSON.stringify(event.filled), day, read)
  if (values === 0 && !side && signs.length === 0 && !denied)
    return void draft.toClient({ kind: 'notice', text: client.formEmpty })
  const turned = side ? hearSide(draft, side, day) : null
  const heard = chosenSigns(draft, turned ? [...new Set([...signs, turned])] : signs)
  takeSigns(draft, { ...heard, denied: denied ? ['all'] : [] }, day, ticked(draft, signs, turned !== null))
  record(draft, day, given)
  afterRecord(draft, [day])
  const notes = [side ? client.notedSide(words.side(side)) : '', denied ? client.signsNone : ''].filter(
    Boolean,
  )
  receipt(draft, {
    days: values > 0 ? [day] : [],
    day,
    notes: values > 0 ? notes : [...notes, client.formKept],
    unsure: [],
  })
}

/** What the alert quotes of a form, in the coach's language: what was ticked. */
function ticked(draft: Draft, signs: readonly (keyof Draft['texts']['signs'])[], both: boolean): string {
  const { signs: labels, words, client } = draft.forCoach
  return [
    client.ticked,
    ...signs.map((sign) => labels[sign].short),
    ...(both ? [words.side('both')] : []),
  ].join(': ')
}
