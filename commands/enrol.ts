import type { Side } from '../src/domain/checkin.ts'
import { plain } from '../src/engine/answer.ts'
import type { PracticeCommand } from '../src/engine/command.ts'
import { enrolNew } from '../src/engine/course/new-client.ts'

/** Invites a client; nothing but the invitation is kept before their yes. */
export const enrol: PracticeCommand = {
  name: 'enrol',
  who: 'coach-practice',
  options: [
    { name: 'person', kind: 'person', required: true },
    { name: 'alias', kind: 'text', required: true },
    { name: 'side', kind: 'text', required: false, choices: ['left', 'right', 'both'] },
    { name: 'zone', kind: 'text', required: false },
    { name: 'prompt', kind: 'text', required: false },
    { name: 'reminder', kind: 'text', required: false },
    { name: 'off', kind: 'text', required: false },
    { name: 'region', kind: 'text', required: false },
    { name: 'language', kind: 'text', required: false },
    { name: 'in-words', kind: 'yes-no', required: false },
  ],
  async run(desk, { id, options, actor }) {
    const wish = {
      user: String(options.person),
      alias: String(options.alias),
      side: (options.side as Side | undefined) ?? null,
      language: options.language === undefined ? null : String(options.language),
      wordsOnly: options['in-words'] === true,
      coach: `<@${actor.user}>`,
      times: options,
    }
    const { text, ref } = await enrolNew(desk, wish, id)
    return plain(text, ref)
  },
}
