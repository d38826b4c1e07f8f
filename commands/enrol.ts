import { createHash } from 'node:crypto'
import type { Side } from '../src/domain/checkin.ts'
import { plain } from '../src/engine/answer.ts'
import type { PracticeCommand } from '../src/engine/command.ts'
import { Draft } from '../src/engine/draft.ts'
import { invite } from '../src/engine/enrol.ts'
import type { ClientFile } from '../src/engine/ports.ts'
import type { ClientRow, PracticeRow } from '../src/engine/rows.ts'
import { readTimes } from './my-times.ts'

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
    { name: 'language', kind: 'text', required: false, choices: ['en'] },
    { name: 'in-words', kind: 'yes-no', required: false },
  ],
  async run({ tx, practice, now, texts, textsFor }, command) {
    const { options } = command
    if (!practice!.coachChannel) return plain(texts.commands.setUpLacks, null)
    const ref = String(options.alias)
    if (!/^[\p{L}\d-]{1,30}$/u.test(ref)) return plain(texts.commands.badAlias, null)
    if (await tx.clientByRef(practice!.id, ref)) return plain(texts.commands.aliasTaken(ref), null)
    const user = String(options.person)
    const here = (await tx.clientsOfUser(user)).find(
      (file) => file.practice.id === practice!.id && file.client.stage !== 'left',
    )
    if (here) return plain(texts.commands.enrolledAlready(here.client.ref), null)
    const defaults = {
      prompt: '08:00',
      reminder: null,
      zone: practice!.zone,
      region: practice!.region,
      off: [],
    }
    const times = readTimes(options, defaults, texts)
    if (typeof times === 'string') return plain(times, null)
    const client: ClientRow = {
      id: createHash('sha256').update(`${practice!.id}/${command.id}`).digest('hex').slice(0, 16),
      practiceId: practice!.id,
      ref,
      user,
      ...times,
      language: String(options.language ?? practice!.language),
      side: (options.side as Side | undefined) ?? null,
      stage: 'invited',
      wordsOnly: options['in-words'] === true,
      start: null,
      coach: `<@${command.actor.user}>`,
      remind: null,
      endedAt: null,
      createdAt: now,
    }
    const draft = new Draft(emptyFile(practice!, client), now, command.id, textsFor)
    draft.put('client', client)
    invite(draft)
    await tx.apply(draft.outcome)
    return plain(texts.commands.invited(ref), ref)
  },
}

const emptyFile = (practice: PracticeRow, client: ClientRow): ClientFile => ({
  practice,
  client,
  consent: null,
  screening: null,
  plan: null,
  rungs: [],
  checkIns: [],
  signs: [],
  holds: [],
  flags: [],
  decisions: [],
  alerts: [],
  asked: [],
  dues: [],
  activities: [],
  questions: [],
  covers: [],
})
