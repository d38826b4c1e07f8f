import { plain } from '../src/engine/answer.ts'
import type { CoachCommand } from '../src/engine/command.ts'
import { baselineOf } from '../src/engine/history.ts'
import { discharge as dischargeClient } from '../src/engine/leave.ts'

/** The end of the way together: where the client began, where they are, what to do if it comes back. */
export const discharge: CoachCommand = {
  name: 'discharge',
  who: 'coach',
  options: [{ name: 'client', kind: 'client', required: true }],
  run(draft) {
    const { words, commands } = draft.texts
    const values = (reach: Parameters<typeof words.values>[0]['reach'], pain: number | null) =>
      words.values({ sessions: null, reach, pain }) || '–'
    const began = baselineOf(draft.file)
    const last = [...draft.file.checkIns]
      .sort((a, b) => (a.day < b.day ? -1 : 1))
      .filter((row) => row.pain !== null || row.reach !== null)
      .at(-1)
    const summary = commands.summary(
      values(began?.reach ?? null, began?.pain ?? null),
      values(last?.reach ?? null, last?.pain ?? null),
    )
    dischargeClient(draft, summary)
    return {
      ...plain(draft.forCoach.commands.discharged(draft.client.ref), draft.client.ref),
      kind: 'discharge',
    }
  },
}
