import { createHash } from 'node:crypto'
import type { Side } from '../src/domain/checkin.ts'
import { plain } from '../src/engine/answer.ts'
import type { PracticeCommand } from '../src/engine/command.ts'
import { invite } from '../src/engine/course/enrol.ts'
import { isServed } from '../src/engine/course/served.ts'
import { Draft } from '../src/engine/draft.ts'
import type { Command } from '../src/engine/event.ts'
import type { ClientFile, Tx } from '../src/engine/ports.ts'
import type { Change, ClientRow, PracticeRow } from '../src/engine/rows.ts'
import { hasEnded, isLocked, isPressing } from '../src/engine/status.ts'
import type { Texts } from '../src/text/index.ts'
import { readTimes, type Times } from './my-times.ts'

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
  async run({ tx, practice, now, texts, textsFor }, command) {
    const { options } = command
    if (!practice!.coachChannel) return plain(texts.commands.setUpLacks, null)
    if (!practice!.policyConfirmed) return plain(texts.setUp.enrolNeedsPolicy, null)
    const wished = String(options.alias)
    if (!/^[\p{L}\d-]{1,30}$/u.test(wished)) return plain(texts.commands.badAlias, null)
    const user = String(options.person)
    const own = (await tx.clientsOfUser(user)).filter((file) => file.practice.id === practice!.id)
    const here = own.find(({ client }) => !hasEnded(client))
    if (here) return plain(texts.commands.enrolledAlready(here.client.ref), null)
    // a new record knows nothing of it, and would bring drills
    const locked = own.find((file) => isLocked(file) || isPressing(file))
    if (locked) return plain(texts.commands.enrolLocked(locked.client.ref), null)
    const ref = await freeAlias(tx, practice!.id, wished, own)
    if (ref === null) return plain(texts.commands.aliasTaken(wished), null)
    const language = String(options.language ?? practice!.language).toLowerCase()
    if (textsFor(language).language !== language)
      return plain(texts.courseForCoach.badLanguage(language), null)
    const times = timesServed(options, practice!, texts)
    if (typeof times === 'string') return plain(times, null)
    const client: ClientRow = {
      id: createHash('sha256').update(`${practice!.id}/${command.id}`).digest('hex').slice(0, 16),
      practiceId: practice!.id,
      ref,
      user,
      ...times,
      language,
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
    await tx.apply({ changes: own.flatMap(noMoreComeBack), postings: [] })
    const again = ref === wished ? '' : `\n${texts.courseForCoach.aliasAgain(wished, ref)}`
    return plain(`${texts.commands.invited(ref)}${again}`, ref)
  },
}

/** Where and when the client is prompted, the practice's own where left out; a sentence where that cannot be. */
function timesServed(options: Command['options'], practice: PracticeRow, texts: Texts): Times | string {
  const { zone, region } = practice
  const times = readTimes(options, { prompt: '08:00', reminder: null, zone, region, off: [] }, texts)
  if (typeof times === 'string') return times
  if (practice.regions.length > 0 && times.region === null) return texts.courseForCoach.regionNeeded
  return isServed(practice, times.region) ? times : texts.courseForCoach.regionNotServed(times.region!)
}

/** The alias wished; with a number where an earlier record of the same person holds it; null: somebody else's. */
async function freeAlias(
  tx: Tx,
  practiceId: string,
  wished: string,
  own: readonly ClientFile[],
): Promise<string | null> {
  for (let n = 1; ; n += 1) {
    const ref = n === 1 ? wished : `${wished}-${n}`
    const holder = await tx.clientByRef(practiceId, ref)
    if (!holder) return ref
    if (!own.some((file) => file.client.id === holder.client.id)) return null
  }
}

/** The word that was to come some weeks after the end has no place once the way goes on. */
const noMoreComeBack = ({ dues, asked }: ClientFile): Change[] => [
  ...dues.filter((due) => due.kind === 'come-back').map(({ id }): Change => ({ drop: 'due', id })),
  ...asked
    .filter((row) => row.ask === 'come-back' || row.ask === 'remind')
    .map(({ id }): Change => ({ drop: 'asked', id })),
]

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
