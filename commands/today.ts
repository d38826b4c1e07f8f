import { plain } from '../src/engine/answer.ts'
import type { ClientCommand } from '../src/engine/command.ts'
import { openHold } from '../src/engine/status.ts'
import { workOn } from '../src/engine/work.ts'

/** The day's work with its cautions. */
export const today: ClientCommand = {
  name: 'today',
  who: 'client',
  options: [],
  run(draft) {
    if (openHold(draft.file, 'lock')) return plain(draft.texts.client.stillLocked, draft.client.ref)
    const work = workOn(draft, draft.today, 'full')
    return {
      ...plain(work.text || draft.texts.client.parked, draft.client.ref),
      kind: 'plan',
      drills: work.drills,
    }
  },
}
