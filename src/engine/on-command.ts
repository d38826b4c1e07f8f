import { LADDERS } from '../domain/ladder/ladders.ts'
import { plain } from './answer.ts'
import { keepChoices } from './coach/shown.ts'
import type { ClientCommand, CoachCommand, PracticeCommand } from './command.ts'
import { allRows, backupsUntil, eraseClient, farewell } from './course/erase.ts'
import { goOnScreening } from './course/screening-waits.ts'
import type { Draft } from './draft.ts'
import type { Command } from './event.ts'
import { isCoach } from './is-coach.ts'
import type { Answer } from './message.ts'
import { oddOption } from './odd-option.ts'
import { commit, draftOf, type EngineParts, fileInUse } from './parts.ts'
import type { Handled, Tx } from './ports.ts'
import type { PracticeRow } from './rows.ts'

/** A command typed by somebody: who may is checked here, the work is the command's own. */
export async function onCommand(parts: EngineParts, tx: Tx, event: Command, now: Date): Promise<Handled> {
  const texts = parts.textsFor('en')
  const command = parts.commands.find((one) => one.name === event.name)
  if (!command) return say(texts.access.unknownCommand(event.name))
  const odd = oddOption(command, event)
  if (command.who === 'client')
    return odd ? say(texts.access.oddOption(odd)) : clientCommand(parts, tx, command, event, now)
  if (!event.actor.guild) return say(texts.access.onlyInServer)
  const practice = await tx.practiceOfGuild(event.actor.guild)
  if (command.who === 'keeper') {
    if (!event.actor.keeper) return say(texts.access.onlyKeeper)
    if (odd) return say(texts.access.oddOption(odd))
    return practiceCommand(parts, tx, command, event, practice, now)
  }
  if (!practice) return say(texts.access.setUpFirst)
  if (!isCoach(practice, event.actor)) return say(texts.access.onlyCoach)
  if (odd) return say(texts.access.oddOption(odd))
  if (command.who !== 'coach') return practiceCommand(parts, tx, command, event, practice, now)
  return coachCommand(parts, tx, command, event, practice, now)
}

/** What makes sense only for somebody whose way is under way. */
const ENROLLED_ONLY = ['check-in', 'today', 'pause', 'resume']

/** What is kept of somebody stays theirs to see and to erase after they have left. */
const AFTER_LEAVING = ['erase-me', 'my-data']

const say = (text: string): Handled => ({ answer: plain(text, null) })

async function clientCommand(
  parts: EngineParts,
  tx: Tx,
  command: ClientCommand,
  event: Command,
  now: Date,
): Promise<Handled> {
  const forCoach = await toldCoach(parts, tx, command, event)
  if (forCoach !== null) return say(forCoach)
  const file = fileInUse(await tx.clientsOfUser(event.actor.user))
  if (!file) return say(parts.textsFor('en').client.stranger)
  const { stage } = file.client
  if (stage === 'left' && !AFTER_LEAVING.includes(command.name))
    return say(parts.textsFor(file.client.language).client.notEnrolled)
  const draft = draftOf(parts, file, now, event.id)
  if (stage !== 'enrolled' && ENROLLED_ONLY.includes(command.name)) {
    const goesOn = goOnScreening(draft)
    await commit(tx, draft)
    return say(goesOn ? draft.texts.course.screeningGoesOn : draft.texts.client.notEnrolled)
  }
  const answer = await command.run(draft, event, tx)
  await commit(tx, draft)
  if (answer.erases) {
    const until = backupsUntil(now, file.client.zone, parts.backupDays)
    return { answer: await erased(tx, draft, answer, (rows) => draft.texts.course.erased(rows, until)) }
  }
  const { practice, client } = file
  const shown = { practice, clientId: client.id, only: client.user, cause: event.id, now }
  return { answer: await keepChoices(tx, answer, { ...shown, in: { to: 'client', user: client.user } }) }
}

/** What a coach reads of a client's command in the practice's server; null: to be carried out. */
async function toldCoach(
  { textsFor }: EngineParts,
  tx: Tx,
  { forCoach }: ClientCommand,
  { actor }: Command,
): Promise<string | null> {
  if (!forCoach || !actor.guild) return null
  const practice = await tx.practiceOfGuild(actor.guild)
  return practice && isCoach(practice, actor) ? forCoach(textsFor(practice.language)) : null
}

async function coachCommand(
  parts: EngineParts,
  tx: Tx,
  command: CoachCommand,
  event: Command,
  practice: PracticeRow,
  now: Date,
): Promise<Handled> {
  const texts = parts.textsFor(practice.language)
  const ref = String(event.options.client ?? '')
  const file = await tx.clientByRef(practice.id, ref)
  if (!file) {
    return say(texts.coach.unknownClient(ref, await tx.refs(practice.id)))
  }
  const draft = draftOf(parts, file, now, event.id)
  const answer = await command.run(draft, event, tx)
  await commit(tx, draft)
  if (answer.erases) {
    const until = backupsUntil(now, practice.zone, parts.backupDays)
    const { courseForCoach } = draft.forCoach
    const word = farewell(draft)
    const done = await erased(tx, draft, answer, (rows) => courseForCoach.erased(rows, until))
    if (word) await tx.apply({ changes: [], postings: [word] })
    return { answer: done }
  }
  const to = { practice, clientId: draft.client.id, only: event.actor.user, cause: event.id, now }
  return { answer: await keepChoices(tx, answer, to) }
}

/** Every row goes, and the answer says how many went and what is out of reach. */
async function erased(
  tx: Tx,
  draft: Draft,
  answer: Answer,
  proof: (rows: number) => string,
): Promise<Answer> {
  const rows = allRows(await eraseClient(tx, draft))
  return { ...answer, text: `${answer.text}\n${proof(rows)}` }
}

async function practiceCommand(
  parts: EngineParts,
  tx: Tx,
  command: PracticeCommand,
  event: Command,
  practice: PracticeRow | null,
  now: Date,
): Promise<Handled> {
  const texts = parts.textsFor(practice?.language ?? 'en')
  const { textsFor, ladders = LADDERS } = parts
  const answer = await command.run({ tx, practice, now, texts, textsFor, ladders }, event)
  if (!practice) return { answer }
  const to = { practice, clientId: null, only: event.actor.user, cause: event.id, now }
  return { answer: await keepChoices(tx, answer, to) }
}
