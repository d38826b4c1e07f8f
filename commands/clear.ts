import { plain } from '../src/engine/answer.ts'
import type { CoachCommand } from '../src/engine/command.ts'
import { clearWith } from '../src/engine/urgent/clear.ts'

/** Records who cleared the client and when; only so does a locked plan open again. */
export const clear: CoachCommand = {
  name: 'clear',
  who: 'coach',
  options: [
    { name: 'client', kind: 'client', required: true },
    { name: 'by', kind: 'text', required: true },
    { name: 'on', kind: 'text', required: true },
    { name: 'reason', kind: 'text', required: false },
  ],
  run(draft, { options, actor }) {
    const given = { by: String(options.by), on: String(options.on), reason: String(options.reason ?? '') }
    const { text, done } = clearWith(draft, given, `<@${actor.user}>`)
    return done ? { ...plain(text, draft.client.ref), kind: 'cleared' } : plain(text, draft.client.ref)
  },
}
