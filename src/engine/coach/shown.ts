import { type Address, type Answer, BARE, type Message } from '../message.ts'
import type { Tx } from '../ports.ts'
import type { PracticeRow } from '../rows.ts'

/** To whom an answer with choices is shown, and about whom it is. */
export interface ShownTo {
  readonly practice: PracticeRow
  readonly clientId: string | null
  /** The person who sees it alone; null: everybody in the channel of the message that was pressed. */
  readonly only: string | null
  /** The message that was pressed, where it is that one which changes. */
  readonly in?: Address
  /** The event that led to it. */
  readonly cause: string
  readonly now: Date
}

/**
 * Keeps the choices of an answer, so that a press on them is known after a restart and held against whoever asked.
 * Of what one person alone sees the words are not kept.
 */
export async function keepChoices(tx: Tx, answer: Answer, to: ShownTo): Promise<Answer> {
  const { choices } = answer
  if (!choices || (choices.buttons.length === 0 && choices.pick === null)) return answer
  const place = to.in ?? { to: 'coach' as const, channel: to.practice.coachChannel ?? '' }
  const message: Message = {
    ...BARE,
    key: `shown/${to.cause}`,
    address: to.only === null || place.to === 'client' ? place : { ...place, only: to.only },
    about: answer.about,
    kind: answer.kind,
    text: to.only === null ? answer.text : '',
    buttons: choices.buttons,
    pick: choices.pick,
  }
  const outbox = await tx.keepShown(message, {
    practiceId: to.practice.id,
    clientId: to.clientId,
    at: to.now,
  })
  return { ...answer, choices: { ...choices, outbox } }
}
