import { careOf, isSignId, SIGN_IDS } from '../src/domain/signs/catalogue.ts'
import { plain } from '../src/engine/answer.ts'
import type { CoachCommand } from '../src/engine/command.ts'
import { openSigns } from '../src/engine/status.ts'
import { noteSign } from '../src/engine/urgent/clear.ts'

/** A sign to be looked at in the next days, taken note of; without a name all that are open. */
export const noted: CoachCommand = {
  name: 'noted',
  who: 'coach',
  options: [
    { name: 'client', kind: 'client', required: true },
    { name: 'sign', kind: 'text', required: false, choices: SIGN_IDS.filter((id) => careOf(id) === 'soon') },
  ],
  run(draft, { options, actor }) {
    const { coach } = draft.forCoach
    const by = `<@${actor.user}>`
    const named = String(options.sign ?? '')
    const signs = isSignId(named) ? [named] : openSigns(draft.file).map((row) => row.sign)
    const done = signs.filter((sign) => noteSign(draft, sign, by))
    return plain(done.length > 0 ? coach.notedBy(by) : coach.nothingToNote, draft.client.ref)
  },
}
