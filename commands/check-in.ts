import { isReach, REACHES } from '../src/domain/reach.ts'
import { plain } from '../src/engine/answer.ts'
import { carry } from '../src/engine/check-in/asked.ts'
import { afterRecord } from '../src/engine/check-in/check-in.ts'
import { checkInForm } from '../src/engine/check-in/check-in-form.ts'
import { nextQuestion } from '../src/engine/check-in/next-question.ts'
import { record, trail } from '../src/engine/check-in/record.ts'
import type { ClientCommand } from '../src/engine/command.ts'

/** Today's values as options; without any, the form. */
export const checkIn: ClientCommand = {
  name: 'check-in',
  who: 'client',
  options: [
    { name: 'sessions', kind: 'number', required: false, least: 0, most: 8 },
    { name: 'reach', kind: 'text', required: false, choices: REACHES },
    { name: 'pain', kind: 'number', required: false, least: 0, most: 10 },
  ],
  run(draft, { options }) {
    const { client, commands, words } = draft.texts
    const day = draft.today
    const reach = String(options.reach ?? '')
    const given = {
      ...(typeof options.sessions === 'number' ? { sessions: options.sessions } : {}),
      ...(isReach(reach) ? { reach } : {}),
      ...(typeof options.pain === 'number' ? { pain: options.pain } : {}),
    }
    if (Object.keys(given).length === 0) {
      const form = checkInForm(draft, day)
      const button = {
        name: 'check-in',
        label: client.fillIn,
        act: { do: 'check-in', day },
        style: 'main',
        form,
      } as const
      draft.toClient({ kind: 'ask', text: commands.formHere, buttons: [button] })
      return plain(commands.formSent, draft.client.ref)
    }
    trail(draft, 'form', JSON.stringify(given), day, given)
    const row = record(draft, day, given)
    afterRecord(draft, [day])
    const question = nextQuestion(draft, day, [])
    if (question) draft.toClient({ kind: 'ask', text: question.text, ...carry(draft, question) })
    return { ...plain(client.understood([words.values(row)]), draft.client.ref), kind: 'receipt' }
  },
}
